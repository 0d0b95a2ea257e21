// What a person is told: place, path, what was found, what is allowed. Every line here was worked out from the file by hand.
import { describe, expect, test } from 'vitest';
import { readAny, readInputs, readScenario, type Problem, type Read } from '../../src/text/index.js';
import { nearest } from '../../src/text/near.js';
import { pathText, quoted } from '../../src/text/problem.js';
import { airframeA, airframeText, drillNames, drillText, lookup } from '../files/shipped.js';

const told = (read: Read<unknown>): string[] =>
  read.ok ? [] : read.problems.map(({ line, column, path, found, allowed }: Problem) => `${line}:${column} ${path} | ${found} | ${allowed}`);
const scenario = (text: string): string[] => told(readScenario(text, 'x.json', lookup));

/** Short, and every line counted. */
const file = (start: string, faults = '', more = ''): string => `{ "format": 1, "title": "t", "brief": "b", "airframe": "airframe-a",
  "start": { ${start} },
  "task": { "settings": [16], "limitS": 100 },
  "faults": [ ${faults} ]${more} }`;
const START = '"massT": 48, "altitudeFt": 5000, "speedKt": 167, "flapDeg": 4';

/** Counted here in another way: line ends before a mark in the text, and signs since the last of them. */
const placeOf = (text: string, mark: string): string => {
  const before = text.slice(0, text.indexOf(mark));
  return `${before.split('\n').length}:${before.length - before.lastIndexOf('\n')}`;
};

test.each(drillNames)('%s has none', (name) => expect(scenario(drillText(name))).toEqual([]));
test('the short file has none, with a byte-order mark as well', () => {
  expect(scenario(file(START))).toEqual([]);
  expect(scenario(`\uFEFF${file(START)}`)).toEqual([]);
});

describe('one problem', () => {
  test.each<[string, string, string, string]>([
    ['a wrong type', file(START.replace('167', '"fast"')), '"fast"', 'start.speedKt | "fast" | a number from 60 to 400 kt'],
    ['out of range, as it is written', file(START.replace('167', '4.01e2')), '4.01e2', 'start.speedKt | 4.01e2 | a number from 60 to 400 kt'],
    ['larger than any number', file(START.replace('167', '1e999')), '1e999', 'start.speedKt | 1e999 | a number from 60 to 400 kt'],
    ['null', file(START.replace('167', 'null')), 'null', 'start.speedKt | null | a number from 60 to 400 kt'],
    ['a missing key, at the object', file(START.replace(', "flapDeg": 4', '')), '{ "massT"', 'start.flapDeg | nothing | a number from 0 to 60 deg'],
    ['a whole number', file(`${START}, "liveEngines": 1.5`), '1.5', 'start.liveEngines | 1.5 | a whole number from 1 to 2'],
    ['a word, with the near one', file(`${START}, "gear": "dwn"`), '"dwn"', 'start.gear | "dwn" | "up" or "down" (did you mean "down"?)'],
    ['off the grid of time', file(START, '{ "name": "a", "kind": "dead", "when": { "atS": 1.001 } }'), '1.001', 'faults[0].when.atS | 1.001 | a number from 0 to 3600 s (a whole number of hundredths of a second)'],
    ['two kinds of trigger', file(START, '{ "name": "a", "kind": "dead", "when": { "atS": 1, "heldS": 2 } }'), '{ "atS"', 'faults[0].when | an object with atS, heldS | exactly one of atS, flapDeg, speedKt, altitudeFt, heldS, after, hazardPerS, all, any'],
    ['no kind of fault', file(START, '{ "name": "a", "kind": "deaf", "when": { "atS": 1 } }'), '"deaf"', 'faults[0].kind | "deaf" | "disconnect", "lag", "jam", "slip", "blowback", "pointer", "dead", "quits", "slow", "runsOn" or "leadingEdge" (did you mean "dead"?)'],
    ['a parameter of another fault', file(START, '{ "name": "a", "kind": "dead", "ratio": 1, "when": { "atS": 1 } }'), '"ratio"', 'faults[0].ratio | an unknown key | one of the keys kind, name, when, times, everyS'],
    ['a key in the wrong letters', file(START.replace('"speedKt"', '"speedkt": 167, "speedKt"')), '"speedkt"', 'start.speedkt | an unknown key | did you mean speedKt?'],
    ['a key cut short', file(`${START}, "motor": 1`), '"motor"', 'start.motor | an unknown key | did you mean motorHeat?'],
    ['a path as airframe', file(START).replace('"airframe-a"', '"../a.json"'), '"../a.json"', 'airframe | "../a.json" | letters a-z, digits and hyphens, 1 to 64 of them; or an object'],
    ['an airframe that is not there', file(START).replace('"airframe-a"', '"airframe-z"'), '"airframe-z"', 'airframe | "airframe-z" | the name of a shipped airframe, or an airframe in full'],
    ['a number as airframe', file(START).replace('"airframe-a"', '7'), '7,', 'airframe | 7 | letters a-z, digits and hyphens, 1 to 64 of them; or an object'],
    ['a list that is too short', file(START).replace('[16]', '[]'), '[],', 'task.settings | an empty list | a list of 1 to 12'],
    ['a setting that is none', file(START).replace('[16]', '[17]'), '17', 'task.settings[0] | 17 | a setting of the airframe: 0, 4, 9, 16, 26, 36'],
    ['a circle', file(START, '{ "name": "a", "kind": "dead", "when": { "after": "a" } }'), '"a" } }', 'faults[0].when.after | "a" | no circle of after: a > a'],
    ['half a character', file(START).replace('"t"', '"\\ud800"'), '"\\ud800"', 'title | "\\ud800" | a text of whole characters (no half of a surrogate pair)'],
    ['a key a second time', file(START.replace('167,', '167, "massT": 48,')), '"massT": 48, "flapDeg"', 'start.massT | the key a second time | once; it stands at 2:14 already'],
  ])('%s', (_, text, mark, problem) => expect(scenario(text)).toEqual([`${placeOf(text, mark)} ${problem}`]));

  // The two keys that JavaScript itself would give a meaning to.
  test.each(['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty'])('%s is an unknown key like any other', (key) => {
    const said = scenario(file(START, '', `, "${key}": { "x": 1 }`));
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(`${key} | an unknown key | `);
    expect(({} as { x?: unknown }).x).toBe(undefined);
  });
});

