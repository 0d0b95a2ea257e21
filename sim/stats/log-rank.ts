/** The log-rank test: do two groups let go alike? Source: Mantel 1966; Peto and Peto 1972. */
import { normalTail } from './normal.js';
import type { Observation } from './survival.js';

/** Made by `logRank`. `variance` is that of the events of the first group; `p` is two-sided. */
export interface LogRank {
  /** Events of the first and of the second group. */
  readonly observed: readonly [number, number];
  /** Events they would have if both let go alike. */
  readonly expected: readonly [number, number];
  readonly variance: number;
  /** On one degree of freedom; null where no value has both groups at risk. */
  readonly chiSquare: number | null;
  readonly p: number | null;
}

/** Two groups flown alike but for what is compared, at one rate for example. */
export interface Stratum {
  readonly first: readonly Observation[];
  readonly second: readonly Observation[];
}

/** Two groups, compared within each stratum (each rate, say) and added up. One stratum: the plain test. */
export function logRank(strata: readonly Stratum[]): LogRank {
  const sums = strata.map(stratumSums);
  const total = (pick: (one: Sums) => number): number => sums.reduce((sum, one) => sum + pick(one), 0);
  const variance = total((one) => one.variance);
  const [o1, o2] = [total((one) => one.o1), total((one) => one.o2)];
  const e1 = total((one) => one.e1);
  const chiSquare = variance > 0 ? (o1 - e1) ** 2 / variance : null;
  return {
    observed: [o1, o2], expected: [e1, o1 + o2 - e1], variance,
    chiSquare, p: chiSquare === null ? null : 2 * normalTail(Math.sqrt(chiSquare)),
  };
}

interface Sums { o1: number; o2: number; e1: number; variance: number }

function stratumSums({ first, second }: Stratum): Sums {
  const values = [...new Set([...first, ...second].filter(({ event }) => event).map(({ value }) => value))];
  const sums: Sums = { o1: 0, o2: 0, e1: 0, variance: 0 };
  for (const value of values) {
    const atRisk = (group: readonly Observation[]): number => group.filter((one) => one.value >= value).length;
    const events = (group: readonly Observation[]): number => group.filter((one) => one.event && one.value === value).length;
    const [n1, n2, d1, d2] = [atRisk(first), atRisk(second), events(first), events(second)];
    const [n, d] = [n1 + n2, d1 + d2];
    sums.o1 += d1;
    sums.o2 += d2;
    sums.e1 += n1 * d / n;
    if (n > 1) sums.variance += n1 * n2 * d * (n - d) / (n * n * (n - 1));
  }
  return sums;
}
