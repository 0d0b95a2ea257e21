// Parameters of a scenario: set, taken, drawn, and every mistake at its place. Values by hand from the file.
import { describe, expect, test } from 'vitest';
import { parse } from 'jsonc-parser';
import { drawnValue, settled, valueAt, valuesCount } from '../../sim/settle.js';
import { jsonSchemas, scenarioSchema, tryAs, type Scenario } from '../../sim/files/index.js';
import { flyTrainee, readyFor } from '../../sim/index.js';
import { readScenario, type Values } from '../../src/text/index.js';
import { valid } from './draft7.js';
import { airframeA, drillNames, drill, lookup } from './shipped.js';

const LAG = '{ "name": "lagFrom", "default": 8, "min": 6, "max": 12, "step": 0.5, "unit": "deg", "meaning": "Where it begins to lag" }';
const file = (parameters: string, flapDeg = '{ "parameter": "lagFrom" }', more = ''): string => `{ "format": 1, "title": "t", "brief": "b", "airframe": "airframe-a",
  "parameters": [ ${parameters} ],
  "start": { "massT": 48, "altitudeFt": 5000, "speedKt": 167, "flapDeg": 4 },
  "task": { "settings": [16], "limitS": 100 },
  "faults": [ { "name": "lag", "kind": "lag", "side": "right", "ratio": 0.5, "when": { "flapDeg": ${flapDeg} } } ]${more} }`;
const read = (text: string, values: Values = {}) => readScenario(text, 'x.json', lookup, values);
const sound = (text: string, values: Values = {}): Scenario => {
  const got = read(text, values);
  if (!got.ok) throw new Error(JSON.stringify(got.problems));
  return got.value;
};
const told = (text: string, values: Values = {}): string[] => {
  const got = read(text, values);
  return got.ok ? [] : got.problems.map(({ line, path, found, allowed }) => `${line} ${path} | ${found} | ${allowed}`);
};
const lagFrom = ({ faults }: Scenario): number | undefined => faults[0]?.when.flapDeg;
const DRAWN = LAG.replace('"unit"', '"drawn": true, "unit"');

describe('a number is taken', () => {
  test('at its default, or as it is set; nothing of the parameter is left', () => {
    expect(lagFrom(sound(file(LAG)))).toBe(8);
    expect(lagFrom(sound(file(LAG), { lagFrom: 11.5 }))).toBe(11.5);
    expect(sound(file(LAG))).not.toHaveProperty('parameters');
    expect(sound(file(LAG), { lagFrom: 8 })).toEqual(sound(file(LAG).replace(/"parameters": \[.*\],/, '').replace('{ "parameter": "lagFrom" }', '8')));
  });
  test('at both ends of its range, and not beyond', () => {
    expect(lagFrom(sound(file(LAG), { lagFrom: 6 }))).toBe(6);
    expect(lagFrom(sound(file(LAG), { lagFrom: 12 }))).toBe(12);
    expect(told(file(LAG), { lagFrom: 12.01 })).toEqual(['2 parameters[0] | lagFrom set to 12.01 | a number from 6 to 12 deg']);
    expect(told(file(LAG), { lagFrom: 5.99 })).toEqual(['2 parameters[0] | lagFrom set to 5.99 | a number from 6 to 12 deg']);
  });
  test('in several places, also inside groups and events', () => {
    const text = file(LAG, '8', ', "events": [ { "do": "level", "when": { "all": [ { "flapDeg": { "parameter": "lagFrom" } }, { "heldS": { "parameter": "lagFrom" } } ] } } ]');
    expect(sound(text, { lagFrom: 9 }).events[0]?.when).toEqual({ all: [{ flapDeg: 9 }, { heldS: 9 }] });
  });
  test('a shipped drill without parameters is untouched', () => {
    const one = drill(drillNames[0]!);
    expect(settled(one, 7)).toBe(one);
  });
});

