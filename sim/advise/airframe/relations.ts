/**
 * Relations that published rules ask of an airframe's speeds and drive, each with its figures, so that a person who
 * typed a number wrong sees which sentence it breaks. They explain; they refuse nothing. Rules in our own words.
 *
 * 14 CFR 25.103(a) reference stall speed; 25.125(b)(2)(i) reference speed at least 1.23 VSR0 (non-icing clause from memory);
 * 25.143(h) 40 degrees of bank free of stall warning (the number from memory); 25.207(d) stall warning; 25.335(e)(1), (3)
 * flap speeds; 25.697(d) retraction at VF + 9 kt (that it holds for a standby drive is our reading); 25.1511; 25.1515 (that
 * one speed is not above the other is common practice, no source).
 */
import type { Airframe } from '../../files/airframe.js';
import { tasOfCas } from '../../flight/atmosphere.js';
import { dynamicPressure } from '../../flight/motion.js';
import { prepare } from '../../prepare.js';
import { bankOfLoad, speedsOf, type SettingSpeeds, type Speeds } from '../speeds.js';
import { loadNm } from './rates.js';

/**
 * Which speeds are held against each other, or, for retractsAtLimit alone, a load of the drive against its limiter.
 * falls: from one setting to the next.
 */
export type RelationName =
  | 'stallFalls' | 'referenceFactor' | 'bankAtReference' | 'limitAboveReference' | 'limitOverStall' | 'limitFalls' | 'gearSpeeds' | 'retractsAtLimit';

/** One relation at one setting, or of the whole airframe. */
export interface Relation {
  readonly name: RelationName;
  /** Setting it was looked at, deg; null for the whole. */
  readonly settingDeg: number | null;
  /** What the airframe has, and what it is held against, in `unit`; 1 is a pure number. */
  readonly value: number;
  readonly bound: number;
  /** The value must lie on this side of the bound, or on it. */
  readonly side: 'atLeast' | 'atMost' | 'below';
  readonly unit: 'kt' | 'deg' | 'Nm' | '1';
  readonly holds: boolean;
}

/** Bank that must be free of stall warning, deg. */
const BANK_DEG = 40;
const LEAST_REFERENCE = 1.23;
/** Above the flap speed, kt, at which the lift devices must still come in. */
const OVER_LIMIT_KT = 9;

/** Every relation, in the order of the rules. */
export function relationsOf(airframe: Airframe): Relation[] {
  const landing = speedsOf(airframe, airframe.mass.landingT, false);
  const takeOff = speedsOf(airframe, airframe.mass.takeOffT, false);
  return [
    ...stallFalls(landing), ...referenceSpeeds(airframe, landing), ...limits(airframe, landing, takeOff),
    relation('gearSpeeds', null, airframe.gear.operateKt, airframe.gear.extendedKt, 'atMost', 'kt'), ...retracts(airframe),
  ];
}

function relation(name: RelationName, settingDeg: number | null, value: number, bound: number, side: Relation['side'], unit: Relation['unit']): Relation {
  const holds = side === 'atLeast' ? value >= bound : side === 'atMost' ? value <= bound : value < bound;
  return { name, settingDeg, value, bound, side, unit, holds };
}

/** Pairs of neighbours, the earlier first. */
const pairs = (settings: readonly SettingSpeeds[]) => settings.slice(1).map((now, at) => ({ before: settings[at] as SettingSpeeds, now }));

const stallFalls = ({ settings }: Speeds): Relation[] =>
  pairs(settings).map(({ before, now }) => relation('stallFalls', now.settingDeg, now.stallKt, before.stallKt, 'below', 'kt'));

/** Every setting may be the one the flaps stand at when a side stops, so every one is asked. */
const referenceSpeeds = (airframe: Airframe, { settings }: Speeds): Relation[] => [
  relation('referenceFactor', null, airframe.referenceFactor, LEAST_REFERENCE, 'atLeast', '1'),
  ...settings.map(({ settingDeg, referenceKt, warningKt }) => {
    const part = referenceKt / warningKt;
    return relation('bankAtReference', settingDeg, bankOfLoad(part * part), BANK_DEG, 'atLeast', 'deg');
  }),
];

/** Settings within the take-off band at take-off mass by 1.6, those beyond it at landing mass by 1.8. */
function limits({ horn, limits: { iceKt } }: Airframe, landing: Speeds, takeOff: Speeds): Relation[] {
  const limited = landing.settings.flatMap((one, at) => (one.limitKt === null ? [] : [{ one, limitKt: one.limitKt, heavy: takeOff.settings[at] as SettingSpeeds }]));
  return [
    ...limited.map(({ one, limitKt }) => relation('limitAboveReference', one.settingDeg, limitKt, one.referenceKt + iceKt, 'atLeast', 'kt')),
    ...limited.map(({ one, limitKt, heavy }) => relation('limitOverStall', one.settingDeg, limitKt, one.settingDeg <= horn.takeOffBandDeg ? 1.6 * heavy.stallKt : 1.8 * one.stallKt, 'atLeast', 'kt')),
    ...pairs(limited.map(({ one }) => one)).map(({ before, now }) => relation('limitFalls', now.settingDeg, now.limitKt ?? 0, before.limitKt ?? 0, 'atMost', 'kt')),
  ];
}

/** Coming in from each setting, a little above its limit, at sea level: the drive must not trip. */
function retracts(airframe: Airframe): Relation[] {
  const { drive } = prepare(airframe, airframe.mass.landingT);
  return airframe.settings.flatMap(({ deg, limitKt }) => {
    if (limitKt === null) return [];
    const qPa = dynamicPressure(tasOfCas(limitKt + OVER_LIMIT_KT, 0), 0);
    return [relation('retractsAtLimit', deg, loadNm(drive, qPa, deg, 'retract'), drive.limiterNm, 'below', 'Nm')];
  });
}
