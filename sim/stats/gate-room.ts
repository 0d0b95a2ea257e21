/**
 * What a set can show at its best: a gate that asks for more can never be met, and is refused with the sum. The best hand
 * lets go of every split at once and never without one; the draw is the one with the fewest splits.
 */
import type { GateFile } from '../files/course.js';
import type { ReadySet } from '../set/ready.js';
import { SHOWN_FROM } from './person.js';

/** Two-sided 95 %: what one end of an interval leaves out. */
const TAIL = 0.025;

/** What the flights of a set hold whatever the dice say. */
export interface GateRoom {
  /** Splits that there are at least. */
  readonly splits: number;
  /** Quiet holding that there is at least, min. */
  readonly quietMin: number;
}

/** @param flights flights that are judged together, whole, from 1 */
export function gateRoom({ set, onsets }: Pick<ReadySet, 'set' | 'onsets'>, flights: number): GateRoom {
  const quietS = (set.runs - onsets.to) * set.legS + onsets.to * set.onsetFromS;
  return { splits: flights * onsets.from, quietMin: flights * quietS / 60 };
}

/** Lower end of the exact interval of n of n: (alpha/2)^(1/n). Source: Clopper and Pearson 1934, closed form for k = n. */
export const bestCaught = (n: number): number => TAIL ** (1 / n);
/** Runs, all caught, that show a share: the smallest n with (alpha/2)^(1/n) at or above it. @param share 0 to 1, both excluded */
export const runsForCaught = (share: number): number => Math.ceil(Math.log(TAIL) / Math.log(share) - 1e-9);
/** Upper end of the exact interval of no event in so many `minutes`, 1/min: -ln(alpha/2) / T. Source: Garwood 1936, closed form for none. */
export const bestFalse = (minutes: number): number => -Math.log(TAIL) / minutes;

const NINETY = 0.9;

/** A key of a gate, and why it can never be met. */
export interface Unmeetable {
  readonly key: 'caughtFrom' | 'medianToDeg' | 'ninetyToDeg' | 'falseToPerMin';
  /** What would be allowed, with the sum. */
  readonly sum: string;
}

const flightsOf = (flights: number): string => (flights === 1 ? 'one flight has' : `${flights} flights have`);

/** Everything that a gate asks and its set can never show; empty where it can. */
export function unmeetable(gate: GateFile, of: Pick<ReadySet, 'set' | 'onsets'>): Unmeetable[] {
  const { splits, quietMin } = gateRoom(of, gate.flights);
  const { limitDeg, seenDeg } = of.set;
  const has = `${flightsOf(gate.flights)} at least ${splits} splits`;
  const found: Unmeetable[] = [];
  const refuse = (key: Unmeetable['key'], sum: string): void => void found.push({ key, sum });
  const { caughtFrom, medianToDeg, ninetyToDeg, falseToPerMin } = gate;
  if (caughtFrom !== undefined) {
    if (splits < SHOWN_FROM.counts) refuse('caughtFrom', `${SHOWN_FROM.counts} splits or more; ${has}`);
    else if (bestCaught(splits) < caughtFrom) {
      const needed = runsForCaught(caughtFrom);
      refuse('caughtFrom', `at most ${floor3(bestCaught(splits))}: ${has}, and ${splits} of ${splits} caught gives 0.025^(1/${splits}) = ${bestCaught(splits).toFixed(4)}; ${caughtFrom} needs ${needed} of ${needed}`);
    }
  }
  if (medianToDeg !== undefined) {
    if (splits < SHOWN_FROM.counts) refuse('medianToDeg', `${SHOWN_FROM.counts} splits or more; ${has}`);
    else if (medianToDeg <= seenDeg || medianToDeg >= 2 * limitDeg) refuse('medianToDeg', splitRange(seenDeg, limitDeg));
  }
  if (ninetyToDeg !== undefined) {
    const needed = runsForCaught(NINETY);
    if (splits < needed) refuse('ninetyToDeg', `${needed} splits or more (0.9^${needed} = ${(NINETY ** needed).toFixed(4)}, at most 0.025); ${has}, and 0.9^${splits} = ${(NINETY ** splits).toFixed(4)}`);
    else if (ninetyToDeg <= seenDeg || ninetyToDeg >= 2 * limitDeg) refuse('ninetyToDeg', splitRange(seenDeg, limitDeg));
  }
  if (falseToPerMin !== undefined && bestFalse(quietMin) > falseToPerMin) {
    refuse('falseToPerMin', `at least ${ceil3(bestFalse(quietMin))}: ${flightsOf(gate.flights)} at least ${quietMin.toFixed(2)} quiet minutes, and none in them gives -ln(0.025) / ${quietMin.toFixed(2)} = ${bestFalse(quietMin).toFixed(4)}`);
  }
  return found;
}

const splitRange = (seenDeg: number, limitDeg: number): string =>
  `above ${seenDeg} deg, below which no release counts as a reaction, and below ${2 * limitDeg} deg, where a run ends`;
const floor3 = (x: number): number => Math.floor(x * 1000) / 1000;
const ceil3 = (x: number): number => Math.ceil(x * 1000) / 1000;