describe('drawn', () => {
  test('what is not set is drawn from min to max in steps, ends included, each alike likely', () => {
    const scenario = sound(file(DRAWN));
    const counts = new Map<number, number>();
    for (let seed = 0; seed < 13_000; seed += 1) {
      const value = lagFrom(settled(scenario, seed)) as number;
      counts.set(value, (counts.get(value) ?? 0) + 1);
    }
    // 6, 6.5 ... 12: 13 values, 1000 each expected, sd 30.4: four of them are 122.
    expect([...counts.keys()].sort((a, b) => a - b)).toEqual(Array.from({ length: 13 }, (_, k) => 6 + k / 2));
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(122);
  });
  test('the same seed draws the same, and a further parameter moves no other', () => {
    const one = sound(file(DRAWN));
    const two = sound(file(`${DRAWN}, { "name": "kt", "default": 167, "min": 160, "max": 170, "drawn": true }`).replace('"speedKt": 167', '"speedKt": { "parameter": "kt" }'));
    for (const seed of [1, 2, 3, 4294967295]) expect(lagFrom(settled(one, seed))).toBe(lagFrom(settled(two, seed)));
    expect(new Set([1, 2, 3, 4, 5, 6].map((seed) => settled(two, seed).start.speedKt)).size).toBeGreaterThan(2);
  });
  test('what is set is not drawn', () => {
    const scenario = sound(file(DRAWN), { lagFrom: 7 });
    expect([lagFrom(scenario), scenario.parameters]).toEqual([7, undefined]);
  });
  test('hundredths stay hundredths: every value of a time lies on the grid of ticks', () => {
    const one = { name: 't', min: 0.07, max: 3.07 };
    expect(valuesCount(one)).toBe(301);
    for (let k = 0; k < 301; k += 1) expect(valueAt(one, k)).toBe((7 + k) / 100);
  });
  test('the last step may fall short of max: 1, 1.4, 1.8 of 1 to 2', () => {
    const one = { name: 'x', min: 1, max: 2, step: 0.4 };
    const values = new Set(Array.from({ length: 300 }, (_, seed) => drawnValue(one, seed)));
    expect([...values].sort((a, b) => a - b)).toEqual([1, 1.4, 1.8]);
  });
  test('the run is that of the file with the number written in', () => {
    const scenario = readyFor(sound(file(DRAWN)), airframeA, 5);
    const written = readyFor(sound(file(LAG.replace('"default": 8', '"default": 8'), String(lagFrom(scenario)), ', "events": [ { "do": "level", "when": { "heldS": { "parameter": "lagFrom" } } } ]')), airframeA, 5);
    expect(flyTrainee(scenario, airframeA, 5, 'prompt').flight.score.onsetS).toBe(flyTrainee({ ...written, events: [] }, airframeA, 5, 'prompt').flight.score.onsetS);
    expect(scenario).not.toHaveProperty('parameters');
  });
});

