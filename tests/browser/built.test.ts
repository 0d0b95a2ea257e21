// What the build made, taken as a user takes it. A fresh build stands before any test here (setup.mjs).
import { spawnSync } from 'node:child_process';
import { accessSync, constants, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { bareModule } from '../bare.js';

const top = fileURLToPath(new URL('../..', import.meta.url));
const dist = join(top, 'dist');

test('the built sim loads in the bare world', async () => {
  const sim = await bareModule(join(dist, 'sim.js'));
  expect(sim.advance).toBeTypeOf('function');
});

test('the built command line can be run by its name', () => {
  accessSync(join(dist, 'cli.js'), constants.X_OK);
  expect(readFileSync(join(dist, 'cli.js'), 'utf8').startsWith('#!/usr/bin/env node\n')).toBe(true);
  const { status, stdout } = spawnSync(join(dist, 'cli.js'), ['--help'], { encoding: 'utf8' });
  expect(status).toBe(0);
  expect(stdout).toContain('serve');
});

test('the libraries are found by their names', () => {
  // Node resolves a package's own name through its exports (Node documentation, "Self-referencing a package using its name").
  const code = "const [a, b] = await Promise.all([import('evenhand/sim'), import('evenhand/files')]); console.log(typeof a.advance, typeof b.scenarioSchema)";
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', code], { cwd: top, encoding: 'utf8' });
  expect(stderr).toBe('');
  expect(stdout).toBe('function object\n');
});

test('the package holds what its manifest names, and nothing of the tests', () => {
  const { stdout } = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], { cwd: top, encoding: 'utf8' });
  const [{ files }] = JSON.parse(stdout) as [{ files: { path: string }[] }];
  const packed = new Set(files.map(({ path }) => path));
  const { bin, exports } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8')) as { bin: Record<string, string>; exports: Record<string, string | Record<string, string>> };
  const named = [...Object.values(bin), ...Object.values(exports).flatMap((one) => (typeof one === 'string' ? [one] : Object.values(one)))].map((path) => path.replace('./', ''));
  expect(named.length).toBeGreaterThan(4);
  expect([...named, 'dist/index.html', 'dist/worker.js', 'scenarios/drills/set-16-from-4.json', 'README.md'].filter((path) => !packed.has(path))).toEqual([]);
  expect([...packed].filter((path) => /\.tsx?$|\.mjs$|tsbuildinfo|types\/tests/.test(path) && !path.endsWith('.d.ts'))).toEqual([]);
});
