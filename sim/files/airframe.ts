/**
 * The airframe file: every number of the drive, the wing, the engines and the warnings, each with its unit in its key
 * and the source of each group in words. An instructor writes one from their own manuals; the tool ships invented ones.
 */
import * as z from 'zod/mini';
import { pressureKeys } from './plan.js';
import { formatKey, name, quantity, schemaKey, text, time, word } from './quantity.js';
import { unsound } from './sound.js';

const source = text('Where the numbers of this group come from.', 500);

const settingSchema = z.strictObject({
  deg: quantity('Position of the setting on the flap scale.', 'deg', 0, 60),
  name: text('Name of the setting on lever and gauge.', 12),
  limitKt: z.nullable(quantity('Highest speed with this setting out; null where there is none.', 'kt', 60, 400)),
  manoeuvreFactor: z.optional(quantity('Manoeuvre speed as a multiple of the stall speed of the setting; with speedRule factor.', '1', 1, 2.5)),
  manoeuvreIncrementKt: z.optional(quantity('Manoeuvre speed above the reference speed of the last setting; with speedRule increment.', 'kt', 0, 150)),
  clMax: quantity('Greatest lift coefficient at the setting, leading edge as it stands there.', '1', 0.5, 5),
});

const knot = z.strictObject({
  tlaDeg: quantity('Thrust-lever angle.', 'deg', 0, 90),
  fraction: quantity('Commanded part of the thrust available.', '1', 0, 1),
});

const dialKnot = z.strictObject({
  flapDeg: quantity('Flap position.', 'deg', 0, 60),
  dialDeg: quantity('Angle on the dial, clockwise from the mark of flap 0.', 'deg', 0, 340),
});

const mass = z.strictObject({
  source,
  takeOffT: quantity('Greatest take-off mass.', 't', 1, 700),
  landingT: quantity('Greatest landing mass.', 't', 1, 700),
  emptyT: quantity('Operating empty mass.', 't', 1, 700),
});

const ailerons = z.strictObject({
  fromSemispan: quantity('Inner end as a fraction of the semispan.', '1', 0, 1),
  toSemispan: quantity('Outer end as a fraction of the semispan.', '1', 0, 1),
  chordFraction: quantity('Aileron chord over wing chord.', '1', 0.05, 0.6),
  travelDeg: quantity('Travel to each side.', 'deg', 1, 45),
  effective: quantity('Part of the thin-aerofoil effectiveness that is left at full travel.', '1', 0.1, 1),
  spoilers: quantity('Roll moment coefficient of the roll spoilers at full control.', '1', 0, 0.2),
});

const wing = z.strictObject({
  source,
  areaM2: quantity('Wing area.', 'm2', 5, 1000),
  spanM: quantity('Wing span.', 'm', 5, 100),
  taper: quantity('Tip chord over root chord.', '1', 0, 1),
  sweepDeg: quantity('Sweep of the quarter-chord line.', 'deg', 0, 60),
  sectionSlopePerRad: quantity('Lift slope of the section used by the lifting line.', '1/rad', 3, 7),
  flapFromSemispan: quantity('Inner end of the flap as a fraction of the semispan.', '1', 0, 1),
  flapToSemispan: quantity('Outer end of the flap as a fraction of the semispan.', '1', 0, 1),
  flapChordFraction: quantity('Flap chord over wing chord.', '1', 0.05, 0.6),
  ailerons: z.optional(ailerons.check(z.meta({ description: 'Geometry of the ailerons; derive works the roll control out from it, and no run reads it.' }))),
  clMaxAtStop: quantity('Greatest lift coefficient at the mechanical stop.', '1', 0.5, 5),
  clMaxFlapUpLeadingEdgeOut: quantity('Greatest lift coefficient, flap 0 and leading edge out.', '1', 0.5, 5),
});

const engines = z.strictObject({
  source,
  count: z.literal(2).check(z.meta({ description: 'Number of engines, one a side.' })),
  staticThrustKN: quantity('Static thrust of one engine at sea level.', 'kN', 1, 600),
  machLoss: quantity('Thrust lost with Mach number, factor of the linear term.', '1', 0, 5),
  machGain: quantity('Thrust regained with Mach number squared, factor of the square term.', '1', 0, 5),
  leverMap: z.array(knot).check(z.minLength(2), z.maxLength(12), z.meta({ description: 'Thrust fraction against lever angle, straight between knots; the first is the idle stop.' })),
  spoolBaseS: quantity('Time constant of the spool at full thrust.', 's', 0.1, 20),
  spoolSlopeS: quantity('Time constant added toward zero thrust.', 's', 0, 20),
  fuelKgPerNs: quantity('Fuel burnt for each newton of thrust and second.', 'kg/(N s)', 0, 1e-3),
  fuelBaseKgPerS: quantity('Fuel burnt by one turning engine at no thrust.', 'kg/s', 0, 5),
});