describe('mistakes, each at its line', () => {
  test('a name that is not there, a parameter that nothing takes, a name twice', () => {
    expect(told(file(LAG, '{ "parameter": "lagFro" }'))).toEqual([
      '2 parameters[0].name | "lagFrom" | a parameter that a number of the file takes, as { "parameter": "lagFrom" }',
      '5 faults[0].when.flapDeg | an object with parameter | a number from 0 to 60 deg',
      '5 faults[0].when.flapDeg.parameter | "lagFro" | the name of a parameter: lagFrom',
    ]);
    expect(told(file(`${LAG}, ${LAG}`))).toContain('2 parameters[1].name | "lagFrom" | a name used once');
    expect(told(file(LAG).replace(/"parameters": \[.*\],/, ''))).toContain('5 faults[0].when.flapDeg.parameter | "lagFrom" | a number; the file has no parameters');
  });
  test('a value of its range that the key does not allow, with the value', () => {
    expect(told(file(LAG.replace('"max": 12', '"max": 61')))).toEqual(['5 faults[0].when.flapDeg | the parameter "lagFrom" at 61 | a number from 0 to 60 deg']);
    expect(told(file(LAG.replace('"max": 12', '"max": 40')))).toEqual(["5 faults[0].when.flapDeg | the parameter \"lagFrom\" at 40 | at most the airframe's stop (38 deg)"]);
    expect(told(file(LAG.replace('"max": 12', '"max": 38')))).toEqual([]);
  });
  test('two that agree alone and not together at their ends', () => {
    const two = (seen: string): string => file(`{ "name": "late", "default": 2, "min": 1, "max": 3 }, { "name": "seen", "default": 0.1, "min": 0, "max": ${seen} }`, '8',
      ', "recognition": { "limitDeg": { "parameter": "late" }, "seenDeg": { "parameter": "seen" } }');
    expect(told(two('0.99'))).toEqual([]);
    expect(told(two('1.5'))).toEqual(['5 recognition.seenDeg | the parameter "seen" at 1.5 | below limitDeg (1 deg)']);
  });
  test('half a thing, where only whole ones go', () => {
    const engines = (step: string): string => file(`{ "name": "live", "default": 2, "min": 1, "max": 2${step} }`, '8').replace('"flapDeg": 4 }', '"flapDeg": 4, "liveEngines": { "parameter": "live" } }');
    expect(told(engines(''))).toEqual(['3 start.liveEngines | the parameter "live" at 1.01 | a whole number from 1 to 2']);
    expect(told(engines(', "step": 1'))).toEqual([]);
  });
  test('a default outside its range, a range the wrong way round, a value nobody asked for', () => {
    expect(told(file(LAG.replace('"default": 8', '"default": 5')))).toContain('2 parameters[0].default | 5 | from min to max');
    expect(told(file(LAG.replace('"min": 6', '"min": 13'))).join()).toContain('parameters[0].max | 12 | ');
    expect(told(file(LAG), { other: 1 })).toEqual(['1 parameters | other set to 1 | the name of a parameter: lagFrom']);
  });
  test('where no number stands, none is taken', () => {
    expect(told(file(LAG).replace('"title": "t"', '"title": { "parameter": "lagFrom" }'))).toEqual(['1 title | the parameter "lagFrom" at 8 | a text of at most 120 characters']);
  });
});

test('an editor allows a parameter wherever a number stands, and nowhere else', () => {
  const schema = jsonSchemas().scenario as Record<string, unknown>;
  const value = parse(file(LAG)) as Record<string, unknown>;
  expect(valid(schema, value)).toBe(true);
  expect(valid(schema, { ...value, title: { parameter: 'lagFrom' } })).toBe(false);
  expect(valid(schema, { ...value, parameters: [{ name: 'a', default: { parameter: 'b' }, min: 0, max: 1 }] })).toBe(false);
  expect(valid(schema, { ...value, task: { settings: [{ parameter: 'lagFrom' }], limitS: { parameter: 'x' } } })).toBe(true);
  expect(valid(schema, { ...value, task: { settings: [16], limitS: { parameter: 3 } } })).toBe(false);
  expect(tryAs(scenarioSchema, value).ok).toBe(false); // the schema alone knows no parameters taken: the door puts the numbers in
});

describe('tried at its ends once, as long as no number changes', () => {
  const wide = file(LAG.replace('"max": 12', '"max": 60'));
  test('words change nothing, right or wrong', () => {
    for (const text of [file(LAG), file(LAG.replace('"unit"', '"drawn": true, "unit"'))]) expect(told(text.replace('"brief": "b"', '"brief": "another"'))).toEqual(told(text));
    const retold = wide.replace('"title": "t"', '"title": "another"');
    expect(told(wide)).not.toEqual([]);
    expect(told(retold)).toEqual(told(wide));
  });
  test('a number that changes back and forth is tried each time', () => {
    const first = [told(file(LAG)), told(wide)];
    expect([told(file(LAG)), told(wide)]).toEqual(first);
    expect(first[0]).toEqual([]);
  });
  test('another airframe under the same name is another question', () => {
    const text = file(LAG.replaceAll('"max": 12', '"max": 34'));
    const short = { ...airframeA, gauge: airframeA.gauge, settings: airframeA.settings.filter(({ deg }) => deg <= 26), drive: { ...airframeA.drive, stopDeg: 27 } };
    const by = (airframe: typeof airframeA): number => { const got = readScenario(text, 'x.json', (name) => (name === 'airframe-a' ? airframe : undefined)); return got.ok ? 0 : got.problems.length; };
    expect([by(airframeA), by(short), by(airframeA)].map((count) => count > 0)).toEqual([false, true, false]);
  });
});
