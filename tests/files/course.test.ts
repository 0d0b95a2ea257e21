// Course files at the door: what is taken, and each problem with its place, what is allowed, and the sum behind it.
import { readdirSync } from 'node:fs';
import { parse } from 'jsonc-parser';
import { describe, expect, it } from 'vitest';
import { jsonSchemas, withFirstLook, type FileKind, type Scenario, type SetFile } from '../../sim/files/index.js';
import { bestCaught, bestFalse, clopperPearson, garwood, gateRoom, runsForCaught } from '../../sim/index.js';
import { readAny, readCourse, type Read } from '../../src/text/index.js';
import { setFile, setNames, shippedSet } from '../set/shipped.js';
import { valid } from './draft7.js';
import { changed, drill, drillNames, lookup, textOf } from './shipped.js';

const told = (read: Read<unknown>): string[] => (read.ok ? [] : read.problems.map(({ path, found, allowed }) => `${path} | ${found} | ${allowed}`));
const drills = (name: string): Scenario | undefined => (drillNames.includes(name) ? drill(name) : undefined);
const sets = (name: string): SetFile | undefined => (setNames.includes(name) ? setFile(name) : undefined);
const shelves = { airframes: lookup, drills, sets };
const read = (value: unknown): string[] => told(readCourse(JSON.stringify(value), 'c.json', shelves));

const courses = readdirSync(new URL('../../scenarios/courses/', import.meta.url)).map((name) => name.replace('.json', ''));

describe.each(courses)('%s', (name) => {
  const text = textOf(`courses/${name}.json`);
  it('is taken, as a course, by every door', () => {
    expect(read(parse(text))).toEqual([]);
    const any = readAny(text, name, lookup, drills, sets);
    expect(any.ok && any.value.kind).toBe('course');
    expect(valid((jsonSchemas() as Record<FileKind, Record<string, unknown>>).course, parse(text))).toBe(true);
  });
  it('tells of no fault: no word of one in what a trainee reads', () => {
    const { brief, steps } = parse(text) as { brief: string; steps: { teaches: string }[] };
    for (const words of [brief, ...steps.map(({ teaches }) => teaches)]) expect(words).not.toMatch(/\b(jam|shear|lag|stuck|blown|disconnect|driven back|drifts|quits|failed|leading edge stops)/i);
  });
});

const gate = { caughtFrom: 0.5, source: 'a test' };
const base = {
  format: 1, title: 't', brief: 'b',
  steps: [
    { name: 'one', teaches: 'x', drill: 'hold-and-nothing' }, { name: 'two', teaches: 'x', drill: 'hold-and-nothing', needs: ['one'] },
    { name: 'three', teaches: 'x', drill: 'hold-and-nothing' }, { name: 'true', teaches: 'x', set: 'true-drive-calm', needs: ['one', 'two'], gate },
  ],
  firstLook: { fault: { name: 'f', kind: 'disconnect', side: 'drawn', when: { heldS: 11 } }, among: ['one', 'two', 'three'] },
};
const set = (name: string): SetFile => setFile(name);

it('a course that holds together is taken', () => expect(read(base)).toEqual([]));

