// Words of the outside: what is shown when. Times by hand from the file, at 100 ticks a second.
import { expect, test } from 'vitest';
import type { Act } from '../../sim/files/index.js';
import { advance, choicesOf, expand, snapshot, withNumbers } from '../../sim/index.js';
import { FT } from '../../sim/units.js';
import { cuesOf, talkNow, type Cue } from '../../src/run/cues.js';
import type { Filed } from '../../src/run/session.js';
import type { Talk } from '../../src/view/picture.js';
import { AIRFRAME, scenario } from '../sim/bench.js';

const callout = (atS: number, text: string, answers: string[], withinS: number) => ({ when: { atS }, do: 'callout', text, answers, right: answers[0], withinS });
const message = (atS: number, text: string) => ({ when: { atS }, do: 'message', text });
const filed = (tick: number, act: Act): Filed => ({ ...act, tick, rank: 2, seq: tick, stampMs: tick * 10 });

/** What is shown at the end of every tick; index is the tick count. */
function shown(events: object[], log: Filed[], ticks: number): (Talk | null)[] {
  let world = expand(scenario({ events }), AIRFRAME, 1);
  let cues: readonly Cue[] = [];
  const all: (Talk | null)[] = [null];
  for (let tick = 0; tick < ticks; tick += 1) {
    world = advance(world, log, 1);
    cues = cuesOf(cues, world);
    all.push(talkNow(cues, world, log));
  }
  return all;
}
const spans = (all: (Talk | null)[]): [string, number, number][] => {
  const found: [string, number, number][] = [];
  all.forEach((talk, tick) => {
    const last = found.at(-1);
    if (talk === null) return;
    if (last !== undefined && last[0] === talk.text && last[2] === tick - 1) last[2] = tick;
    else found.push([talk.text, tick, tick]);
  });
  return found;
};

test('a callout is open from its tick for the time allowed, to the last tick of it', () => {
  const all = shown([callout(1, 'Speed?', ['150', '160'], 2)], [], 400);
  // Acts in tick 100, so the world of 101 ticks has it; an answer in tick 300 still counts, and none in 301.
  expect(spans(all)).toEqual([['Speed?', 101, 300]]);
  expect(all[101]).toMatchObject({ answers: ['150', '160'], waiting: 0 });
  expect(all[101]!.part).toBeCloseTo(1, 2);
  expect(all[300]!.part).toBeGreaterThan(0);
});

test('an answer of its own closes it, in the tick behind; any other text does not', () => {
  const log = [filed(150, { do: 'answer', text: 'no such' }), filed(180, { do: 'answer', text: '160' })];
  expect(spans(shown([callout(1, 'Speed?', ['150', '160'], 5)], log, 400))).toEqual([['Speed?', 101, 180]]);
});

test('several at once: the oldest first, the next when it is answered, and its own time has run meanwhile', () => {
  const events = [callout(1, 'First?', ['a', 'b'], 4), callout(2, 'Second?', ['b', 'c'], 3)];
  const log = [filed(300, { do: 'answer', text: 'b' })];
  const all = shown(events, log, 700);
  expect(all[250]).toMatchObject({ text: 'First?', waiting: 1 });
  expect(spans(all)).toEqual([['First?', 101, 300], ['Second?', 301, 500]]);
});

test('a message is up for 0.6 s a word and 8 s at the least; it waits for a callout and goes on behind it', () => {
  expect(spans(shown([message(1, 'Wind calm')], [], 1200))).toEqual([['Wind calm', 101, 899]]);
  const long = Array.from({ length: 20 }, (_, word) => `w${word}`).join(' ');
  expect(spans(shown([message(1, long)], [], 1500))).toEqual([[long, 101, 1299]]);
  const all = shown([message(1, 'Wind calm'), callout(2, 'Speed?', ['150', '160'], 3)], [], 1500);
  expect(spans(all)).toEqual([['Wind calm', 101, 200], ['Speed?', 201, 500], ['Wind calm', 501, 1200]]);
});

