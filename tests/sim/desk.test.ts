/** What a desk does to a run, tick by tick, without a page. */
import { describe, expect, it } from 'vitest';
import type { DeskAct, Fault } from '../../sim/files/index.js';
import { advance, copyState, expand, flightTick, fly, numberOf, snapshot, STATE_KEYS, withDesk, type Command, type State, type StateKey } from '../../sim/index.js';
import { AIRFRAME, scenario } from './bench.js';

const desk = (tick: number, act: DeskAct, seq = 100 + tick): Command => ({ ...act, tick, rank: 1, seq }) as Command;
const HOLD = [{ do: 'arm', tick: 0, rank: 2, seq: 0 }, { do: 'holdDrive', way: 'extend', tick: 0, rank: 2, seq: 1 }] as Command[];
const start = (keys: Record<string, unknown> = {}) => expand(scenario(keys), AIRFRAME, 5);
const at = (log: Command[], tick: number, keys: Record<string, unknown> = {}): State => copyState(advance(withDesk(start(keys), log), log, tick).state);
const rate = (log: Command[], tick: number, side: 'leftDeg' | 'rightDeg'): number => 100 * (at(log, tick)[side] - at(log, tick - 1)[side]);
type Injected = Extract<DeskAct, { do: 'injectFault' }>['fault'];
const inject = (tick: number, fault: object): Command => desk(tick, { do: 'injectFault', fault: { name: 'x', ...fault } as Injected });

describe('a fault put in by hand', () => {
  it('acts in its tick, not before and not behind', () => {
    const log = [...HOLD, inject(300, { kind: 'disconnect', side: 'right' })];
    expect(at(log, 300)).toEqual(at(HOLD, 300));
    expect(at(log, 300).latched.rightCut).toBe(0);
    const after = at(log, 301);
    expect(after.latched.rightCut).toBe(1);
    expect(after.rightDeg).toBe(at(HOLD, 300).rightDeg);
    expect(after.latched.onsetTick).toBe(300);
  });

  it.each<[object, Partial<Fault> & object]>([
    [{ atS: 4 }, { when: { atS: 4 } }], [{ flapDeg: 6 }, { when: { flapDeg: 6 } }], [{ heldS: 5 }, { when: { heldS: 5 } }],
    [{ any: [{ flapDeg: 7 }, { atS: 9 }] }, { when: { any: [{ flapDeg: 7 }, { atS: 9 }] } }],
  ])('armed on %o gives the world that a file with it gives', (when) => {
    const fault = { name: 'x', kind: 'disconnect', side: 'left', when };
    const log = [...HOLD, inject(150, fault)];
    const [byHand, byFile] = [at(log, 1500), at(HOLD, 1500, { faults: [fault] })];
    expect(byHand.latched.leftCut).toBe(1);
    expect(byHand.latched.onsetTick).toBe(byFile.latched.onsetTick);
    expect(byHand.leftDeg).toBe(byFile.leftDeg);
  });

  it('whose time has gone by acts at once', () => {
    expect(at([...HOLD, inject(300, { kind: 'dead', when: { atS: 1 } })], 301).latched.driveDead).toBe(1);
  });

  it('is not armed for a crossing that came before it', () => {
    const passed = at(HOLD, 300).driveDeg; // 4 deg at the start
    const log = [...HOLD, inject(300, { kind: 'dead', when: { flapDeg: (4 + passed) / 2 } })];
    expect(at(log, 1500).latched.driveDead).toBe(0);
  });

  it('disarmed before it has acted never does; behind that it is too late', () => {
    const armed = inject(100, { kind: 'dead', when: { flapDeg: 6 } });
    const acts = [...Array(3000).keys()].find((tick) => at([...HOLD, armed], tick).latched.driveDead === 1) as number;
    const off = (tick: number) => at([...HOLD, armed, desk(tick, { do: 'disarmFault', name: 'x' })], acts + 50).latched.driveDead;
    // Watched at the end of one tick, it acts at the start of the next: acts - 1 is the tick in which it did.
    expect([off(acts - 2), off(acts - 1), off(acts)]).toEqual([0, 1, 1]);
    const timed = inject(100, { kind: 'dead', when: { atS: 4 } });
    expect(at([...HOLD, timed, desk(399, { do: 'disarmFault', name: 'x' })], 500).latched.driveDead).toBe(0);
    expect(at([...HOLD, timed, desk(401, { do: 'disarmFault', name: 'x' })], 500).latched.driveDead).toBe(1);
  });
});

