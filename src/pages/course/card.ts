/** What may be told of a course: its words, its order, how long a step takes. No name of a file, and no fault. */
import type { ReadyCourse, ReadyStep } from '../../../sim/index.js';
import { hasWorkload } from '../front/asks.js';
import { setCard } from '../set/card.js';
import type { CourseCard, StepCard } from './house.js';

/** Brief, own judgement and debrief of a drill, min. */
const AROUND_MIN = 4;

interface Numbers {
  readonly drill: (name: string) => number | null;
  readonly set: (step: ReadyStep) => number | null;
}

export function courseCard({ course, steps }: ReadyCourse, number: number, own: string | null, numbers: Numbers): CourseCard {
  return { number, title: course.title, brief: course.brief, own, steps: steps.map((step, at) => stepCard(step, at + 1, numbers)) };
}

function stepCard(step: ReadyStep, number: number, numbers: Numbers): StepCard {
  const { teaches, done, gate, needs, flies } = step;
  const plain = { number, teaches, done, gate, needs: needs.map((at) => at + 1) };
  if (flies.kind === 'set') {
    const set = numbers.set(step);
    const { from, to, minutes, loaded, limitDeg } = setCard(flies.of, set ?? 0);
    return { ...plain, kind: 'set', task: `Flaps from ${from} toward ${to}`, drill: null, set, minutes, loaded, limitDeg };
  }
  const { scenario: { start, task, events }, airframe, shipped } = flies;
  const name = (deg: number): string => airframe.settings.find((setting) => setting.deg === deg)?.name ?? `${deg}`;
  return {
    ...plain, kind: 'drill', task: `Flaps from ${name(start.flapDeg)} to ${task.settings.map(name).join(', then ')}`,
    drill: shipped === null ? null : numbers.drill(shipped), set: null, limitDeg: null,
    minutes: Math.round(task.limitS / 60) + AROUND_MIN, loaded: hasWorkload({ events }),
  };
}
