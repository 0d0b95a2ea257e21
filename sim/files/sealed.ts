/** A scenario as a trainee may hold it: without what its instructor wrote about it. */
import type { Scenario } from './scenario.js';

/** What an instructor writes for the instructor alone, beside the title. */
export const INSTRUCTORS: readonly (keyof Scenario)[] = ['$schema', 'notes', 'lesson', 'order', 'skill', 'passes', 'fails'];

/**
 * The same run without title, notes, lesson, skill, place, named trainees, and what its parameters mean: a record and a link hold
 * this one. What is flown is untouched, so hash, outcome and score are the same. The title is empty, since the format asks
 * for one. Takes a scenario as it is written as well, before any default is filled in.
 */
export function sealed<T extends Scenario>(scenario: T): T {
  const { parameters, ...rest } = scenario;
  const flown: Record<string, unknown> = { ...rest, title: '' };
  for (const key of INSTRUCTORS) delete flown[key];
  if (parameters !== undefined) flown['parameters'] = parameters.map(({ meaning: _meaning, ...parameter }) => parameter);
  return flown as T;
}
