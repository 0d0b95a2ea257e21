// Help tells every key there is, and every example in it is one that flies.
import { describe, expect, test } from 'vitest';
import { eventSchema } from '../../../sim/files/event.js';
import { faultSchema } from '../../../sim/files/fault.js';
import { FILE_SCHEMAS, keyTable, ready, shapeOf, type FileKind, type Schema } from '../../../sim/files/index.js';
import { triggerSchema } from '../../../sim/files/trigger.js';
import { expand } from '../../../sim/index.js';
import { hasWords, placeOf, sections } from '../../../src/pages/help/entries.js';
import { EVENT_EXAMPLES, FAULT_EXAMPLES, KEY_EXAMPLES, TRIGGER_EXAMPLES } from '../../../src/pages/help/examples.js';
import { COMMANDS, PAGES } from '../../../src/pages/help/guide.js';
import { SCORES } from '../../../src/pages/help/words.js';
import { main } from '../../../src/cli/program.js';
import { PLACES } from '../../../src/pages/places.js';
import { OUTCOME_WORDS } from '../../../src/pages/words.js';
import { readScenario } from '../../../src/text/index.js';
import { airframeA, lookup } from '../../files/shipped.js';

const wordsOf = (schema: Schema): string[] => { const shape = shapeOf(schema as never); return shape.kind === 'choice' ? [...shape.options.keys()] : shape.kind === 'object' ? [...shape.keys.keys()] : []; };
const FIRST = '{ "name": "first", "kind": "lag", "side": "left", "ratio": 0.5, "when": { "atS": 1 } }';
const file = (faults: string[], events: string[], more = ''): string => `{ "format": 1, "title": "t", "brief": "b", "airframe": "airframe-a", ${more}
  "start": { "massT": 48, "altitudeFt": 5600, "speedKt": 167, "flapDeg": 4 }, "task": { "settings": [16], "limitS": 100 }, "faults": [${faults.join(', ')}], "events": [${events.join(', ')}] }`;
const problems = (text: string): unknown[] => { const read = readScenario(text, 'example', lookup); return read.ok ? [] : read.problems; };
const dead = (when: string): string => `{ "name": "dead", "kind": "dead", "when": ${when} }`;

describe('examples', () => {
  test('one for every kind of fault, trigger and event, and none for what is not there', () => {
    expect(Object.keys(FAULT_EXAMPLES).sort()).toEqual(wordsOf(faultSchema).sort());
    expect(Object.keys(EVENT_EXAMPLES).sort()).toEqual(wordsOf(eventSchema).sort());
    expect(Object.keys(TRIGGER_EXAMPLES).sort()).toEqual(wordsOf(triggerSchema).sort());
  });
  test.each(Object.entries(FAULT_EXAMPLES))('fault %s', (kind, { text }) => {
    expect(problems(file([text], []))).toEqual([]);
    expect(text).toContain(`"kind": "${kind}"`);
  });
  test.each(Object.entries(TRIGGER_EXAMPLES))('trigger %s', (key, { text }) => {
    const read = readScenario(file([FIRST, dead(text)], []), 'example', lookup);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(() => expand(ready(read.value, airframeA), airframeA, 1)).not.toThrow();
    expect(text).toContain(`"${key}"`);
  });
  test.each(Object.entries(EVENT_EXAMPLES))('event %s', (word, { text }) => {
    expect(problems(file([FIRST], [text], word === 'loseMainDrive' ? '"mainDrive": "works",' : ''))).toEqual([]);
    expect(text).toContain(`"do": "${word}"`);
  });
  test('times, and parameters with the place that is told beside them', () => {
    expect(problems(file([KEY_EXAMPLES['faults.times']!.text], []))).toEqual([]);
    const { text, does } = KEY_EXAMPLES['parameters']!;
    const taken = /"when": (\{.*?\} \})/.exec(does)![1]!;
    expect(problems(file([dead(taken)], [], `${text},`))).toEqual([]);
  });
  test('a spoiled example is found', () => expect(problems(file([FAULT_EXAMPLES['lag']!.text.replace('0.5', '5')], []))).toHaveLength(1));
});

describe('entries', () => {
  const all = sections();
  test('every key of every file an instructor writes, with meaning', () => {
    for (const kind of ['scenario', 'set', 'trainee', 'airframe', 'course'] satisfies FileKind[]) {
      const told = new Set(all.find(({ id }) => id === `${kind}-file`)!.entries.map(({ name }) => name.split(': ')[0]));
      const keys = keyTable(kind).map(({ path }) => path).filter((path) => !/^events\[\]\.(when|times|everyS)\b|^(steps\[\]\.(set|drill)\.|firstLook\.fault\.)/.test(path));
      expect(keys.filter((path) => !told.has(path))).toEqual([]);
      expect(keys.length).toBeGreaterThan(10);
    }
    expect(Object.keys(FILE_SCHEMAS)).toEqual(expect.arrayContaining(['scenario', 'set', 'trainee', 'airframe', 'course']));
  });
  test('each has an address of its own, and is found by it', () => {
    const ids = all.flatMap(({ id, entries }) => [id, ...entries.map((entry) => entry.id)]);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    for (const id of ids) expect(placeOf(all, id)?.section.id, id).toBeDefined();
    expect(placeOf(all, 'faults.when.hazardPerS')).toMatchObject({ section: { id: 'scenario-file' }, entry: 'faults.when.hazardPerS' });
    expect(placeOf(all, 'faults.kind.lag')?.entry).toBe('faults.kind.lag');
    expect(placeOf(all, 'faults.ratio.slip')?.entry).toBe('faults.ratio.slip');
    expect(placeOf(all, 'set.rates.ratio')?.section.id).toBe('set-file');
    expect(placeOf(all, 'nothing')).toBeNull();
  });
  test('search takes words in any order, in either case, from meanings and names', () => {
    const found = (typed: string): string[] => all.flatMap(({ entries }) => entries.filter((entry) => hasWords(entry, typed)).map(({ id }) => id));
    expect(found('HAZARD held')).toContain('faults.when.hazardPerS');
    expect(found('held hazard')).toEqual(found('HAZARD held'));
    expect(found('blowback')).toContain('faults.kind.blowback');
    expect(found('zzz')).toEqual([]);
  });
  test('every place a page leads to, every outcome, every command', async () => {
    const pages = PAGES.map(({ name }) => name);
    expect(PLACES.flat().map(({ name }) => name).filter((name) => !pages.includes(name))).toEqual([]);
    const outcomes = SCORES.map(({ name }) => name.toLowerCase()).join(', ');
    expect(Object.values(OUTCOME_WORDS).filter((word) => !outcomes.includes(word))).toEqual([]);
    let printed = '';
    await main(['--help'], { out: (text: string) => { printed += text; }, err: () => undefined } as never);
    const commands = [...printed.slice(printed.indexOf('Commands:')).matchAll(/^ {2}([a-z]+) /gm)].map(([, name]) => name).filter((name) => name !== 'help');
    expect(commands).toContain('sweep');
    expect(new Set(COMMANDS.map(({ name }) => name.replace('evenhand ', '')))).toEqual(new Set(commands));
  });
  test('no figure of the trade, and the caution first', () => {
    expect(all[0]!.entries.map(({ text }) => text).join(' ')).toMatch(/approved manuals, procedures and licensed instruction come before/);
  });
});