/** Kind by kind: the terms that are back to those of a whole aeroplane. */
const KINDS: [object, StateKey[]][] = [
  [{ kind: 'disconnect', side: 'right' }, ['rightCut']], [{ kind: 'lag', side: 'left', ratio: 0.5 }, ['leftRatio']],
  [{ kind: 'jam', side: 'right' }, ['rightJam', 'rightCut', 'rightWindDeg']], [{ kind: 'slip', side: 'left', ratio: 0, periodS: 2, onS: 1 }, ['leftSlip', 'leftSlipTicks']],
  [{ kind: 'blowback', side: 'left' }, ['leftCut', 'leftBlown']], [{ kind: 'pointer', side: 'left', mode: 'stuck' }, ['leftStuck', 'leftStuckDeg']],
  [{ kind: 'pointer', side: 'right', mode: 'bias', biasDeg: 3 }, ['rightBiasDeg']], [{ kind: 'pointer', side: 'right', mode: 'drift', driftDegPerS: 0.2 }, ['rightBiasDeg', 'rightDriftDegPerS']],
  [{ kind: 'dead' }, ['driveDead']], [{ kind: 'quits' }, ['driveDead']], [{ kind: 'slow', factor: 0.4 }, ['driveFactor']], [{ kind: 'runsOn' }, ['contactorStuck']],
  [{ kind: 'leadingEdge', stopsAt: 0.5 }, ['leadingEdgeStop']],
];

describe('clearing', () => {
  it.each(KINDS)('%o: whole again from that tick on, sides where they are', (fault, terms) => {
    for (const act of [{ do: 'clearFault', name: 'x' }, { do: 'clearFaults' }] as DeskAct[]) {
      const log = [...HOLD, inject(200, fault), desk(900, act)];
      const [before, after] = [at(log, 900), at(log, 901)];
      expect(terms.some((term) => numberOf(before, term) !== numberOf(at(HOLD, 900), term))).toBe(true);
      for (const term of terms) expect(numberOf(after, term), term).toBe(numberOf(at(HOLD, 0), term));
      for (const side of ['leftDeg', 'rightDeg'] as const) expect(Math.abs(after[side] - before[side])).toBeLessThan(0.02);
    }
  });

  it('a jam that has not sheared yet unwinds', () => {
    const log = [...HOLD, inject(200, { kind: 'jam', side: 'right' })];
    const wound = [...Array(300).keys()].map((ticks) => 201 + ticks).find((tick) => at(log, tick).rightWindDeg !== 0 && at(log, tick).latched.rightCut === 0) as number;
    const cleared = at([...log, desk(wound, { do: 'clearFault', name: 'x' })], wound + 1);
    expect(at(log, wound).rightWindDeg).not.toBe(0);
    expect(cleared).toMatchObject({ rightWindDeg: 0, latched: { rightJam: 0, rightCut: 0 } });
  });

  it('a side that follows again moves as the other does', () => {
    const log = [...HOLD, inject(200, { kind: 'disconnect', side: 'right' }), desk(700, { do: 'clearFault', name: 'x' })];
    expect(rate(log, 690, 'rightDeg')).toBe(0);
    expect(rate(log, 800, 'rightDeg')).toBeCloseTo(rate(log, 800, 'leftDeg'), 9);
  });

  it('all disarms what waits, of the file as well; one leaves the others', () => {
    const keys = { faults: [{ name: 'file', kind: 'dead', when: { atS: 9 } }] };
    const log = [...HOLD, inject(200, { kind: 'slow', factor: 0.5 }), desk(300, { do: 'injectFault', fault: { name: 'y', kind: 'runsOn' } })];
    const one = at([...log, desk(500, { do: 'clearFault', name: 'x' })], 1000, keys);
    expect([one.latched.driveFactor, one.latched.contactorStuck, one.latched.driveDead]).toEqual([1, 1, 1]);
    const all = at([...log, desk(500, { do: 'clearFaults' })], 1000, keys);
    expect([all.latched.driveFactor, all.latched.contactorStuck, all.latched.driveDead]).toEqual([1, 0, 0]);
  });

  it('in the tick of the injecting, in the order of the desk', () => {
    const put = desk(200, { do: 'injectFault', fault: { name: 'x', kind: 'dead' } }, 1);
    expect(at([...HOLD, put, desk(200, { do: 'clearFaults' }, 2)], 201).latched.driveDead).toBe(0);
    expect(at([...HOLD, desk(200, { do: 'clearFaults' }, 0), put], 201).latched.driveDead).toBe(1);
  });
});

