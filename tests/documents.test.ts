// What the two documents name is there: files, folders, scripts, pictures. So a renamed file takes its recipe along.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const top = fileURLToPath(new URL('..', import.meta.url));
const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], { cwd: top, encoding: 'utf8' }).trim().split('\n');
const read = (name: string): string => readFileSync(`${top}/${name}`, 'utf8');
const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
/** Named as what a reader is to make, or only by its pattern. */
const NOT_YET = ['tests/golden/model-N.json'];

/** Words in backquotes that look like a path; `{a,b}` stands for both. */
function pathsOf(text: string): string[] {
  const plain = text.replace(/```[^]*?```/g, '').replace(/<!-- keys -->[^]*<!-- \/keys -->/, '');
  const named = [...plain.matchAll(/`([^`\n]+)`/g)].flatMap(([, words]) => (words ?? '').split(' ')).flatMap((word) => {
    const two = /^(.*)\{(.*)\}(.*)$/.exec(word);
    return two === null ? [word] : (two[2] ?? '').split(',').map((one) => `${two[1]}${one}${two[3]}`);
  });
  return [...new Set(named.filter((word) => /^[\w./-]+\.(tsx?|mjs|jsonc?|css|md|txt)$|^(sim|src|tests|scenarios|public)\/[\w/-]*$/.test(word)))];
}

const isThere = (path: string): boolean => files.some((file) => file === path || file.endsWith(`/${path}`) || file.startsWith(path.endsWith('/') ? path : `${path}/`));

describe.each(['DEVELOPERS.md', 'README.md'])('%s', (name) => {
  const text = read(name);
  test('names no file that is not there', () => {
    const paths = pathsOf(text);
    expect(paths.filter((path) => !isThere(path) && !NOT_YET.includes(path))).toEqual([]);
    expect(paths.length).toBeGreaterThan(name === 'README.md' ? 1 : 100);
  });
  test('names no script that is not there', () => {
    const named = [...text.matchAll(/npm run ([\w-]+)/g)].map(([, script]) => script ?? '');
    expect(named.filter((script) => !(script in scripts))).toEqual([]);
  });
  test('leads and pictures lead somewhere', () => {
    for (const [, to] of text.matchAll(/\]\(([^)#]+)\)/g)) expect(files, to).toContain(to);
  });
});

/** Whole numbers from 20 to 99 in words. */
function inWords(count: number): string {
  const tens = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'][Math.floor(count / 10) - 2];
  return [tens, ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'][count % 10 - 1]].filter((word) => word !== undefined).join('-');
}

test('README counts the drills', () => {
  expect(read('README.md')).toContain(`flies ${inWords(files.filter((file) => /^scenarios\/drills\/.*\.json$/.test(file)).length)} drills`);
});

test('a recipe for a file that was renamed is found', () => {
  expect(pathsOf('its shape in `sim/files/fualt.ts`, words in `src/pages/desk/{words,owtside}.ts`').filter((path) => !isThere(path))).toEqual(['sim/files/fualt.ts', 'src/pages/desk/owtside.ts']);
});
