// The document of the bench: one history for every hand, the last sound value, and what a store may hold.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyScenario } from '../../../src/pages/bench/blank.js';
import { makeDraft } from '../../../src/pages/bench/draft.js';
import { advance, back, begin, forth, MOST_STEPS, part, type History } from '../../../src/pages/bench/history.js';
import { keptOf } from '../../../src/pages/bench/keep.js';
import { BENCH_KINDS, KINDS, readKind } from '../../../src/pages/bench/kinds.js';
import { airframeA, drill, drillNames } from '../../files/shipped.js';

const KNOWN = { airframes: new Map([['airframe-a', airframeA]]), drills: new Map(drillNames.filter((name) => name !== 'small-and-quick').slice(0, 2).map((name) => [name, drill(name)])) };
const opened = () => {
  const draft = makeDraft(KNOWN, null);
  draft.open({ kind: 'scenario', name: 'x', text: emptyScenario, own: null });
  return draft;
};

test.each(BENCH_KINDS)('a new %s is sound as it is', (kind) => {
  expect(readKind(kind, KINDS[kind].blank, '', KNOWN)).toMatchObject({ ok: true });
});

describe('history', () => {
  test('edits of one name are one step, until the hand rests', () => {
    let now = begin('a');
    for (const text of ['ab', 'abc']) now = advance(now, text, 'typing');
    expect(back(now).now).toBe('a');
    now = advance(part(now), 'abcd', 'typing');
    expect(back(now).now).toBe('abc');
    expect(advance(now, 'x', null).past).toHaveLength(3);
  });
  test('whatever is done, as many steps back lead to the beginning, and forth to the end', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(9), fc.constantFrom(null, 'a', 'b')), { maxLength: 40 }), (edits) => {
      const end = edits.reduce<History<number>>((at, [to, step]) => advance(at, to, step), begin(-1));
      let at = end;
      while (at.past.length > 0) at = back(at);
      expect(at.now).toBe(-1);
      while (at.future.length > 0) at = forth(at);
      expect([at.now, at.past]).toEqual([end.now, end.past]);
      expect(forth(end)).toBe(end);
    }));
  });
  test('the oldest steps are forgotten, not the newest', () => {
    let now = begin(0);
    for (let step = 1; step <= MOST_STEPS + 50; step += 1) now = advance(now, step, null);
    expect(now.past).toHaveLength(MOST_STEPS);
    expect(back(now).now).toBe(MOST_STEPS + 49);
  });
});

describe('the document', () => {
  test('its text is the truth: form and text change the same thing, and one way back leads through both', () => {
    const draft = opened();
    draft.put(['start', 'massT'], 50, 'field start.massT');
    draft.put(['start', 'massT'], 51, 'field start.massT');
    draft.edit(draft.text.value.replace('180', '200'), 'typing');
    expect(draft.read.value.value).toMatchObject({ kind: 'scenario', value: { start: { massT: 51 }, task: { limitS: 200 } } });
    draft.undo();
    expect(draft.read.value.value).toMatchObject({ value: { start: { massT: 51 }, task: { limitS: 180 } } });
    draft.undo();
    expect(draft.text.value).toBe(emptyScenario);
    draft.redo();
    expect(draft.text.value).toContain('"massT": 51');
    // The first step was to open it at all.
    draft.undo();
    draft.undo();
    expect([draft.text.value, draft.canUndo.value]).toEqual(['', false]);
  });
  test('while anything is wrong the last sound value stays, with every problem; of another document none', () => {
    const draft = opened();
    draft.put(['start', 'massT'], 49);
    draft.put(['start', 'massT'], 0);
    draft.put(['task', 'limitS'], 1);
    expect(draft.read.value.problems.map(({ path }) => path)).toEqual(['start.massT', 'task.limitS']);
    expect(draft.sound.value).toMatchObject({ value: { start: { massT: 49 } } });
    draft.edit('{ "format": 1,');
    expect(draft.read.value.json).toBeNull();
    expect(draft.json.value).toMatchObject({ start: { massT: 0 } });
    draft.open({ kind: 'scenario', name: 'y', text: '{}', own: null });
    expect(draft.sound.value).toBeNull();
    draft.open({ kind: 'trainee', name: 'z', text: KINDS.trainee.blank, own: null });
    expect(draft.sound.value?.kind).toBe('trainee');
  });
  test('a file of another system has its lines where the editor has them', () => {
    const draft = opened();
    draft.open({ kind: 'scenario', name: 'y', text: `\uFEFF${emptyScenario.replace('48', '0').replaceAll('\n', '\r\n')}`, own: null });
    expect(draft.text.value).toBe(emptyScenario.replace('48', '0'));
    expect(draft.read.value.problems[0]).toMatchObject({ line: 6, path: 'start.massT' });
  });
  test('what was being written is found again, told until something is written, and can be discarded', () => {
    const draft = makeDraft(KNOWN, { kind: 'scenario', name: 'x', text: emptyScenario, own: null, base: '' });
    expect([draft.found.value, draft.unsaved.value]).toEqual([true, true]);
    draft.put(['title'], 'T');
    expect(draft.found.value).toBe(false);
    draft.discard();
    expect(draft.text.value).toBe('');
    draft.undo();
    expect(draft.read.value.value).toMatchObject({ value: { title: 'T' } });
    draft.saved('one');
    expect([draft.own.value, draft.unsaved.value]).toEqual(['one', false]);
  });
});

test('once on the shelf, every moment of it is the same file there; other documents are not', () => {
  const draft = opened();
  draft.put(['title'], 'A');
  draft.open({ kind: 'scenario', name: 'b', text: emptyScenario, own: null });
  draft.put(['title'], 'B');
  draft.saved('of-b');
  draft.put(['title'], 'C');
  expect([draft.own.value, draft.unsaved.value]).toEqual(['of-b', true]);
  draft.undo();
  expect(draft.unsaved.value).toBe(false);
  draft.undo();
  expect([draft.own.value, draft.unsaved.value]).toEqual(['of-b', true]);
  draft.undo();
  expect([draft.read.value.json, draft.own.value]).toEqual([expect.objectContaining({ title: 'A' }), null]);
});

test('a store holds whatever it holds: what is no document is none', () => {
  const whole = { kind: 'scenario', name: 'x', text: '{}', own: null, base: '' };
  expect(keptOf(JSON.stringify(whole))).toEqual(whole);
  for (const wrong of [null, '', 'x', 'null', '[]', '{}', ...Object.keys(whole).filter((key) => key !== 'own').map((key) => JSON.stringify({ ...whole, [key]: 7 }))]) expect(keptOf(wrong), String(wrong)).toBeNull();
  fc.assert(fc.property(fc.json(), (text) => { keptOf(text); }));
});
