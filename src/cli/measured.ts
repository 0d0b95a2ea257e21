/** A report of recognition in words: what may be said, with its interval, and what may not yet. */
import { type Estimate, RACE_PRIOR, type Report, runsToClaim } from '../../sim/index.js';
import { columns } from './columns.js';
import { counted } from './problems.js';

const deg = (value: number): string => `${value.toFixed(2)} deg`;
/** A chance that is not quite 1 is never told as 1. */
const pct = (share: number): string => (share > 0.999 && share < 1 ? '> 99.9 %' : `${(100 * share).toFixed(share > 0.99 && share < 1 ? 1 : 0)} %`);
const between = (lo: string | null, hi: string | null): string => `${lo ?? 'below what was seen'} to ${hi ?? 'beyond what was seen'}`;

/** Numbers first, then the splits and the curve, then the fit where it may be shown, then what all of it does not say. */
export function measuredLines(report: Report, falsePoints: number): string[] {
  const parts = [[headline(report)], threeNumbers(report), splits(report), curve(report), fitLines(report), cautions(report, falsePoints)];
  return parts.filter((lines) => lines.length > 0).flatMap((lines, at) => (at === 0 ? lines : ['', ...lines]));
}

function headline({ outcomes, limitDeg }: Report): string {
  const { caught, late, missed, undecided, falseRelease, held } = outcomes;
  const all = caught + late + missed + undecided + falseRelease + held;
  const named = [[caught, 'caught'], [late, 'late'], [missed, 'missed'], [undecided, 'undecided'], [held, 'quiet and held']] as const;
  const parts = [...named.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`), ...(falseRelease > 0 ? [counted(falseRelease, 'false release')] : [])];
  return `${counted(all, 'trial')}: ${parts.join(', ')}. Limit ${limitDeg} deg.`;
}

function threeNumbers({ person, outcomes }: Report): string[] {
  const { caught, falseReleases, median, needed, decided } = person;
  if (needed.runsForCounts > 0) {
    return [
      `${decided === 0 ? 'No trial was' : decided === 1 ? 'One trial was' : `${decided} trials were`} caught, late or missed: too few to say anything about a person.`,
      `The counts need ${counted(needed.runsForCounts, 'more trial')} of that kind.`,
    ];
  }
  return columns([
    ...(caught === null ? [] : [['let go before the limit', `${caught.k} of ${caught.n}`, `${pct(caught.lo)} to ${pct(caught.hi)} of all such runs`]]),
    ...(falseReleases === null ? [] : [['false releases', `${falseReleases.perMin.toFixed(2)} a minute`,
      `${falseReleases.lo.toFixed(2)} to ${falseReleases.hi.toFixed(2)}; ${outcomes.falseRelease} in ${(falseReleases.quietS / 60).toFixed(1)} minutes of quiet holding`]]),
    ...(median === null ? [] : [['half let go below', median.deg === null ? 'not reached' : deg(median.deg),
      between(median.lo === null ? null : median.lo.toFixed(2), median.hi === null ? null : deg(median.hi))]]),
  ]);
}

/** Splits in a line, more would be a wall. */
const MOST_SPLITS = 14;
/** Steps of the curve that are printed, and rates. */
const MOST_STEPS = 9;
const MOST_RATES = 8;

/** At most so many of a list, evenly over it, both ends included. */
const some = <T>(list: readonly T[], most: number): readonly T[] =>
  (list.length <= most ? list : Array.from({ length: most }, (_, at) => list[Math.round(at * (list.length - 1) / (most - 1))] as T));
/** ` (9 of 31 steps)` where not all are shown. */
const outOf = (shown: readonly unknown[], all: readonly unknown[], what: string): string => (shown.length === all.length ? '' : ` (${shown.length} of ${all.length} ${what}; --json has all)`);

function splits({ survivalByRate, person }: Report): string[] {
  if (person.needed.runsForCounts > 0 || survivalByRate.length === 0) return [];
  const shown = some(survivalByRate, MOST_RATES);
  const rows = shown.map(({ rateDegPerS, steps, heldToDeg }) => {
    const all = [...steps.flatMap(({ splitDeg, events }) => new Array<string>(events).fill(splitDeg.toFixed(2))), ...heldToDeg.map((value) => `${value.toFixed(2)}+`)];
    const listed = all.length > MOST_SPLITS ? `${all.length} splits from ${all[0]} to ${all.at(-1)}` : all.join('  ');
    return [`  ${rateDegPerS.toPrecision(3)} deg/s`, listed];
  });
  const held = survivalByRate.some(({ heldToDeg }) => heldToDeg.length > 0);
  return [`Splits at release, deg${outOf(shown, survivalByRate, 'rates')}${held ? ' (+: still held when the run ended there)' : ''}:`, ...columns(rows)];
}

/** One curve for all rates, only where every run was decided. */
function curve({ survival, everyRunDecided, person }: Report): string[] {
  if (person.needed.runsForCounts > 0 || survival.length === 0) return [];
  if (!everyRunDecided) return ['A run ended undecided, so the rates are not put together in one curve.'];
  const shown = some(survival, MOST_STEPS);
  return [`Not yet let go, all rates${outOf(shown, survival, 'steps')}:`, ...columns([
    ['  from', 'share', '95 %', 'at risk'],
    ...shown.map(({ splitDeg, s, lo, hi, atRisk }) => [`  ${deg(splitDeg)}`, pct(s), lo === null || hi === null ? '' : `${pct(lo)} to ${pct(hi)}`, String(atRisk)]),
  ], [1, 3])];
}

const range = ({ median, lo, hi }: Estimate, digits: number): string => `${median.toFixed(digits)}  (${lo.toFixed(digits)} to ${hi.toFixed(digits)})`;

function fitLines({ person: { fit, needed, decided }, limitDeg }: Report): string[] {
  if (fit === null) {
    if (needed.runsForCounts > 0) return [];
    return [needed.runsForFit > 0
      ? `A fit needs ${decided + needed.runsForFit} decided trials: ${needed.runsForFit} more.`
      : 'No fit: no trial of a steady rate.'];
  }
  const { lnTheta, lnT0, lnSigma, lapse } = RACE_PRIOR;
  const usual = ({ mean, sd }: { mean: number; sd: number }, unit: string): string => `${Math.exp(mean).toFixed(1)}${unit} (times or over ${Math.exp(sd).toFixed(1)})`;
  const shown = some(fit.atRates, MOST_RATES);
  return [
    `Fit with its 95 % intervals${outOf(shown, fit.atRates, 'rates')}; chance to let go before ${limitDeg} deg in a run that is watched:`,
    ...columns([
      ['  at', 'half below, deg', 'nine in ten below, deg', 'chance'],
      ...shown.map(({ rateDegPerS, medianDeg, q90Deg, beforeLimit }) => [
        `  ${rateDegPerS.toPrecision(3)} deg/s`, range(medianDeg, 2), range(q90Deg, 2), `${pct(beforeLimit.median)}  (${pct(beforeLimit.lo)} to ${pct(beforeLimit.hi)})`,
      ]),
    ]),
    fit.thetaDeg === null || fit.t0S === null
      ? `Threshold and time are told apart from four rates only: ${needed.ratesForThreshold} more.`
      : `Split that the eye needs ${range(fit.thetaDeg, 2)} deg; attention, reaction and device ${range(fit.t0S, 1)} s.`,
    `Believed beforehand: threshold ${usual(lnTheta, ' deg')}, time ${usual(lnT0, ' s')}, spread ${usual(lnSigma, '')}; ${pct(lapse)} of runs not watched.`,
  ];
}

function cautions({ meanPoints, person: { caught, nineInTen }, sensitivity }: Report, falsePoints: number): string[] {
  return [
    ...(meanPoints === null ? [] : [`Mean points ${meanPoints.toFixed(1)} with ${falsePoints} taken for a false release: to spur, not to measure.`]),
    ...(sensitivity === null ? [] : [`d-prime ${sensitivity.d.toFixed(2)}, 95 % within ${(1.96 * sensitivity.se).toFixed(2)} of it (log-linear; a stretch of quiet holding as long as a split takes to the limit is one trial).`]),
    ...(nineInTen ? ['At least nine in ten such runs are let go before the limit, with 95 % confidence, if these trials were named before they were flown.'] : []),
    ...(nineInTen || caught === null ? [] : [`"At least nine in ten" would take ${runsToClaim(0.9)} of ${runsToClaim(0.9)}, or ${runsToClaim(0.9, 0.95, 1) - 1} of ${runsToClaim(0.9, 0.95, 1)}.`]),
    'A split was expected here; one that is not takes longer to see. No pass mark has been set by experience.',
  ];
}