const drag = z.strictObject({
  source,
  clean: quantity('Drag coefficient, everything in.', '1', 0.005, 0.1),
  leadingEdge: quantity('Increment of the leading edge out.', '1', 0, 0.1),
  flapSine2: quantity('Factor of the squared sine of the flap angle.', '1', 0, 1),
  gear: quantity('Increment of the gear down.', '1', 0, 0.1),
  engineOut: quantity('Increment with one engine out.', '1', 0, 0.1),
  oswald: quantity('Span efficiency, flap up.', '1', 0.3, 1),
  oswaldPerDeg: quantity('Change of span efficiency with flap.', '1/deg', -0.05, 0.05),
});

const drive = z.strictObject({
  source,
  stopDeg: quantity('Mechanical stop at full travel.', 'deg', 5, 60),
  noLoadRateDegPerS: quantity('Rate of the standby drive without load.', 'deg/s', 0.01, 10),
  stallTorqueNm: quantity('Motor torque at standstill, at the torque tube.', 'Nm', 1, 5000),
  timeConstantS: quantity('Time constant of the unloaded motor.', 's', 0.01, 5),
  frictionNm: quantity('Friction of the drive.', 'Nm', 0, 1000),
  brakeNm: quantity('Brake torque when the motor is off.', 'Nm', 0, 5000),
  limiterNm: quantity('Torque at which the limiter trips.', 'Nm', 1, 5000),
  noBackFactor: quantity('Part of the aiding air load that the no-back brakes turn into drag while retracting.', '1', 0, 1),
  gearing: quantity('Turns of the torque tube for a turn of the flap.', '1', 1, 100000),
  efficiency: quantity('Overall efficiency between tube and flap.', '1', 0.05, 1),
  flapAreaM2: quantity('Flap area of one side.', 'm2', 0.1, 200),
  flapChordM: quantity('Area-weighted flap chord.', 'm', 0.05, 10),
  hinge: quantity('Hinge-moment coefficient at flap 0.', '1', 0, 1),
  hingePerDeg: quantity('Hinge-moment coefficient for each degree of flap.', '1/deg', 0, 0.1),
  pickUpS: time('Time from switch to contactor closed.', 0, 2),
  dropOutS: time('Time from switch to contactor open.', 0, 2),
  windUpNmPerDeg: quantity('Stiffness of the tube against a jammed side.', 'Nm/deg', 1, 10000),
  shearNm: quantity('Torque at which the shear link of a jammed side parts.', 'Nm', 1, 5000),
  blowBackHoldKNm: quantity('Air moment still held by a failed no-back brake.', 'kN m', 0, 1000),
  blowBackDampingKNmSPerDeg: quantity('Damping of a side that is blown back.', 'kN m s/deg', 0.01, 1000),
  leadingEdgeS: quantity('Time of the leading edge from in to out.', 's', 0.5, 120),
  normalRateDegPerS: quantity('Rate of the normal flap drive.', 'deg/s', 0.01, 20),
  extendSwitch: word('What the switch does when let go from extend.', ['sprung', 'latched']),
  retractSwitch: word('What the switch does when let go from retract.', ['sprung', 'latched']),
});

const heat = z.strictObject({
  source,
  onS: quantity('Time constant of heating.', 's', 1, 10000),
  offS: quantity('Time constant of cooling.', 's', 1, 100000),
  ratedTorqueNm: quantity('Torque that reaches the cut-out in ratedS from cold.', 'Nm', 0.1, 5000),
  ratedS: quantity('Time to the cut-out at rated torque from cold.', 's', 1, 10000),
  noLoadCurrent: quantity('No-load current as a part of the stall current.', '1', 0, 1),
  cutOut: quantity('Heat at which the cut-out opens.', '1', 0.1, 2),
  reset: quantity('Heat below which the cut-out closes again.', '1', 0, 2),
  placard: text('What the placard beside the switch says.', 120),
});

