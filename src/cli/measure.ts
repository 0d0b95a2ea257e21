/** `measure`: a report of recognition from a table of trials. */
import { RACE_PRIOR, reportOf, type CurveStep, type Estimate, type Report } from '../../sim/index.js';
import type { MeasureOutput } from '../../sim/files/index.js';
import { type Io, printJson, printLines } from './io.js';
import { measuredLines } from './measured.js';
import { openTrials } from './opened.js';
import { DONE } from './trouble.js';

export interface MeasureOptions {
  seenDeg: number;
  falsePoints: number;
  json?: boolean;
}

export function measure(io: Io, file: string, { seenDeg, falsePoints, json = false }: MeasureOptions): number {
  const report = reportOf(openTrials(file), seenDeg, falsePoints);
  if (json) printJson(io, outputOf(report, seenDeg, falsePoints));
  else printLines(io, measuredLines(report, falsePoints));
  return DONE;
}

/**
 * Counts, curve, plain fit and points describe the table, so they are given as soon as they can be worked out. The posterior is
 * about the person who flew it: it is null below the counts it needs, and `person` says what may be said and what is missing.
 */
function outputOf(report: Report, seenDeg: number, falsePoints: number): MeasureOutput {
  const { outcomes: { void: _void, ...outcomes }, median, restrictedMean, logNormal, sensitivity, guess, person } = report;
  return {
    limitDeg: report.limitDeg, seenDeg, falsePoints, outcomes,
    caught: report.caught ?? { k: 0, n: 0, lo: 0, hi: 1 },
    falseReleases: report.falseReleases,
    survival: copied(report.survival), everyRunDecided: report.everyRunDecided,
    survivalByRate: report.survivalByRate.map(({ rateDegPerS, steps, heldToDeg }) => ({ rateDegPerS, steps: copied(steps), heldToDeg: [...heldToDeg] })),
    medianSplitDeg: median.deg, medianLoDeg: median.lo, medianHiDeg: median.hi, medianMidpointDeg: median.midpointDeg,
    restrictedMeanDeg: restrictedMean?.mean ?? null,
    logNormal: logNormal === null ? null : { mu: logNormal.mu, sigma: logNormal.sigma, medianDeg: logNormal.median, q90Deg: logNormal.q90, logLik: logNormal.logLik },
    model: report.model,
    guess: guess === null ? null : { windowS: guess.windowS, chance: guess.guess, correctedCatch: guess.corrected },
    dPrime: sensitivity === null ? null : { d: sensitivity.d, criterion: sensitivity.criterion, se: sensitivity.se, windows: sensitivity.windows },
    meanPoints: report.meanPoints,
    posterior: posteriorOf(report),
    person: {
      decided: person.decided,
      may: [...(person.needed.runsForCounts === 0 ? ['counts' as const] : []), ...(person.fit === null ? [] : ['fit' as const]), ...(person.fit?.thetaDeg == null ? [] : ['threshold' as const])],
      needed: person.needed,
    },
  };
}

const copied = (steps: readonly CurveStep[]): CurveStep[] => steps.map((step) => ({ ...step }));
const plain = ({ median, lo, hi }: Estimate): Estimate => ({ median, lo, hi });

function posteriorOf({ person: { fit } }: Report): MeasureOutput['posterior'] {
  if (fit === null) return null;
  const { lnTheta, lnT0, lnSigma, lapse } = RACE_PRIOR;
  return {
    sigma: plain(fit.sigma),
    thetaDeg: fit.thetaDeg === null ? null : plain(fit.thetaDeg), t0S: fit.t0S === null ? null : plain(fit.t0S),
    atRates: fit.atRates.map(({ rateDegPerS, medianDeg, q90Deg, beforeLimit }) => ({ rateDegPerS, medianDeg: plain(medianDeg), q90Deg: plain(q90Deg), beforeLimit: plain(beforeLimit) })),
    prior: { lnTheta, lnT0, lnSigma, lapse },
  };
}
