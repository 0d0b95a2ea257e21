/**
 * Better flying never marks lower: what is done sooner, cooler, nearer, higher or more fully turns no item that was kept
 * into one that was not, whichever item it is. Each property flies the worse run and the better one and lays all items
 * side by side.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fly, type Command } from '../../sim/index.js';
import { ASYMMETRY_LIST } from '../../sim/score/list.js';
import { AIRFRAME, scenario } from '../sim/bench.js';
import { anywhere } from '../draw.js';

const at = (tick: number, act: object, seq = tick) => ({ ...act, tick, rank: 2, seq }) as Command;
const hold = (tick: number) => at(tick, { do: 'holdDrive', way: 'extend' });
const letGo = (tick: number) => at(tick, { do: 'releaseDrive' });
const ready = [at(0, { do: 'arm' }, 0), at(0, { do: 'setFlapLever', settingDeg: 16 }, 1)];
const tick = (min: number, max: number) => fc.integer({ min, max });
const RUNS = { numRuns: 20 };

/** Items of a run by their names. */
const marks = (log: Command[], keys: Record<string, unknown>): Map<string, boolean | null> =>
  new Map(fly({ scenario: scenario(keys), airframe: AIRFRAME, seed: 1 }, log).procedure.map(({ item, ok }) => [item, ok]));

/** @param name the item that the property is about: it must have been asked for, so that the property cannot hold by silence */
function noWorse(name: string, better: Map<string, boolean | null>, worse: Map<string, boolean | null>): void {
  expect(worse.get(name), name).not.toBeNull();
  for (const [item, ok] of worse) if (ok === true) expect(better.get(item), item).not.toBe(false);
}

describe('sooner', () => {
  it('the gear, while the horn sounds', () => {
    const run = (down: number) => marks([at(100, { do: 'setThrust', tlaDeg: 0 }), at(down, { do: 'setGear', to: 'down' })], { start: { flapDeg: 16, speedKt: 200 }, task: { settings: [26], limitS: 60 } });
    fc.assert(fc.property(tick(101, 5500), tick(1, 4000), (down, by) => noWorse('hornMet', run(Math.max(101, down - by)), run(down))), RUNS);
  });
  const told = {
    start: { altitudeFt: 1300, groundFt: 700, flapDeg: 16, gear: 'down', speedKt: 144 }, task: { settings: [9], limitS: 60 },
    events: [{ when: { atS: 1 }, do: 'tellGoAround', text: 'Go around.', withinS: 8 }],
  };
  it('a go-around that was told', () => {
    const run = (around: number) => marks([at(around, { do: 'goAround' }), at(around + 500, { do: 'setGear', to: 'up' })], told);
    fc.assert(fc.property(tick(101, 2000), tick(1, 1500), (around, by) => noWorse('aroundBegun', run(Math.max(101, around - by)), run(around))), RUNS);
  });
  it('the gear in the climb, as long as it climbs', () => {
    const run = (up: number) => marks([at(200, { do: 'goAround' }), at(up, { do: 'setGear', to: 'up' })], told);
    // By 4 s behind the thrust it climbs (a limit of this model, read off it).
    fc.assert(fc.property(tick(600, 4000), tick(1, 3000), (up, by) => noWorse('aroundGear', run(Math.max(600, up - by)), run(up))), RUNS);
  });
  it('the second look behind a release', () => {
    const stop = { faults: [{ name: 'f', kind: 'blowback', side: 'right', when: { heldS: 5 } }], task: { limitS: 60 } };
    const run = (look: number) => marks([...ready, hold(10), letGo(700), at(720, { do: 'callSplit' }), at(look, { do: 'callStillMoving' })], stop);
    fc.assert(fc.property(tick(720, 2000), tick(1, 1200), (look, by) => noWorse('secondLook', run(Math.max(720, look - by)), run(look))), RUNS);
  });
  it('the call of a drive that is dead', () => {
    const run = (call: number) => marks([...ready, hold(100), letGo(610), at(call, { do: 'callDriveFailed' })], { faults: [{ name: 'f', kind: 'dead', when: { atS: 0 } }], task: { limitS: 60 } });
    // That nothing moves has shown once the switch has been held for 5 s.
    fc.assert(fc.property(tick(620, 4000), tick(1, 3000), (call, by) => noWorse('failureCalled', run(Math.max(620, call - by)), run(call))), RUNS);
  });
});

