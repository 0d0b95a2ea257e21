/**
 * Hash of states, 64 bit as 16 hexadecimal digits: two lanes of 32-bit mixing (the block step of MurmurHash3, public
 * domain) over the bits of every number. No security in it: it shows whether two runs are the same to the last bit.
 */
import { numberOf, STATE_KEYS, type State } from './state.js';

const cell = new DataView(new ArrayBuffer(8));

/** A running hash: feed states in, read digits out. */
export interface Hash {
  /** @throws RangeError when a number of the state is NaN, naming its key. */
  add(state: State): void;
  digits(): string;
}

const mix = (lane: number, word: number): number => {
  let k = Math.imul(word, 0xcc9e2d51);
  k = Math.imul((k << 15) | (k >>> 17), 0x1b873593);
  const h = lane ^ k;
  return (Math.imul((h << 13) | (h >>> 19), 5) + 0xe6546b64) | 0;
};

const finish = (lane: number): string => {
  let h = lane;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0).toString(16).padStart(8, '0');
};

/** A running hash to which nothing has been added yet. `add` throws RangeError for a state with a number that is none. */
export function startHash(): Hash {
  let first = 0x9747b28c | 0;
  let second = 0x2f4fb500 | 0;
  return {
    add(state) {
      for (const key of STATE_KEYS) {
        const value = numberOf(state, key) + 0; // minus zero becomes zero, which JSON could not keep apart
        if (value !== value) throw new RangeError(`state.${key} is not a number at tick ${state.tick}`);
        cell.setFloat64(0, value);
        first = mix(mix(first, cell.getUint32(0)), cell.getUint32(4));
        second = mix(mix(second, cell.getUint32(4)), cell.getUint32(0) ^ 0x5bd1e995);
      }
    },
    digits: () => finish(first) + finish(second),
  };
}
