// What a card may tell: the task and the start, and nothing that depends on what comes.
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { airframeOf, scenarioSchema, shapeOf, type Fault, type Scenario } from '../../../sim/files/index.js';
import { CATALOGUE, FAULT_WORDS } from '../../../src/pages/faults.js';
import { cardOf } from '../../../src/pages/drill/card.js';
import { chaptersOf, groupOf, groupsOf, handRules, taskOf } from '../../../src/pages/front/asks.js';
import { readAirframe, readScenario } from '../../../src/text/index.js';

function sound<T>(read: { ok: true; value: T } | { ok: false }): T {
  if (!read.ok) throw new Error('a shipped file has a problem');
  return read.value;
}
const folder = (name: string): string[] => readdirSync(`scenarios/${name}`).filter((file) => file.endsWith('.json')).map((file) => `scenarios/${name}/${file}`);
const airframes = folder('airframes').map((file) => sound(readAirframe(readFileSync(file, 'utf8'), file)));
const find = (name: string) => airframes.find((one) => one.name === name);
const drills = folder('drills').map((file) => sound(readScenario(readFileSync(file, 'utf8'), file, find)));
const airframe = airframes[0]!;
const first: Scenario = {
  ...drills[0]!, airframe: airframe.name, events: [], role: 'flying', speedHold: true, recognition: { limitDeg: 2.5, seenDeg: 0.1, measuring: false },
  start: { ...drills[0]!.start, massT: 48, speedKt: 167, flapDeg: 4, gear: 'up', liveEngines: 2 }, task: { settings: [16], limitS: 180 },
};
const card = (scenario: Scenario) => cardOf({ scenario, airframe: airframeOf(scenario, find)! }, 1);

/** The kinds of fault that the door lets in. */
function kindsOfSchema(): string[] {
  const list = shapeOf(scenarioSchema);
  const faults = list.kind === 'object' ? list.keys.get('faults')?.shape : undefined;
  return faults?.kind === 'list' && faults.item.kind === 'choice' ? [...faults.item.options.keys()] : [];
}

/** The words of `group` that the door lets in. */
function scenarioGroups(): NonNullable<Scenario['group']>[] {
  const scenario = shapeOf(scenarioSchema);
  const group = scenario.kind === 'object' ? scenario.keys.get('group')?.shape : undefined;
  return group?.kind === 'word' ? group.words.map((word) => word as NonNullable<Scenario['group']>) : [];
}

test('the catalogue holds every kind of fault that a file can hold, each in words of its own', () => {
  const kinds = kindsOfSchema();
  expect(kinds).toContain('runsOn');
  expect(Object.keys(FAULT_WORDS).sort()).toEqual([...kinds].sort());
  const told = CATALOGUE.flatMap(({ of, may }) => may.map((one) => `${of} ${one}`));
  expect(new Set(told).size).toBe(kinds.length + 1);
});

const when = { heldS: 10 };
const faults = fc.array(fc.constantFrom<Fault>(
  { name: 'a', kind: 'disconnect', side: 'left', when }, { name: 'b', kind: 'lag', side: 'right', ratio: -1, when }, { name: 'c', kind: 'dead', when },
  { name: 'd', kind: 'pointer', side: 'drawn', mode: 'stuck', when }, { name: 'e', kind: 'blowback', side: 'right', when: { flapDeg: 9 } },
), { maxLength: 3 });
const events = fc.array(fc.constantFrom<Scenario['events'][number]>(
  { do: 'descend', toFt: 2500, pathDeg: -3, when }, { do: 'selectSpeed', speedKt: 150, when }, { do: 'failEngine', side: 'left', when },
  { do: 'message', text: 'traffic', when }, { do: 'returnMainDrive', when },
), { maxLength: 3 });

test('a card is the same with any faults and any events but callouts, and says nothing of titles and notes', () => {
  fc.assert(fc.property(fc.constantFrom(...drills), faults, events, (drill, some, happen) => {
    const callouts = drill.events.filter((event) => ['callout', 'clearHeading', 'clearAltitude', 'caution'].includes(event.do));
    const other: Scenario = { ...drill, title: 'x', notes: 'y', skill: 'z', faults: some, events: [...callouts, ...happen], mainDrive: 'returns', passes: [], fails: [] };
    expect(card(other)).toEqual(card(drill));
  }));
});

test('callouts are told, but not how many, which, or when', () => {
  const callout = (text: string, atS: number) => ({ do: 'callout' as const, text, answers: ['a', 'b'], right: 'a', withinS: 10, when: { atS } });
  const with1 = card({ ...first, events: [callout('speed?', 20)] });
  expect(with1.workload).toBe(true);
  expect(with1).toEqual(card({ ...first, events: [callout('height?', 40), callout('wind?', 60)] }));
  expect(with1).not.toEqual(card({ ...first, events: [] }));
});