describe('refused', () => {
  it.each<[string, (string | number)[], unknown, string]>([
    ['a name that stands twice', ['steps', 2, 'name'], 'one', 'steps[2].name | "one" | a name that stands once'],
    ['a step that waits for a later one', ['steps', 1, 'needs'], ['three'], 'steps[1].needs[0] | "three" | the name of an earlier step (one)'],
    ['the first step waits', ['steps', 0, 'needs'], ['two'], 'steps[0].needs[0] | "two" | nothing: no step stands before this one'],
    ['a step waits for itself', ['steps', 1, 'needs'], ['two'], 'steps[1].needs[0] | "two" | the name of an earlier step (one)'],
    ['a drill and a set', ['steps', 1, 'set'], 'short', 'steps[1] | an object with name, teaches, drill, needs, set | a drill or a set, and not both'],
    ['neither', ['steps', 1, 'drill'], undefined, 'steps[1] | an object with name, teaches, needs | a drill or a set, and not both'],
    ['a drill that is not there', ['steps', 1, 'drill'], 'nowhere', 'steps[1].drill | "nowhere" | the name of a shipped drill, or a scenario in full'],
    ['a set that is not there', ['steps', 3, 'set'], 'nowhere', 'steps[3].set | "nowhere" | the name of a shipped set, or a set in full'],
    ['a gate on a drill', ['steps', 1, 'gate'], gate, 'steps[1].gate | an object with caughtFrom, source | no gate: one run says nothing of a person; only sets of the true drive have gates'],
    ['a gate on a laboratory set', ['steps', 3, 'set'], 'standard-calm', 'steps[3].gate | an object with caughtFrom, source | no gate: a side is driven back in this laboratory set; only sets of the true drive have gates'],
    ['a set that is to be passed', ['steps', 3, 'done'], 'passed', 'steps[3].done | "passed" | "flown": a set is not passed, it is measured'],
    ['a gate on points', ['steps', 3, 'gate', 'points'], 50, 'steps[3].gate.points | an unknown key | one of the keys flights, caughtFrom, medianToDeg, ninetyToDeg, falseToPerMin, source'],
    ['a gate that asks nothing', ['steps', 3, 'gate'], { source: 'x' }, 'steps[3].gate | an object with source | at least one of caughtFrom, medianToDeg, ninetyToDeg, falseToPerMin'],
    ['a gate without a source', ['steps', 3, 'gate'], { caughtFrom: 0.5 }, 'steps[3].gate.source | nothing | a text of at most 300 characters'],
    ['a first look among two', ['firstLook', 'among'], ['one', 'two'], 'firstLook.among | a list of 2 entries | a list of 3 to 12'],
    ['a first look twice in a step', ['firstLook', 'among', 2], 'one', 'firstLook.among[2] | "one" | each step once'],
    ['a first look in a set', ['firstLook', 'among', 2], 'true', 'firstLook.among[2] | "true" | the name of a step that is a drill'],
    ['a first look on top of a fault', ['steps', 2, 'drill'], 'set-16-from-4', 'firstLook.among[2] | "three" | a drill without a fault: two at once would be no first look'],
    ['a fault that refers to nothing', ['firstLook', 'fault', 'when'], { after: 'g' }, 'firstLook.among[0] | "one" | a drill that this fault fits (faults.0.when.after: the name of a fault or event in this file)'],
  ])('%s', (_, path, to, problem) => expect(read(changed(base, path, to))[0]).toBe(problem));

  it('an inline drill and an inline set are checked as any, each problem at its place', () => {
    const scenario = { ...parse(JSON.stringify(drill('hold-and-nothing'))), start: { ...drill('hold-and-nothing').start, massT: 20 } };
    expect(read(changed(base, ['steps', 1, 'drill'], scenario))).toContain('steps[1].drill.start.massT | 20 | a mass of this airframe: from 33.5 to 60 t');
    expect(read(changed(base, ['steps', 3, 'set'], { ...set('true-drive-calm'), load: 'loaded' }))[0]).toContain('steps[3].set.load | "loaded" |');
  });
});

/*
 * The sums, by hand. TRUE DRIVE, calm: 30 runs, a third of them quiet, so 20 splits expected and at least 18 (nine tenths).
 * Quiet holding at least: (30 - 22) runs of 76 s and 22 of 3 s, 674 s, 11.2333 min.
 * n of n, Clopper and Pearson 1934: (0.05/2)^(1/n); 5 of 5 gives .4782, as their tables print (.478). No event in T, Garwood 1936: 3.6889/T.
 */
