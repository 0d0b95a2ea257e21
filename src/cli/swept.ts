/** A sweep as words for people: one sentence, outcomes with intervals, and each figure with its quantiles and a histogram. */
import type { SweepOutput } from '../../sim/files/index.js';
import { columns } from './columns.js';

const BAR = 40;

type Spread = SweepOutput['hornS'];
type Figure = { [K in keyof SweepOutput]: SweepOutput[K] extends Spread ? K : never }[keyof SweepOutput];

const WORDS: Readonly<Record<Figure, readonly [name: string, places: number]>> = {
  growthAtReleaseDeg: ['growth at release, deg', 2], finalSplitDeg: ['final split, deg', 2],
  rollAuthorityPct: ['roll authority used, %', 1], hornS: ['horn, s', 1], overLimitS: ['above a limit speed, s', 1],
};
const FIGURES = (Object.keys(WORDS) as Figure[]).map((key) => [key, ...WORDS[key]] as const);

export function sweptLines(output: SweepOutput): string[] {
  const { runs, trainee, seed, hash, outcomes, onsets, overLimitRuns, difficulty } = output;
  const shares = [...outcomes.map(({ outcome, ...share }) => ({ what: outcome as string, ...share })), { what: 'with an onset', ...onsets }, { what: 'above a limit speed', ...overLimitRuns }];
  const rows = FIGURES.flatMap(([key, name, places]) => {
    const spread = output[key];
    return spread === null ? [] : [[name, ...[spread.least, spread.q05, spread.q25, spread.median, spread.q75, spread.q95, spread.most].map((value) => value.toFixed(places))]];
  });
  return [
    difficulty.sentence, '',
    `${runs} runs by "${trainee}", seed ${seed}, hash ${hash}`, '',
    ...columns([['', 'runs', 'share', '95 % interval'], ...shares.map(({ what, k, n, lo, hi }) => [what, String(k), percent(n === 0 ? 0 : k / n), `${percent(lo)} - ${percent(hi)}`])], [1, 2, 3]), '',
    ...columns([['', 'least', '5 %', '25 %', 'median', '75 %', '95 %', 'most'], ...rows], [1, 2, 3, 4, 5, 6, 7]),
    ...FIGURES.flatMap(([key, name]) => histogram(output[key], name)),
  ];
}

const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;

/** Bars of at most BAR signs; one bin is no histogram. */
function histogram(spread: Spread, name: string): string[] {
  if (spread === null || spread.bins.length < 2) return [];
  const most = Math.max(...spread.bins.map(({ count }) => count));
  const bar = (count: number): string => '#'.repeat(count === 0 ? 0 : Math.max(1, Math.round((BAR * count) / most)));
  return ['', name, ...columns(spread.bins.map(({ from, to, count }) => [`${plain(from)} - ${plain(to)}`, String(count), bar(count)]), [0, 1])];
}

/** Without what binary fractions leave behind. */
const plain = (value: number): string => String(Number(value.toPrecision(12)));