test('every problem at once, in the order of the file; an unknown key does not hide what comes behind it', () => {
  const text = file(START.replace('167', '500').replace('"flapDeg": 4', '"flapdeg": 4, "flapDeg": 39'), '{ "name": "a", "kind": "dead", "when": { "after": "b" } }, { "name": "a", "kind": "lag", "side": "up", "when": {} }');
  const at = (mark: string) => placeOf(text, mark);
  expect(scenario(text)).toEqual([
    `${at('500, "flapdeg"')} start.speedKt | 500 | a number from 60 to 400 kt`,
    `${at('"flapdeg"')} start.flapdeg | an unknown key | did you mean flapDeg?`,
    `${at('{ "name": "a", "kind": "lag"')} faults[1].ratio | nothing | a number from -4 to 0.95`,
    `${at('"up"')} faults[1].side | "up" | "left", "right" or "drawn"`,
    `${at('{} }')} faults[1].when | an empty object | exactly one of atS, flapDeg, speedKt, altitudeFt, heldS, after, hazardPerS, all, any`,
  ]);
  const crossed = file(`${START}, "colour": 1`, '{ "name": "a", "kind": "dead", "when": { "after": "b" } }, { "name": "a", "kind": "dead", "when": { "atS": 900 } }');
  expect(scenario(crossed).map((line) => line.split(' | ')[0])).toEqual([`${placeOf(crossed, '"colour"')} start.colour`, `${placeOf(crossed, '"b" }')} faults[0].when.after`, `${placeOf(crossed, '"a", "kind": "dead", "when": { "atS"')} faults[1].name`]);
});

test('an unknown key does not hide that the file does not fit its airframe, or that its airframe is not sound', () => {
  const unfit = file(`${START}, "colour": 1`).replace('[16]', '[17]');
  expect(scenario(unfit).map((line) => line.split(' | ')[0])).toEqual([`${placeOf(unfit, '"colour"')} start.colour`, `${placeOf(unfit, '17')} task.settings[0]`]);
  const unsound = file(START).replace('"airframe-a"', airframeText.replace('"takeOffT": 60.0', '"colour": 1, "takeOffT": 50'));
  expect(scenario(unsound).map((line) => line.replace(/^\S+ /, '').split(' | ')[0])).toEqual(['airframe.mass.colour', 'airframe.mass.takeOffT']);
});

