// Sets on the command line: `run` flies one whole, `check` computes its figures and holds it to its gates.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { checkOutput, setOutput, verifyOutput } from '../../sim/files/index.js';
import { flyRow, watcherFor } from '../../sim/index.js';
import { setText, shippedSet } from '../set/shipped.js';
import { json, type } from './typed.js';

vi.setConfig({ testTimeout: 120_000 }); // whole sets, on a machine that may be busy

const folder = mkdtempSync(join(tmpdir(), 'evenhand-set-'));
afterAll(() => rmSync(folder, { recursive: true }));
const file = (name: string, text: string): string => { writeFileSync(join(folder, name), text); return join(folder, name); };

describe('run', () => {
  const records = join(folder, 'records');
  test('flies a shipped set by name: rows, counts, records that verify', async () => {
    const { code, value, err } = await json(setOutput, 'run', 'short', '--trainee', 'loaded', '--seed', '4', '--record', records);
    expect([code, err]).toEqual([0, `12 records written: ${records}\n`]);
    expect(value.words).toEqual(['measuring: in the aeroplane let go in doubt', 'laboratory set: a side driven back is an impossible picture']);
    const { caught, late, missed, undecided, falseRelease, held, points, meanPoints } = value.counts;
    expect(caught + late + missed + undecided + falseRelease + held).toBe(12);
    expect(points).toBeCloseTo(value.runs.reduce((sum, run) => sum + run.points, 0), 9);
    expect(meanPoints).toBeCloseTo(points / 12, 9);
    const of = shippedSet('short');
    for (const run of value.runs.slice(0, 3)) {
      const rate = of.set.rates.findIndex(({ ratio }) => ratio === run.ratio);
      const row = flyRow(of.scenarios[rate]!, of.airframe, run.seed, watcherFor('loaded', 4)); // one person through the set
      expect(row).toMatchObject({ hash: run.hash, outcome: run.outcome, onsetS: run.onsetS, growthAtReleaseDeg: run.growthAtReleaseDeg });
    }
    const files = readdirSync(records).sort();
    expect(files).toEqual(Array.from({ length: 12 }, (_, at) => `run-${String(at + 1).padStart(2, '0')}.json`));
    const verdict = await json(verifyOutput, 'verify', ...files.slice(0, 4).map((name) => join(records, name)));
    expect(verdict.value.records.map(({ ok, outcome }) => [ok, outcome])).toEqual(value.runs.slice(0, 4).map(({ outcome }) => [true, outcome]));
    expect(readFileSync(join(records, files[0]!), 'utf8')).toContain('"measuring":true');
  });
  test('in words: what the set is, a row a run, the counts', async () => {
    const { code, out } = await type('run', file('s.json', setText('short')), '--trainee', 'never');
    expect(code).toBe(0);
    expect(out).toContain('SHORT (laboratory set)\nmeasuring: in the aeroplane let go in doubt\n');
    expect(out).toMatch(/\n12 runs: caught 0, late 0, missed [789], undecided 0, false releases 0, held [345]\n/);
  });
  test('inputs and traces are for one run; a folder that cannot be made is told; a wrong set is not flown', async () => {
    expect(await type('run', 'short', '--trace', '1')).toMatchObject({ code: 2, out: '' });
    expect((await type('run', 'short', '--record', join(file('in-the-way', ''), 'x'))).err).toContain('a folder that cannot be made');
    const { code, err } = await type('run', file('wrong.json', setText('short').replace('"blocks": 1', '"blocks": 5')));
    expect([code, err]).toEqual([2, expect.stringContaining('a number that divides 12 runs')]);
    expect((await type('sweep', 'short', '--runs', '3')).err).toContain('"short" is a set');
    expect((await type('run', 'standard-calmer')).err).toContain('Did you mean standard-calm?');
    expect((await type('run', file('never.json', setText('short').replace('0.3333333333333333', '0.9').replace('"limitDeg"', '"onsets": { "from": 12, "to": 12, "perRate": 6 }, "limitDeg"')))).err).toContain('The set cannot be drawn');
  });
});

describe('check', () => {
  test('a set that holds: its figures and its gates', async () => {
    const { code, value } = await json(checkOutput, 'check', file('good.json', setText('short')));
    expect(code).toBe(0);
    const [set] = value.sets;
    expect(set).toMatchObject({ runs: 12, onsets: { from: 7, to: 9, perRate: 3 }, limit: { deg: 2.5, tiedDeg: 2.5 } });
    expect(set!.gates.map(({ gate, ok }) => [gate, ok])).toEqual([['blind', true], ['blindInClass', true], ['decided', true], ['steady', true], ['endsShort', true]]);
    expect(set!.rates.map(({ degPerS }) => Math.round(degPerS * 100) / 100)).toEqual([0.15, 0.3]);
  });
  test('a set that does not: 1, with the place of the key, and the figures all the same', async () => {
    const { code, out } = await type('check', file('cheap.json', setText('short').replace('"falseRelease": 75', '"falseRelease": 20').replace('"limitDeg": 2.5', '"limitDeg": 2')));
    expect(code).toBe(1);
    expect(out).toMatch(/cheap\.json:\d+:\d+ {2}points {2}found an object with falseRelease, missed, held; allowed: at most -20; best blind policy -\d+\.\d points a run/);
    expect(out).toContain('FAILS  blind');
    expect(out).toContain('(an override: tied to 20 % it would be 2.5 deg)');
  });
});
