/** What `plan` prints with --json. */
import * as z from 'zod/mini';
import { word } from './quantity.js';
import { speedsOutput } from './advice.js';

const said = (description: string) => z.string().check(z.meta({ description }));
const flag = (description: string) => z.boolean().check(z.meta({ description }));
const number = (description: string, unit: string) => z.number().check(z.meta({ description, unit }));
const none = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema);
const order = word('Which comes first, the gear or the setting that is landed with.', ['gearFirst', 'settingFirst']);

/** The nominal plan of a scenario; times in s and distances in NM from its beginning, null for what never came. */
export const planOutput = z.strictObject({
  scenario: said('As named on the command line.'),
  airframe: said('Its name.'),
  massT: number('Mass.', 't'),
  windKt: number('Head wind.', 'kt'),
  speeds: speedsOutput.shape.settings,
  approachKt: number('Reference speed of the landing setting and what is added, whole knots.', 'kt'),
  touch: none(z.strictObject({
    speedKt: number('Slow to this first.', 'kt'), atS: number('The first touch.', 's'), outS: number('Leading edge out.', 's'),
  })),
  steps: z.array(z.strictObject({
    settingDeg: number('To this setting.', 'deg'), beforeDeg: number('From there.', 'deg'), speedKt: number('Slow to this first: the manoeuvre speed of what is out.', 'kt'),
    leverS: number('Lever.', 's'), fromS: number('Switch held from.', 's'), toS: number('Until.', 's'), restS: number('Rest of the motor on the way.', 's'),
    motorOnS: number('Motor fed.', 's'), closedS: number('The same in closed form at the mean speed.', 's'),
    fromKt: number('Speed at the press.', 'kt'), toKt: number('Speed behind it.', 'kt'), limitKt: none(number('Lowest limit meanwhile.', 'kt')),
    heatFrom: number('Heat before, part of the cut-out.', '1'), heatTo: number('Heat behind it.', '1'),
  })),
  motorOnS: number('Motor fed, in all.', 's'),
  restS: number('Rests, in all.', 's'),
  mostHeat: number('Most heat, part of the cut-out.', '1'),
  totalS: none(number('From the beginning to both there at the landing setting; null: the drive does not come there.', 's')),
  readyS: none(number('To all ready for the path.', 's')),
  readyNm: none(number('Flown over the ground until then.', 'NM')),
  pathNm: number('From this height down the path.', 'NM'),
  startByNm: none(number('Begin at this distance at the latest.', 'NM')),
  groundKt: number('Speed over the ground on the path.', 'kt'),
  descentFtPerMin: number('Rate of descent there.', 'ft/min'),
  retraction: z.array(z.strictObject({
    settingDeg: number('To this setting.', 'deg'), speedKt: number('Accelerate to this first.', 'kt'), limitKt: none(number('Lowest limit meanwhile.', 'kt')),
    motorOnS: number('Motor fed.', 's'), restS: number('Rest on the way.', 's'), heatTo: number('Heat behind it, part of the cut-out.', '1'),
  })),
  retractionS: number('All of it.', 's'),
  fuel: z.strictObject({
    holdKgPerH: number('Flow in the hold.', 'kg/h'), holdKg: number('The hold.', 'kg'), approachKg: number('From the beginning to the screen.', 'kg'),
    continueKg: number('Both.', 'kg'), cleanKgPerNm: number('Diverting before the first touch.', 'kg/NM'), cleanKg: number('To the alternate.', 'kg'),
    outKgPerNm: number('Diverting behind it, leading edge out.', 'kg/NM'), divertKg: number('To the alternate.', 'kg'),
    leftKg: none(number('On board behind the hold.', 'kg')),
  }),
  landing: z.strictObject({
    speedKt: number('Over the threshold.', 'kt'), lastKt: number('With the last setting.', 'kt'), ratio: number('Square over square.', '1'),
    longerPct: number('Longer by.', '%'), lastM: none(number('Distance with the last setting, as given.', 'm')), partM: none(number('With this one.', 'm')),
    factoredM: none(number('With the factor on arrival.', 'm')), runwayM: none(number('Runway, as given.', 'm')), fits: none(flag('It fits.')),
  }),
  horn: z.array(z.strictObject({
    order, place: word('Where the landing setting is driven to.', ['level', 'path']), whole: flag('All was done before the runway.'),
    worst: word('At the worst.', ['silent', 'silenceable', 'sounds']), soundsS: number('Sounds for.', 's'), unsilenceableS: number('Of these nothing may silence it for.', 's'),
    thereS: none(number('Both there.', 's')), gearFromS: none(number('Gear lever down.', 's')), gearDownS: none(number('Gear locked.', 's')),
    downS: none(number('Start down.', 's')), endS: number('End of what was flown.', 's'),
    spans: z.array(z.strictObject({
      fromS: number('From.', 's'), toS: number('Until.', 's'), silenceable: flag('It may be silenced.'), tlaDeg: number('Lowest lever angle.', 'deg'),
      flapDeg: number('Flap where it begins.', 'deg'), goingDown: flag('On the way down.'),
    })),
  })),
  pressure: z.array(z.strictObject({ name: said('System.'), state: word('What is left of it.', ['lost', 'reduced', 'kept']), instead: said('What does its work.') })),
  commit: word('Decided before the first touch.', ['continue', 'divert']),
  terrain: flag('The flap part of the terrain alert is to be inhibited.'),
  whole: flag('The drive comes to the landing setting, and all is done before the runway.'),
  items: z.array(z.strictObject({
    id: said('Item of the plan.'), name: said('In words.'), right: none(z.union([z.number(), z.string(), z.array(z.string())]).check(z.meta({ description: 'What is right.' }))),
    unit: said('Its unit; empty for a choice.'), sum: said('How it comes about.'),
  })),
});

/** Shape of `plan --json`: `planOutput` parses it. */
export type PlanOutput = z.infer<typeof planOutput>;
