// Triggers as sentences, worked by hand. A file that is being typed holds anything, and no sentence may break on it.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { eventWords, faultWords, timesWords, triggerWords } from '../../../src/pages/bench/words.js';
import { FILE_SCHEMAS, shapeOf } from '../../../sim/files/index.js';

test.each([
  [{ atS: 40 }, 'at 40 s'],
  [{ flapDeg: 8 }, 'when the drive passes 8 deg'],
  [{ flapDeg: 8, edge: 'rising' }, 'when the drive passes 8 deg extending'],
  [{ flapDeg: 8, edge: 'falling' }, 'when the drive passes 8 deg retracting'],
  [{ speedKt: 160, edge: 'falling' }, 'when the speed falls through 160 kt'],
  [{ altitudeFt: 3000, edge: 'rising' }, 'when the height rises through 3000 ft'],
  [{ heldS: 16 }, 'when the drive has been held for 16 s in all'],
  [{ after: 'lag' }, 'as soon as lag has acted'],
  [{ after: 'lag', delayS: 2.5 }, '2.5 s after lag'],
  [{ hazardPerS: 0.05, hazardFromS: 3, hazardForS: 30 }, 'by chance while the drive is held, 0.05 a second from 3 s of holding on for 30 s'],
  [{ all: [{ flapDeg: 8, edge: 'rising' }, { speedKt: 160, edge: 'falling' }] }, 'when the drive passes 8 deg extending and the speed falls through 160 kt'],
  [{ any: [{ atS: 9 }, { all: [{ after: 'a' }, { heldS: 2 }] }] }, 'when 9 s have passed or (a has acted and the drive has been held for 2 s in all)'],
  [{ all: [{ any: [{ atS: 9 }] }, { all: [{ atS: 1 }, { atS: 2 }] }] }, 'when 9 s have passed and 1 s have passed and 2 s have passed'],
  [{ flapDeg: { parameter: 'lagFrom' } }, 'when the drive passes lagFrom deg'],
  [{}, 'when …'], [7, 'when …'], [{ all: [] }, 'when …'], [{ speedKt: 'x' }, 'when the speed passes … kt'],
])('%j', (when, words) => expect(triggerWords(when)).toBe(words));

test.each([
  [{ kind: 'lag', side: 'right', ratio: 0.5 }, 'The right side lags at 0.5 of the rate'],
  [{ kind: 'lag', side: 'drawn', ratio: -1 }, 'A side, drawn by the seed, is driven back at 1 of the rate'],
  [{ kind: 'pointer', side: 'left', mode: 'bias', biasDeg: 2 }, 'The left pointer jumps by 2 deg'],
  [{ kind: 'nothing known' }, 'nothing known'], [{}, '…'],
])('%j', (fault, words) => expect(faultWords(fault)).toBe(words));

test('how often', () => {
  expect([{}, { times: 3 }, { times: 3, everyS: 10 }].map(timesWords)).toEqual(['', ', 3 times at most', ', 3 times at most, every 10 s']);
});

test.each([['faults', faultWords, 'kind'], ['events', eventWords, 'do']] as const)('every kind of %s has a sentence of its own', (list, words, by) => {
  const top = shapeOf(FILE_SCHEMAS.scenario);
  const item = top.kind === 'object' ? top.keys.get(list)?.shape : undefined;
  const kinds = item?.kind === 'list' && item.item.kind === 'choice' ? [...item.item.options.keys()] : [];
  expect(kinds.length).toBeGreaterThan(8);
  for (const kind of kinds) expect(words({ [by]: kind }), kind).not.toBe(kind);
});

test('no text breaks a sentence', () => {
  fc.assert(fc.property(fc.json(), (text) => {
    const value = JSON.parse(text) as never;
    for (const words of [triggerWords(value), triggerWords({ all: [value], any: value } as never), faultWords({ kind: value }), eventWords({ do: value, text: value })]) expect(typeof words).toBe('string');
  }));
});