const ASKED: DeskAct[] = [
  { do: 'callout', from: 'otherPilot', text: 'How many on board?', answers: ['16', '61'], right: '61', withinS: 10 },
  { do: 'clearHeading', from: 'controller', text: 'Fly heading 120.', toDeg: 120, withinS: 15 },
  { do: 'clearAltitude', from: 'controller', text: 'Descend to 3000 ft.', toFt: 3000, withinS: 15 },
  { do: 'caution', text: 'hydraulic pressure', withinS: 8 }, { do: 'tellGoAround', from: 'controller', text: 'Go around.', withinS: 5 },
];

it('the outside, as a desk plays it', () => {
  const after = (act: DeskAct, tick = 101): State => at([desk(100, act)], tick);
  expect(after({ do: 'failEngine', side: 'left' })).toMatchObject({ latched: { leftLive: 0, rightLive: 1 } });
  expect(after({ do: 'selectSpeed', speedKt: 155 }).latched.selectedKt).toBe(155);
  expect(after({ do: 'setGear', to: 'down' }).latched.gearLever).toBe(1);
  expect(after({ do: 'returnMainDrive' }).latched.mainDrive).toBe(1);
  expect(after({ do: 'descend', toFt: 2000, pathDeg: -3 }).pathSin).toBeCloseTo(-0.05233595624294383, 12); // sin 3 deg
  expect(at([desk(50, { do: 'loseMainDrive' })], 51).latched.mainDrive).toBe(0);
  expect(at([desk(50, { do: 'loseMainDrive' }), desk(100, { do: 'returnMainDrive' })], 101).latched.mainDrive).toBe(1);
  for (const act of [{ do: 'remark', label: 'scan' }, { do: 'prompted' }, { do: 'freeze' }, { do: 'message', text: 'hello' }, { do: 'say', from: 'controller', text: 'turn' }, ...ASKED] as DeskAct[]) {
    const [with_, without] = [after(act, 300), at([], 300)];
    for (const key of STATE_KEYS) if (key !== 'agendaNext') expect(numberOf(with_, key), `${act.do} ${key}`).toBe(numberOf(without, key));
  }
});

