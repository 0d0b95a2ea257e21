// What is offered at a caret, written as "|": only what fits there, with the schema's own words.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FILE_SCHEMAS, shapeOf } from '../../sim/files/index.js';
import { suggest, tellAt, type Names } from '../../src/text/index.js';

const shape = shapeOf(FILE_SCHEMAS.scenario);
const NAMES: Names = (path) => (path.at(-1) === 'after' ? ['lag', 'calls'] : path.at(-1) === 'airframe' ? ['airframe-a'] : path[1] === 'settings' ? [4, 9, 16] : []);

const at = (marked: string) => {
  const offset = marked.indexOf('|');
  const text = marked.replace('|', '');
  const found = suggest(text, offset, shape, NAMES);
  return { text, found, labels: found?.options.map(({ label }) => label) ?? [], of: (label: string) => found?.options.find((one) => one.label === label) };
};
/** The text once an option has been taken, the caret marked. */
function taken(marked: string, label: string): string {
  const { text, found, of } = at(marked);
  const { write, caret } = of(label)!;
  return `${text.slice(0, found!.from)}${write.slice(0, caret)}|${write.slice(caret)}${text.slice(found!.to)}`;
}

describe('keys', () => {
  test('only those that fit, without those that stand there', () => {
    const { labels } = at('{ "start": { "massT": 48, | } }');
    expect(labels).toContain('speedKt');
    expect(labels).not.toContain('massT');
    expect(labels).not.toContain('task');
  });
  test('of a fault only those of its kind', () => {
    expect(at('{ "faults": [ { "kind": "lag", "|" } ] }').labels).toEqual(expect.arrayContaining(['ratio', 'side', 'when', 'name']));
    expect(at('{ "faults": [ { "kind": "lag", "|" } ] }').labels).not.toContain('periodS');
    expect(at('{ "faults": [ { "kind": "slip", "|" } ] }').labels).toContain('periodS');
  });
  test('where the kind is not told yet: the kind first, and what all kinds have', () => {
    const { labels } = at('{ "faults": [ { | } ] }');
    expect(labels[0]).toBe('kind');
    expect(labels).toContain('when');
    expect(labels).not.toContain('ratio');
  });
  test('with meaning, unit, range and default beside them', () => {
    expect(at('{ "start": { | } }').of('speedKt')).toMatchObject({ detail: 'required, a number from 60 to 400 kt', meaning: 'Calibrated airspeed.' });
    expect(at('{ "start": { | } }').of('gear')).toMatchObject({ detail: '"up" if left out, "up" or "down"' });
  });
  test('taken: a value begins where the caret stands; a colon that is there stays', () => {
    expect(taken('{ "start": { "sp|" } }', 'speedKt')).toBe('{ "start": { "speedKt": | } }');
    expect(taken('{ "start": { sp| } }', 'speedKt')).toBe('{ "start": { "speedKt": | } }');
    expect(taken('{ "start": { "sp|": 160 } }', 'speedKt')).toBe('{ "start": { "speedKt"|: 160 } }');
    expect(taken('{ | }', 'task')).toBe('{ "task": { | } }');
    expect(taken('{ | }', 'faults')).toBe('{ "faults": [|] }');
    expect(taken('{ | }', 'title')).toBe('{ "title": "|" }');
  });
  test('in a trigger inside a trigger', () => {
    expect(at('{ "faults": [ { "kind": "lag", "when": { "all": [ { "speedKt": 160, "|" } ] } } ] }').labels).toContain('edge');
  });
});

describe('values', () => {
  test.each([
    ['{ "start": { "gear": | } }', ['up', 'down']],
    ['{ "start": { "gear": "|" } }', ['up', 'down']],
    ['{ "faults": [ { "kind": "|" } ] }', ['disconnect', 'lag']],
    ['{ "faults": [ { "when": { "after": "|" } } ] }', ['lag', 'calls']],
    ['{ "airframe": | }', ['airframe-a', '{ }']],
    ['{ "task": { "settings": [|] } }', ['4', '9', '16']],
    ['{ "speedHold": | }', ['true', 'false']],
    ['{ "start": { "windKt": | } }', ['0']],
  ])('%s', (marked, some) => expect(at(marked).labels).toEqual(expect.arrayContaining(some)));
  test('a kind is told with what it does', () => {
    expect(at('{ "faults": [ { "kind": "|" } ] }').of('lag')?.meaning).toMatch(/part of the rate/);
  });
  test('taken: quotes are not doubled', () => {
    expect(taken('{ "start": { "gear": "d|" } }', 'down')).toBe('{ "start": { "gear": "down"| } }');
    expect(taken('{ "start": { "gear": d| } }', 'down')).toBe('{ "start": { "gear": "down"| } }');
  });
  test('nothing where nothing is known', () => {
    expect(at('{ "nowhere": { | } }').labels).toEqual([]);
    expect(at('{ "start": { "massT": | } }').labels).toEqual([]);
  });
});

test('every required key of a scenario is offered', () => {
  expect(at('{ | }').labels).toEqual(expect.arrayContaining(['format', 'title', 'brief', 'airframe', 'start', 'task']));
  expect(at('{ "start": { | } }').labels).toEqual(expect.arrayContaining(['massT', 'altitudeFt', 'speedKt', 'flapDeg']));
});

describe('what stands at a place', () => {
  const text = '{ "start": { "massT": 48, "gear": "up" }, "task": { "limitS": 180 }, "recognition": { "seenDeg": 0.1 } }';
  test.each([
    ['massT', 'Mass of the aeroplane.', 'a number from 1 to 700 t', 'required'], ['48', 'Mass of the aeroplane.', 'a number from 1 to 700 t', 'required'],
    ['gear', 'Gear.', '"up" or "down"', '"up" if left out'], ['0.1', /^Growth/, 'a number from 0 to 2 deg', '0.1 if left out'],
  ])('%s', (word, meaning, allowed, otherwise) => {
    const told = tellAt(text, text.indexOf(word) + 1, shape);
    expect(told).toMatchObject({ allowed, otherwise });
    expect(told?.meaning).toMatch(meaning);
  });
  test('nothing outside', () => expect(tellAt(text, 0, shape)).toBeNull());
});

test('no text and no place makes it throw', () => {
  const piece = fc.constantFrom('{', '}', '[', ']', '"', ':', ',', '"faults"', '"kind"', '"lag"', '"when"', '"all"', '"start"', '//x\n', '/*', ' ', '7', 'true', '__proto__', '"__proto__"', '\\');
  fc.assert(fc.property(fc.array(piece, { maxLength: 30 }), fc.nat(60), (parts, offset) => {
    const text = parts.join('');
    expect(() => [suggest(text, Math.min(offset, text.length), shape, NAMES), tellAt(text, Math.min(offset, text.length), shape)]).not.toThrow();
  }), { numRuns: 2000 });
});
