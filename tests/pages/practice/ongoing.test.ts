// What a store may hold of a practice, and the one pair of figures that a page has from the model.
import { expect, test } from 'vitest';
import { RATE_RANGE } from '../../../sim/index.js';
import { ongoingOf } from '../../../src/pages/practice/ongoing.js';
import { RATES } from '../../../src/pages/practice/rates.js';

const good = { practice: { degPerS: 0.2, runs: 3 }, seed: 7, runs: [{ degPerS: 0.2, easy: false, outcome: 'caught' }] };

test('a practice comes back as it was kept', () => expect(ongoingOf(JSON.stringify(good))).toEqual(good));
test.each([
  null, '', 'x', '[]', '{}', '7', '{"practice":{}}', JSON.stringify({ ...good, practice: { degPerS: -1, runs: 3 } }), JSON.stringify({ ...good, seed: 'x' }),
])('%s is none', (text) => expect(ongoingOf(text)).toBe(null));
test('odd runs are left out', () => expect(ongoingOf(JSON.stringify({ ...good, runs: [null, { degPerS: 'x' }, ...good.runs] }))?.runs).toEqual(good.runs));
test('the picture shows the rates that a practice goes to', () => expect(RATES).toEqual(RATE_RANGE));
