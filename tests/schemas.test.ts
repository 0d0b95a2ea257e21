// The JSON Schemas in public/schemas are made from the schemas that check the files; a stale one would teach editors wrong keys.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';

const tool = fileURLToPath(new URL('../src/tools/schemas.mjs', import.meta.url));
const run = (...words: string[]) => spawnSync(process.execPath, [tool, ...words], { encoding: 'utf8' });
const folder = mkdtempSync(join(tmpdir(), 'evenhand-schemas-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('the committed ones are current', () => {
  const { status, stderr } = run('--check');
  expect(stderr).toBe('');
  expect(status).toBe(0);
});

test('a missing, an altered and a left-over one are told, and made good', () => {
  expect(run(folder).status).toBe(0);
  const [missing, altered] = readdirSync(folder).sort();
  rmSync(join(folder, missing!));
  writeFileSync(join(folder, altered!), 'null\n');
  writeFileSync(join(folder, 'old.json'), '{}\n');
  const check = run('--check', folder);
  expect(check.status).toBe(1);
  for (const name of [missing, altered, 'old.json']) expect(check.stderr).toContain(`${name} is not current`);
  expect(run(folder).status).toBe(0);
  expect(run('--check', folder).status).toBe(0);
});
