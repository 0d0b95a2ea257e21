/** A desk in a run: its acts are filed where the clock stands or runs, and answered: taken in a tick, or refused and why. */
import type { DeskAct } from '../../sim/files/index.js';
import { LEAST_BACK_TICKS } from '../../sim/index.js';
import { file, frame, isFrozen, mark, put, resume, stop, type Session } from './session.js';
import { upper } from '../view/words.js';

/** Behind an act of a desk; where it was refused, nothing of it is filed. */
export interface Answered {
  readonly session: Session;
  /** Tick in which the act stands; null where it was refused. */
  readonly tick: number | null;
  /** Why it was refused. */
  readonly refused: string | null;
}

/** Files what a desk did. @param by name of the desk */
export function desked(session: Session, stampMs: number, act: DeskAct, by: string): Answered {
  const refuse = (refused: string): Answered => ({ session, tick: null, refused });
  if (session.over !== null || session.world.state.latched.endTick >= 0) return refuse('The run is over.');
  if (act.do === 'freeze' && !session.running) return refuse('The clock stands already.');
  if (act.do === 'goOn' && session.running) return refuse('The clock runs.');
  if (act.do === 'goOn' && !isFrozen(session)) return refuse('The trainee has paused the run; only the trainee goes on from that.');
  // Twice what the model asks: a stall may still bring the act a little forward.
  if (act.do === 'reposition' && act.toTick > session.world.state.tick - 2 * LEAST_BACK_TICKS) return refuse('That moment is not long enough ago.');
  try {
    const before = act.do === 'freeze' ? frame(session, stampMs) : session;
    if (act.do === 'freeze' && !before.running) return { session: before, tick: null, refused: 'The clock stands already.' };
    const filed = put(before, stampMs, { ...act, rank: 1, by });
    const tick = filed.log.find(({ seq }) => seq === before.seq)?.tick ?? null;
    return { session: carriedOut(filed, stampMs, act.do), tick, refused: null };
  } catch (problem) {
    if (problem instanceof RangeError) return refuse(sentence(problem.message));
    throw problem;
  }
}

const sentence = (words: string): string => `${upper(words)}.`;

/** What an act does to the clock; what it does to the model stands in the agenda. */
function carriedOut(session: Session, stampMs: number, what: DeskAct['do']): Session {
  switch (what) {
    case 'freeze': {
      const released = session.world.state.latched.drive === 0 ? session : file(session, stampMs, { do: 'releaseDrive' });
      return { ...mark(released, stampMs, 'freeze'), running: false };
    }
    case 'goOn': return resume(session, stampMs);
    case 'voidRun': return stop(session, stampMs);
    default: return session;
  }
}

/** The hand left the switch for another window while a desk is there: the run goes on, and says so. */
export function letGo(session: Session, stampMs: number): Session {
  if (session.over !== null || !session.running) return session;
  return mark(file(frame(session, stampMs), stampMs, { do: 'releaseDrive' }), stampMs, 'focusLost');
}
