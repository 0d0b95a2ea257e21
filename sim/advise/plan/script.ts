/**
 * The nominal pilot as a script: acts, and what to wait for between them. It flies the plan on the model itself, as the
 * procedure says: slow to the manoeuvre speed of what is out, lever, drive, both there, only then the next.
 */
import type { Act } from '../../files/act.js';
import type { World } from '../../fixed.js';
import type { Command } from '../../command.js';
import { copyState, type State } from '../../state.js';
import { step } from '../../world.js';

/** Waits until this holds. */
export type Until = (s: State) => boolean;
export type Script = Generator<Until, void>;
export type Do = (act: Act) => void;

/** No plan takes longer, ticks: an hour. */
const LONGEST_TICKS = 360_000;

/** So many seconds from the moment it is first asked. */
export function seconds(count: number): Until {
  let from = -1;
  return (s) => {
    if (from < 0) from = s.tick;
    return s.tick - from >= count * 100;
  };
}

/**
 * Flies a script from a world on, and shows every state to a witness.
 * @returns the state at its end, and whether the script came to its end within an hour
 */
export function flyScript({ fixed, state }: World, script: (act: Do) => Script, see: (s: State) => void): { readonly state: State; readonly done: boolean } {
  const s = copyState(state);
  const log: Command[] = [];
  const until = state.tick + LONGEST_TICKS;
  const going = script((act) => { log.push({ ...act, tick: s.tick, rank: 2, seq: log.length } as Command); });
  let now = going.next();
  let next = 0;
  see(s);
  while (s.tick < until) {
    while (now.done !== true && now.value(s)) now = going.next();
    if (now.done === true && next >= log.length) return { state: s, done: true };
    next = step(fixed, s, log, next);
    see(s);
  }
  return { state: s, done: false };
}