const roll = z.strictObject({
  source,
  liftingSurface: quantity('Factor of lifting-surface theory on all antisymmetric derivatives.', '1', 0.5, 1.2),
  clFlap: quantity('Roll moment of antisymmetric flap twist, lifting line.', '1/rad', 0.01, 2),
  clDamping: quantity('Roll damping, lifting line.', '1', -2, -0.01),
  flapEffect: quantity('Flap effectiveness of thin-aerofoil theory.', '1', 0.05, 1),
  flapEffectBase: quantity('Part of the effectiveness kept at small angles.', '1', 0.1, 1.5),
  flapEffectPerDeg2: quantity('Change of that part with the angle squared.', '1/deg2', -0.01, 0),
  control: quantity('Roll moment coefficient of full control.', '1', 0.001, 0.5),
  reversalKt: quantity('Equivalent speed at which wing twist would cancel the control.', 'kt', 150, 2000),
  stallKnee: quantity('Part of the greatest lift up to which control is whole.', '1', 0.1, 1),
  stallControl: quantity('Part of control left at the greatest lift.', '1', 0, 1),
  gyrationFactor: quantity('Radius of gyration in roll over half the span.', '1', 0.05, 0.6),
  controlRatePerS: quantity('Rate of the roll control, full deflections a second.', '1/s', 0.05, 10),
  autopilotLimit: quantity('Part of control that the autopilot may use.', '1', 0.05, 1),
  autopilotOffS: time('Time at the limit after which the autopilot lets go.', 0.1, 60),
  disturbanceSd: quantity('Standard deviation of the natural roll disturbance, part of full control.', '1', 0, 0.3),
  trim: quantity('Greatest constant trim offset, part of full control.', '1', 0, 0.3),
});

const gear = z.strictObject({
  source,
  transitS: quantity('Time from up to locked down.', 's', 1, 120),
  operateKt: quantity('Highest speed for moving the gear.', 'kt', 60, 400),
  extendedKt: quantity('Highest speed with the gear down.', 'kt', 60, 400),
});

const limits = z.strictObject({
  source,
  leadingEdgeKt: quantity('Highest speed with the leading edge out.', 'kt', 60, 400),
  standbyDriveKt: quantity('Highest speed with the standby drive running.', 'kt', 60, 400),
  iceKt: quantity('Added to reference and manoeuvre speeds in ice.', 'kt', 0, 40),
});

const horn = z.strictObject({
  source,
  takeOffBandDeg: quantity('Up to this flap position the horn depends on height and can be silenced.', 'deg', 0, 60),
  landingBandDeg: quantity('Above this flap position the horn sounds at any lever angle.', 'deg', 0, 60),
  bothLiveTlaDeg: quantity('Lever angle below which the horn sounds, both engines live.', 'deg', 0, 90),
  oneLiveTlaDeg: quantity('Lever angle below which the horn sounds, one engine live.', 'deg', 0, 90),
  heightFt: quantity('Height above ground below which the take-off band counts.', 'ft', 0, 20000),
});

const gauge = z.strictObject({
  source,
  radiusMm: quantity('Length of a pointer.', 'mm', 10, 300),
  dial: z.array(dialKnot).check(z.minLength(2), z.maxLength(20), z.meta({ description: 'Angle on the dial against flap position, straight between knots.' })),
  mismatchDeg: quantity('Rigging mismatch carried by one pointer.', 'deg', 0, 2),
  wanderSdDeg: quantity('Standard deviation of the slow wander of a pointer.', 'deg', 0, 1),
  wanderStepDeg: quantity('Travel between two knots of the wander.', 'deg', 0.05, 10),
});

const procedure = z.strictObject({
  source,
  firstTouch: word('Whether the first touch of the drive comes before or after the first lever move.', ['beforeLever', 'afterLever']),
});

const recognition = z.strictObject({
  source,
  limitDeg: quantity('Growth of the split at which a release is late.', 'deg', 0.5, 20),
});

const keys = z.strictObject({
  ...schemaKey,
  ...formatKey,
  name: name('Name by which scenarios ask for this airframe.'),
  title: text('Name for people.', 80),
  notes: z.optional(text('Anything else worth saying.', 4000)),
  mass, wing, engines, drag,
  speedRule: word('How the manoeuvre speed of a setting is found: a factor on its stall speed, or an increment on the reference speed of the last setting.', ['factor', 'increment']),
  referenceFactor: quantity('Reference speed as a multiple of the stall speed.', '1', 1, 2),
  landingDeg: quantity('Setting for landing on the standby drive.', 'deg', 0, 60),
  settings: z.array(settingSchema).check(z.minLength(2), z.maxLength(12), z.meta({ description: 'Settings in rising order, flap 0 first.' })),
  drive, heat, roll, gear, limits, horn, gauge, procedure, recognition,
  pressure: z.optional(pressureKeys.check(z.meta({ description: 'What else is lost with the pressure that drives the flaps; asked for in the plan. An invented list if left out.' }))),
});

/** An airframe file after the door: every number present, units in the key names. */
export type Airframe = z.infer<typeof keys>;

/** An airframe file: every key in range, and sound in itself. Parses to `Airframe`, or fails with every problem and its path. */
export const airframeSchema = keys.check(
  z.superRefine((airframe, context) => {
    for (const { path, allowed } of unsound(airframe)) {
      context.addIssue({ code: 'custom', path, message: allowed, input: airframe });
    }
  }),
  z.meta({ id: 'airframe', description: 'An airframe: every number of its drive, wing, engines and warnings.' }),
);
