/**
 * Two blocks that were named before they were flown, under one condition: did the splits change? Both blocks share theta
 * against v t0 and the spread; the later one's splits are `ratio` times the earlier one's, and nothing is believed of the
 * ratio beforehand. Speaks in a word and figures; sentences are for pages.
 */
import { node, axis, type Box, raceLikelihood, racePrior, type RaceRun } from './race-likelihood.js';
import { boxOf, middleRateOf, normalised } from './race-grid.js';
import { ratioShown, runsForRatio } from './required.js';
import { SHOWN_FROM } from './person.js';
import { type Estimate, estimateOf } from './spread.js';
import { caughtOf, falsePerSOf, falseReleasesOf, isDecided, raceRunsOf } from './tally.js';
import type { JudgedTrial } from './trial.js';

/**
 * tooFew: fewer than 8 decided runs in a block. noClearChange: the interval of the ratio holds 1. improved: below 1, no more
 * false releases a minute, no smaller part caught. fasterMoreFalse, fasterCaughtFewer: below 1, but. slower: above 1.
 */
export type BlockVerdict = 'tooFew' | 'noClearChange' | 'improved' | 'fasterMoreFalse' | 'fasterCaughtFewer' | 'slower';

/** Made by `compareBlocks`. What is null wants 8 decided runs in each block. */
export interface BlockChange {
  readonly verdict: BlockVerdict;
  /** Splits of the later block over those of the earlier; null where there are too few runs. */
  readonly ratio: Estimate | null;
  /** Log-spread of splits, both blocks together. */
  readonly sigma: number | null;
  /** Earlier, later. */
  readonly falsePerMin: readonly [number, number] | null;
  readonly caughtShare: readonly [number, number] | null;
  /** Decided runs: earlier, later. */
  readonly decided: readonly [number, number];
  /** The ratio that blocks of this size show four times in five; null where there are too few. */
  readonly shownRatio: number | null;
  /** "About N more": decided runs that each block lacks to show `moreForRatio` four times in five. */
  readonly moreRuns: number;
  readonly moreForRatio: number;
}

/** A fifth smaller: the change worth waiting for, unless asked for another. */
const WORTH_RATIO = 0.8;
/** The usual spread, where none is known yet. */
const USUAL_SIGMA = 0.35;

/**
 * @param earlier @param later judged trials of one condition and one limit
 * @param seenDeg growth below which a release is no reaction, deg
 * @param worth ratio that a count of runs is worked out for, 0 to 1, both excluded
 * @throws RangeError for different limits
 */
export function compareBlocks(earlier: readonly JudgedTrial[], later: readonly JudgedTrial[], seenDeg: number, worth = WORTH_RATIO): BlockChange {
  if (new Set([...earlier, ...later].map(({ limitDeg }) => limitDeg)).size > 1) throw new RangeError('blocks with different limits are not one condition');
  const decided = [earlier.filter(isDecided).length, later.filter(isDecided).length] as const;
  const least = Math.min(...decided);
  const more = (sigma: number): number => Math.max(0, runsForRatio(worth, sigma) - least);
  if (least < SHOWN_FROM.counts) {
    return { verdict: 'tooFew', ratio: null, sigma: null, falsePerMin: null, caughtShare: null, decided, shownRatio: null, moreRuns: more(USUAL_SIGMA), moreForRatio: worth };
  }
  const blockOf = (trials: readonly JudgedTrial[]): Block => ({ runs: raceRunsOf(trials, seenDeg), falsePerS: falsePerSOf(trials, seenDeg) });
  const { ratio, sigma } = ratioOf([blockOf(earlier), blockOf(later)]);
  const both = (of: (block: readonly JudgedTrial[]) => number): readonly [number, number] => [of(earlier), of(later)];
  const falsePerMin = both((block) => falseReleasesOf(block, seenDeg)?.perMin ?? 0);
  const caughtShare = both((block) => { const caught = caughtOf(block); return caught === null ? 0 : caught.k / caught.n; });
  return {
    verdict: verdictOf(ratio, falsePerMin, caughtShare), ratio, sigma, falsePerMin, caughtShare, decided,
    shownRatio: ratioShown(least, sigma), moreRuns: more(sigma), moreForRatio: worth,
  };
}

function verdictOf({ lo, hi }: Estimate, falses: readonly [number, number], caught: readonly [number, number]): BlockVerdict {
  if (lo > 1) return 'slower';
  if (hi >= 1) return 'noClearChange';
  if (falses[1] > falses[0]) return 'fasterMoreFalse';
  return caught[1] < caught[0] ? 'fasterCaughtFewer' : 'improved';
}

interface Block { readonly runs: readonly RaceRun[]; readonly falsePerS: number }

/** Points along m, wide enough for both blocks, and along r and k. */
const COUNTS = [72, 24, 18] as const;

/** Posterior of the ratio: the later block's likelihood, slid along m against the earlier one's, at every r and k. */
function ratioOf(blocks: readonly [Block, Block]): { ratio: Estimate; sigma: number } {
  const middleRate = middleRateOf(blocks.flatMap(({ runs }) => runs));
  const boxes = blocks.map(({ runs, falsePerS }) => boxOf(runs, falsePerS, middleRate));
  const [m, r, k] = COUNTS.map((count, at) => {
    const ends = boxes.map((box) => box[at] as Box[0]);
    return axis(Math.min(...ends.map(({ from }) => from)), Math.max(...ends.map((one) => node(one, one.count - 1))), count);
  }) as unknown as Box;
  const [first, second] = blocks.map(({ runs, falsePerS }) => raceLikelihood(runs, falsePerS, middleRate, [m, r, k])) as [Float64Array, Float64Array];
  const prior = racePrior(middleRate, [m, r, k]);
  const earlier = normalised(first.map((ln, at) => ln + (prior[at] as number)));
  const later = normalised(second);
  const columns = r.count * k.count;
  const slid = new Float64Array(2 * m.count - 1);
  let [lnSigma, all] = [0, 0];
  for (let column = 0; column < columns; column += 1) {
    let here = 0;
    for (let i = 0; i < m.count; i += 1) {
      const a = earlier[i * columns + column] as number;
      if (a < 1e-12) continue;
      for (let to = 0; to < m.count; to += 1) {
        const both = a * (later[to * columns + column] as number);
        (slid[to - i + m.count - 1] as number) += both;
        here += both;
      }
    }
    lnSigma += here * node(k, column % k.count);
    all += here;
  }
  const value = Float64Array.from({ length: slid.length }, (_, at) => (at - m.count + 1) * m.step);
  const { median, lo, hi } = estimateOf({ value, width: new Float64Array(slid.length).fill(m.step), mass: slid, count: slid.length });
  return { ratio: { median: Math.exp(median), lo: Math.exp(lo), hi: Math.exp(hi) }, sigma: Math.exp(lnSigma / all) };
}
