/**
 * The lesson sheet of a scenario: objective, conditions, standard, what is expected, common errors. The trainee's is made
 * without looking at the faults at all, so it is the same with any fault and with none.
 */
import type { Airframe, Parameter, Scenario } from '../../../../sim/files/index.js';
import type { Json } from '../../../text/index.js';
import { cardOf } from '../../drill/card.js';
import { eventWords, faultWords, timesWords, triggerWords, type Written } from '../words.js';
import { expectedOf, quietOf, type Expected, type Judged } from './actions.js';
import { upper } from '../../../view/words.js';

/** What both sheets hold. */
export interface Sheet {
  readonly objective: string;
  readonly brief: string;
  readonly conditions: readonly (readonly [what: string, value: string])[];
  readonly standard: readonly string[];
}

/** A fault of the plan, and what is expected with it. */
interface Planned extends Expected {
  readonly name: string;
  readonly does: string;
}

export interface InstructorSheet extends Sheet {
  readonly title: string;
  readonly notes: string;
  readonly faults: readonly Planned[];
  readonly events: readonly string[];
  readonly parameters: readonly string[];
  /** Where there is no fault: what is expected then. */
  readonly quiet: Expected | null;
  /** Errors that the instructor wrote, in place of those by kind; null for none. */
  readonly errors: readonly string[] | null;
}

/** Errors that come in every run of this job, told to everyone. */
export const ALWAYS: readonly string[] = [
  'Drives before the lever is at the setting.',
  'Slows before both pointers are there.',
  'Looks at the switch instead of the pointers.',
  'Holds on in doubt: outside a measuring run letting go is free.',
];

const sentence = (text: string): string => `${upper(text)}${/[.!?…]$/.test(text) ? '' : '.'}`;

function judgedOf({ start, task, recognition }: Scenario, airframe: Airframe): Judged {
  const back = (task.settings[0] ?? 0) < start.flapDeg;
  return {
    scored: recognition !== undefined, limitDeg: recognition?.limitDeg ?? airframe.recognition.limitDeg,
    stays: (back ? airframe.drive.retractSwitch : airframe.drive.extendSwitch) === 'latched',
  };
}

function objectiveOf({ from, to, scored, workload }: ReturnType<typeof cardOf>, { role, start, task }: Scenario): string {
  const way = (task.settings[0] ?? 0) < start.flapDeg ? 'Retract' : 'Drive';
  const part = role === 'driving' ? ', while another flies' : '';
  const load = workload ? ' while other things are asked' : '';
  const end = scored ? 'let go as soon as they part, and call it' : 'call whatever goes wrong, and leave it alone';
  return `${way} the flaps from ${from} to ${to.join(', then ')} on the standby drive${part}; keep to both pointers${load}; ${end}.`;
}

/** The trainee's sheet. No word of it depends on a fault. */
export function traineeSheet(scenario: Scenario, airframe: Airframe): Sheet {
  const card = cardOf({ scenario, airframe }, 1);
  const standard = scenario.lesson?.standard;
  return {
    objective: scenario.lesson?.objective ?? objectiveOf(card, scenario),
    brief: scenario.brief,
    conditions: card.facts,
    standard: standard === undefined ? card.rules : [standard],
  };
}

/** @param written the file as it stands, for its triggers in words and its parameters */
export function instructorSheet(scenario: Scenario, airframe: Airframe, written: { readonly [key: string]: Json | undefined }, parameters: readonly Parameter[]): InstructorSheet {
  const of = judgedOf(scenario, airframe);
  const list = (key: 'faults' | 'events'): Written[] => (Array.isArray(written[key]) ? written[key] as unknown as Written[] : []);
  const told = (words: string, thing: Written): string => sentence(`${words} ${triggerWords(thing['when'])}${timesWords(thing)}`);
  return {
    ...traineeSheet(scenario, airframe),
    title: scenario.title, notes: scenario.notes ?? '',
    faults: scenario.faults.map((fault, at) => {
      const thing = list('faults')[at] ?? (fault as unknown as Written);
      return { name: fault.name, does: told(faultWords(thing), thing), ...expectedOf(fault.kind, of) };
    }),
    events: scenario.events.map((event, at) => {
      const thing = list('events')[at] ?? (event as unknown as Written);
      return told(eventWords(thing), thing);
    }),
    parameters: parameters.map(({ name, default: usual, min, max, unit, meaning, drawn }) =>
      `${name}: ${min} to ${max}${unit === undefined ? '' : ` ${unit}`}, ${drawn === true ? 'drawn by the seed' : `${usual} if nobody sets it`}${meaning === undefined ? '' : `; ${meaning}`}`),
    quiet: scenario.faults.length === 0 ? quietOf(of) : null,
    errors: scenario.lesson?.errors ?? null,
  };
}
