// What help leads to is there, and every key that the desk takes is told.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { HOW, PAGE_KEYS } from '../../../src/pages/help/how.js';
import { routeOf } from '../../../src/pages/route.js';
import { placeOf, sections } from '../../../src/pages/help/entries.js';

test('what is opened is there', () => {
  for (const { name, href } of HOW) {
    const route = routeOf(href ?? '');
    expect(route.page, name).not.toBe('nowhere');
    if (route.page === 'help' && route.at !== null) expect(placeOf(sections(), route.at), name).not.toBeNull();
  }
});

test('every letter of the desk', () => {
  const taken = /useDeskKeys\(\{([\s\S]*?)\.\.\.remarked/.exec(readFileSync(new URL('../../../src/pages/desk/live.tsx', import.meta.url), 'utf8'))![1]!;
  const letters = [...taken.matchAll(/\b([a-z]): /g)].map(([, letter]) => letter!.toUpperCase());
  const told = PAGE_KEYS.filter(({ name }) => name.startsWith('Desk: ')).flatMap(({ name }) => name.slice(6).split(', '));
  expect(letters.length).toBeGreaterThan(6);
  expect(told.filter((one) => /^[A-Z]$/.test(one)).sort()).toEqual(letters.sort());
});
