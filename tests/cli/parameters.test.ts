// --set: the number of a parameter for one run, or for a whole sweep.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import { FILE_SCHEMAS, keysOutput, runOutput, sweepOutput, type RunRecord } from '../../sim/files/index.js';
import { WRITTEN_KINDS } from '../../src/cli/tables.js';
import { json, type } from './typed.js';

vi.setConfig({ testTimeout: 60_000 });

const folder = mkdtempSync(join(tmpdir(), 'evenhand-parameters-'));
afterAll(() => rmSync(folder, { recursive: true }));
const drill = join(folder, 'drill.json');
writeFileSync(drill, `{ "format": 1, "title": "t", "brief": "b", "airframe": "airframe-a",
  "parameters": [ { "name": "from", "default": 6, "min": 5, "max": 8, "step": 1, "unit": "s", "drawn": true } ],
  "start": { "massT": 48, "altitudeFt": 5000, "speedKt": 167, "flapDeg": 4, "flapLeverDeg": 16, "guard": "open" },
  "task": { "settings": [16], "limitS": 40, "afterS": 1 }, "recognition": {},
  "faults": [ { "name": "stop", "kind": "disconnect", "side": "right", "when": { "heldS": { "parameter": "from" } } } ] }`);

test('run: the number set, and the record holds it and nothing of the parameter', async () => {
  const record = join(folder, 'record.json');
  const { value } = await json(runOutput, 'run', drill, '--set', 'from=7', '--record', record);
  const flown = JSON.parse(readFileSync(record, 'utf8')) as RunRecord;
  expect(flown.scenario.faults[0]?.when).toEqual({ heldS: 7 });
  expect(flown.scenario).not.toHaveProperty('parameters');
  expect((await type('verify', record)).code).toBe(0);
  const again = await json(runOutput, 'run', drill, '--set', 'from=7');
  expect(again.value.hash).toBe(value.hash);
});

test('run: drawn by the seed where nobody sets it, and the record says what was drawn', async () => {
  const drawn = new Set<unknown>();
  for (const seed of ['1', '2', '3', '4', '5', '6']) {
    const record = join(folder, `drawn-${seed}.json`);
    await type('run', drill, '--seed', seed, '--record', record);
    drawn.add((JSON.parse(readFileSync(record, 'utf8')) as RunRecord).scenario.faults[0]?.when.heldS);
  }
  for (const value of drawn) expect([5, 6, 7, 8]).toContain(value);
  expect(drawn.size).toBeGreaterThan(1);
});

test('sweep: drawn anew in every run, the same every time; set, in none', async () => {
  const onsets = async (...more: string[]) => (await json(sweepOutput, 'sweep', drill, '--runs', '6', '--seed', '2', '--workers', '1', ...more)).value;
  const [one, again, set] = [await onsets(), await onsets(), await onsets('--set', 'from=5')];
  expect(one.hash).toBe(again.hash);
  expect(set.hash).not.toBe(one.hash);
});

test('a value out of range, a name that is not there, no number at all: 2, and what is allowed', async () => {
  const out = await type('run', drill, '--set', 'from=9');
  expect([out.code, out.err]).toEqual([2, expect.stringContaining('parameters[0]  found from set to 9; allowed: a number from 5 to 8 s')]);
  const other = await type('run', drill, '--set', 'form=6');
  expect([other.code, other.err]).toEqual([2, expect.stringContaining('allowed: the name of a parameter: from')]);
  expect((await type('run', drill, '--set', 'from')).code).toBe(2);
  expect((await type('run', 'standard-calm', '--set', 'from=6')).err).toContain('--set is for the parameters of one scenario');
});

test('keys: a line a key, of each kind that is written by hand; another kind is refused', async () => {
  const { code, out } = await type('keys', 'trainee');
  expect(code).toBe(0);
  expect(out).toMatch(/^lapse +a number from 0 to 1 +Chance a run that nothing is noticed\.$/m);
  const { value } = await json(keysOutput, 'keys');
  expect(value.kind).toBe('scenario');
  expect(value.keys).toContainEqual({ path: 'start.groundFt', unit: 'ft', allowed: 'a number from -1500 to 15000 ft', default: '0', meaning: 'Height of the ground above sea level.' });
  expect((await type('keys', 'record')).code).toBe(2);
  expect([...WRITTEN_KINDS, 'record'].sort()).toEqual(Object.keys(FILE_SCHEMAS).sort());
});
