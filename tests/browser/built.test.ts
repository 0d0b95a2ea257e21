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
