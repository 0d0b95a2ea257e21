// The house rules, read from the sources themselves. The table of who may import whom: tests/architecture/table.ts.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { banProblems } from './architecture/bans.js';
import { faceProblems } from './architecture/faces.js';
import { circles, importProblems } from './architecture/layers.js';
import { linesProblems } from './architecture/lines.js';
import { readSources } from './architecture/source.js';

const top = fileURLToPath(new URL('..', import.meta.url));
const sources = readSources(top, ['sim', 'src']);

test('there is something to read', () => {
  expect(sources.filter(({ path }) => path.startsWith('sim/')).length).toBeGreaterThan(20);
  expect(sources.filter(({ path }) => path.startsWith('src/')).length).toBeGreaterThan(5);
});

test('imports run one way', () => {
  expect(importProblems(sources)).toEqual([]);
});

test('no import comes round to where it started', () => {
  expect(circles(sources)).toEqual([]);
});

test('sim has no clock, no dice, no page, no network, no waiting, and only arithmetic that is the same everywhere', () => {
  expect(sources.flatMap(banProblems)).toEqual([]);
});

test('a file is one noun', () => {
  expect(sources.flatMap(linesProblems)).toEqual([]);
});

test('every name of the package says what it is, every number in it of what', () => {
  expect(faceProblems(sources, ['sim/index.ts', 'sim/files/index.ts'])).toEqual([]);
});

test('DEVELOPERS.md stays under 250 lines', () => {
  const file = join(top, 'DEVELOPERS.md');
  const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n').length : 0;
  expect(lines, 'say it in fewer lines, or fold a block of the table of keys (FOLDED in src/tools/schemas.mjs)').toBeLessThan(250);
});

test('the lock file names no registry', () => {
  const lock = readFileSync(join(top, 'package-lock.json'), 'utf8');
  expect(lock).toContain('"integrity"');
  expect(lock).not.toContain('"resolved"');
});
