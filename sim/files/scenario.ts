/**
 * The scenario file: where a run starts, what is to be reached, what goes wrong, what is scored.
 * Cross-checks that need more than one key (names, settings, groups) stand at the end and name the key they are about.
 */
import * as z from 'zod/mini';
import { airframeSchema } from './airframe.js';
import { eventSchema } from './event.js';
import { faultSchema } from './fault.js';
import { formatKey, name, quantity, schemaKey, text, time, whole, word } from './quantity.js';
import { parametersSchema } from './parameter.js';
import { planKeys } from './plan.js';
import { cycleOfAfter, namesOf, unknownAfter } from './names.js';
import { clearMisfits, repeatMisfits } from './repeated.js';
import { LONGEST_S } from './trigger.js';

const start = z.strictObject({
  massT: quantity('Mass of the aeroplane.', 't', 1, 700),
  altitudeFt: quantity('Height above sea level.', 'ft', -1000, 25000),
  groundFt: z._default(quantity('Height of the ground above sea level.', 'ft', -1500, 15000), 0),
  speedKt: quantity('Calibrated airspeed.', 'kt', 60, 400),
  headingDeg: z.optional(quantity('Heading; 90 if left out.', 'deg', 0, 360)),
  flapDeg: quantity('Position of the drive and of both sides.', 'deg', 0, 60),
  flapLeverDeg: z.optional(quantity('Setting of the flap lever; the largest at or below flapDeg if left out.', 'deg', 0, 60)),
  leadingEdge: z.optional(word('Leading edge; out if flapDeg is above 0 and this is left out.', ['in', 'out'])),
  gear: z._default(word('Gear.', ['up', 'down']), 'up'),
  liveEngines: z._default(whole('Engines that run; with one, the right one has failed.', '1', 1, 2), 2),
  motorHeat: z._default(quantity('Heat of the standby motor; 1 is the cut-out.', '1', 0, 1.2), 0),
  guard: z._default(word('Guard of the standby switch.', ['closed', 'open']), 'closed'),
  windKt: z._default(quantity('Head wind for plan sums, negative is tail wind; the flight itself knows no wind.', 'kt', -50, 100), 0),
  icing: z._default(z.boolean().check(z.meta({ description: 'Ice adds to the speeds.' })), false),
  fuelKg: z.optional(quantity('Fuel on board.', 'kg', 0, 300000)),
  distanceNm: z.optional(quantity('Distance left to the runway.', 'NM', 0, 500)),
});

const task = z.strictObject({
  settings: z.array(quantity('A setting to reach.', 'deg', 0, 60)).check(
    z.minLength(1), z.maxLength(12), z.meta({ description: 'Settings to reach, in order.' }),
  ),
  limitS: time('The run ends at the latest then.', 5, LONGEST_S),
  afterS: z.optional(time('The run goes on for so long behind the scored release or the call; 20 s if left out, 90 s in a drill with blow-back.', 1, 120)),
  holdMostS: z.optional(time('The longest hold at a time that the brief asks for; a scripted trainee keeps to it.', 1, 600)),
  restS: z.optional(time('The rest of the motor between two holds that the brief asks for.', 1, 3600)),
  legS: z.optional(time('The leg: the run ends once the drive has been held so long in all.', 1, LONGEST_S)),
});

const recognition = z.strictObject({
  limitDeg: z.optional(quantity('Growth at which a release is late; the airframe has the default.', 'deg', 0.5, 20)),
  seenDeg: z._default(quantity('Growth below which a release is no reaction but a false release.', 'deg', 0, 2), 0.1),
  measuring: z._default(z.boolean().check(z.meta({ description: 'A measuring run: brief and report say so.' })), false),
});

const procedure = z.strictObject({
  leverFirst: z._default(z.boolean().check(z.meta({ description: 'Lever before drive is looked at.' })), true),
  leaveAlone: z._default(z.boolean().check(z.meta({ description: 'No press after a split is looked at.' })), true),
  call: z._default(z.boolean().check(z.meta({ description: 'The call is looked at.' })), true),
  list: z.optional(z.boolean().check(z.meta({ description: 'Behind a split that was called the asymmetry list is read, line by line, and looked at.' }))),
  safeFt: z.optional(quantity('Height above the ground from which the flap switch may be used behind a go-around; 1000 ft if left out.', 'ft', 0, 5000)),
});

/** Headings under which the first page lists drills. None may tell what goes wrong. */
const GROUP_WORDS = [
  'holds', 'calls', 'steps', 'clean', 'finding', 'retraction', 'around', 'thrust', 'engine', 'ice', 'motor', 'driving', 'workload', 'measuring', 'other',
] as const;

