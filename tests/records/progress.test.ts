// How far a person has come in the shipped course, out of a logbook with real runs: nothing is stored, nothing is merged.
import { describe, expect, it } from 'vitest';
import { composeRecord, ready, readyCourse, scriptedRecord, withFirstLook, type RunRecord, type Scenario } from '../../sim/files/index.js';
import { firstLookAt, flyTrainee, MODEL_VERSION, type ReadyCourse, type Trainee } from '../../sim/index.js';
import { entryOf, type About, type Entry } from '../../src/records/logbook/index.js';
import { flownFor, isFirstLook, progressOf } from '../../src/records/progress.js';
import type { RunsOf } from '../../src/records/runs.js';
import { runsIn } from '../../src/records/runs.js';
import { readCourse } from '../../src/text/index.js';
import { cardOf } from '../../src/pages/drill/card.js';
import { drill, drillNames, lookup, textOf } from '../files/shipped.js';
import { setFile, setNames, shippedSet } from '../set/shipped.js';
import { flownRecords } from '../stats/made-flight.js';
import { about, emptyBook } from './made.js';

const drills = new Map(drillNames.map((name) => [name, drill(name)]));
const shelves = { airframes: lookup, drills: (name: string) => drills.get(name), sets: (name: string) => (setNames.includes(name) ? setFile(name) : undefined) };
const read = readCourse(textOf('courses/first-hold-to-landing.json'), 'c', shelves);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const of: ReadyCourse = readyCourse(read.value, shelves);
const at = (name: string): number => of.steps.findIndex((step) => step.name === name);
const sets = setNames.map((name) => ({ name, of: shippedSet(name) })).sort((a, b) => (a.of.set.order ?? 0) - (b.of.set.order ?? 0));

/** As if by hand. */
function byHand(scenario: Scenario, trainee: Trainee, seed: number): RunRecord {
  const airframe = lookup(scenario.airframe as string)!;
  const filled = ready(scenario, airframe);
  const { commands, flight: { end, hash, outcome, score } } = flyTrainee(filled, airframe, seed, trainee);
  const made = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed, airframe, scenario: filled, commands, end, hash, outcome, score });
  const { format: _format, digest: _digest, ...parts } = made;
  return composeRecord({ ...parts, source: 'flown', device: { ...made.device, input: 'mouse' } });
}
const scenarioOf = (step: string): Scenario => {
  const { flies } = of.steps[at(step)]!;
  if (flies.kind !== 'drill') throw new Error(`${step} is no drill`);
  return flies.scenario;
};
const run = (step: string, trainee: Trainee = 'prompt', seed = 1): RunRecord => byHand(scenarioOf(step), trainee, seed);
const looked = (step: string, trainee: Trainee = 'prompt'): RunRecord => byHand(withFirstLook(scenarioOf(step), of.firstLook!.fault), trainee, 1);

function runsOf(records: readonly RunRecord[], more: Partial<About>[] = []): RunsOf {
  const all = new Map(records.map((record, index) => [String(index), record]));
  const entries = records.map((record, index): Entry => entryOf(record, about(String(index), { drill: null, atMs: index, ...more[index] })));
  return { entries, attempts: [], record: (id) => Promise.resolve(all.get(id) ?? null) };
}
const states = async (runs: RunsOf): Promise<Record<string, string>> => {
  const { stands } = await progressOf({ of }, sets, runs);
  return Object.fromEntries(of.steps.map(({ name }, place) => [name, stands[place]!.state]));
};

