/** What `check` says of a set that can be flown: its figures, and its gates. */
import { figuresOf, gateMisfits, gatesOf, readySet, wordsOf } from '../../sim/index.js';
import { baseOf, type SetCheck, type SetFile } from '../../sim/files/index.js';
import { setProblems, type Problem } from '../text/index.js';
import { columns } from './columns.js';
import { airframes, drills } from './shipped.js';

export function checkSet(set: SetFile, text: string, file: string): { figures: SetCheck; problems: Problem[] } {
  const found = baseOf(set, airframes(), drills());
  if (!('base' in found)) throw new Error(`${file} was taken without its scenario`);
  const of = readySet(set, found.base, found.airframe);
  const { rates, limit, blind, steady, hazardPerS, onsets, ...rest } = figuresOf(of);
  const gates = gatesOf(of, { rates, limit, blind, steady, hazardPerS, onsets, ...rest });
  const figures = {
    file, words: wordsOf(of), runs: set.runs, hazardPerS, onsets,
    rates: rates.map((rate) => ({ ...rate })), limit, blind: [...blind], steady,
    gates: gates.map(({ gate, ok, found: was, asked }) => ({ gate, ok, found: was, asked })),
  };
  return { figures, problems: setProblems(text, file, gateMisfits(gates)) };
}

const points = (value: number): string => value.toFixed(1);

/** The figures as words for people. */
export function setLines({ file, words, hazardPerS, onsets, rates, limit, blind, steady, gates }: SetCheck): string[] {
  const rateRows = rates.map((rate) => [
    String(rate.ratio), rate.degPerS.toFixed(3), rate.earlyDegPerS.toFixed(3), rate.lateDegPerS.toFixed(3), rate.latestGrowthDeg.toFixed(2),
    rate.rollAuthorityAtLimitPct === null ? 'not reached' : rate.rollAuthorityAtLimitPct.toFixed(1), points(rate.bestBlind.points),
  ]);
  const tied = limit.deg === limit.tiedDeg ? 'tied to 20 %' : `an override: tied to 20 % it would be ${limit.tiedDeg} deg`;
  return [
    '', file, ...words.map((word) => `  ${word}`),
    `  limit ${limit.deg} deg, ${limit.rollAuthorityPct.toFixed(1)} % of the roll authority at the set's point (${tied})`,
    `  ${onsets.from} to ${onsets.to} onsets, at least ${onsets.perRate} at each rate; hazard ${hazardPerS.toFixed(4)} a second`,
    ...columns([['ratio', 'deg/s', 'early', 'late', 'latest, deg', 'roll at limit, %', 'blind if known'], ...rateRows], [0, 1, 2, 3, 4, 5, 6]).map((line) => `  ${line}`),
    `  blind: ${blind.map((one) => `${one.policy}${one.atS === null ? '' : ` ${one.atS.toFixed(1)} s`} ${points(one.points)}`).join(', ')}`,
    `  steady: ${points(steady.meanPoints)} (${points(steady.lo)} to ${points(steady.hi)}, ${steady.runs} runs)`,
    ...columns(gates.map(({ gate, ok, found, asked }) => [ok ? 'holds' : 'FAILS', gate, `${found}; asked: ${asked}`])).map((line) => `  ${line}`),
  ];
}
