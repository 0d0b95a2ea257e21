/** Many replicates added up: how often each interval held the truth, and how far the estimates were off. */
import { decidedOf, replicate, type Replicate } from './replicate.js';

export interface Held {
  readonly n: number;
  readonly held: number;
  /** Truth below the interval, and above it. */
  readonly below: number;
  readonly above: number;
  /** Sums of ln(estimate / truth) and of its square. */
  readonly off: number;
  readonly off2: number;
}

export interface Coverage {
  readonly sets: number;
  readonly found: Readonly<Record<string, Held>>;
  /** Sums over the sets. */
  readonly outcomes: Readonly<Record<string, number>>;
  /** Sets with 20 decided runs or more. */
  readonly fitShown: number;
}

export const NOTHING: Coverage = { sets: 0, found: {}, outcomes: {}, fitShown: 0 };
const NONE: Held = { n: 0, held: 0, below: 0, above: 0, off: 0, off2: 0 };

const added = <T>(a: Readonly<Record<string, T>>, b: Readonly<Record<string, T>>, sum: (a: T | undefined, b: T) => T): Record<string, T> =>
  ({ ...a, ...Object.fromEntries(Object.entries(b).map(([key, value]) => [key, sum(a[key], value)])) });

const heldSum = (a: Held | undefined, b: Held): Held =>
  Object.fromEntries(Object.entries(a ?? NONE).map(([key, value]) => [key, (value as number) + b[key as keyof Held]])) as unknown as Held;

/** Two parts of one study as one. */
export const together = (a: Coverage, b: Coverage): Coverage => ({
  sets: a.sets + b.sets, fitShown: a.fitShown + b.fitShown,
  found: added(a.found, b.found, heldSum),
  outcomes: added(a.outcomes, b.outcomes, (one, more) => (one ?? 0) + more),
});

function asked({ found, outcomes }: Replicate): Coverage {
  return {
    sets: 1, outcomes, fitShown: decidedOf(outcomes) >= 20 ? 1 : 0,
    found: Object.fromEntries(Object.entries(found).map(([name, { truth, estimate }]): [string, Held] => {
      const off = Math.log(estimate.median / truth);
      const [below, above] = [truth < estimate.lo ? 1 : 0, truth > estimate.hi ? 1 : 0];
      return [name, { n: 1, held: 1 - below - above, below, above, off, off2: off * off }];
    })),
  };
}

/** Replicates `from` to `to`, both included. @param watcher null: drawn from the prior */
export function coverage(plan: string, watcher: string | null, from: number, to: number): Coverage {
  let all = NOTHING;
  for (let seed = from; seed <= to; seed += 1) all = together(all, asked(replicate(plan, watcher, seed)));
  return all;
}
