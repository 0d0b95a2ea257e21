/** Back in, flown by the nominal pilot: accelerate first, then the lever, then the switch, which may stay where it is put. */
import { limitKtNow, manoeuvreKt } from '../../marks.js';
import { copyState, latch, type State } from '../../state.js';
import type { Approach } from './approach.js';
import { worldOf, wholeKt } from './approach.js';
import { driveTo, makeReady, pause, type Held } from './drive.js';
import type { PlanRequest } from './request.js';
import { flyScript, type Do, type Script } from './script.js';

/** Fast enough to retract, kt below the speed asked for. */
const NEAR_KT = 2;

interface RetractStep {
  readonly settingDeg: number;
  /** Accelerate to this first: the manoeuvre speed of the setting to come, kt. */
  readonly speedKt: number;
  /** Lowest limit while it is driven, kt; null for none. */
  readonly limitKt: number | null;
  readonly motorOnS: number;
  readonly restS: number;
  readonly heatTo: number;
}

export interface Retraction {
  readonly steps: readonly RetractStep[];
  /** From the first acceleration to both there at the last. */
  readonly totalS: number;
  readonly whole: boolean;
}

/**
 * From the landing setting back to where the plan began, level, with the gear up again and the motor as warm as the way
 * out has left it. The leading edge stays out, whatever is done.
 */
export function flyRetraction(request: PlanRequest, out: Approach): Retraction {
  const { airframe, fromDeg, icing } = request;
  const base = worldOf(request);
  const { fixed } = base;
  const landing = request.settings[request.settings.length - 1] as number;
  const back = airframe.settings.map(({ deg }) => deg).filter((deg) => deg >= fromDeg && deg < landing).reverse();
  const manoeuvre = (deg: number): number => wholeKt(manoeuvreKt(airframe, fixed, deg, icing));
  // Written into a copy: a spread would be a shape of its own, and every tick would pay for it.
  const from = copyState(out.end);
  from.tick = 0;
  from.heightM = base.state.heightM;
  from.pathSin = 0;
  from.gear = 0;
  latch(from, 'gearLever', 0);
  latch(from, 'endTick', -1);
  latch(from, 'endWhy', 0);
  let s = from;
  const now = (): State => s;
  let fedTicks = 0;
  let limitKt = Infinity;
  const steps: RetractStep[] = [];
  function* script(act: Do): Script {
    yield* makeReady(act, now);
    for (const deg of back) {
      const speedKt = manoeuvre(deg);
      act({ do: 'selectSpeed', speedKt });
      yield (x) => x.casKt >= speedKt - NEAR_KT;
      act({ do: 'setFlapLever', settingDeg: deg });
      yield pause();
      const fedFrom = fedTicks;
      limitKt = Infinity;
      let held: Held | null = null;
      yield* driveTo(act, fixed, now, deg, (h) => { held = h; });
      const { restS } = held ?? { restS: 0 };
      steps.push({ settingDeg: deg, speedKt, limitKt: limitKt < Infinity ? limitKt : null, motorOnS: (fedTicks - fedFrom) / 100, restS, heatTo: s.motorHeat / fixed.drive.cutOut });
    }
  }
  const { state, done } = flyScript({ fixed, state: from }, script, (x) => {
    s = x;
    if (x.latched.contactor !== 0) fedTicks += 1;
    if (x.latched.drive !== 0) limitKt = Math.min(limitKt, limitKtNow(x, airframe));
  });
  return { steps, totalS: state.tick / 100, whole: done };
}
