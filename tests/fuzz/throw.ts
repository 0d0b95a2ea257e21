/** Throws a property many times, a batch a seed, so that a failure comes again by the seed of its batch alone. */
import fc from 'fast-check';

export interface Failed {
  readonly seed: number;
  readonly path: string;
  readonly why: string;
  /** The least case that still fails. */
  readonly shrunk: string;
}

export interface Thrown {
  /** What was wanted of the shrunk case, as text for a file. */
  readonly failed: Failed | null;
  /** Cases that were checked: those that a door refused are not among them. */
  readonly done: number;
}

export const BATCH = 250;

/** Showing a case may fail as the case does. */
function shown<T>(show: (one: T) => string, one: T): string {
  try {
    return show(one);
  } catch {
    return JSON.stringify(one);
  }
}

/** One batch. A case that hangs is a failure of its own: the caller watches the clock. */
export async function throwBatch<T>(arbitrary: fc.Arbitrary<T>, check: (one: T) => Promise<void> | void, seed: number, show: (one: T) => string, count = BATCH): Promise<Thrown> {
  let done = 0;
  const property = fc.asyncProperty(arbitrary, async (one) => {
    await check(one);
    done += 1;
  });
  // `verbose` and the like would keep every case; `endOnFailure` is left off, for a small case is worth the time.
  const told = await fc.check(property, { seed, numRuns: count, maxSkipsPerRun: 50, interruptAfterTimeLimit: 300_000 });
  if (!told.failed) return { failed: null, done };
  const [least] = told.counterexample ?? [];
  const why = told.errorInstance instanceof Error ? told.errorInstance.stack ?? told.errorInstance.message : `ran out of cases: ${told.numSkips} skipped`;
  return { failed: { seed, path: told.counterexamplePath ?? '', why, shrunk: least === undefined ? '' : shown(show, least as T) }, done };
}
