/** Everything a hand or a voice can do in a run: one strict shape an act. Inputs files and records are made of these. */
import * as z from 'zod/mini';
import { quantity, text, word } from './quantity.js';

const act = <const K extends string>(value: K, description: string) => ({ do: z.literal(value).check(z.meta({ description })) });

type Keys = Record<string, z.ZodMiniType>;

/** Acts of the hand and the voice alone, each shape with the keys of `when` added in front. */
export function handShapes<const When extends Keys>(when: When) {
  return [
    z.strictObject({ ...when, ...act('openGuard', 'Opens the guard.') }),
    z.strictObject({ ...when, ...act('closeGuard', 'Closes the guard: disarmed and off.') }),
    z.strictObject({ ...when, ...act('arm', 'Arms the standby drive; needs the guard open.') }),
    z.strictObject({ ...when, ...act('disarm', 'Disarms the standby drive.') }),
    z.strictObject({ ...when, ...act('holdDrive', 'Holds the drive switch.'), way: word('Which way.', ['extend', 'retract']) }),
    z.strictObject({ ...when, ...act('releaseDrive', 'Lets the drive switch go.') }),
    z.strictObject({ ...when, ...act('setDrive', 'Puts a latching switch to a place.'), to: word('Where to.', ['extend', 'off', 'retract']) }),
    z.strictObject({ ...when, ...act('setFlapLever', 'Moves the flap lever.'), settingDeg: quantity('A setting.', 'deg', 0, 60) }),
    z.strictObject({
      ...when, ...act('setThrust', 'Moves the thrust levers; the speed hold lets go.'),
      tlaDeg: quantity('Lever angle.', 'deg', 0, 90), lever: z.optional(word('Which lever; both if left out.', ['left', 'right', 'both'])),
    }),
    z.strictObject({ ...when, ...act('setSpeedHold', 'Speed hold on or off.'), on: z.boolean() }),
    z.strictObject({ ...when, ...act('silenceHorn', 'Silences the gear horn where that is allowed.') }),
    z.strictObject({ ...when, ...act('callSplit', 'Calls a split.') }),
    z.strictObject({ ...when, ...act('callClear', 'Calls: clear, going on.') }),
    z.strictObject({ ...when, ...act('callDriveFailed', 'Calls: the drive has failed.') }),
    z.strictObject({ ...when, ...act('callStillMoving', 'Calls: a side is still moving.') }),
    z.strictObject({ ...when, ...act('turn', 'Holds a bank.'), bankDeg: quantity('Bank, right positive.', 'deg', -30, 30) }),
    z.strictObject({ ...when, ...act('selectHeading', 'Selects a heading; the autopilot turns to it the shorter way.'), toDeg: quantity('Heading.', 'deg', 0, 360) }),
    z.strictObject({ ...when, ...act('goAround', 'Goes around: climbs at go-around thrust.') }),
    z.strictObject({ ...when, ...act('roll', 'Roll control by hand, autopilot off.'), control: quantity('Part of full control, right positive.', '1', -1, 1) }),
    z.strictObject({ ...when, ...act('answer', 'Answers a callout.'), text: text('The answer.', 80) }),
  ] as const;
}

/** What the trainee does and another pilot or a controller may do as well: a desk plays them. */
export function sharedShapes<const When extends Keys>(when: When) {
  return [
    z.strictObject({ ...when, ...act('selectSpeed', 'Selects a speed for the speed hold.'), speedKt: quantity('Speed.', 'kt', 60, 400) }),
    z.strictObject({ ...when, ...act('setGear', 'Moves the gear lever.'), to: word('Where to.', ['up', 'down']) }),
    z.strictObject({
      ...when, ...act('descend', 'Starts down to a height.'),
      toFt: quantity('Height.', 'ft', -2000, 26000), pathDeg: quantity('Path angle.', 'deg', -6, -0.5),
    }),
    z.strictObject({ ...when, ...act('level', 'Levels off.') }),
  ] as const;
}

/**
 * The schema of an act: inputs bring `atS`, records tick and stamp. Generic in those keys so that the two kinds of file
 * cannot drift apart.
 */
export const actSchema = <const When extends Keys>(when: When) =>
  z.discriminatedUnion('do', [...handShapes(when), ...sharedShapes(when)]);

const plain = actSchema({});
/** One act with its own words, without time. */
export type Act = z.infer<typeof plain>;
