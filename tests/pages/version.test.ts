/** The page writes the version in every record; it must be that of the package. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

it('the app names the version of the package', () => {
  const { version } = JSON.parse(read('package.json')) as { version: string };
  expect(read('src/house/house.ts')).toContain(`const APP = 'evenhand ${version}';`);
});
