// Set files at the door: what is taken, and each problem with its place and what is allowed.
import { describe, expect, it } from 'vitest';
import { jsonSchemas, type FileKind } from '../../sim/files/index.js';
import { readAny, readSet, type Read } from '../../src/text/index.js';
import { parse } from 'jsonc-parser';
import { setNames, setText } from '../set/shipped.js';
import { valid } from './draft7.js';
import { changed, drill, lookup } from './shipped.js';

const told = (read: Read<unknown>): string[] => (read.ok ? [] : read.problems.map(({ path, found, allowed }) => `${path} | ${found} | ${allowed}`));
const drills = (name: string) => (name === 'set-16-from-4' ? drill(name) : undefined);
const base = parse(setText('true-drive-calm')) as Record<string, unknown>;
const read = (value: unknown): string[] => told(readSet(JSON.stringify(value), 's.json', lookup, drills));

describe.each(setNames)('%s', (name) => {
  it('is taken, as a set, by every door', () => {
    const any = readAny(setText(name), name, lookup);
    expect(any.ok && any.value.kind).toBe('set');
    expect(valid((jsonSchemas() as Record<FileKind, Record<string, unknown>>).set, parse(setText(name)))).toBe(true);
  });
});

it('a set may name a shipped drill that has nothing of its own to score', () => {
  expect(read({ ...base, scenario: 'no-such-drill' })).toEqual(['scenario | "no-such-drill" | the name of a shipped drill, or a scenario in full']);
  expect(read({ ...base, scenario: 'set-16-from-4' })).toContain('scenario | "set-16-from-4" | no fault: the set has its own');
});

describe('refused', () => {
  const fault = { name: 'a', kind: 'dead', when: { atS: 1 } };
  const callout = { do: 'callout', when: { atS: 1 }, text: 'Two?', answers: ['1', '2'], right: '2', withinS: 5 };
  it.each<[string, (string | number)[], unknown, string]>([
    ['runs that do not fall into blocks', ['blocks'], 4, 'blocks | 4 | a number that divides 30 runs'],
    ['a leg that ends with the window', ['legS'], 39, 'legS | 39 | more than onsetFromS and onsetForS (39 s)'],
    ['a ratio that stands twice', ['rates', 1, 'ratio'], 0.5, 'rates[1].ratio | 0.5 | a ratio that stands once'],
    ['a side that leads', ['rates', 0, 'ratio'], 1, 'rates[0].ratio | 1 | a number from -4 to 0.95'],
    ['no quiet run', ['quiet'], 0, 'quiet | 0 | a number from 0.05 to 0.9'],
    ['nothing seen below the limit', ['seenDeg'], 2, 'seenDeg | 2 | below limitDeg (1.5 deg)'],
    ['a fault of the scenario', ['scenario', 'faults'], [fault], 'scenario.faults | a list of 1 entry | no fault: the set has its own'],
    ['recognition of the scenario', ['scenario', 'recognition'], {}, 'scenario.recognition | an empty object | no recognition: the set says what is scored'],
    ['two settings', ['scenario', 'task', 'settings'], [9, 16], 'scenario.task.settings | a list of 2 entries | one setting'],
    ['a leg of the scenario', ['scenario', 'task', 'legS'], 20, 'scenario.task.legS | 20 | no leg: the set has its own'],
    ['no time to begin', ['scenario', 'task', 'limitS'], 95, 'scenario.task.limitS | 95 | at least legS and 20 s to begin (96 s)'],
    ['a scenario that cannot be flown', ['scenario', 'start', 'massT'], 20, 'scenario.start.massT | 20 | a mass of this airframe: from 33.5 to 60 t'],
    ['an airframe that is not there', ['scenario', 'airframe'], 'airframe-z', 'scenario.airframe | "airframe-z" | the name of a shipped airframe, or an airframe in full'],
    ['calm with callouts', ['scenario', 'events'], [callout], 'load | "calm" | "loaded": the scenario wants answers beside the flaps'],
    ['calm with a caution', ['scenario', 'events'], [{ do: 'caution', when: { atS: 1 }, text: 'uneven', withinS: 5 }], 'load | "calm" | "loaded": the scenario wants answers beside the flaps'],
    ['calm with a heading', ['scenario', 'events'], [{ do: 'clearHeading', when: { atS: 1 }, text: 'Turn.', toDeg: 90, withinS: 5 }], 'load | "calm" | "loaded": the scenario wants answers beside the flaps'],
    ['calm with a height', ['scenario', 'events'], [{ do: 'clearAltitude', when: { atS: 1 }, text: 'Down.', toFt: 4000, withinS: 5 }], 'load | "calm" | "loaded": the scenario wants answers beside the flaps'],
    ['loaded without', ['load'], 'loaded', 'load | "loaded" | "calm": the scenario wants nothing beside the flaps'],
    ['more onsets than runs', ['onsets'], { from: 20, to: 31, perRate: 4 }, 'onsets | an object with from, to, perRate | at most 30 runs with an onset, enough of them for every rate'],
    ['onsets from more to less', ['onsets'], { from: 20, to: 19, perRate: 4 }, 'onsets.from | 20 | at most to (19)'],
    ['an unknown key', ['rate'], 1, 'rate | an unknown key | did you mean rates?'],
  ])('%s', (_, path, to, problem) => {
    const value = path[0] === 'seenDeg' ? { ...base, limitDeg: 1.5 } : base;
    expect(read(changed(value, path, to))).toEqual([problem]);
  });
});
