/**
 * What an airframe's geometry comes to. Wing of A: an independent prototype with orders up to 120 (mark: computed for this
 * project); areas and chords by hand from a straight taper; the factor of lifting-surface theory from its printed share.
 */
import { describe, expect, it } from 'vitest';
import { deriveOf, liftingSurfaceFactor, planformOf } from '../../sim/wing/derive.js';
import { inducedOf } from '../../sim/wing/induced.js';
import { ellipticChord, type Planform } from '../../sim/wing/lifting-line.js';
import { AIRFRAME, AIRFRAME_B } from '../sim/bench.js';

const valueOf = (airframe: typeof AIRFRAME, wanted: string): number => {
  const { constants, checks } = deriveOf(airframe);
  const found = [...constants, ...checks].find(({ key, name }) => key === wanted || name === wanted);
  if (found === undefined) throw new Error(`no ${wanted}`);
  return found.value;
};

describe('induced drag and yaw', () => {
  it('A: the prototype’s six coefficients', () => {
    const got = inducedOf(planformOf(AIRFRAME), 0.11, 0.7, 60);
    expect(got.perCl2).toBeCloseTo(0.0346693, 7);
    expect(got.perClE).toBeCloseTo(-0.0076677, 7);
    expect(got.perE2).toBeCloseTo(0.2634951, 6);
    expect(got.perG2).toBeCloseTo(0.7913902, 6);
    expect(got.yawPerClG).toBeCloseTo(0.0482702, 7);
    expect(got.yawPerEG).toBeCloseTo(0.1095513, 7);
  });
  it('elliptic wing: CL squared over pi AR, and no term with CL and twist (Prandtl)', () => {
    const elliptic: Planform = { areaM2: 8, spanM: 8, chordAt: ellipticChord(8, 8), sectionSlopePerRad: 2 * Math.PI };
    const got = inducedOf(elliptic, 0.2, 0.6);
    expect(got.perCl2).toBeCloseTo(1 / (8 * Math.PI), 12);
    // Twist adds terms of higher order only: they cost on their own, and do not meet the one term of the elliptic load.
    expect(got.perClE).toBeCloseTo(0, 12);
    expect(got.perE2).toBeGreaterThan(0);
    expect(got.perG2).toBeGreaterThan(0);
  });
});

describe('what the file of A carries', () => {
  it('area and chord of the flap by hand: root 5.579605 m, flap from .11 to .70 of 16.5 m, 27 % of the chord', () => {
    // Root 232 / (33 x 1.26). Chords 5.579605 (1 - .74 eta): at .11 5.125425, at .70 2.689370 m; 27 % of them 1.383865 and .726130; span 9.735 m.
    expect(valueOf(AIRFRAME, 'drive.flapAreaM2')).toBeCloseTo(9.735 * (1.383865 + 0.72613) / 2, 4);
    expect(valueOf(AIRFRAME, 'drive.flapAreaM2')).toBeCloseTo(10.2704, 4);
    expect(valueOf(AIRFRAME, 'drive.flapChordM')).toBeCloseTo(1.0892, 4);
  });
  it('aspect ratio 9.3879, root 5.580 and tip 1.451 m (model page)', () => {
    expect(valueOf(AIRFRAME, 'aspect ratio')).toBeCloseTo(9.3879, 4);
    expect(valueOf(AIRFRAME, 'root chord')).toBeCloseTo(5.58, 3);
    expect(valueOf(AIRFRAME, 'tip chord')).toBeCloseTo(1.451, 3);
  });
  it('control: .9 x .2207585 x .597822 x .70 x 16 deg + .010 = .0332', () => {
    const byHand = 0.9 * 0.2207585256 * 0.597822 * 0.7 * 16 * Math.PI / 180 + 0.01;
    expect(valueOf(AIRFRAME, 'roll.control')).toBeCloseTo(byHand, 7);
    expect(valueOf(AIRFRAME, 'roll.control')).toBeCloseTo(AIRFRAME.roll.control, 4);
  });
  it('p b / 2V at full control: .0332 / (.9 x .478846)', () => expect(valueOf(AIRFRAME, 'roll rate at full control')).toBeCloseTo(0.07704, 5));
});

it('lifting surface: 13 % off at an aspect ratio of 6, 9.7 % at that of A', () => {
  expect(liftingSurfaceFactor(6)).toBeCloseTo(0.87, 12);
  expect(liftingSurfaceFactor(9.3879)).toBeCloseTo(0.903, 3);
});

it.each([AIRFRAME, AIRFRAME_B])('$name: every constant of the file is that of its geometry, to half a per cent', (airframe) => {
  for (const { key, value, inFile } of deriveOf(airframe).constants) {
    if (inFile !== null) expect(Math.abs(value / inFile - 1), `${key}: ${value} beside ${inFile}`).toBeLessThan(0.005);
  }
});

it('says nothing of ailerons where the file has none', () => {
  const { ailerons: _ailerons, ...wing } = AIRFRAME.wing;
  expect(deriveOf({ ...AIRFRAME, wing }).constants.map(({ key }) => key)).not.toContain('roll.control');
});
