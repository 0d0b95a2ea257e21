/** Makes a course ready: every step with what it flies. The door has made sure that all of it is there. */
import type { ReadyCourse, ReadyStep, StepFlies } from '../course/ready.js';
import { readySet } from '../set/ready.js';
import type { CourseFile, CourseStep } from './course.js';
import type { Shelves } from './course-fit.js';
import { airframeOf } from './resolve.js';
import { baseOf } from './set-fit.js';

/** @throws Error for a course that did not pass its door */
export function readyCourse(course: CourseFile, shelves: Shelves): ReadyCourse {
  const place = (name: string): number => course.steps.findIndex((step) => step.name === name);
  const steps = course.steps.map((step): ReadyStep => ({
    name: step.name, teaches: step.teaches, done: step.done, gate: step.gate ?? null, needs: step.needs.map(place), flies: fliesOf(step, shelves),
  }));
  const { firstLook } = course;
  return { course, steps, firstLook: firstLook === undefined ? null : { fault: firstLook.fault, among: firstLook.among.map(place) } };
}

function fliesOf({ name, drill, set: named }: CourseStep, { airframes, drills, sets }: Shelves): StepFlies {
  if (drill !== undefined) {
    const scenario = typeof drill === 'string' ? drills(drill) : drill;
    const airframe = scenario === undefined ? undefined : airframeOf(scenario, airframes);
    if (scenario === undefined || airframe === undefined) throw new Error(`step ${name}: its drill is not there`);
    return { kind: 'drill', scenario, airframe, shipped: typeof drill === 'string' ? drill : null };
  }
  const set = typeof named === 'string' ? sets(named) : named;
  const base = set === undefined ? null : baseOf(set, airframes, drills);
  if (set === undefined || base === null || !('base' in base)) throw new Error(`step ${name}: its set is not there`);
  return { kind: 'set', of: readySet(set, base.base, base.airframe), shipped: typeof named === 'string' ? named : null };
}
