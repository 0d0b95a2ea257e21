/**
 * Does an airframe hang together? Every number may be in its range and the whole still describe no aeroplane: settings
 * out of order, a limiter that can never trip, a control that works backwards. Each such relation is named at one key.
 */
import { flightNumbers } from '../flight/numbers.js';
import { manoeuvreOf } from '../marks.js';
import type { Airframe } from './airframe.js';
import { broken, disorder, type Misfit } from './misfit.js';

/** Everything wrong with an airframe on its own; empty when it is sound. Never throws, even with numbers out of range. */
export function unsound(airframe: Airframe): Misfit[] {
  return [...massAndWing(airframe), ...settings(airframe), ...engines(airframe), ...drive(airframe), ...roll(airframe), ...panel(airframe), ...speedRule(airframe), ...flyable(airframe)];
}

const massAndWing = ({ mass, wing }: Airframe): Misfit[] => broken([
  [mass.emptyT < mass.landingT, 'mass.landingT', `above emptyT (${mass.emptyT} t)`],
  [mass.landingT <= mass.takeOffT, 'mass.takeOffT', `at least landingT (${mass.landingT} t)`],
  [wing.flapFromSemispan < wing.flapToSemispan, 'wing.flapToSemispan', `above flapFromSemispan (${wing.flapFromSemispan})`],
  [wing.ailerons === undefined || wing.ailerons.fromSemispan < wing.ailerons.toSemispan, 'wing.ailerons.toSemispan', `above fromSemispan (${wing.ailerons?.fromSemispan})`],
]);

function settings({ settings: list, landingDeg, drive: { stopDeg }, wing }: Airframe): Misfit[] {
  const up = list[0];
  const last = list.at(-1);
  const first = list[1];
  if (up === undefined || first === undefined || last === undefined) return [];
  return [
    ...broken([
      [up.deg === 0, 'settings.0.deg', '0: the first setting is flap up'],
      [last.deg <= stopDeg, `settings.${list.length - 1}.deg`, `at most stopDeg (${stopDeg} deg)`],
      [last.clMax <= wing.clMaxAtStop, 'wing.clMaxAtStop', `at least clMax of the last setting (${last.clMax})`],
      [up.clMax <= wing.clMaxFlapUpLeadingEdgeOut && wing.clMaxFlapUpLeadingEdgeOut <= first.clMax,
        'wing.clMaxFlapUpLeadingEdgeOut', `between clMax of the first two settings (${up.clMax} and ${first.clMax})`],
      [list.some(({ deg }) => deg === landingDeg && deg > 0), 'landingDeg', `one of the settings ${list.slice(1).map(({ deg }) => deg).join(', ')}`],
    ]),
    ...disorder(list, 'settings', 'deg', (before, now) => now.deg > before.deg, (before) => `above the setting before it (${before.deg} deg)`),
    ...disorder(list, 'settings', 'clMax', (before, now) => now.clMax >= before.clMax, (before) => `at least that of the setting before it (${before.clMax})`),
    ...disorder(list, 'settings', 'limitKt', (before, now) => before.limitKt === null || (now.limitKt !== null && now.limitKt <= before.limitKt),
      (before) => `at most that of the setting before it (${before.limitKt} kt)`),
    ...list.flatMap(({ name }, index) =>
      list.findIndex((other) => other.name === name) === index ? [] : [{ path: ['settings', index, 'name'], allowed: 'a name used once' }]),
  ];
}

const speedRule = ({ speedRule: rule, settings: list }: Airframe): Misfit[] => broken(list.flatMap((setting, index) => [
  [(setting.manoeuvreFactor !== undefined) === (rule === 'factor'), `settings.${index}.manoeuvreFactor`, 'with speedRule factor, and only there'],
  [(setting.manoeuvreIncrementKt !== undefined) === (rule === 'increment'), `settings.${index}.manoeuvreIncrementKt`, 'with speedRule increment, and only there'],
] as [boolean, string, string][]));

/**
 * A setting whose limit lies below its manoeuvre speed could never be flown, not even at the landing mass.
 * Numbers may be out of their ranges here, so nothing is prepared that could refuse them with a throw.
 */
function flyable(airframe: Airframe): Misfit[] {
  const { wing, engines: thrust, drag, roll: rolling, mass } = airframe;
  const flight = flightNumbers({ ...wing, ...thrust, ...drag, clMax: [] }, rolling, mass.landingT);
  return broken(airframe.settings.flatMap(({ deg, limitKt }, index) => {
    const kt = manoeuvreOf(airframe, flight, deg);
    return limitKt === null ? [] : [[!(limitKt < kt), `settings.${index}.limitKt`, `at least the manoeuvre speed at landingT (${kt.toFixed(1)} kt)`] as const];
  }));
}

