/** What a desk knows of the run that it follows, and what a message changes in it. */
import type { DeskAct, RoomMessage, RunRecord } from '../../sim/files/index.js';
import { MODEL_VERSION } from '../../sim/index.js';
import { mirrorOf, stepped, type Mirror } from './mirror.js';
import type { Room } from './rooms.js';

/** An act on its way: sent until the run has answered. */
export interface Sent {
  readonly number: number;
  readonly what: DeskAct | { readonly do: 'grade' };
  readonly state: 'sent' | 'taken' | 'refused';
  /** Tick in which it stands. */
  readonly tick: number | null;
  readonly refused: string | null;
}

type Stage = 'seeking' | 'joining' | 'live' | 'over' | 'gone' | 'otherModel';

/** All that a desk knows. A new value whenever something of it has changed. */
export interface DeskView {
  readonly rooms: readonly Room[];
  /** The run that is followed; null for none. */
  readonly room: string | null;
  readonly stage: Stage;
  readonly mirror: Mirror | null;
  readonly sent: readonly Sent[];
  readonly record: RunRecord | null;
}

/** Of a run that is not followed. */
export const NOTHING = { room: null, stage: 'seeking', mirror: null, sent: [], record: null } as const;

/** Missed: something before the message never came. Unfit: it holds acts that no run holds. */
type Change = Partial<DeskView> | 'nothing' | 'missed' | 'unfit';
type Said<K extends RoomMessage['kind']> = Extract<RoomMessage, { kind: K }>;

/** What of the view a message changes. A run of another model version is not mirrored, and says so as a stage. */
export function changeBy(message: RoomMessage, view: DeskView): Change {
  switch (message.kind) {
    case 'snapshot': return view.stage === 'over' ? 'nothing' : whole(message, view);
    case 'step': return view.mirror === null || view.stage === 'over' ? 'nothing' : step(message, view.mirror, view.stage);
    case 'answer': return { sent: view.sent.map((one) => (one.number === message.number ? answered(one, message) : one)) };
    case 'over': return { stage: 'over', record: message.record };
    case 'gone': return { stage: view.stage === 'over' ? 'over' : 'gone' };
    case 'join': case 'beat': case 'leave': case 'act': case 'grades': return 'nothing';
  }
}

function whole(message: Said<'snapshot'>, { mirror: before }: DeskView): Change {
  if (message.model !== MODEL_VERSION) return { stage: 'otherModel', mirror: null };
  if (before !== null && before.number >= message.number) return 'nothing';
  try {
    return { stage: 'live', mirror: mirrorOf(message) };
  } catch {
    return 'unfit';
  }
}

function step(message: Said<'step'>, before: Mirror, stage: Stage): Change {
  try {
    const mirror = stepped(before, message);
    if (mirror === null) return 'missed';
    return mirror === before && stage === 'live' ? 'nothing' : { stage: 'live', mirror };
  } catch {
    return 'unfit';
  }
}

const answered = (sent: Sent, { tick, refused }: Said<'answer'>): Sent => ({ ...sent, state: refused === null ? 'taken' : 'refused', tick, refused });