describe('a gate that its set cannot show is refused with the sum', () => {
  const asked = (keys: object): string[] => read(changed(base, ['steps', 3, 'gate'], { source: 'x', ...keys }));

  it('the closed forms are the exact intervals at their ends', () => {
    expect(bestCaught(5)).toBeCloseTo(0.4782, 4);
    for (const n of [1, 5, 8, 18, 36, 59]) expect(bestCaught(n)).toBeCloseTo(clopperPearson(n, n).lo, 9);
    for (const minutes of [1, 5.25, 11.2333]) expect(bestFalse(minutes)).toBeCloseTo(garwood(0, minutes).hi, 6);
    expect(bestFalse(1)).toBeCloseTo(3.688879, 6); // Garwood 1936
    expect([0.5, 0.8, 0.9, 0.95].map(runsForCaught)).toEqual([6, 17, 36, 72]); // ln .025 / ln r = 5.32, 16.53, 35.01, 71.92
  });
  it('what a set has at least', () => {
    expect(gateRoom(shippedSet('true-drive-calm'), 1)).toEqual({ splits: 18, quietMin: 674 / 60 });
    expect(gateRoom(shippedSet('true-drive-calm'), 3).splits).toBe(54);
  });
  it('caught: 18 of 18 give .8147, so .81 can be met and .82 cannot; two flights give .9026', () => {
    expect(asked({ caughtFrom: 0.81 })).toEqual([]);
    expect(asked({ caughtFrom: 0.82 })).toEqual(['steps[3].gate.caughtFrom | 0.82 | at most 0.814: one flight has at least 18 splits, and 18 of 18 caught gives 0.025^(1/18) = 0.8147; 0.82 needs 19 of 19']);
    expect(asked({ caughtFrom: 0.9, flights: 2 })).toEqual([]);
    expect(asked({ caughtFrom: 0.91, flights: 2 })[0]).toContain('2 flights have at least 36 splits, and 36 of 36 caught gives 0.025^(1/36) = 0.9026; 0.91 needs 40 of 40');
  });
  it('nine in ten: .9^36 is .0225, so two flights can show it and one cannot', () => {
    expect(asked({ ninetyToDeg: 2, flights: 2 })).toEqual([]);
    expect(asked({ ninetyToDeg: 2 })).toEqual(['steps[3].gate.ninetyToDeg | 2 | 36 splits or more (0.9^36 = 0.0225, at most 0.025); one flight has at least 18 splits, and 0.9^18 = 0.1501']);
  });
  it('false releases: none in 11.23 min give .3284 a minute', () => {
    expect(asked({ falseToPerMin: 0.33 })).toEqual([]);
    expect(asked({ falseToPerMin: 0.32 })).toEqual(['steps[3].gate.falseToPerMin | 0.32 | at least 0.329: one flight has at least 11.23 quiet minutes, and none in them gives -ln(0.025) / 11.23 = 0.3284']);
    expect(asked({ falseToPerMin: 0.17, flights: 2 })).toEqual([]);
  });
  it('a median inside what a run can show, and from 8 splits on', () => {
    expect(asked({ medianToDeg: 0.11 })).toEqual([]);
    for (const medianToDeg of [0.1, 5]) expect(asked({ medianToDeg })).toEqual([`steps[3].gate.medianToDeg | ${medianToDeg} | above 0.1 deg, below which no release counts as a reaction, and below 5 deg, where a run ends`]);
    const few = changed({ ...set('true-drive-calm'), runs: 10, blocks: 1, onsets: { from: 7, to: 8, perRate: 1 } }, ['order'], undefined);
    const short = changed(changed(base, ['steps', 3, 'set'], few), ['steps', 3, 'gate'], { source: 'x', medianToDeg: 1, caughtFrom: 0.3 });
    expect(read(short)).toEqual(['medianToDeg', 'caughtFrom'].map((key) => `steps[3].gate.${key} | ${key === 'caughtFrom' ? 0.3 : 1} | 8 splits or more; one flight has at least 7 splits`));
  });
});

it('a first look changes nothing that is told beforehand', () => {
  const quiet = drill('hold-and-nothing');
  const { faults, ...rest } = withFirstLook(quiet, { name: 'f', kind: 'disconnect', side: 'drawn', when: { heldS: 11 } });
  expect(faults).toHaveLength(1);
  expect({ ...rest, faults: [] }).toEqual(quiet);
});