describe('steps out of runs', () => {
  it('nothing flown: the first step is open, what needs it is closed, and the first step is next', async () => {
    const { stands, proposal, firstLook } = await progressOf({ of }, sets, runsOf([]));
    expect([stands[0]!.state, stands[1]!.state, stands[1]!.waitsFor]).toEqual(['open', 'closed', [0]]);
    expect([proposal, firstLook]).toEqual([{ fly: 'step', step: 0, why: 'begin', minutes: expect.any(Number) }, null]);
  });
  it('passed opens the next; a run that failed, was stopped, left, scripted or assisted in another drill does not', async () => {
    expect(await states(runsOf([run('first-hold')]))).toMatchObject({ 'first-hold': 'done', 'step-by-step': 'open', 'hold-on': 'open' });
    expect(await states(runsOf([run('first-hold', 'never')]))).toMatchObject({ 'first-hold': 'open', 'step-by-step': 'closed' });
    expect(await states(runsOf([run('first-hold')], [{ abandoned: true }]))).toMatchObject({ 'first-hold': 'open' });
    const good = run('first-hold');
    expect(await states(runsOf([{ ...good, source: 'scripted' }]))).toMatchObject({ 'first-hold': 'open' });
    expect(await states(runsOf([{ ...good, end: { ...good.end, why: 'stopped' } }]))).toMatchObject({ 'first-hold': 'open' });
  });
  it('twice in a row with different seeds, and the text of a drill may change meanwhile', async () => {
    const twice = [run('first-hold'), run('hold-on', 'prompt', 1), run('hold-on', 'prompt', 2)];
    expect(await states(runsOf(twice))).toMatchObject({ 'hold-on': 'done' });
    expect(await states(runsOf([twice[0]!, twice[1]!, twice[1]!]))).toMatchObject({ 'hold-on': 'open' });
    const other = { ...twice[0]!, scenario: { ...twice[0]!.scenario, title: 'Renamed', brief: 'Other words.', order: 99 } };
    expect(await states(runsOf([other]))).toMatchObject({ 'first-hold': 'done' });
    expect(await states(runsOf([{ ...other, scenario: { ...other.scenario, start: { ...other.scenario.start, massT: 50 } } }]))).toMatchObject({ 'first-hold': 'open' });
  });
  it('a set flown through, out of the flights of the logbook', async () => {
    const records = flownRecords(shippedSet('short'), 3);
    const runs = runsOf(records, records.map(() => ({ attempt: 'f' })));
    const flight = { id: 'f', set: 'short', seed: 3, person: '', name: '', startedMs: 1, runs: 12, blocks: 1, leftMs: null, done: records.map(({ outcome }, index) => ({ entry: String(index), outcome })) };
    expect(await states({ ...runs, attempts: [flight] })).toMatchObject({ 'short-set': 'done', 'first-hold': 'open' });
    const underway = await progressOf({ of }, sets, { ...runs, attempts: [{ ...flight, done: flight.done.slice(0, 5) }] });
    expect(underway.stands[at('short-set')]).toMatchObject({ state: 'closed', underway: { done: 5, runs: 12, blocks: 1 } });
  });
  it('a run of another model version was flown; it is not judged here', async () => {
    const { stands, older } = await progressOf({ of }, sets, runsOf([{ ...run('first-hold'), model: MODEL_VERSION + 1 }]));
    expect([stands[0]!.state, stands[0]!.flown, older]).toEqual(['open', 1, 1]);
  });
});

const among = of.firstLook!.among.map((place) => of.steps[place]!.name);

describe('the first look', () => {
  it.each(among)('%s can be flown and passed, with the fault and without', (step) => {
    expect(run(step).outcome).toBe('completed');
    const found = looked(step);
    expect([found.outcome, found.score.onsetS === null]).toEqual(['completed', false]);
    expect(looked(step, 'never').outcome).not.toBe('completed');
  });
  it('comes in the hold that the dice chose and in no other; met once, it comes no more', async () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const chosen = firstLookAt(of.firstLook!.among, seed, () => false)!;
      for (const place of of.firstLook!.among) {
        const { scenario } = await flownFor({ of }, place, seed, runsOf([]));
        expect(scenario.faults.length).toBe(place === chosen ? 1 : 0);
      }
      const after = await flownFor({ of }, chosen, seed, runsOf([looked(of.steps[chosen]!.name)]));
      expect(after.scenario.faults).toEqual([]);
    }
    expect((await flownFor({ of }, 0, 1, runsOf([]))).scenario).toEqual(scenarioOf('first-hold'));
  });
  it('the brief is the same to the letter: card, rules, facts and task', async () => {
    for (const place of of.firstLook!.among) {
      const { flies } = of.steps[place]!;
      if (flies.kind !== 'drill') throw new Error('no drill');
      const { scenario, airframe } = flies;
      expect(cardOf({ scenario: withFirstLook(scenario, of.firstLook!.fault), airframe }, 1)).toEqual(cardOf({ scenario, airframe }, 1));
    }
  });
  it('stands apart: told with its own figures, counted for no step, in no history', async () => {
    const record = looked(among[0]!);
    const { firstLook, stands, history } = await progressOf({ of }, sets, runsOf([run('first-hold'), run('step-by-step'), record]));
    expect(firstLook).toEqual({
      step: at(among[0]!), id: '2', atMs: 2, outcome: 'completed', parted: true, afterOnsetS: record.score.afterOnsetS, growthDeg: record.score.growthAtReleaseDeg, passed: true,
    });
    expect(stands[at(among[0]!)]).toMatchObject({ state: 'open', flown: 0 });
    expect(history.groups).toEqual([]);
    expect([isFirstLook([{ of }], record), isFirstLook([{ of }], run(among[0]!))]).toEqual([true, false]);
  });
});

describe('in a logbook', () => {
  it('the dice of a person in a course are thrown once', async () => {
    const book = await emptyBook();
    expect([await book.courseSeed('c', 'ada', 7), await book.courseSeed('c', 'ada', 8), await book.courseSeed('c', 'ben', 9), await book.courseSeed('d', 'ada', 10)]).toEqual([7, 7, 9, 10]);
  });
  it('runs of one person, oldest first, over several pages', async () => {
    const book = await emptyBook();
    const record = run('first-hold');
    for (let index = 0; index < 5; index += 1) await book.keep({ ...record, digest: String(index) }, about(`e${index}`, { person: index === 2 ? 'ben' : 'ada', atMs: index }));
    expect((await runsIn(book, 'ada')).entries.map(({ id }) => id)).toEqual(['e0', 'e1', 'e3', 'e4']);
  });
});
