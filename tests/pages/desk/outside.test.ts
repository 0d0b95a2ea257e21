// The form by which a desk plays the outside: every kind gives an act that the door lets in, or says what is missing.
import { describe, expect, it } from 'vitest';
import { deskActSchema, tryAs } from '../../../sim/files/index.js';
import { FRESH, hasText, isTimed, KINDS, longest, outsideAct, usualWords, type Fields, type Kind } from '../../../src/pages/desk/outside.js';

const all = KINDS.flatMap(([, kinds]) => kinds.map(([kind]) => kind));
const full: Fields = { ...FRESH, text: 'Look out.', answers: ['16', '61', ''], right: 1 };

it.each(all)('%s: an act that the door lets in', (kind) => {
  const act = outsideAct(kind, full);
  expect(act).not.toHaveProperty('missing');
  expect(tryAs(deskActSchema, act).ok).toBe(true);
});

it('a question, whole', () => {
  expect(outsideAct('callout', { ...full, text: ' How many? ', withinS: '12.5' })).toEqual({ do: 'callout', from: 'controller', text: 'How many?', answers: ['16', '61'], right: '61', withinS: 12.5 });
  expect(outsideAct('callout', { ...full, from: 'nobody', answers: ['a', 'b', 'c'], right: 2 })).toEqual({ do: 'callout', text: 'Look out.', answers: ['a', 'b', 'c'], right: 'c', withinS: 20 });
});

it('where no words are given, the usual ones', () => {
  expect(outsideAct('clearHeading', { ...FRESH, deg: '7' })).toEqual({ do: 'clearHeading', from: 'controller', text: 'Fly heading 007.', toDeg: 7, withinS: 20 });
  expect(outsideAct('clearAltitude', FRESH)).toMatchObject({ text: 'Descend to 3000 ft.', toFt: 3000 });
  expect(outsideAct('tellGoAround', FRESH)).toMatchObject({ text: 'Go around.' });
  expect(usualWords('clearHeading', { deg: '0', ft: '' })).toBe('');
});

it('who says it: a voice of two, else a text', () => {
  expect((['controller', 'otherPilot', 'cabin', 'nobody'] as const).map((from) => outsideAct('say', { ...full, from }))).toEqual([
    { do: 'say', from: 'controller', text: 'Look out.' }, { do: 'say', from: 'otherPilot', text: 'Look out.' }, { do: 'message', text: 'Cabin: Look out.' }, { do: 'message', text: 'Look out.' },
  ]);
});

describe('what is missing is said', () => {
  it.each<[string, Kind, Partial<Fields>, RegExp]>([
    ['no words', 'say', { text: '  ' }, /Words/], ['no question', 'callout', { text: '' }, /question/], ['one answer', 'callout', { answers: ['16', ' ', ''], right: 0 }, /Two answers/],
    ['the same twice', 'callout', { answers: ['16', '16 ', ''], right: 0 }, /differ/], ['right is blank', 'callout', { right: 2 }, /right/], ['no caution', 'caution', { text: '' }, /caution/],
    ['no time', 'callout', { withinS: '' }, /time allowed/], ['0.9 s', 'caution', { withinS: '0.9' }, /time allowed/], ['121 s', 'tellGoAround', { withinS: '121' }, /time allowed/],
    ['heading 0', 'clearHeading', { deg: '0' }, /heading/], ['heading 361', 'clearHeading', { deg: '361' }, /heading/], ['too high', 'clearAltitude', { ft: '26001' }, /height/], ['too low', 'descend', { ft: '-2001' }, /height/],
    ['59 kt', 'selectSpeed', { kt: '59' }, /speed/], ['a word', 'selectSpeed', { kt: 'fast' }, /speed/],
  ])('%s', (_, kind, part, why) => { expect((outsideAct(kind, { ...full, ...part }) as { missing: string }).missing).toMatch(why); });
  it('bounds are in', () => {
    for (const [kind, part] of [['caution', { withinS: '1' }], ['caution', { withinS: '120' }], ['clearHeading', { deg: '1' }], ['clearHeading', { deg: '360' }], ['descend', { ft: '-2000' }], ['clearAltitude', { ft: '26000' }], ['selectSpeed', { kt: '60' }], ['selectSpeed', { kt: '400' }]] as const) {
      const act = outsideAct(kind, { ...full, ...part });
      expect(tryAs(deskActSchema, act).ok, kind).toBe(true);
    }
  });
});

it('a text as long as the field lets it be fits', () => {
  for (const kind of all.filter(hasText)) expect(tryAs(deskActSchema, outsideAct(kind, { ...full, from: 'nobody', text: 'x'.repeat(longest(kind)) })).ok, kind).toBe(true);
  expect(all.filter(isTimed)).toEqual(['callout', 'clearHeading', 'clearAltitude', 'tellGoAround', 'caution']);
});
