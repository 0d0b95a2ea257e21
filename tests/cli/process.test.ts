// The command as a process: pipes that close, signals, exit codes. Built here as the build makes it, into a folder of its own.
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { build } from 'vite';

vi.setConfig({ testTimeout: 60_000 }); // whole runs, on a machine that may be busy

const top = fileURLToPath(new URL('../..', import.meta.url));
mkdirSync(join(top, '.cache'), { recursive: true });
const folder = mkdtempSync(join(top, '.cache/cli-'));
const cli = join(folder, 'cli.js');
afterAll(() => rmSync(folder, { recursive: true }));

beforeAll(async () => {
  await build({
    configFile: false, root: top, publicDir: false, logLevel: 'error', ssr: { noExternal: true, target: 'node' },
    build: { ssr: true, outDir: folder, emptyOutDir: false, minify: false, target: 'node20', rolldownOptions: { input: { cli: join(top, 'src/cli/main.ts'), worker: join(top, 'src/cli/worker.ts') }, output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' } } },
  });
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Evenhand</title>');
}, 60_000);

const run = (...words: string[]) => spawnSync(process.execPath, [cli, ...words], { encoding: 'utf8', maxBuffer: 1e9 });

test('exit codes', () => {
  expect(run('run', 'set-16-from-4').status).toBe(0);
  expect(run('run', 'no-such-drill').status).toBe(2);
  expect(run('check', join(top, 'package.json')).status).toBe(1);
  expect(run('--help').status).toBe(0);
});

test('a long answer goes through a pipe whole', () => {
  const { stdout, status } = run('run', 'set-16-from-4', '--trace', '0.01', '--json');
  const { ticks, trace } = JSON.parse(stdout) as { ticks: number; trace: unknown[] };
  expect([status, trace.length]).toEqual([0, ticks + 1]);
  expect(stdout.length).toBeGreaterThan(200_000); // more than a pipe holds at once
});

test('a reader that goes away is no fault', () => {
  const { status, stdout, stderr } = spawnSync('bash', ['-o', 'pipefail', '-c', `"$0" "$1" run set-16-from-4 --trainee prompt --trace 0.01 | head -1`, process.execPath, cli], { encoding: 'utf8' });
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout.split('\n')).toHaveLength(2);
});

test('serve: tells its address, hands out the page, stops when told', async () => {
  const child = spawn(process.execPath, [cli, 'serve', '--port', '0'], { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<number | null>((done) => { child.on('exit', (code) => done(code)); });
  const line = await new Promise<string>((done) => { child.stdout.once('data', (data: Buffer) => done(data.toString())); });
  const url = /http:\/\/127\.0\.0\.1:\d+\//.exec(line)![0];
  expect(await (await fetch(url)).text()).toContain('<title>Evenhand</title>');
  child.kill('SIGTERM');
  expect(await ended).toBe(0);
});

test('serve: a port that is taken is told, 2', async () => {
  const other = createServer();
  await new Promise<void>((done) => { other.listen(0, '127.0.0.1', done); });
  const { port } = other.address() as { port: number };
  const { status, stderr, stdout } = run('serve', '--port', String(port));
  other.close();
  expect([status, stdout]).toEqual([2, '']);
  expect(stderr).toContain(`Port ${port} is taken`);
});