test('nothing of it is in the state of the model: with and without words the same world, but for the latches', () => {
  const plain = advance(expand(scenario({}), AIRFRAME, 1), [], 500);
  const said = advance(expand(scenario({ events: [message(1, 'x'), callout(2, 'y', ['a', 'b'], 3)] }), AIRFRAME, 1), [filed(250, { do: 'answer', text: 'a' })], 500);
  expect(snapshot(withNumbers(said.state, { agendaNext: 0 }))).toEqual(snapshot(withNumbers(plain.state, { agendaNext: 0 })));
});

test('a rewind takes a cue back', () => {
  const world = expand(scenario({ events: [message(1, 'x')] }), AIRFRAME, 1);
  const later = advance(world, [], 150);
  const come = cuesOf([], later);
  expect(come).toEqual([{ place: 0, tick: 100 }]);
  expect(cuesOf(come, world)).toEqual([]);
  expect(cuesOf(come, later)).toBe(come);
});

test('a clearance: three choices, the right one among them, and what is chosen is an act of flying', () => {
  const cleared = { when: { atS: 1 }, do: 'clearHeading', from: 'controller', text: 'Turn right heading one two zero.', toDeg: 120, withinS: 5 };
  const [before] = [shown([cleared], [], 700)[200]];
  expect(before).toMatchObject({ text: 'Controller: Turn right heading one two zero.', caution: null });
  expect([...before!.answers].sort()).toEqual(['heading 100', 'heading 120', 'heading 140']);
  expect(before!.acts[before!.answers.indexOf('heading 120')]).toEqual({ do: 'selectHeading', toDeg: 120 });
  // Any heading that is selected closes it: what was heard is flown, right or wrong.
  expect(spans(shown([cleared], [filed(250, { do: 'selectHeading', toDeg: 140 })], 700))).toEqual([['Controller: Turn right heading one two zero.', 101, 250]]);
  const down = { when: { atS: 1 }, do: 'clearAltitude', text: 'Descend.', toFt: 5000, withinS: 5 };
  const height = shown([down], [], 200)[150]!;
  expect(height.acts[height.answers.indexOf('5000 ft')]).toEqual({ do: 'descend', toFt: 5000, pathDeg: -3 });
  expect([...height.answers].sort()).toEqual(['4500 ft', '5000 ft', '5500 ft']);
});

test('no height to choose lies at the ground or under it, but the one that was cleared', () => {
  const choices = (toFt: number, groundFt: number): string[] =>
    choicesOf({ when: { atS: 1 }, do: 'clearAltitude', text: 'Descend.', toFt, withinS: 5 }, 0, groundFt * FT).map(({ text }) => text);
  expect(choices(1200, 700)).toEqual(['1200 ft', '2200 ft', '1700 ft']); // 500 ft lower is the ground itself
  expect(choices(1201, 700)).toEqual(['1201 ft', '701 ft', '1701 ft']);
  expect(choices(300, 700)).toEqual(['300 ft', '1300 ft', '800 ft']);
});

test('a caution waits to be noted, and goes when it is', () => {
  const caution = { when: { atS: 1 }, do: 'caution', text: 'cabin height rising', withinS: 5 };
  expect(shown([caution], [], 200)[150]).toMatchObject({ text: 'Caution: cabin height rising', answers: ['noted'], caution: 'cabin height rising' });
  expect(spans(shown([caution], [filed(200, { do: 'answer', text: 'noted' })], 400))).toEqual([['Caution: cabin height rising', 101, 200]]);
});

test('the list: nothing before the call, then line by line, and nothing where the scenario has none', () => {
  const log = [filed(100, { do: 'callSplit' }), filed(200, { do: 'answer', text: 'at off' }), filed(260, { do: 'answer', text: 'worked again' })];
  const at = (tick: number, list = true): Talk | null => talkNow([], advance(expand(scenario(), AIRFRAME, 1), log, tick), log, list);
  expect(at(100)).toBe(null);
  expect(at(150)?.text).toMatch(/^List 1 of 6/);
  expect(at(201)?.text).toMatch(/^List 2 of 6/);
  // An answer that is not of this line is none.
  expect(at(300)?.text).toMatch(/^List 2 of 6/);
  expect(at(300)?.acts.map((act) => act.do)).toEqual(['answer', 'answer']);
  expect(at(150, false)).toBe(null);
});
