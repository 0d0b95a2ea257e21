// Numbers for properties. A double of the library lies alike over all powers of two: between 0 and 1 nearly every one is next to 0.
import fc from 'fast-check';

/** A number from `min` to `max`, alike over the range; both ends and odd ones among them. */
export const anywhere = (min: number, max: number): fc.Arbitrary<number> => fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 0, max: 1_000_000 }).map((step) => min + (max - min) * (step / 1_000_000)) },
  { weight: 1, arbitrary: fc.constantFrom(min, max) },
  { weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) },
);
