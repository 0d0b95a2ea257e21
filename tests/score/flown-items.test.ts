/** Items of a whole flown procedure: speeds, motor, go-around, normal drive, list, challenge. Limits hit exactly; airframe figures by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fly, PROCEDURE_ITEMS, type Command, type ProcedureItem } from '../../sim/index.js';
import { ASYMMETRY_LIST } from '../../sim/score/list.js';
import { AIRFRAME, scenario } from '../sim/bench.js';
import { anywhere } from '../draw.js';

const at = (tick: number, act: object, seq = tick) => ({ ...act, tick, rank: 2, seq }) as Command;
const hold = (tick: number) => at(tick, { do: 'holdDrive', way: 'extend' });
const letGo = (tick: number) => at(tick, { do: 'releaseDrive' });
const ready = [at(0, { do: 'arm' }, 0), at(0, { do: 'setFlapLever', settingDeg: 16 }, 1)];
const flight = (log: Command[], keys: Record<string, unknown> = {}) => fly({ scenario: scenario(keys), airframe: AIRFRAME, seed: 1 }, log);
const item = (name: ProcedureItem['item'], log: Command[], keys: Record<string, unknown> = {}): ProcedureItem | undefined =>
  flight(log, keys).procedure.find((one) => one.item === name);
const stop = { faults: [{ name: 'f', kind: 'disconnect', side: 'right', when: { heldS: 5 } }] };

it('where everything is looked at, every item is watched, in the order of the work', () => {
  const { procedure } = flight([], { procedure: { list: true } });
  expect(procedure.map((one) => one.item)).toEqual(PROCEDURE_ITEMS);
});

// Manoeuvre speeds at 48 t, model section 5: 4 166.3, 9 154.4, 16 143.2 kt, to 0.1 kt.
describe('speeds', () => {
  it('while driving: 5 kt below to 10 kt above the manoeuvre speed of what is out', () => {
    const log = [...ready, hold(10), letGo(400)];
    expect(item('speedKept', log, { start: { speedKt: 176 } })).toMatchObject({ ok: true, unit: 'kt' });
    expect(item('speedKept', log, { start: { speedKt: 177 } })).toMatchObject({ ok: false });
    expect(item('speedKept', log, { start: { speedKt: 162 } })?.ok).toBe(true);
    expect(item('speedKept', log, { start: { speedKt: 160 } })).toMatchObject({ ok: false });
    const low = item('speedKept', log, { start: { speedKt: 160 } });
    expect(low?.limit).toBeCloseTo(161.3, 0);
    expect(item('speedKept', ready)).toMatchObject({ ok: null, atS: null, value: null, limit: null, unit: null });
    expect(item('speedKept', log, { start: { speedKt: 177 }, role: 'driving' })?.ok).toBe(null);
  });
  it('ice raises what is asked by 6 kt', () => {
    const log = [...ready, hold(10), letGo(400)];
    expect(item('speedKept', log, { start: { speedKt: 165, icing: true } })?.ok).toBe(false);
    expect(item('speedKept', log, { start: { speedKt: 182, icing: true } })?.ok).toBe(true);
  });
  it('slow only once both are there', () => {
    const slows = (kt: number) => item('slowAfter', [...ready, hold(10), letGo(400), at(500, { do: 'selectSpeed', speedKt: kt })], { task: { settings: [9, 16], limitS: 60 } });
    expect(slows(150)?.ok).toBe(false);
    expect(slows(163)?.ok).toBe(true);
  });
  it('on the way in: the speed of the setting before the lever', () => {
    const keys = (speedKt: number) => ({ start: { flapDeg: 16, speedKt }, task: { settings: [9], limitS: 30 } });
    const log = [at(100, { do: 'setFlapLever', settingDeg: 9 })];
    expect(item('speedFirst', log, keys(150))).toMatchObject({ ok: true, atS: 1 });
    expect(item('speedFirst', log, keys(149))).toMatchObject({ ok: false });
    expect(item('speedFirst', [at(100, { do: 'setFlapLever', settingDeg: 26 })], keys(149))?.ok).toBe(null);
  });
});

describe('motor and horn', () => {
  it('the cut-out stays closed, or opens', () => {
    const log = [...ready, hold(10), letGo(3000)];
    expect(item('motorDuty', log, { start: { motorHeat: 0.8 } })).toMatchObject({ ok: true, limit: 100, unit: '%' });
    expect(item('motorDuty', log, { start: { motorHeat: 0.97 } })).toMatchObject({ ok: false });
    expect(item('motorDuty', ready)?.ok).toBe(null);
  });
  it('a horn with the gear lever up is met within 30 s, to the tick', () => {
    // Flap 16 and idle levers: sounds from the tick of the lever on (model section 4).
    const down = (tick: number) => item('hornMet', [at(100, { do: 'setThrust', tlaDeg: 0 }), at(tick, { do: 'setGear', to: 'down' })], { start: { flapDeg: 16, speedKt: 200 }, task: { settings: [26], limitS: 60 } });
    expect(down(3100)).toMatchObject({ ok: true, value: 30, limit: 30, unit: 's' });
    expect(down(3101)).toMatchObject({ ok: false, value: 30.01 });
  });
});

describe('going around', () => {
  const keys = {
    start: { altitudeFt: 1300, groundFt: 700, flapDeg: 16, gear: 'down', speedKt: 144 }, task: { settings: [9], limitS: 120 },
    events: [{ when: { atS: 1 }, do: 'tellGoAround', text: 'Go around.', withinS: 8 }],
  };
  const around = (tick: number) => at(tick, { do: 'goAround' });
  it('is begun within its time, to the tick', () => {
    expect(item('aroundBegun', [around(900)], keys)).toMatchObject({ ok: true, value: 8, limit: 8 });
    expect(item('aroundBegun', [around(901)], keys)).toMatchObject({ ok: false });
    expect(item('aroundBegun', [], keys)).toMatchObject({ ok: false, value: null });
    expect(item('aroundBegun', [around(900)])?.ok).toBe(null);
  });
  it('gear in the climb: not before it, not never', () => {
    expect(item('aroundGear', [around(200), at(600, { do: 'setGear', to: 'up' })], keys)?.ok).toBe(true);
    expect(item('aroundGear', [around(200), at(200, { do: 'setGear', to: 'up' }, 900)], keys)?.ok).toBe(false);
    expect(item('aroundGear', [around(200)], keys)?.ok).toBe(false);
  });
  it('no flap switch below safe height', () => {
    const press = (tick: number, safeFt?: number) => item('aroundHeight', [at(0, { do: 'arm' }), around(200), at(tick, { do: 'setDrive', to: 'retract' })], { ...keys, ...(safeFt === undefined ? {} : { procedure: { safeFt } }) });
    expect(press(400)).toMatchObject({ ok: false, limit: 1000, unit: 'ft' });
    expect(press(400, 500)).toMatchObject({ ok: true, limit: 500 });
    expect(press(5000)).toMatchObject({ ok: true });
    expect(item('aroundHeight', [around(200)], keys)?.ok).toBe(null);
  });
});

describe('the normal drive', () => {
  const lost = { start: { flapLeverDeg: 4, speedKt: 167 }, mainDrive: 'works', task: { settings: [9], limitS: 120 }, events: [{ when: { flapDeg: 6 }, do: 'loseMainDrive' }] };
  const lever = (tick: number, settingDeg: number) => at(tick, { do: 'setFlapLever', settingDeg });
  it('lost: the lever back before arming', () => {
    expect(item('lossFound', [lever(100, 9), lever(1200, 4), at(1300, { do: 'arm' })], lost)?.ok).toBe(true);
    expect(item('lossFound', [lever(100, 9), at(1200, { do: 'arm' }), lever(1300, 4)], lost)?.ok).toBe(false);
    expect(item('lossFound', [at(1200, { do: 'arm' })])?.ok).toBe(null);
  });
  it('back: handed over with the lever within half a degree', () => {
    const back = (from: number) => item('returnHandled', [at(0, { do: 'arm' }), at(500, { do: 'disarm' })], { start: { flapDeg: from, flapLeverDeg: 9 }, mainDrive: 'returns', events: [{ when: { atS: 2 }, do: 'returnMainDrive' }] });
    expect(back(8.5)).toMatchObject({ ok: true, value: 0.5, limit: 0.5 });
    expect(back(8.4)).toMatchObject({ ok: false });
  });
});

describe('what is said and read', () => {
  const behind = [...ready, hold(10), letGo(1500), at(1600, { do: 'callSplit' })];
  const list = { ...stop, procedure: { list: true }, task: { limitS: 120, afterS: 90 } };
  const reads = (answers: readonly string[], from = 1700) => answers.map((text, index) => at(from + 100 * index, { do: 'answer', text }));
  const right = ASYMMETRY_LIST.map((line) => line.right ?? (line.answers[0] as string));
  it('the list to its end, in its order', () => {
    expect(item('listRead', [...behind, ...reads(right)], list)).toMatchObject({ ok: true, value: 6, limit: 6, atS: 22 });
    expect(item('listRead', [...behind, ...reads(right.slice(0, 5))], list)).toMatchObject({ ok: false, value: 5 });
    expect(item('listRead', [...behind, ...reads([...right].reverse())], list)?.ok).toBe(false);
    expect(item('listRead', [...behind, ...reads(right)], stop)).toBe(undefined);
  });
  it('read before the call it is not read', () => {
    expect(item('listRead', [...behind, ...reads(right, 900)], list)).toMatchObject({ ok: false, value: 0 });
  });
  it('slow speeds by the side less out, the limit by the side further out', () => {
    expect(item('planRedone', [...behind, ...reads(right)], list)).toMatchObject({ ok: true, value: 2, limit: 2 });
    const wrong = right.map((text) => (text === 'the side less out' ? 'the side further out' : text));
    expect(item('planRedone', [...behind, ...reads(wrong)], list)).toMatchObject({ ok: false, value: 1 });
  });
  it('the other pilot is answered; others are not counted', () => {
    const asks = (from: string) => ({ events: [{ when: { atS: 1 }, do: 'callout', from, text: 'Flaps?', answers: ['4', '9'], right: '4', withinS: 5 }], task: { limitS: 30 } });
    expect(item('challengeAnswered', [at(300, { do: 'answer', text: '4' })], asks('otherPilot'))).toMatchObject({ ok: true, value: 1, limit: 1 });
    expect(item('challengeAnswered', [at(300, { do: 'answer', text: '9' })], asks('otherPilot'))).toMatchObject({ ok: false, value: 0 });
    expect(item('challengeAnswered', [], asks('otherPilot'))?.ok).toBe(false);
    expect(item('challengeAnswered', [], asks('controller'))?.ok).toBe(null);
  });
});

describe('better flying never marks lower', () => {
  const kept = (log: Command[], keys: Record<string, unknown>): Map<string, boolean | null> => new Map(flight(log, keys).procedure.map(({ item: name, ok }) => [name, ok]));
  const noWorse = (better: Map<string, boolean | null>, worse: Map<string, boolean | null>): void => {
    for (const [name, ok] of worse) if (ok === true) expect(better.get(name), name).not.toBe(false);
  };
  const tick = (min: number, max: number) => fc.integer({ min, max });
  // Onset at tick 510, 0.1 deg of growth 0.7 s behind: what is let go and called sooner than that is for nothing.
  it('let go sooner behind onset, and called sooner', () => {
    fc.assert(fc.property(tick(640, 2400), tick(0, 1000), tick(1, 400), tick(1, 800), (release, later, sooner, calledSooner) => {
      const run = (by: number, call: number) => kept([...ready, hold(10), letGo(release - by), at(release - by + call, { do: 'callSplit' })], { ...stop, task: { limitS: 60 } });
      const earlier = Math.min(sooner, release - 640);
      noWorse(run(earlier, later), run(0, later));
      noWorse(run(0, Math.max(0, later - calledSooner)), run(0, later));
    }), { numRuns: 25 });
  });
  it('a speed nearer to what is asked', () => {
    fc.assert(fc.property(fc.integer({ min: 150, max: 200 }), anywhere(0, 1), (kt, part) => {
      const nearer = 166.3 + (kt - 166.3) * part;
      const run = (speedKt: number) => kept([...ready, hold(10), letGo(300)], { start: { speedKt }, task: { limitS: 6 } });
      noWorse(run(nearer), run(kt));
    }), { numRuns: 25 });
  });
});
