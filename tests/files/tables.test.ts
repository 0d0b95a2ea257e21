// Shapes, words, key tables and JSON Schemas are all made from the same schemas; here they are held against the files.
import { parse } from 'jsonc-parser';
import { describe, expect, test } from 'vitest';
import { airframeSchema, allowedBy, FILE_SCHEMAS, jsonSchemas, keyTable, keyTableMarkdown, oneOf, scenarioSchema, shapeOf, type ObjectShape, type Shape } from '../../sim/files/index.js';
import { airframeText } from './shipped.js';

const scenario = shapeOf(scenarioSchema) as ObjectShape;
const key = (shape: Shape, name: string): Shape => (shape as ObjectShape).keys.get(name)!.shape;

describe('what is allowed, in words', () => {
  const start = key(scenario, 'start');
  test.each<[string, string]>([
    ['speedKt', 'a number from 60 to 400 kt'], ['motorHeat', 'a number from 0 to 1.2'], ['liveEngines', 'a whole number from 1 to 2'],
    ['guard', '"closed" or "open"'], ['icing', 'true or false'],
  ])('start.%s: %s', (name, words) => expect(allowedBy(key(start, name))).toBe(words));
  test('a time tells its grid', () => expect(allowedBy(key(key(scenario, 'task'), 'limitS'))).toBe('a number from 5 to 3600 s (a whole number of hundredths of a second)'));
  test('lists, texts, either, null', () => {
    expect(allowedBy(key(key(scenario, 'task'), 'settings'))).toBe('a list of 1 to 12');
    expect(allowedBy(key(scenario, 'title'))).toBe('a text of at most 120 characters');
    expect(allowedBy(key(scenario, 'airframe'))).toBe('letters a-z, digits and hyphens, 1 to 64 of them; or an object');
    const setting = (key(shapeOf(airframeSchema), 'settings') as Extract<Shape, { kind: 'list' }>).item;
    expect(allowedBy(key(setting, 'limitKt'))).toBe('a number from 60 to 400 kt, or null');
  });
  test('words', () => { expect(oneOf(['a'])).toBe('"a"'); expect(oneOf(['a', 'b', 'c'])).toBe('"a", "b" or "c"'); });
});

describe('key tables', () => {
  test('every key of the shipped airframe has its row, and a meaning', () => {
    const rows = new Map(keyTable('airframe').map((row) => [row.path, row]));
    const paths = (value: unknown, path: string): string[] => {
      if (Array.isArray(value)) return value.flatMap((item) => paths(item, `${path}[]`));
      if (value === null || typeof value !== 'object') return [];
      return Object.entries(value).flatMap(([name, inner]) => [path === '' ? name : `${path}.${name}`, ...paths(inner, path === '' ? name : `${path}.${name}`)]);
    };
    for (const path of new Set(paths(parse(airframeText), ''))) expect(rows.has(path), path).toBe(true);
  });
  test('every number has a unit or is a pure one, and every leaf of an instructor\'s file a meaning', () => {
    for (const kind of ['airframe', 'scenario'] as const) {
      for (const row of keyTable(kind)) if (!/object|list/.test(row.allowed)) expect(row.meaning, row.path).not.toBe('');
    }
  });
  test('defaults and required keys of a scenario', () => {
    const rows = keyTable('scenario');
    const of = (path: string) => rows.find((row) => row.path === path)?.default;
    expect(of('start.speedKt')).toBe('required');
    expect(of('start.gear')).toBe('"up"');
    expect(of('start.flapLeverDeg')).toBe('');
    expect(of('speedHold')).toBe('true');
  });
  test('a key of some kinds names them; triggers inside triggers are not repeated', () => {
    const rows = keyTable('scenario');
    expect(rows.map(({ path }) => path)).toContain('faults[].ratio (lag)');
    expect(rows.filter(({ path }) => path.endsWith('when.atS'))).toHaveLength(2);
    expect(rows.some(({ path }) => path.includes('all[].all'))).toBe(false);
  });
  test('Markdown has a line a path, the words of a choice on one', () => {
    const paths = new Set(keyTable('inputs').map(({ path }) => path));
    expect(keyTableMarkdown('inputs').split('\n')).toHaveLength(paths.size + 2);
    expect(keyTableMarkdown('scenario').split('\n').find((line) => line.includes('`faults[].kind`'))).toMatch(/"disconnect" The side .* "leadingEdge" The leading/);
  });
});

describe('JSON Schemas', () => {
  const schemas = jsonSchemas() as Record<string, { definitions?: Record<string, { properties: Record<string, { description?: string; properties?: Record<string, object> }> }> }>;
  test('one for each kind of file, of draft 7', () => {
    expect(Object.keys(schemas).sort()).toEqual(Object.keys(FILE_SCHEMAS).sort());
    for (const schema of Object.values(schemas)) expect(schema).toHaveProperty('$schema', 'http://json-schema.org/draft-07/schema#');
  });
  test('a number has its range or is taken from a parameter, and its unit stands in the description', () => {
    const start = schemas.scenario!.definitions!.scenario!.properties.start!;
    expect(start.properties!.speedKt).toEqual({
      description: 'Calibrated airspeed. [kt]', anyOf: [{ type: 'number', minimum: 60, maximum: 400 }, { $ref: '#/definitions/taken' }],
    });
    expect(/"unit":"/.test(JSON.stringify(schemas))).toBe(false); // `unit` is also a key of a parameter, and that is an object
  });
  test('keys with defaults may be left out, unknown keys may not stand', () => {
    const text = JSON.stringify(schemas.scenario!.definitions!.scenario!.properties.start);
    expect(JSON.parse(text)).toMatchObject({ required: ['massT', 'altitudeFt', 'speedKt', 'flapDeg'], additionalProperties: false });
  });
});
