// What makes `npm start` build again: any change of content, and nothing else.
import { mkdirSync, mkdtempSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

interface Fresh {
  fingerprint: (at: string) => string;
}
const { fingerprint } = (await import(new URL('../src/tools/fresh.mjs', import.meta.url).href)) as Fresh;

let top: string;
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'evenhand-fresh-'));
  for (const folder of ['sim/drive', 'src', 'scenarios', 'public']) mkdirSync(join(top, folder), { recursive: true });
  for (const file of ['vite.config.ts', 'tsconfig.json', 'package.json', 'package-lock.json', 'sim/drive/motor.ts', 'src/main.tsx', 'scenarios/a.json'])
    writeFileSync(join(top, file), `${file}\n`);
});
afterEach(() => rmSync(top, { recursive: true }));

const changes: [string, () => void][] = [
  ['an altered source', () => writeFileSync(join(top, 'sim/drive/motor.ts'), 'other\n')],
  ['a new source', () => writeFileSync(join(top, 'src/new.ts'), '')],
  ['a deleted source', () => rmSync(join(top, 'src/main.tsx'))],
  ['a renamed source', () => renameSync(join(top, 'src/main.tsx'), join(top, 'src/app.tsx'))],
  ['an altered scenario', () => writeFileSync(join(top, 'scenarios/a.json'), '{}\n')],
  ['a new picture', () => writeFileSync(join(top, 'public/icon.svg'), '<svg/>')],
  ['another lock file', () => writeFileSync(join(top, 'package-lock.json'), '{}\n')],
];

test.each(changes)('%s is seen', (_, change) => {
  const before = fingerprint(top);
  change();
  expect(fingerprint(top)).not.toBe(before);
});

test('a touched file and a file elsewhere are not', () => {
  const before = fingerprint(top);
  utimesSync(join(top, 'src/main.tsx'), 1, 1);
  mkdirSync(join(top, 'tests'));
  writeFileSync(join(top, 'tests/a.test.ts'), '');
  expect(fingerprint(top)).toBe(before);
});
