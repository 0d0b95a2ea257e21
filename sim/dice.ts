/**
 * The dice: generator xoshiro128** (Blackman and Vigna, 2018, public domain), one sub-stream a purpose, by name.
 * Streams do not touch each other, so one more draw for one purpose moves no other. Thrown before a run, never in it.
 */
import { normalQuantile } from './portable.js';

/** A stream of dice. Its methods move it on. */
export interface Dice {
  /** Next 32 bits, 0 to 4294967295. */
  bits(): number;
  /** Uniform in (0, 1), 53 bits, never 0. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
}

/** Spreads a seed over the state words: the finaliser of MurmurHash3, a golden-ratio step between words. */
function spread(seed: number): number {
  let h = seed;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** FNV-1a of a purpose's name, 32 bit. */
function nameHash(name: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < name.length; i += 1) h = Math.imul(h ^ name.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

const rotate = (x: number, by: number): number => ((x << by) | (x >>> (32 - by))) >>> 0;

/** The generator on four given state words, not all 0. */
export function diceOf(words: readonly [number, number, number, number]): Dice {
  let [a, b, c, d] = words;
  const bits = (): number => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const t = b << 9;
    c ^= a; d ^= b; b ^= c; a ^= d; c ^= t;
    d = rotate(d, 11);
    return result;
  };
  const uniform = (): number => {
    const high = bits() >>> 5;
    const low = bits() >>> 6;
    return (high * 67108864 + low + 0.5) / 9007199254740992;
  };
  return { bits, uniform, normal: () => normalQuantile(uniform()) };
}

/**
 * The stream of one purpose of one run.
 * @param seed unsigned 32-bit whole number
 * @param purpose a fixed word, for example 'sides'
 * @throws RangeError for a seed that is not an unsigned 32-bit whole number
 */
export function dice(seed: number, purpose: string): Dice {
  if (!(seed >= 0 && seed <= 0xffffffff && Math.floor(seed) === seed)) {
    throw new RangeError(`seed ${seed} is not a whole number from 0 to 4294967295`);
  }
  const start = spread(seed) ^ nameHash(purpose);
  const word = (k: number): number => spread((start + Math.imul(k, 0x9e3779b9)) >>> 0);
  return diceOf([word(1), word(2), word(3), word(4) | 1]);
}
