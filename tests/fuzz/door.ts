/** A door of the product through which something from outside comes. */
import type fc from 'fast-check';

export interface Door {
  readonly name: string;
  /** How often it is gone to, against the others. */
  readonly weight: number;
  /** What is brought to it. */
  readonly arbitrary: fc.Arbitrary<unknown>;
  /** Brings it, and throws where the door does not keep what it owes. */
  check(what: unknown): Promise<void> | void;
}

export const door = <T>(name: string, weight: number, arbitrary: fc.Arbitrary<T>, check: (what: T) => Promise<void> | void): Door =>
  ({ name, weight, arbitrary, check: (what) => check(what as T) });
