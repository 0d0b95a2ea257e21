/** What a drill asks, read off its task, its start and the trainee's part alone: the same with any fault, and with none. */
import type { Airframe, Scenario } from '../../../sim/files/index.js';
import { asks } from '../../../sim/score/asking.js';
import type { DrillCard } from '../house.js';

export interface Group {
  readonly name: string;
  /** What is practised, in one line. */
  readonly line: string;
}

type Word = NonNullable<Scenario['group']>;

const GROUPS: Readonly<Record<Word, Group>> = {
  measuring: { name: 'Measuring', line: 'The first release is measured.' },
  holds: { name: 'One hold', line: 'One setting; the first release is scored.' },
  calls: { name: 'Hold and call', line: 'A release is a pause; the call decides.' },
  steps: { name: 'Steps', line: 'Settings in order, the lever first.' },
  clean: { name: 'From clean', line: 'First touch, then step by step.' },
  finding: { name: 'Finding out', line: 'Move the lever and see what follows.' },
  retraction: { name: 'Retraction', line: 'Accelerate, lever, then the switch.' },
  around: { name: 'Going around', line: 'Thrust, climb, gear; the flaps can wait.' },
  thrust: { name: 'Gear and thrust', line: 'The horn hears lever, flap and gear.' },
  engine: { name: 'One engine', line: 'The same drive on one engine.' },
  ice: { name: 'In ice', line: 'Every speed is a little higher.' },
  motor: { name: 'A warm motor', line: 'Hold, rest, go on.' },
  driving: { name: 'Another flies', line: 'You drive the flaps and watch.' },
  workload: { name: 'Workload', line: 'Other things want you while you hold.' },
  other: { name: 'Another aeroplane', line: 'The same job on another airframe.' },
};

type Asked = Pick<Scenario, 'group' | 'role' | 'speedHold' | 'task' | 'start' | 'recognition'> & { readonly events: readonly { readonly do: string }[] };

/** Whether anything will want the trainee beside the flaps; not what, and not when. */
export const hasWorkload = ({ events }: Pick<Asked, 'events'>): boolean => events.some(asks);

export function groupOf(scenario: Asked, airframe: Airframe): Group {
  const { group, role, speedHold, task, start, recognition } = scenario;
  if (group !== undefined) return GROUPS[group];
  const farthest = Math.max(...task.settings);
  if (recognition?.measuring) return GROUPS.measuring;
  if (role === 'driving') return GROUPS.driving;
  if (hasWorkload(scenario)) return GROUPS.workload;
  if (Math.min(...task.settings) < start.flapDeg) return GROUPS.retraction;
  if (!speedHold || farthest > airframe.horn.landingBandDeg) return GROUPS.thrust;
  if (start.liveEngines === 1) return GROUPS.engine;
  if (start.icing) return GROUPS.ice;
  if (task.settings.length > 1) return start.flapDeg === 0 ? GROUPS.clean : GROUPS.steps;
  return recognition === undefined ? GROUPS.calls : GROUPS.holds;
}

/**
 * What is asked of the hand, and how the run ends: told beforehand, because it is the rule the run is judged by.
 * @param afterS how long a run goes on behind its release or call, s; left out: 20, and longer where a side is blown back
 */
export function handRules({ scored, measuring, limitDeg, limitS, afterS }: { scored: boolean; measuring: boolean; limitDeg: number; limitS: number; afterS?: number | undefined }): string[] {
  const time = `${Math.round(limitS)} s`;
  if (!scored) {
    return [
      'A release is a pause: look, and go on when the pointers are even.',
      'A split needs the call, and so does a drive that fails. After the call, leave the switch alone and fly.',
      'In doubt let go: in the aeroplane that is free.',
      `It ends ${afterS === undefined ? '20 s or more' : `${afterS} s`} behind a call, 5 s after the task is done and all is still, when control is lost, or after ${time}.`,
    ];
  }
  return [
    `The first release is scored, by how far the pointers have grown apart since the fault began. It is late from ${limitDeg}°. Letting go at a setting is no such release.`,
    'Call a split when you have let go. After that, leave the switch alone and fly.',
    measuring ? 'Measuring: in the aeroplane let go in doubt.' : 'In doubt let go: in the aeroplane that is free.',
    `It ends ${afterS ?? 20} s behind that release, at ${2 * limitDeg}° if the hand stays on, or after ${time}.`,
  ];
}

/** Headings of the first page: what the groups under them have in common. */
const CHAPTERS: readonly (readonly [name: string, groups: readonly Word[]])[] = [
  ['Hold and let go', ['measuring', 'holds', 'calls']],
  ['Step by step', ['steps', 'clean', 'finding', 'retraction']],
  ['While you fly', ['workload', 'driving', 'thrust', 'around']],
  ['Other conditions', ['engine', 'ice', 'motor', 'other']],
];

interface Chapter {
  readonly name: string;
  readonly groups: readonly Grouped[];
}

/** Every drill under its heading, none without one; a heading that has no drill is left out. */
export function chaptersOf(drills: readonly DrillCard[]): Chapter[] {
  const groups = groupsOf(drills);
  return CHAPTERS.map(([name, words]) => ({ name, groups: groups.filter((group) => words.some((word) => GROUPS[word].name === group.name)) })).filter((chapter) => chapter.groups.length > 0);
}

interface Grouped {
  readonly name: string;
  readonly line: string;
  readonly drills: DrillCard[];
}

/** Drills of a kind together, in the order in which their kinds first come. */
export function groupsOf(drills: readonly DrillCard[]): Grouped[] {
  const groups = new Map<string, Grouped>();
  for (const drill of drills) {
    const group = groups.get(drill.group.name) ?? { ...drill.group, drills: [] };
    group.drills.push(drill);
    groups.set(group.name, group);
  }
  return [...groups.values()];
}

/** A name that is a word takes a comma, so that nobody reads "up to 4". */
export const taskOf = ({ from, to }: Pick<DrillCard, 'from' | 'to'>): string => `Flaps from ${from}${/^\d/.test(from) ? '' : ','} to ${to.join(', then ')}`;
