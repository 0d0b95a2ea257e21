/**
 * Sets as measures define them, flown by a watcher who is known: what the fit must find again. Race of a detection, a lapse
 * and releases without cause; onset by a flat hazard from t_min over a window, else none; the leg's end; twice the limit.
 */
import type { Dice } from '../../sim/dice.js';
import type { Trial } from '../../sim/stats/trial.js';

export interface Known {
  readonly thetaDeg: number;
  readonly t0S: number;
  readonly sigma: number;
  readonly lapse: number;
  readonly falsePerMin: number;
}

export interface SetPlan {
  readonly name: string;
  readonly ratesDegPerS: readonly number[];
  readonly runs: number;
  readonly quietFrom: number;
  readonly windowS: number;
  readonly quietShare: number;
  readonly legS: number;
  readonly limitDeg: number;
  readonly seenDeg: number;
  /** Drawn again until so many onsets, and so many at each rate. */
  readonly onsets: readonly [least: number, most: number, perRate: number];
}

const common = { quietFrom: 3, windowS: 36, quietShare: 1 / 3, legS: 76, limitDeg: 2.5, seenDeg: 0.1, runs: 30, onsets: [18, 22, 4] as const };
export const PLANS: readonly SetPlan[] = [
  { ...common, name: 'STANDARD', ratesDegPerS: [0.075, 0.155, 0.3, 0.6] },
  { ...common, name: 'TRUE DRIVE', ratesDegPerS: [0.075, 0.155] },
];

/** The assumed watchers (no person was measured), each at both ends of the assumed lapses and releases without cause. */
export const WATCHERS: Readonly<Record<string, Known>> = Object.fromEntries(
  ([['calm', 1, 0.6, 0.35], ['sharp', 0.4, 0.5, 0.4], ['loaded', 1, 5, 0.4]] as const).flatMap(([name, thetaDeg, t0S, sigma]) => [
    [name, { thetaDeg, t0S, sigma, lapse: 0.03, falsePerMin: 0.12 }],
    [`${name}, careless`, { thetaDeg, t0S, sigma, lapse: 0.05, falsePerMin: 0.24 }],
  ]),
);

interface Drawn { rate: number; onsetS: number | null }

/** Rates in equal numbers, shuffled; an onset each by the hazard; all again until the numbers are within their bounds. */
export function drawSet(plan: SetPlan, dice: Dice): Drawn[] {
  const hazard = -Math.log(plan.quietShare) / plan.windowS;
  const [least, most, perRate] = plan.onsets;
  for (;;) {
    const first = Math.floor(dice.uniform() * plan.ratesDegPerS.length);
    const drawn = Array.from({ length: plan.runs }, (_, at): Drawn => {
      const wait = -Math.log(dice.uniform()) / hazard;
      return { rate: plan.ratesDegPerS[(first + at) % plan.ratesDegPerS.length] as number, onsetS: wait < plan.windowS ? plan.quietFrom + wait : null };
    });
    const onsets = drawn.filter(({ onsetS }) => onsetS !== null);
    const enough = plan.ratesDegPerS.every((rate) => onsets.filter((one) => one.rate === rate).length >= perRate);
    if (enough && onsets.length >= least && onsets.length <= most) return drawn;
  }
}

/** One run: whatever comes first of a release without cause, a detection, and the end. */
export function flyRun({ rate, onsetS }: Drawn, who: Known, plan: SetPlan, dice: Dice): Trial {
  const blindS = -Math.log(dice.uniform()) / (who.falsePerMin / 60);
  const attends = dice.uniform() >= who.lapse;
  const splitDeg = (who.thetaDeg + rate * who.t0S) * Math.exp(who.sigma * dice.normal());
  const seenS = onsetS === null || !attends ? Infinity : onsetS + splitDeg / rate;
  const endS = onsetS === null ? plan.legS : Math.min(plan.legS, onsetS + 2 * plan.limitDeg / rate);
  const releaseS = Math.min(blindS, seenS);
  return { rateDegPerS: rate, onsetS, releaseS: releaseS < endS ? releaseS : null, endS, limitDeg: plan.limitDeg };
}

export const flySet = (who: Known, plan: SetPlan, dice: Dice): Trial[] => drawSet(plan, dice).map((one) => flyRun(one, who, plan, dice));
