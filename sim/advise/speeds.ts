/** Speeds of every setting for one weight, with what they are made of. Calibrated, kt; stall speeds take CAS for EAS. */
import type { Airframe } from '../files/airframe.js';
import { clMax, stallKt } from '../flight/roll.js';
import { manoeuvreOf, warningKt } from '../marks.js';
import { sin } from '../portable.js';
import { prepare } from '../prepare.js';
import { PI, RAD } from '../units.js';

/** One setting, leading edge out with any flap. Ice is in the manoeuvre and the reference speed, not in stall and warning. */
export interface SettingSpeeds {
  readonly settingDeg: number;
  readonly name: string;
  /** Reference stall speed of the setting. */
  readonly stallKt: number;
  /** Stall warning: 3 kt or 3 % above the stall, whichever is more (14 CFR 25.207(d)). */
  readonly warningKt: number;
  readonly manoeuvreKt: number;
  readonly referenceKt: number;
  /** null where the setting has no limit. */
  readonly limitKt: number | null;
  /** Bank in a level turn at the manoeuvre speed at which the stall warning comes, deg. */
  readonly bankToWarningDeg: number;
}

/** Made by `speedsOf`: every setting of an airframe at one mass, from flap 0 outward. */
export interface Speeds {
  readonly massT: number;
  readonly ice: boolean;
  /** Added in ice, already in the speeds; 0 without. */
  readonly iceKt: number;
  /** Reference speed over stall speed, without ice. */
  readonly referenceFactor: number;
  readonly settings: readonly SettingSpeeds[];
}

/** Bank, deg, of a level turn with a load factor of 1 or more: arc cosine of 1 / n by Newton on the portable sine. */
export function bankOfLoad(n: number): number {
  if (n <= 1) return 0;
  let bank = PI / 4;
  for (let i = 0; i < 8; i += 1) bank += (sin(PI / 2 - bank) - 1 / n) / sin(bank);
  return bank / RAD;
}

/** The speeds of an airframe at a mass, t. @throws RangeError for a mass that is not positive */
export function speedsOf(airframe: Airframe, massT: number, ice: boolean): Speeds {
  if (!(massT > 0)) throw new RangeError(`mass ${massT} t`);
  const { flight } = prepare(airframe, massT);
  const iceKt = ice ? airframe.limits.iceKt : 0;
  const settings = airframe.settings.map((setting): SettingSpeeds => {
    const stall = stallKt(flight, clMax(flight, setting.deg, setting.deg > 0 ? 1 : 0));
    const warning = warningKt(stall);
    const manoeuvre = manoeuvreOf(airframe, flight, setting.deg) + iceKt;
    const part = manoeuvre / warning;
    return {
      settingDeg: setting.deg, name: setting.name, stallKt: stall, warningKt: warning,
      manoeuvreKt: manoeuvre,
      referenceKt: airframe.referenceFactor * stall + iceKt,
      limitKt: setting.limitKt,
      bankToWarningDeg: bankOfLoad(part * part),
    };
  });
  return { massT, ice, iceKt, referenceFactor: airframe.referenceFactor, settings };
}