test('each kind of drill stands under its own heading', () => {
  const { start } = first;
  const group = (change: Partial<Scenario>): string => groupOf({ ...first, events: [], role: 'flying', speedHold: true, ...change }, airframe).name;
  const hold = { settings: [16], limitS: 180 };
  expect(group({ task: hold })).toBe('One hold');
  expect(group({ task: hold, recognition: undefined })).toBe('Hold and call');
  expect(group({ task: { settings: [4, 9], limitS: 180 }, start: { ...start, flapDeg: 0 } })).toBe('From clean');
  expect(group({ task: hold, start: { ...start, icing: true } })).toBe('In ice');
  expect(group({ task: hold, group: 'around' })).toBe('Going around');
  expect(group({ task: { settings: [9, 16], limitS: 180 } })).toBe('Steps');
  expect(group({ task: { settings: [9, 4], limitS: 180 }, start: { ...start, flapDeg: 16 } })).toBe('Retraction');
  expect(group({ task: { settings: [36], limitS: 180 } })).toBe('Gear and thrust');
  expect(group({ task: hold, speedHold: false })).toBe('Gear and thrust');
  expect(group({ task: hold, start: { ...start, liveEngines: 1 } })).toBe('One engine');
  expect(group({ task: hold, role: 'driving' })).toBe('Another flies');
  expect(group({ task: hold, recognition: { seenDeg: 0.1, measuring: true } })).toBe('Measuring');
});

test('the rules of the hand are those the run is judged by', () => {
  const scored = handRules({ scored: true, measuring: false, limitDeg: 2.5, limitS: 180 }).join(' ');
  expect(scored).toMatch(/late from 2\.5°.*20 s behind that release, at 5° .* after 180 s/);
  expect(scored).toContain('in the aeroplane that is free');
  const measured = handRules({ scored: true, measuring: true, limitDeg: 2, limitS: 76 }).join(' ');
  expect(measured).toContain('Measuring: in the aeroplane let go in doubt.');
  expect(measured).not.toContain('free');
  expect(handRules({ scored: true, measuring: false, limitDeg: 2.5, limitS: 180, afterS: 2 }).join(' ')).toContain('It ends 2 s behind that release');
  expect(handRules({ scored: false, measuring: false, limitDeg: 2.5, limitS: 240 }).join(' ')).toMatch(/release is a pause.*needs the call.*20 s or more behind a call/);
});

test('speeds are those of the weight, and the task is marked by its settings', () => {
  const { speeds, way } = card(first);
  expect(speeds.massT).toBe(first.start.massT);
  expect(way).toEqual([first.start.flapDeg, ...first.task.settings]);
  expect(speeds.settings.map(({ settingDeg }) => settingDeg)).toEqual(airframe.settings.map(({ deg }) => deg));
  expect(card({ ...first, start: { ...first.start, icing: true } }).speeds.iceKt).toBe(airframe.limits.iceKt);
});

test('a setting whose name is a word is not read as "up to"', () => {
  expect(taskOf({ from: '4', to: ['9', '16'] })).toBe('Flaps from 4 to 9, then 16');
  expect(taskOf({ from: 'up', to: ['4'] })).toBe('Flaps from up, to 4');
});

test('groups come in the order of their first drill, and every drill stands in one', () => {
  const cards = drills.map((scenario, index) => cardOf({ scenario, airframe: airframeOf(scenario, find)! }, index + 1));
  const groups = groupsOf(cards);
  expect(groups.flatMap((group) => group.drills.map(({ number }) => number)).sort((a, b) => a - b)).toEqual(cards.map(({ number }) => number));
  const firsts = groups.map((group) => group.drills[0]!.number);
  expect(firsts).toEqual([...firsts].sort((a, b) => a - b));
});

test('every drill stands under one heading of the first page, and there are few of them', () => {
  const cards = drills.map((scenario, index) => cardOf({ scenario, airframe: airframeOf(scenario, find)! }, index + 1));
  const chapters = chaptersOf(cards);
  expect(chapters.map(({ name }) => name)).toEqual(['Hold and let go', 'Step by step', 'While you fly', 'Other conditions']);
  expect(chapters.flatMap(({ groups }) => groups.flatMap((group) => group.drills.map(({ number }) => number))).sort((a, b) => a - b)).toEqual(cards.map(({ number }) => number));
  // A word of the file's that no heading takes would lose its drills.
  for (const group of scenarioGroups()) expect(chaptersOf([{ ...cards[0]!, group: groupOf({ ...first, group }, airframe) }]), group).toHaveLength(1);
});
