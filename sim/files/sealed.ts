/** A scenario as a trainee may hold it: without what its instructor wrote about it. */
import type { Scenario } from './scenario.js';

/**
 * The same run without title, notes, skill, place and named trainees: a record and a link hold this one. What is flown is
 * untouched, so hash, outcome and score are the same. The title is empty, since the format asks for one.
 */
export function sealed(scenario: Scenario): Scenario {
  const { $schema: _schema, notes: _notes, order: _order, skill: _skill, passes: _passes, fails: _fails, ...flown } = scenario;
  return { ...flown, title: '' };
}
