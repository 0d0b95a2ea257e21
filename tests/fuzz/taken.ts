/** What may be asked of a file once it is taken: it can be flown, planned, drawn and told, without a throw and without a number that is none. */
import { type Airframe, airframeOf, baseOf, type CourseFile, type Inputs, misfits, numbersOf, ready, readyCourse, type RunRecord, type Scenario, type SetFile, type TraineeFile, verify } from '../../sim/files/index.js';
import {
  advance, airframeFigures, budgetOf, debriefOf, deriveOf, drawSet, expand, flyTrainee, planItems, planOf, planRequestOf, previewOf, readyFor, readySet, reportOf, settled, speedsOf, standOf, startHash, type Trial,
} from '../../sim/index.js';
import { relationsOf } from '../../sim/advise/airframe/relations.js';
import { commandsOf } from '../../sim/index.js';
import { groupOf } from '../../src/pages/front/asks.js';
import { instructorSheet, traineeSheet } from '../../src/pages/bench/lesson/sheet.js';
import { parametersOf, parsedValue, type Json } from '../../src/text/index.js';
import { airframeA, changed, drill, drillNames, lookup } from '../files/shipped.js';
import { shippedDrills, shippedSets } from './shelves.js';
import { must } from './promises.js';
import { wordsOf } from './words-of.js';

/** Seconds of a run that are flown of whatever was taken. */
const FLOWN_S = 5;
const finite = (what: string, value: unknown): void => must(!/\bnull\b|NaN|Infinity/.test(JSON.stringify(value, (_, one: unknown) => (typeof one === 'number' && !Number.isFinite(one) ? 'NaN' : one === null ? 0 : one))), `${what} holds a number that is none`);

export function flies(scenario: Scenario, airframe: Airframe): void {
  if (misfits(scenario, airframe).length > 0) return;
  let world = expand(readyFor(scenario, airframe, 1), airframe, 1);
  const hash = startHash();
  const log = commandsOf([{ atS: 0.1, do: 'openGuard' }, { atS: 0.2, do: 'arm' }, { atS: 0.3, do: 'holdDrive', way: 'extend' }]);
  for (let second = 0; second < FLOWN_S; second += 1) {
    world = advance(world, log, 100);
    hash.add(world.state);
  }
}

const cheap = (scenario: Scenario): boolean => scenario.task.limitS <= 60 && scenario.task.settings.length <= 3;

export const taken = {
  scenario(written: Scenario, text: string): void {
    const scenario = settled(written, 1);
    const airframe = airframeOf(scenario, lookup);
    if (airframe === undefined) return;
    flies(scenario, airframe);
    const json = parsedValue(text);
    if (json !== undefined && typeof json === 'object' && json !== null && !Array.isArray(json)) {
      const sheets = [traineeSheet(scenario, airframe), instructorSheet(scenario, airframe, json as { [key: string]: Json }, parametersOf(json))];
      must(!/undefined|NaN/.test(JSON.stringify(sheets).replaceAll(JSON.stringify(scenario.brief), '')) || /undefined|NaN/.test(text), `a lesson sheet says: ${JSON.stringify(sheets).slice(0, 300)}`);
    }
    groupOf(ready(scenario, airframe), airframe);
    const plan = planOf(planRequestOf(ready(scenario, airframe), airframe));
    finite('a plan', plan);
    planItems(plan);
    if (cheap(scenario)) previewOf(ready(scenario, airframe), airframe, 1, 'steady');
  },
  airframe(airframe: Airframe): void {
    const { mass } = airframe;
    for (const massT of [mass.emptyT, mass.landingT]) {
      finite('speeds', speedsOf(airframe, massT, false));
      airframeFigures(airframe, massT, 5000);
      budgetOf({ airframe, massT, speedKt: 160, flapDeg: airframe.settings[0]?.deg ?? 0, fault: 'disconnect', ratio: 0, altitudeFt: 5000 });
    }
    relationsOf(airframe);
    deriveOf(airframe);
    for (const name of [drillNames[0], 'set-16-from-4']) if (name !== undefined) flies({ ...drill(name), airframe }, airframe);
  },
  set(file: SetFile): void {
    const found = baseOf(file, lookup, (name) => shippedDrills.get(name));
    must('base' in found, 'a set that was taken has no base');
    const set = readySet(file, found.base, found.airframe);
    drawSet(set, 1);
    for (const scenario of set.scenarios.slice(0, 2)) {
      const world = advance(expand(scenario, found.airframe, 1), [], FLOWN_S * 100);
      startHash().add(world.state);
    }
  },
  course(file: CourseFile): void {
    const { steps } = readyCourse(file, { airframes: lookup, drills: (name) => shippedDrills.get(name), sets: (name) => shippedSets.get(name) });
    standOf(steps.map(({ needs, done }) => ({ needs, done, gate: null })), steps.map(() => ({ kind: 'drill', runs: [] })));
  },
  record(record: RunRecord): void {
    const verdict = verify(record);
    if (!verdict.ok || record.end.tick > 6000) return;
    const said = wordsOf(debriefOf(record), record);
    must(said.length > 0, 'a record of which nothing can be said');
  },
  trainee(file: TraineeFile): void {
    const scenario = ready(changed(drill('set-16-from-4'), ['task', 'limitS'], 15), airframeA);
    flyTrainee(scenario, airframeA, 1, numbersOf(file));
  },
  inputs(inputs: Inputs): void {
    const scenario = ready(changed(drill('set-16-from-4'), ['task', 'limitS'], 15), airframeA);
    const world = advance(expand(scenario, airframeA, 1), commandsOf(inputs), 1500);
    startHash().add(world.state);
  },
  trials(trials: readonly Trial[]): void {
    if (trials.length > 0 && trials.length < 40) finite('a report', reportOf(trials, 0.1, 75).outcomes);
  },
};
