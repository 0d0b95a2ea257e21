/** Keys of the plan: what a scenario adds to it, what of the aeroplane is lost with the pressure, and what a trainee has planned. */
import * as z from 'zod/mini';
import { quantity, text, word } from './quantity.js';

/** `plan` of a scenario. */
export const planKeys = z.strictObject({
  additiveKt: z.optional(quantity('Added to the reference speed for the approach; 0 if left out.', 'kt', 0, 30)),
  holdMin: z.optional(quantity('Holding while the list is read and the drive runs; 8 min if left out.', 'min', 0, 60)),
  alternateNm: z.optional(quantity('Way to the alternate; 60 NM if left out.', 'NM', 0, 1000)),
  divertFt: z.optional(quantity('Height of that way; 10 000 ft if left out.', 'ft', 0, 25000)),
  runwayM: z.optional(quantity('Landing distance available.', 'm', 300, 6000)),
  landingM: z.optional(quantity('Landing distance with the last setting at this mass, unfactored, from your own papers.', 'm', 200, 6000)),
});

/** `pressure` of an airframe. */
export const pressureKeys = z.strictObject({
  source: text('Where the list comes from.', 500),
  systems: z.array(z.strictObject({
    name: text('The system.', 60),
    state: word('What is left of it when the pressure that drives the flaps is lost.', ['lost', 'reduced', 'kept']),
    instead: text('What does its work then, in a few words.', 160),
  })).check(z.minLength(1), z.maxLength(16), z.meta({ description: 'Systems that the lost pressure drives, and some that it does not.' })),
});

const speedKt = quantity('Speed.', 'kt', 0, 400);
const none = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema);

/** `plan` of a record: what the trainee planned, as last entered. null: left blank. */
export const plannedSchema = z.strictObject({
  manoeuvre: z.array(z.strictObject({ settingDeg: quantity('Setting.', 'deg', 0, 60), kt: speedKt })).check(z.maxLength(12), z.meta({ description: 'Manoeuvre speeds.' })),
  referenceKt: none(quantity('Reference speed of the landing setting.', 'kt', 0, 400)),
  order: none(word('Gear before the landing setting, or behind it.', ['gearFirst', 'settingFirst'])),
  horn: none(word('What the gear horn does in that order, on the way down.', ['silent', 'silenceable', 'sounds'])),
  motorOnS: none(quantity('Seconds the motor is fed in all.', 's', 0, 36000)),
  rest: none(word('Whether the motor asks for a rest.', ['no', 'yes'])),
  totalS: none(quantity('From the beginning to both there at the landing setting.', 's', 0, 36000)),
  startByNm: none(quantity('Latest distance to the runway at which it begins.', 'NM', 0, 1000)),
  descentFtPerMin: none(quantity('Rate of descent on the path.', 'ft/min', 0, 5000)),
  continueKg: none(quantity('Fuel for the hold and the approach.', 'kg', 0, 300000)),
  divertKg: none(quantity('Fuel to the alternate with the leading edge out.', 'kg', 0, 300000)),
  longerPct: none(quantity('How much longer the landing is than with the last setting.', '%', 0, 500)),
  commit: none(word('Decided before the first touch.', ['continue', 'divert'])),
  failed: none(z.array(text('A system.', 60)).check(z.maxLength(16), z.meta({ description: 'What else is lost or reduced with the pressure.' }))),
  terrain: none(word('Whether the flap part of the terrain alert is inhibited before the approach.', ['no', 'yes'])),
  shown: z.array(text('An item that the trainee asked to be shown.', 40)).check(z.maxLength(40), z.meta({ description: 'Items shown before anything was entered.' })),
});

/** What a trainee has planned. */
export type Planned = z.infer<typeof plannedSchema>;
