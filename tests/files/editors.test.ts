// The JSON Schemas that editors read: what Evenhand takes they take, and what they refuse Evenhand refuses.
import { parse } from 'jsonc-parser';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FILE_SCHEMAS, type FileKind, jsonSchemas, ready, type Schema, scriptedRecord, tryAs } from '../../sim/files/index.js';
import { flyTrainee, MODEL_VERSION } from '../../sim/index.js';
import { airframeA, airframeText, changed, drill, drillNames, drillText } from './shipped.js';
import { valid } from './draft7.js';

const schemas = jsonSchemas() as Record<FileKind, Record<string, unknown>>;
const name = drillNames[0]!;
const scenario = ready(drill(name), airframeA);
const { commands, flight } = flyTrainee(scenario, airframeA, 1, 'prompt');
const { end, hash, outcome, score } = flight;
const files: [FileKind, unknown][] = [
  ['airframe', parse(airframeText)],
  ...drillNames.map((one): [FileKind, unknown] => ['scenario', parse(drillText(one))]),
  ['inputs', [{ atS: 1, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }, { atS: 3, do: 'setThrust', tlaDeg: 20 }]],
  ['trainee', { format: 1, trainee: 'steady', lapse: 0.1, sees: 'change' }],
  ['record', JSON.parse(JSON.stringify(scriptedRecord({ model: MODEL_VERSION, app: 'test', seed: 1, airframe: airframeA, scenario, commands, end, hash, outcome, score })))],
];

test.each(files)('a right %s is right for an editor', (kind, value) => {
  expect(tryAs(FILE_SCHEMAS[kind] as Schema, value).ok).toBe(true);
  expect(valid(schemas[kind], value)).toBe(true);
});

function leaves(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (value === null || typeof value !== 'object') return [path];
  return [...(path.length > 0 ? [path] : []), ...Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, Array.isArray(value) ? Number(key) : key]))];
}

describe('altered', () => {
  const odd = fc.constantFrom<unknown>(undefined, null, true, -1, 0, 0.5, 1e6, '', 'x', 'left', 'UP CASE', [], {}, [1], { atS: 1 }, 'y'.repeat(3000));
  test('what an editor refuses is refused', () => {
    let refusedByBoth = 0;
    fc.assert(fc.property(fc.constantFrom(...files), fc.nat(), odd, fc.boolean(), ([kind, value], at, to, added) => {
      const paths = leaves(value);
      const path = paths[at % paths.length]!;
      const file = added ? changed(value, [...path.slice(0, -1), typeof path.at(-1) === 'number' ? path.at(-1)! : 'surplus'], to) : changed(value, path, to);
      const taken = tryAs(FILE_SCHEMAS[kind] as Schema, file).ok;
      const byEditor = valid(schemas[kind], file);
      if (taken) expect(byEditor, `${kind} ${path.join('.')}`).toBe(true);
      if (!taken && !byEditor) refusedByBoth += 1;
    }), { numRuns: 500 });
    expect(refusedByBoth).toBeGreaterThan(200);
  }, 60_000);
});
