/** Does a course hold together? Its steps, what they need, gates that their sets can show, a first look that nobody can tell. */
import { isTrueDrive, readySet } from '../set/ready.js';
import { unmeetable } from '../stats/gate-room.js';
import type { CourseFile, CourseStep } from './course.js';
import { tryAs } from './door.js';
import type { Fault } from './fault.js';
import { misfits } from './fit.js';
import type { Misfit } from './misfit.js';
import { airframeOf, misfitsOf, type Lookup } from './resolve.js';
import { scenarioSchema, type Scenario } from './scenario.js';
import { baseOf, setMisfits, type ScenarioLookup } from './set-fit.js';
import type { SetFile } from './set.js';

/** Finds a shipped set by its name; undefined where there is none of that name. */
export type SetLookup = (name: string) => SetFile | undefined;

/** Finds what is shipped, by name. */
export interface Shelves {
  readonly airframes: Lookup;
  readonly drills: ScenarioLookup;
  readonly sets: SetLookup;
}

/** Everything that keeps a course from being flown as it is meant. */
export function courseMisfits(course: CourseFile, shelves: Shelves): Misfit[] {
  return [
    ...course.steps.flatMap((step, at) => stepMisfits(course, step, at, shelves).map(({ path, allowed }) => ({ path: ['steps', at, ...path], allowed }))),
    ...firstLookMisfits(course, shelves),
  ];
}

function stepMisfits({ steps }: CourseFile, step: CourseStep, at: number, shelves: Shelves): Misfit[] {
  const before = steps.slice(0, at).map(({ name }) => name);
  const found: Misfit[] = [];
  if (before.includes(step.name)) found.push({ path: ['name'], allowed: 'a name that stands once' });
  step.needs.forEach((name, index) => {
    if (!before.includes(name)) found.push({ path: ['needs', index], allowed: before.length === 0 ? 'nothing: no step stands before this one' : `the name of an earlier step (${before.join(', ')})` });
    else if (step.needs.indexOf(name) < index) found.push({ path: ['needs', index], allowed: 'each step once' });
  });
  if ((step.drill === undefined) === (step.set === undefined)) found.push({ path: [], allowed: 'a drill or a set, and not both' });
  else if (step.drill !== undefined) found.push(...drillMisfits(step, step.drill, shelves));
  else if (step.set !== undefined) found.push(...setStepMisfits(step, step.set, shelves));
  return found;
}

function drillMisfits({ gate }: CourseStep, drill: NonNullable<CourseStep['drill']>, { airframes, drills }: Shelves): Misfit[] {
  const gated: Misfit[] = gate === undefined ? [] : [{ path: ['gate'], allowed: 'no gate: one run says nothing of a person; only sets of the true drive have gates' }];
  if (typeof drill === 'string') return drills(drill) === undefined ? [...gated, { path: ['drill'], allowed: 'the name of a shipped drill, or a scenario in full' }] : gated;
  return [...gated, ...misfitsOf(drill, airframes).map(({ path, allowed }) => ({ path: ['drill', ...path], allowed }))];
}

function setStepMisfits({ gate, done }: CourseStep, named: NonNullable<CourseStep['set']>, { airframes, drills, sets }: Shelves): Misfit[] {
  const set = typeof named === 'string' ? sets(named) : named;
  if (set === undefined) return [{ path: ['set'], allowed: 'the name of a shipped set, or a set in full' }];
  const inside = typeof named === 'string' ? [] : setMisfits(set, airframes, drills).map(({ path, allowed }) => ({ path: ['set', ...path], allowed }));
  const passed: Misfit[] = done === 'flown' ? [] : [{ path: ['done'], allowed: '"flown": a set is not passed, it is measured' }];
  if (gate === undefined || inside.length > 0) return [...inside, ...passed];
  if (!isTrueDrive(set)) return [...passed, { path: ['gate'], allowed: 'no gate: a side is driven back in this laboratory set; only sets of the true drive have gates' }];
  const base = baseOf(set, airframes, drills);
  if (!('base' in base)) return [...passed, { path: ['set'], allowed: base.allowed }];
  return [...passed, ...unmeetable(gate, readySet(set, base.base, base.airframe)).map(({ key, sum }) => ({ path: ['gate', key], allowed: sum }))];
}

/** The scenario of a hold with the fault that nobody announces. Everything that is told of it stays as it was. */
export const withFirstLook = (scenario: Scenario, fault: Fault): Scenario => ({ ...scenario, faults: [fault] });

function firstLookMisfits({ steps, firstLook }: CourseFile, { airframes, drills }: Shelves): Misfit[] {
  if (firstLook === undefined) return [];
  return firstLook.among.flatMap((name, index): Misfit[] => {
    const path = ['firstLook', 'among', index];
    const drill = steps.find((step) => step.name === name)?.drill;
    const scenario = typeof drill === 'string' ? drills(drill) : drill;
    if (scenario === undefined) return [{ path, allowed: 'the name of a step that is a drill' }];
    if (firstLook.among.indexOf(name) < index) return [{ path, allowed: 'each step once' }];
    if (scenario.faults.length > 0) return [{ path, allowed: 'a drill without a fault: two at once would be no first look' }];
    const airframe = airframeOf(scenario, airframes);
    if (airframe === undefined) return [];
    const made = tryAs(scenarioSchema, withFirstLook(scenario, firstLook.fault));
    const problems = made.ok ? misfits(made.value, airframe) : made.issues.map(({ path: inner, message }) => ({ path: inner, allowed: message }));
    return problems.map(({ path: inner, allowed }) => ({ path, allowed: `a drill that this fault fits (${inner.join('.')}: ${allowed})` }));
  });
}
