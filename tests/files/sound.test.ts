// Each relation broken once: the problem stands at the key, and nothing else is refused along with it.
import { describe, expect, test } from 'vitest';
import { airframeSchema, tryAs } from '../../sim/files/index.js';
import { airframeA, changed } from './shipped.js';

const problems = (path: (string | number)[], to: unknown): string[] => {
  const read = tryAs(airframeSchema, changed(airframeA, path, to));
  return read.ok ? [] : read.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
};

test('the shipped airframe is sound', () => expect(problems(['title'], 'Same')).toEqual([]));

describe('refused', () => {
  test.each<[(string | number)[], unknown, string]>([
    [['mass', 'landingT'], 33.5, 'mass.landingT: above emptyT (33.5 t)'],
    [['mass', 'takeOffT'], 53.4, 'mass.takeOffT: at least landingT (53.5 t)'],
    [['wing', 'flapToSemispan'], 0.11, 'wing.flapToSemispan: above flapFromSemispan (0.11)'],
    [['wing', 'clMaxAtStop'], 2.4, 'wing.clMaxAtStop: at least clMax of the last setting (2.427)'],
    [['wing', 'clMaxFlapUpLeadingEdgeOut'], 1.39, 'wing.clMaxFlapUpLeadingEdgeOut: between clMax of the first two settings (1.4 and 1.825)'],
    [['wing', 'clMaxFlapUpLeadingEdgeOut'], 1.83, 'wing.clMaxFlapUpLeadingEdgeOut: between clMax of the first two settings (1.4 and 1.825)'],
    [['landingDeg'], 17, 'landingDeg: one of the settings 4, 9, 16, 26, 36'],
    [['landingDeg'], 0, 'landingDeg: one of the settings 4, 9, 16, 26, 36'],
    [['settings', 0, 'deg'], 1, 'settings.0.deg: 0: the first setting is flap up'],
    [['settings', 5, 'deg'], 38.5, 'settings.5.deg: at most stopDeg (38 deg)'],
    [['settings', 2, 'deg'], 4, 'settings.2.deg: above the setting before it (4 deg)'],
    [['settings', 3, 'clMax'], 1.9, 'settings.3.clMax: at least that of the setting before it (1.972)'],
    [['settings', 3, 'limitKt'], 219, 'settings.3.limitKt: at most that of the setting before it (218 kt)'],
    [['settings', 5, 'limitKt'], null, 'settings.5.limitKt: at most that of the setting before it (203 kt)'],
    [['settings', 3, 'name'], '9', 'settings.3.name: a name used once'],
    [['engines', 'leverMap', 2, 'tlaDeg'], 22, 'engines.leverMap.2.tlaDeg: above the knot before it (22 deg)'],
    [['engines', 'leverMap', 1, 'fraction'], 0.06, 'engines.leverMap.1.fraction: at least that of the knot before it (0.07)'],
    [['engines', 'machLoss'], 1.7, 'engines.machLoss: small enough to leave thrust at every Mach number below 1 (machGain is 0.6756)'],
    [['drive', 'frictionNm'], 70, 'drive.frictionNm: below limiterNm (70 Nm), or the drive never runs'],
    [['drive', 'limiterNm'], 90, 'drive.limiterNm: below stallTorqueNm (90 Nm), or it never trips'],
    [['drive', 'shearNm'], 10, 'drive.shearNm: above frictionNm (10 Nm)'],
    [['heat', 'reset'], 1, 'heat.reset: below cutOut (1)'],
    [['heat', 'ratedTorqueNm'], 91, 'heat.ratedTorqueNm: at most stallTorqueNm (90 Nm)'],
    [['roll', 'reversalKt'], 250, 'roll.reversalKt: above every speed limit (the highest is 250 kt)'],
    [['roll', 'stallKnee'], 1, 'roll.stallKnee: below 1'],
    [['roll', 'flapEffectPerDeg2'], -0.0002, 'roll.flapEffectPerDeg2: small enough for the effect to rise up to stopDeg (38 deg)'],
    [['drag', 'oswaldPerDeg'], -0.03, 'drag.oswaldPerDeg: small enough to keep the span efficiency above 0 up to stopDeg (38 deg)'],
    [['gear', 'operateKt'], 251, 'gear.operateKt: at most extendedKt (250 kt)'],
    [['gauge', 'dial', 0, 'flapDeg'], 1, 'gauge.dial.0.flapDeg: 0: the dial begins at flap up'],
    [['gauge', 'dial', 1, 'flapDeg'], 37, 'gauge.dial.1.flapDeg: at least stopDeg (38 deg), so that the pointers stay on the dial'],
    [['gauge', 'dial', 1, 'dialDeg'], 0, 'gauge.dial.1.dialDeg: above the knot before it (0 deg)'],
    [['settings', 2, 'manoeuvreFactor'], undefined, 'settings.2.manoeuvreFactor: with speedRule factor, and only there'],
    [['settings', 2, 'manoeuvreIncrementKt'], 20, 'settings.2.manoeuvreIncrementKt: with speedRule increment, and only there'],
    [['speedRule'], 'increment', 'settings.0.manoeuvreIncrementKt: with speedRule increment, and only there'],
    // 53.5 t, 116 m2, 2.427: sqrt(2 * 53500 * 9.80665 / (1.225 * 116 * 2.427)) = 55.16 m/s = 107.2 kt; times 1.23 is 131.9 kt.
    [['settings', 5, 'limitKt'], 131, 'settings.5.limitKt: at least the manoeuvre speed at landingT (131.9 kt)'],
    [['horn', 'landingBandDeg'], 12.5, 'horn.landingBandDeg: above takeOffBandDeg (12.5 deg)'],
  ])('%j as %j', (path, to, problem) => expect(problems(path, to)).toContain(problem));
});

// -0.0002: 0.86 - 3 * 0.0002 * 38^2 = -0.006, worked by hand; -0.00019 leaves 0.037.
test('limits are hit exactly: just inside is taken', () => {
  expect(problems(['roll', 'flapEffectPerDeg2'], -0.00019)).toEqual([]);
  expect(problems(['roll', 'reversalKt'], 250.1)).toEqual([]);
  expect(problems(['drive', 'limiterNm'], 89.9)).toEqual([]);
  // At the speed of sound 1 - loss + 0.6756 is left: 0 at a loss of 1.6756.
  expect(problems(['engines', 'machLoss'], 1.67)).toEqual([]);
  expect(problems(['engines', 'machLoss'], 1.6756)).toHaveLength(1);
});

test('numbers far out of range are refused, never thrown at', () => {
  const walk = (value: unknown, path: (string | number)[]): (string | number)[][] =>
    (typeof value === 'number' ? [path] : value === null || typeof value !== 'object' ? []
      : Object.entries(value).flatMap(([key, inner]) => walk(inner, [...path, Array.isArray(value) ? Number(key) : key])));
  for (const path of walk(airframeA, [])) {
    for (const to of [0, -0, 1e-320, 1e308, -1e308]) expect(() => problems(path, to), `${path.join('.')} ${to}`).not.toThrow();
  }
});