describe('a reposition', () => {
  const back = (tick: number, toTick: number): Command => desk(tick, { do: 'reposition', toTick });
  const released = { do: 'releaseDrive', tick: 500, rank: 2, seq: 2 } as Command;
  const flown = [...HOLD, released];

  it('brings the state of that tick back, hand off, and the tick of the run goes on', () => {
    const before = at(flown, 800);
    const log = [...flown, back(1500, 800)];
    // One tick of each from the same state: the same, but for the tick itself.
    const [after, plain] = [at(log, 1501), at(flown, 801)];
    expect(before.latched.drive).toBe(0);
    for (const key of STATE_KEYS) if (key !== 'tick' && key !== 'gustKnot') expect(numberOf(after, key), key).toBe(numberOf(plain, key));
    expect(after.tick).toBe(1501);
  });

  it('lets a sprung switch go', () => {
    expect(at([...HOLD, back(1500, 400)], 1500).latched.drive).toBe(1);
    expect(at([...HOLD, back(1500, 400)], 1501).latched.drive).toBe(0);
  });

  it('what was to come after that moment comes again, so long behind it as at first', () => {
    const keys = { faults: [{ name: 'f', kind: 'dead', when: { atS: 10 } }], events: [{ do: 'setGear', to: 'down', when: { all: [{ atS: 12 }] } }] };
    const log = [back(2000, 800)];
    const first = (key: StateKey, from: number, value: number) => [...Array(2000).keys()].find((ticks) => numberOf(at(log, from + ticks, keys), key) === value);
    expect(at(log, 2000, keys)).toMatchObject({ latched: { driveDead: 1, gearLever: 1 } });
    expect(at(log, 2001, keys)).toMatchObject({ latched: { driveDead: 0, gearLever: 0 } });
    expect(at(log, 2200, keys).latched.driveDead).toBe(0);
    expect(at(log, 2201, keys).latched.driveDead).toBe(1); // 10 s - 8 s behind tick 2000, acting in tick 2200
    expect(at(log, 2400, keys).latched.gearLever).toBe(0);
    expect(first('gearLever', 2401, 1)).toBe(0);
  });

  it('takes out what was put in by hand since, and puts back what was armed then', () => {
    const armed = inject(100, { kind: 'slow', factor: 0.5, when: { atS: 15 } });
    const off = desk(1000, { do: 'disarmFault', name: 'x' });
    const late = desk(900, { do: 'injectFault', fault: { name: 'late', kind: 'dead' } });
    const log = [armed, off, late, back(1200, 800)];
    expect(at(log, 1200)).toMatchObject({ latched: { driveDead: 1 } });
    expect(at(log, 1900)).toMatchObject({ latched: { driveDead: 0, driveFactor: 1 } });
    expect(at(log, 1901).latched.driveFactor).toBe(0.5); // 15 s - 8 s behind tick 1200
  });

  it('twice, into what was taken back and out of it', () => {
    const log = [...flown, back(1500, 800), back(2500, 1200)];
    for (const key of STATE_KEYS) if (key !== 'tick' && key !== 'gustKnot') expect(numberOf(at(log, 2501), key), key).toBe(numberOf(at(flown, 1201), key));
    const { turns } = withDesk(start(), log).fixed.agenda;
    expect([700, 1499, 1500, 1600, 2500].map((tick) => flightTick(turns, tick))).toEqual([700, 1499, 800, 900, 1200]);
  });

  it('gives back the time that the taken stretch took', () => {
    const short = { task: { settings: [16], limitS: 20 } };
    const end = (log: Command[]) => fly({ scenario: scenario(short), airframe: AIRFRAME, seed: 5 }, log).end;
    expect(end([])).toEqual({ tick: 2000, why: 'timeUp' });
    expect(end([back(1500, 500)])).toEqual({ tick: 3000, why: 'timeUp' });
  });

  it('is judged by what stands: a split that was taken back is none', () => {
    const cut = inject(300, { kind: 'disconnect', side: 'right' });
    const rest = [{ do: 'releaseDrive', tick: 700, rank: 2, seq: 5 }, { do: 'callSplit', tick: 750, rank: 2, seq: 6 }] as Command[];
    const judged = (log: Command[]) => fly({ scenario: scenario({}), airframe: AIRFRAME, seed: 5, stopTick: 1500 }, log);
    expect(judged([...HOLD, cut, ...rest]).score.onsetS).toBe(3);
    const taken = judged([...HOLD, cut, ...rest, back(1000, 200)]);
    expect(taken.score).toMatchObject({ onsetS: null, releaseS: null, finalSplitDeg: 0 });
    expect(taken.procedure).toEqual(judged([...HOLD, back(1000, 200)]).procedure);
  });
});

describe('what cannot be done is told', () => {
  it.each<[string, Command[], RegExp]>([
    ['a name in use', [inject(10, { kind: 'dead' }), inject(20, { kind: 'dead' })], /name in use/],
    ['an unknown fault', [desk(10, { do: 'clearFault', name: 'nobody' })], /no fault is called nobody/],
    ['a moment too near', [desk(100, { do: 'reposition', toTick: 51 })], /not long enough ago/],
    ['no latch left', [...Array(61).keys()].map((index) => desk(index, { do: 'injectFault', fault: { name: `f${index}`, kind: 'dead', when: { flapDeg: 20 } } })), /no more can be armed/],
  ])('%s', (_, log, why) => {
    expect(() => withDesk(start(), log)).toThrow(why);
  });
  it('60 armed faults and a moment 0.5 s ago are in bounds', () => {
    const many = [...Array(60).keys()].map((index) => desk(index, { do: 'injectFault', fault: { name: `f${index}`, kind: 'dead', when: { flapDeg: 20 } } }));
    expect(withDesk(start(), many).fixed.agenda.watched).toHaveLength(60);
    expect(snapshot(at([desk(100, { do: 'reposition', toTick: 50 })], 101))[0]).toBe(101);
  });
});