test('inside an airframe in full', () => {
  const inline = airframeText.replace('"takeOffT": 60.0', '"takeOffT": 50').replace('"taper": 0.26', '"tapper": 0.26');
  const text = file(START).replace('"airframe-a"', inline);
  expect(told(readAny(text, 'x.json', () => undefined)).map((line) => line.replace(/^\S+ /, ''))).toEqual([
    'airframe.wing.taper | nothing | a number from 0 to 1',
    'airframe.wing.tapper | an unknown key | did you mean taper?',
  ]);
  // What spans keys waits until none is missing.
  const missing = file(START).replace('"airframe-a"', inline.replace('"tapper"', '"taper"'));
  expect(told(readAny(missing, 'x.json', () => undefined)).map((line) => line.replace(/^\S+ /, ''))).toEqual(['airframe.mass.takeOffT | 50 | at least landingT (53.5 t)']);
});

test('a later format is all that is said, wherever it stands', () => {
  const later = (path: string, place: string) => [`${place} ${path} | format 2 | format 1; the file is for a later Evenhand`];
  expect(scenario(file('"nonsense": 1').replace('"format": 1', '"format": 2'))).toEqual(later('format', '1:13'));
  expect(scenario(file('"nonsense": 1').replace('"airframe-a"', '{ "format": 2 }'))).toEqual(later('airframe.format', '1:68'));
  expect(scenario(file(START).replace('"format": 1', '"format": 0'))).toEqual(['1:13 format | 0 | 1']);
});

test('inputs: times must rise, acts must be known', () => {
  expect(told(readInputs('[{"atS": 2, "do": "arm"},\n {"atS": 1, "do": "arm"}]', 'x'))).toEqual(['1:1  | a list of 2 entries | times in rising order']);
  expect(told(readInputs('[{"atS": 2, "do": "holdDrive", "way": "up"}]', 'x'))).toEqual(['1:39 [0].way | "up" | "extend" or "retract"']);
});

test('the kind of a file is told by its shape', () => {
  const kind = (text: string) => { const read = readAny(text, 'x', lookup); return read.ok ? read.value.kind : told(read)[0]; };
  expect(kind(airframeText)).toBe('airframe');
  expect(kind(file(START))).toBe('scenario');
  expect(kind('[]')).toBe('inputs');
  expect(kind('{ "digest": "" }')).toContain('format | nothing');
  for (const text of ['{}', '7', 'null', '"x"']) expect(kind(text)).toBe('1:1  | no kind of file that Evenhand knows | a scenario (has task), an airframe (has drive), a set (has rates), a course (has steps), a record (has digest), a trainee (has trainee) or inputs (a list)');
});

test('what is read is what the file says, with its defaults', () => {
  const read = readScenario(file(START), 'x', lookup);
  expect(read.ok && read.value.start).toMatchObject({ massT: 48, gear: 'up', groundFt: 0, windKt: 0 });
  expect(airframeA.drive.stopDeg).toBe(38);
});

test.each([['speedkt', 'speedKt'], ['spedKt', 'speedKt'], ['sepedKt', 'speedKt'], ['speed', 'speedKt'], ['massKg', 'massT'], ['gaer', 'gear'], ['zzz', null], ['x'.repeat(1e6), null], [`speedKt${'x'.repeat(40)}`, null], ['', null]])(
  'the word nearest to %s is %s', (typed, word) => expect(nearest(typed, ['massT', 'altitudeFt', 'speedKt', 'gear'])).toBe(word));

test('paths and texts stay on one line and short', () => {
  expect(pathText(['a', 0, 'b c', '__proto__', 'x'.repeat(100)])).toBe(`a[0]["b c"].__proto__["${'x'.repeat(60)}..."]`);
  expect(quoted('a\n\u2028\u001b[31m"')).toBe('"a\\n\\u2028\\u001b[31m\\""');
});