function engines({ engines: { leverMap, machLoss, machGain } }: Airframe): Misfit[] {
  // Least of 1 - loss M + gain M^2 up to the speed of sound: at the bottom of the parabola, or at its end.
  const bottom = machLoss < 2 * machGain ? 1 - machLoss * machLoss / (4 * machGain) : 1 - machLoss + machGain;
  return [
    ...disorder(leverMap, 'engines.leverMap', 'tlaDeg', (before, now) => now.tlaDeg > before.tlaDeg, (before) => `above the knot before it (${before.tlaDeg} deg)`),
    ...disorder(leverMap, 'engines.leverMap', 'fraction', (before, now) => now.fraction >= before.fraction, (before) => `at least that of the knot before it (${before.fraction})`),
    ...broken([
      [bottom > 0, 'engines.machLoss', `small enough to leave thrust at every Mach number below 1 (machGain is ${machGain})`],
      [(leverMap.at(-1)?.fraction ?? 0) > 0, `engines.leverMap.${leverMap.length - 1}.fraction`, 'above 0: the levers give thrust somewhere'],
    ]),
  ];
}

const drive = ({ drive: d, heat }: Airframe): Misfit[] => broken([
  [d.frictionNm < d.limiterNm, 'drive.frictionNm', `below limiterNm (${d.limiterNm} Nm), or the drive never runs`],
  [d.limiterNm < d.stallTorqueNm, 'drive.limiterNm', `below stallTorqueNm (${d.stallTorqueNm} Nm), or it never trips`],
  [d.frictionNm < d.shearNm, 'drive.shearNm', `above frictionNm (${d.frictionNm} Nm)`],
  [heat.reset < heat.cutOut, 'heat.reset', `below cutOut (${heat.cutOut})`],
  [heat.ratedTorqueNm <= d.stallTorqueNm, 'heat.ratedTorqueNm', `at most stallTorqueNm (${d.stallTorqueNm} Nm)`],
]);

function roll({ roll: r, drive: { stopDeg }, drag, gear, limits, settings: list }: Airframe): Misfit[] {
  const fastest = Math.max(gear.extendedKt, limits.leadingEdgeKt, limits.standbyDriveKt, ...list.map(({ limitKt }) => limitKt ?? 0));
  return broken([
    [r.reversalKt > fastest, 'roll.reversalKt', `above every speed limit (the highest is ${fastest} kt)`],
    [r.stallKnee < 1, 'roll.stallKnee', 'below 1'],
    // More flap must turn the wing more, up to the stop: the slope of base d + k d^3 stays above 0.
    [r.flapEffectBase + 3 * r.flapEffectPerDeg2 * stopDeg * stopDeg > 0, 'roll.flapEffectPerDeg2', `small enough for the effect to rise up to stopDeg (${stopDeg} deg)`],
    [drag.oswald + drag.oswaldPerDeg * stopDeg > 0, 'drag.oswaldPerDeg', `small enough to keep the span efficiency above 0 up to stopDeg (${stopDeg} deg)`],
    [gear.operateKt <= gear.extendedKt, 'gear.operateKt', `at most extendedKt (${gear.extendedKt} kt)`],
  ]);
}

function panel({ gauge: { dial }, horn, drive: { stopDeg } }: Airframe): Misfit[] {
  const end = dial.at(-1)?.flapDeg ?? 0;
  return [
    ...disorder(dial, 'gauge.dial', 'flapDeg', (before, now) => now.flapDeg > before.flapDeg, (before) => `above the knot before it (${before.flapDeg} deg)`),
    ...disorder(dial, 'gauge.dial', 'dialDeg', (before, now) => now.dialDeg > before.dialDeg, (before) => `above the knot before it (${before.dialDeg} deg)`),
    ...broken([
      [dial[0]?.flapDeg === 0, 'gauge.dial.0.flapDeg', '0: the dial begins at flap up'],
      [end >= stopDeg, `gauge.dial.${dial.length - 1}.flapDeg`, `at least stopDeg (${stopDeg} deg), so that the pointers stay on the dial`],
      [horn.takeOffBandDeg < horn.landingBandDeg, 'horn.landingBandDeg', `above takeOffBandDeg (${horn.takeOffBandDeg} deg)`],
    ]),
  ];
}