describe('cooler, higher, nearer', () => {
  it('a motor that began cooler', () => {
    const run = (motorHeat: number) => marks([...ready, hold(10), letGo(3000)], { start: { motorHeat }, task: { limitS: 40 } });
    fc.assert(fc.property(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 99 }), (a, b) => noWorse('motorDuty', run(Math.min(a, b) / 100), run(Math.max(a, b) / 100))), RUNS);
  });
  it('a flap switch touched later in a go-around, and so higher', () => {
    const keys = { start: { altitudeFt: 1300, groundFt: 700, flapDeg: 16, gear: 'down', speedKt: 160 }, task: { settings: [9], limitS: 120 }, events: [{ when: { atS: 1 }, do: 'tellGoAround', text: 'Go around.', withinS: 8 }] };
    const run = (press: number) => marks([at(0, { do: 'arm' }), at(200, { do: 'goAround' }), at(600, { do: 'setGear', to: 'up' }), at(press, { do: 'setDrive', to: 'retract' })], keys);
    fc.assert(fc.property(tick(700, 9000), tick(1, 8000), (press, by) => noWorse('aroundHeight', run(Math.min(9900, press + by)), run(press))), RUNS);
  });
  it('a lever nearer to where the flaps are, when the normal drive is back', () => {
    const run = (flapDeg: number) => marks([at(0, { do: 'arm' }), at(500, { do: 'disarm' })], { start: { flapDeg, flapLeverDeg: 9 }, mainDrive: 'returns', events: [{ when: { atS: 2 }, do: 'returnMainDrive' }], task: { limitS: 20 } });
    fc.assert(fc.property(anywhere(6, 9), anywhere(0, 1), (from, part) => noWorse('returnHandled', run(from + (9 - from) * part), run(from))), RUNS);
  });
});

describe('more fully', () => {
  const right = ASYMMETRY_LIST.map((line) => line.right ?? (line.answers[0] as string));
  const other = ASYMMETRY_LIST.map((line, index) => line.answers.find((answer) => answer !== right[index]) ?? right[index] ?? ''); // some lines have one answer
  const behind = [...ready, hold(10), letGo(1500), at(1600, { do: 'callSplit' })];
  const list = { faults: [{ name: 'f', kind: 'disconnect', side: 'right', when: { heldS: 5 } }], procedure: { list: true }, task: { limitS: 60, afterS: 40 } };
  it('a list with more lines read, and one with more of them right', () => {
    const run = (answers: readonly string[]) => marks([...behind, ...answers.map((text, index) => at(1700 + 100 * index, { do: 'answer', text }))], list);
    fc.assert(fc.property(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 }), fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }), fc.integer({ min: 0, max: 5 }), (a, b, wrong, mended) => {
      noWorse('listRead', run(right.slice(0, Math.max(a, b))), run(right.slice(0, Math.min(a, b))));
      const some = right.map((text, index) => (wrong[index] === true ? other[index] ?? text : text));
      noWorse('planRedone', run(some.map((text, index) => (index === mended ? right[index] ?? text : text))), run(some));
    }), RUNS);
  });
  it('a challenge answered right in place of wrong or not at all', () => {
    const asks = { events: [{ when: { atS: 1 }, do: 'callout', from: 'otherPilot', text: 'Flaps?', answers: ['4', '9'], right: '4', withinS: 5 }], task: { limitS: 30 } };
    const run = (answer: readonly [number, string] | null) => marks(answer === null ? [] : [at(answer[0], { do: 'answer', text: answer[1] })], asks);
    fc.assert(fc.property(tick(110, 590), fc.option(fc.tuple(tick(110, 900), fc.constantFrom('4', '9'))), (when, worse) => noWorse('challengeAnswered', run([when, '4']), run(worse))), RUNS);
  });
});