const lesson = z.strictObject({
  objective: z.optional(text('What is learned. The trainee reads it: it must not tell what comes.', 400)),
  standard: z.optional(text('What counts as done. The trainee reads it: it must not tell what comes.', 600)),
  errors: z.optional(z.array(text('A common error, for the instructor alone.', 200)).check(z.minLength(1), z.maxLength(8), z.meta({ description: 'Common errors; only on the instructor’s sheet.' }))),
});

const trainees = z.array(name('Name of a scripted trainee.')).check(z.maxLength(12));

/** A scenario file, defaults not yet filled in: `ready` does that. Whether it fits its airframe is for `misfits`. */
export const scenarioSchema = z.strictObject({
  ...schemaKey,
  ...formatKey,
  title: text("The instructor's name of the scenario; the trainee never sees it.", 120),
  brief: text('What the trainee is told before the run.', 2000),
  notes: z.optional(text("The instructor's notes; the trainee never sees them.", 8000)),
  lesson: z.optional(lesson.check(z.meta({ description: 'Words of the lesson sheet in place of those worked out from the scenario.' }))),
  parameters: z.optional(parametersSchema),
  order: z.optional(whole('Place among the shipped drills, from 1.', '1', 1, 999)),
  group: z.optional(word('Heading under which the first page lists a shipped drill; read off task, start and part if left out.', GROUP_WORDS)),
  skill: z.optional(text('The one skill that the drill teaches.', 200)),
  passes: z.optional(trainees.check(z.meta({ description: 'Scripted trainees that pass.' }))),
  fails: z.optional(trainees.check(z.meta({ description: 'Scripted trainees that fail.' }))),
  airframe: z.union([name('Name of a shipped airframe.'), airframeSchema]).check(
    z.meta({ description: 'Name of a shipped airframe, or an airframe in full.' }),
  ),
  start: start.check(z.meta({ description: 'Where the run starts.' })),
  speedHold: z._default(z.boolean().check(z.meta({ description: 'The thrust levers follow the selected speed.' })), true),
  role: z._default(word('The trainee flies and drives, or drives while another flies.', ['flying', 'driving']), 'flying'),
  training: z.optional(z.boolean().check(z.meta({ description: 'The lever angle at which the gear horn sounds is drawn beside the thrust levers; never where the release is scored.' }))),
  mainDrive: z._default(word('The normal flap drive: lost, lost until an event brings it back, or working until an event loses it.', ['lost', 'returns', 'works']), 'lost'),
  pointerNoise: z.optional(z.boolean().check(z.meta({ description: 'Rigging mismatch, pointer wander and roll disturbance; on with recognition, else off.' }))),
  task: task.check(z.meta({ description: 'What is to be reached.' })),
  faults: z._default(z.array(faultSchema).check(z.maxLength(16), z.meta({ description: 'What goes wrong.' })), []),
  events: z._default(z.array(eventSchema).check(z.maxLength(40), z.meta({ description: 'What the outside does.' })), []),
  plan: z.optional(planKeys.check(z.meta({ description: 'What the approach plan is made with, beside the start. Nothing of it acts in a run.' }))),
  recognition: z.optional(recognition.check(z.meta({ description: 'Present: the first release that is no arrival before the last setting is scored, and the run ends behind it.' }))),
  procedure: z._default(procedure.check(z.meta({ description: 'What else is looked at.' })), { leverFirst: true, leaveAlone: true, call: true }),
}).check(
  z.superRefine((scenario, context) => {
    const say = (path: (string | number)[], message: string, input: unknown) =>
      context.addIssue({ code: 'custom', path, message, input });
    for (const { name: twice, path } of namesOf(scenario).repeated) say(path, 'a name used once', twice);
    for (const { after, path } of unknownAfter(scenario)) say(path, 'the name of a fault or event in this file', after);
    const cycle = cycleOfAfter(scenario);
    if (cycle !== null) say(cycle.path, `no circle of after: ${cycle.names.join(' > ')}`, cycle.names[0]);
    for (const { path, allowed } of [...repeatMisfits(scenario), ...clearMisfits(scenario)]) say(path, allowed, scenario);
    if (scenario.start.groundFt >= scenario.start.altitudeFt) {
      say(['start', 'groundFt'], 'below altitudeFt', scenario.start.groundFt);
    }
    if (scenario.mainDrive === 'returns' && !scenario.events.some((event) => event.do === 'returnMainDrive')) {
      say(['mainDrive'], 'an event with do returnMainDrive beside it', scenario.mainDrive);
    }
    if (scenario.mainDrive === 'works' && !scenario.events.some((event) => event.do === 'loseMainDrive')) {
      say(['mainDrive'], 'an event with do loseMainDrive beside it', scenario.mainDrive);
    }
  }),
  z.meta({ id: 'scenario', description: 'A scenario: where a run starts, what is to be reached, what goes wrong, what is scored.' }),
);

/** A scenario file after the door: defaults filled in, cross-checks passed, airframe by name or in full. */
export type Scenario = z.infer<typeof scenarioSchema>;
