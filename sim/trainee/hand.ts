/** The hand of a scripted trainee: what it does becomes a command, takes a second, and ends where it came off for good. */
import type { Command } from '../command.js';
import type { Act } from '../files/act.js';

/** Hands take a second between two acts. */
export const PAUSE_TICKS = 100;

/** Why the hand came off for good; a call follows, or none. */
type Off = { readonly tick: number; readonly call: Act | null };

export interface Hand {
  /** Why it came off for good; null while it has not. */
  readonly off: Off | null;
  /** A tick begins. */
  begin(tick: number, push: (command: Command) => void): void;
  /** Nothing is under way, and no rest. */
  isFree(): boolean;
  /** Files what another hand does, or the mouth. */
  readonly file: (what: Act) => void;
  /** Files what this hand does. */
  readonly act: (what: Act) => void;
  /** Does nothing for so long from now on. */
  rest(ticks: number): void;
  comeOff(call: Act | null): void;
}

export function openHand(): Hand {
  let tick = 0;
  let push: ((command: Command) => void) | null = null;
  let seq = 0;
  let freeTick = PAUSE_TICKS;
  let off: Off | null = null;
  const file = (what: Act): void => {
    push?.({ ...what, tick, rank: 2, seq } as Command);
    seq += 1;
  };
  return {
    file,
    get off() { return off; },
    begin(now, to) {
      tick = now;
      push = to;
    },
    isFree: () => tick >= freeTick,
    act(what) {
      file(what);
      freeTick = tick + PAUSE_TICKS;
    },
    rest(ticks) { freeTick = tick + ticks; },
    comeOff(call) { off = { tick, call }; },
  };
}
