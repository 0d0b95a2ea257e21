/** What the desks of a run are told of it: all of it when one comes, then what has changed. */
import type { FlownSetting, RoomMessage } from '../../sim/files/index.js';
import { MODEL_VERSION } from '../../sim/index.js';
import { isFrozen, type Session } from '../run/session.js';

/** A step is told this often at the most while nothing is filed, ms. */
const STEP_MS = 50;

type Snapshot = Extract<RoomMessage, { kind: 'snapshot' }>;
type Step = Extract<RoomMessage, { kind: 'step' }>;

export interface Telling {
  /** All of it, for a desk that has just come. */
  whole(session: Session): Snapshot;
  /** What has changed; null where nothing has and it is too soon to say so. `anyhow`: never too soon. */
  step(session: Session, anyhow: boolean): Step | null;
}

export interface TellingRequest {
  /** Name of the run among those of this machine. */
  readonly id: string;
  readonly title: string;
  readonly setting: Pick<FlownSetting, 'seed' | 'airframe' | 'scenario'>;
  /** Stamps of the page's clock, ms. */
  readonly now: () => number;
}

export function openTelling({ id, title, setting: { seed, airframe, scenario }, now }: TellingRequest): Telling {
  /** Tick under which an act was told last, by its sequence. */
  const told = new Map<number, number>();
  let log: Session['log'] | null = null;
  let stood = '';
  let number = 0;
  let steppedMs = -Infinity;

  function remember(all: Session['log']): void {
    log = all;
    for (const { seq, tick } of all) told.set(seq, tick);
  }
  return {
    whole(session) {
      remember(session.log);
      return {
        kind: 'snapshot', from: id, number: (number += 1), model: MODEL_VERSION, title, seed, airframe, scenario,
        tick: session.world.state.tick, stands: standing(session), commands: filed(session.log),
      };
    },
    step(session, anyhow) {
      const changed = session.log === log ? [] : session.log.filter(({ seq, tick }) => told.get(seq) !== tick);
      const stands = standing(session);
      if (changed.length === 0 && stands === stood && !anyhow && now() - steppedMs < STEP_MS) return null;
      remember(session.log);
      stood = stands;
      steppedMs = now();
      return { kind: 'step', from: id, number: (number += 1), tick: session.world.state.tick, stands, commands: filed(changed) };
    },
  };
}

const standing = (session: Session): Step['stands'] => (session.running ? 'runs' : isFrozen(session) ? 'frozen' : 'paused');
const filed = (log: Session['log']): Step['commands'] => log as unknown as Step['commands'];
