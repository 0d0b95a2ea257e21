// `sweep`: in this process, and as a process with worker threads: the same answer for any number of them, and a clean stop.
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { build } from 'vite';
import { sweepOutput } from '../../sim/files/index.js';
import { flyTrainee, seedsOf } from '../../sim/index.js';
import { progressOf, progressText } from '../../src/cli/progress.js';
import { AIRFRAME, drill } from '../sim/bench.js';
import { json, type } from './typed.js';

vi.setConfig({ testTimeout: 60_000 }); // whole runs, on a machine that may be busy

describe('in this process', () => {
  test('as JSON: outcomes are those of `run` with the seeds of the sweep', async () => {
    const { code, value, err } = await json(sweepOutput, 'sweep', 'set-16-from-4', '--trainee', 'slow', '--runs', '3', '--seed', '5', '--workers', '1');
    expect([code, err]).toEqual([0, '']);
    const flown = seedsOf(5, 3).map((seed) => flyTrainee(drill('set-16-from-4'), AIRFRAME, seed, 'slow').flight);
    for (const { outcome, k } of value.outcomes) expect(k).toBe(flown.filter((flight) => flight.outcome === outcome).length);
    expect(value.outcomes.reduce((sum, { k }) => sum + k, 0)).toBe(3);
    expect(value.finalSplitDeg!.most).toBe(Math.max(...flown.map(({ score }) => score.finalSplitDeg)));
  });
  test('in words: the difficulty first, then outcomes, quantiles, histograms', async () => {
    const { code, out } = await type('sweep', 'set-16-from-4', '--trainee', 'steady', '--runs', '4', '--workers', '1');
    expect(code).toBe(0);
    expect(out).toMatch(/^An ordinary watcher lets go within 2\.5 deg in \d+ of 100 runs/);
    expect(out).toMatch(/\n {2,}least +5 % +25 % +median/);
    expect(out).toContain('\ngrowth at release, deg\n');
  });
  test.each([[['--runs', '0']], [['--runs', '1.5']], [['--runs', '3', '--workers', '0']], [['--runs', '3', '--trainee', 'patient']], [[]]])('wrong usage %j: 2', async (words) => {
    const { code, out, err } = await type('sweep', 'set-16-from-4', ...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/Allowed|required/);
  });
});

describe('progress', () => {
  test('percent, pace and time left', () => {
    expect(progressText(50, 200, 'runs', 2)).toBe('25 %, 25 runs/s, 6 s left');
    expect(progressText(1, 3, 'runs', 0.5)).toBe('33 %, 2.0 runs/s, 1 s left');
    expect(progressText(0, 3, 'runs', 0)).toBe('0 %, 0.0 runs/s');
  });
  test('on a screen one line is written over and cleared; in a file lines stand now and then', () => {
    const lines = (screen: boolean): string => {
      let now = 0;
      let said = '';
      const progress = progressOf({ out: () => {}, err: (text) => { said += text; }, screen }, 100, 'runs', () => now);
      for (let i = 0; i < 100; i += 1) { now += 100; progress.add(1); }
      progress.end();
      return said;
    };
    expect(lines(true)).toMatch(/^(\r\d+ %[^\r\n]*)+\r +\r$/);
    expect(lines(false)).toBe('50 %, 10 runs/s, 5 s left\n100 %, 10 runs/s, 0 s left\n');
  });
});

describe('as a process', () => {
  const top = fileURLToPath(new URL('../..', import.meta.url));
  mkdirSync(join(top, '.cache'), { recursive: true });
  const folder = mkdtempSync(join(top, '.cache/sweep-'));
  const cli = join(folder, 'cli.js');
  afterAll(() => rmSync(folder, { recursive: true }));
  beforeAll(async () => {
    await build({
      configFile: false, root: top, publicDir: false, logLevel: 'error', ssr: { noExternal: true, target: 'node' },
      build: {
        ssr: true, outDir: folder, emptyOutDir: false, minify: false, target: 'node20',
        rolldownOptions: { input: { cli: join(top, 'src/cli/main.ts'), worker: join(top, 'src/cli/worker.ts') }, output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' } },
      },
    });
  }, 60_000);
  const words = (workers: number, runs = 20): string[] => ['sweep', 'set-16-from-4', '--trainee', 'loaded', '--runs', String(runs), '--workers', String(workers), '--json'];

  test('1, 2, 3 and 7 workers say the same, to the last digit', () => {
    const answers = [1, 2, 3, 7].map((workers) => spawnSync(process.execPath, [cli, ...words(workers)], { encoding: 'utf8' }));
    for (const { status, stdout } of answers) {
      expect(status).toBe(0);
      expect(stdout).toBe(answers[0]!.stdout);
    }
    expect(JSON.parse(answers[0]!.stdout)).toMatchObject({ runs: 20, trainee: 'loaded' });
  });

  test.each([1, 2])('a signal stops it, with %i workers: words on standard error, nothing on the other, 130', async (workers) => {
    const child = spawn(process.execPath, [cli, ...words(workers, 1_000_000)], { stdio: ['ignore', 'pipe', 'pipe'] });
    let out = '';
    let err = '';
    child.stdout.on('data', (data: Buffer) => { out += data.toString(); });
    const flies = new Promise<void>((done) => { child.stderr.on('data', (data: Buffer) => { err += data.toString(); if (err.includes('%')) done(); }); });
    const ended = new Promise<number | null>((done) => { child.on('close', (code) => done(code)); });
    await flies;
    child.kill('SIGINT');
    expect(await ended).toBe(130);
    expect(out).toBe('');
    expect(err).toMatch(/Cancelled after \d+ of 1000400 runs; nothing is told of them\.\n$/);
  });
});
