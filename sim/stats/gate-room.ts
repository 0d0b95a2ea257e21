/**
 * What a set can show at its best: a gate that asks for more can never be met, and is refused with the sum. The best hand
 * lets go of every split at once and never without one; the draw is the one with the fewest splits.
 */
import type { AskKey, GateFile } from '../files/course.js';
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
  readonly key: AskKey;
  /** What would be allowed, with the sum. */
  readonly sum: string;
}

const flightsOf = (flights: number): string => (flights === 1 ? 'one flight has' : `${flights} flights have`);

/** What there is to show with, for one ask. */
interface Room extends GateRoom {
  readonly flights: number;
  readonly limitDeg: number;
  readonly seenDeg: number;
  /** The splits in words. */
  readonly has: string;
}

/** What would be allowed in place of what is asked; null where that can be shown. */
const ROOM: Readonly<Record<AskKey, (asked: number, room: Room) => string | null>> = {
  caughtFrom(asked, { splits, has }) {
    if (splits < SHOWN_FROM.counts) return tooFew(has);
    if (bestCaught(splits) >= asked) return null;
    const needed = runsForCaught(asked);
    return `at most ${floor3(bestCaught(splits))}: ${has}, and ${splits} of ${splits} caught gives 0.025^(1/${splits}) = ${bestCaught(splits).toFixed(4)}; ${asked} needs ${needed} of ${needed}`;
  },
  medianToDeg: (asked, room) => (room.splits < SHOWN_FROM.counts ? tooFew(room.has) : splitRange(asked, room)),
  ninetyToDeg(asked, room) {
    const { splits, has } = room;
    const needed = runsForCaught(NINETY);
    return splits < needed
      ? `${needed} splits or more (0.9^${needed} = ${(NINETY ** needed).toFixed(4)}, at most 0.025); ${has}, and 0.9^${splits} = ${(NINETY ** splits).toFixed(4)}`
      : splitRange(asked, room);
  },
  falseToPerMin: (asked, { quietMin, flights }) => (bestFalse(quietMin) <= asked ? null
    : `at least ${ceil3(bestFalse(quietMin))}: ${flightsOf(flights)} at least ${quietMin.toFixed(2)} quiet minutes, and none in them gives -ln(0.025) / ${quietMin.toFixed(2)} = ${bestFalse(quietMin).toFixed(4)}`),
};

/** Everything that a gate asks and its set can never show; empty where it can. */
export function unmeetable(gate: GateFile, of: Pick<ReadySet, 'set' | 'onsets'>): Unmeetable[] {
  const { flights } = gate;
  const { splits, quietMin } = gateRoom(of, flights);
  const { limitDeg, seenDeg } = of.set;
  const room = { splits, quietMin, flights, limitDeg, seenDeg, has: `${flightsOf(flights)} at least ${splits} splits` };
  return (Object.keys(ROOM) as AskKey[]).flatMap((key) => {
    const asked = gate[key];
    const sum = asked === undefined ? null : ROOM[key](asked, room);
    return sum === null ? [] : [{ key, sum }];
  });
}

const tooFew = (has: string): string => `${SHOWN_FROM.counts} splits or more; ${has}`;
/** An angle that a split at release can be asked to stay within; null where it can. */
const splitRange = (asked: number, { seenDeg, limitDeg }: Room): string | null => (asked > seenDeg && asked < 2 * limitDeg ? null
  : `above ${seenDeg} deg, below which no release counts as a reaction, and below ${2 * limitDeg} deg, where a run ends`);
const floor3 = (x: number): number => Math.floor(x * 1000) / 1000;
const ceil3 = (x: number): number => Math.ceil(x * 1000) / 1000;
