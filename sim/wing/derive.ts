/**
 * What follows from an airframe's geometry: the roll constants that its file carries as decimals, and figures that tell
 * whether the file hangs together. Offline; nothing here is read in a run. Numbers are pasted into the file by people.
 */
import type { Airframe } from '../files/airframe.js';
import { inducedOf } from './induced.js';
import { aspectRatio, flapLift, flapRoll, liftSlope, rollDamping, taperedChord, type Planform } from './lifting-line.js';
import { flapEffectiveness, hingeDerivatives } from './section.js';

/** A figure worked out, beside the one that the file carries for it. */
export interface Derived {
  /** Key of the file it belongs to; null for a figure that no key carries. */
  readonly key: string | null;
  readonly name: string;
  /** As worked out, in `unit`. */
  readonly value: number;
  /** '1' for a pure number. */
  readonly unit: string;
  /** What stands in the file; null where no key carries it. */
  readonly inFile: number | null;
  readonly meaning: string;
}

/** Made by `deriveOf`, from the geometry of the file alone. */
export interface Derivation {
  /** To be pasted into the file, where they differ. */
  readonly constants: readonly Derived[];
  /** For judging the rest of the file; some of it is free to differ, and the meaning says why. */
  readonly checks: readonly Derived[];
}

/** Terms of each parity: with 60 the tenth digit no longer moves for a straight taper. */
const TERMS = 60;

export function planformOf({ wing: { areaM2, spanM, taper, sectionSlopePerRad } }: Pick<Airframe, 'wing'>): Planform {
  return { areaM2, spanM, chordAt: taperedChord(areaM2, spanM, taper), sectionSlopePerRad };
}

/**
 * Lifting-surface theory gives 13 % less roll damping than lifting line at an aspect ratio of 6 (NACA ARR L5F23); the
 * share falls with the aspect ratio as 10 / (AR + 4).
 */
export const liftingSurfaceFactor = (ar: number): number => 1 - 0.13 * 10 / (ar + 4);

/** Works everything out from the planform, the flap and, where the file has them, the ailerons. */
export function deriveOf(airframe: Airframe): Derivation {
  const { wing, roll, drive } = airframe;
  const planform = planformOf(airframe);
  const { flapFromSemispan: from, flapToSemispan: to, flapChordFraction } = wing;
  const ar = aspectRatio(planform);
  const flap = flapOf(planform, from, to, flapChordFraction);
  const hinge = hingeDerivatives(flapChordFraction);
  const induced = inducedOf(planform, from, to, TERMS);
  const constant = (key: string, name: string, value: number, unit: string, inFile: number | null, meaning: string): Derived => ({ key, name, value, unit, inFile, meaning });
  const check = (name: string, value: number, unit: string, meaning: string, key: string | null = null, inFile: number | null = null): Derived => ({ key, name, value, unit, inFile, meaning });
  return {
    constants: [
      constant('roll.clFlap', 'roll moment of the flaps', flapRoll(planform, from, to, TERMS), '1/rad', roll.clFlap, 'Rolling moment coefficient of +1 and -1 rad of section twist on the two flaps. It rolls the aeroplane when the sides part.'),
      constant('roll.clDamping', 'roll damping', rollDamping(planform, TERMS), '1', roll.clDamping, 'Rolling moment coefficient for each unit of p b / 2V: the wing going down meets more lift. Negative.'),
      constant('roll.flapEffect', 'flap effectiveness', flapEffectiveness(flapChordFraction), '1', roll.flapEffect, 'Change of the section’s zero-lift angle for each unit of flap angle, thin-aerofoil theory for this flap chord.'),
      constant('roll.liftingSurface', 'lifting-surface factor', liftingSurfaceFactor(ar), '1', roll.liftingSurface, 'On both of the above: a lifting line alone gives too much. Cancels out of the roll authority used. Read to two digits.'),
      ...(wing.ailerons === undefined ? [] : [constant('roll.control', 'roll control', control(planform, wing.ailerons, roll.liftingSurface), '1', roll.control, 'Rolling moment coefficient of full control: ailerons by lifting line, linkage and spoilers as the file states them.')]),
      constant('drive.flapAreaM2', 'flap area of one side', flap.areaM2, 'm2', drive.flapAreaM2, 'Chord of the flap over its span; the air loads the drive by it.'),
      constant('drive.flapChordM', 'flap chord', flap.chordM, 'm', drive.flapChordM, 'Mean chord of the flap, weighted by area; the arm of the air load about the hinge.'),
    ],
    checks: [
      check('aspect ratio', ar, '1', 'Span squared over area.'),
      check('root chord', planform.chordAt(0), 'm', 'Straight taper, symmetric.'),
      check('tip chord', planform.chordAt(1), 'm', 'Root chord times the taper.'),
      check('lift slope', liftSlope(planform, TERMS), '1/rad', 'Of the whole wing.'),
      check('lift of the flaps', flapLift(planform, from, to, TERMS), '1/rad', 'Of both flaps at 1 rad of section twist.'),
      check('hinge moment, flap', -hinge.perFlapDeg, '1/deg', 'Thin-aerofoil theory, closing the flap. Real flaps carry about two thirds of it, so the file may well be lower.', 'drive.hingePerDeg', drive.hingePerDeg),
      check('hinge moment, incidence', -hinge.perIncidenceDeg, '1/deg', 'Thin-aerofoil theory. drive.hinge stands for it times the incidence at flap 0.'),
      check('roll rate at full control', roll.control / (roll.liftingSurface * -roll.clDamping), '1', 'p b / 2V far below the speed of reversal; 0.07 is a classic criterion (from memory).'),
      check('induced drag, CL squared', induced.perCl2, '1', `Lifting line; 1 / (pi AR) is ${(1 / (Math.PI * ar)).toFixed(7)}. The file uses Oswald’s factor instead.`),
      check('induced drag, CL times twist', induced.perClE, '1/rad', 'Of both flaps together.'),
      check('induced drag, twist squared', induced.perE2, '1/rad2', 'Of both flaps together.'),
      check('induced drag, split squared', induced.perG2, '1/rad2', 'Of half the difference of the twists. Not in the model.'),
      check('yaw of a split, with CL', induced.yawPerClG, '1/rad', 'Toward the side with more flap. Not in the model.'),
      check('yaw of a split, with twist', induced.yawPerEG, '1/rad2', 'Toward the side with more flap. Not in the model.'),
    ],
  };
}

/** Area of the flap of one side, and its chord weighted by area: exact for a chord that is a straight line. */
function flapOf(planform: Planform, from: number, to: number, fraction: number): { areaM2: number; chordM: number } {
  const [a, b] = [fraction * planform.chordAt(from), fraction * planform.chordAt(to)];
  const spanM = (to - from) * planform.spanM / 2;
  return { areaM2: spanM * (a + b) / 2, chordM: (2 / 3) * (a * a + a * b + b * b) / (a + b) };
}

function control(planform: Planform, ailerons: NonNullable<Airframe['wing']['ailerons']>, liftingSurface: number): number {
  const { fromSemispan, toSemispan, chordFraction, travelDeg, effective, spoilers } = ailerons;
  return liftingSurface * flapRoll(planform, fromSemispan, toSemispan, TERMS) * flapEffectiveness(chordFraction) * effective * travelDeg * Math.PI / 180 + spoilers;
}
