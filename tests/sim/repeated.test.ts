// What acts more than once, and what ends a fault: ticks worked out by hand from the file, 100 a second.
import { describe, expect, it } from 'vitest';
import { keyTable, scenarioSchema, tryAs } from '../../sim/files/index.js';
import { misfits } from '../../sim/files/fit.js';
import { advance, CLEARABLE, expand, fly, hasActed, type Command, type State, type World } from '../../sim/index.js';
import { AIRFRAME, scenario } from './bench.js';

const HELD = [{ do: 'arm', tick: 0, rank: 2, seq: 0 }, { do: 'holdDrive', way: 'extend', tick: 0, rank: 2, seq: 1 }] as Command[];
const dead = (when: object, more: object = {}) => ({ name: 'f', kind: 'dead', when, ...more });

/** Ticks in which entries act, in the order of acting, as "name@tick". */
function acting(keys: object, ticks: number, log: Command[] = []): string[] {
  let world = expand(scenario(keys as Record<string, unknown>), AIRFRAME, 1);
  const seen = new Set<number>();
  const told: string[] = [];
  for (let tick = 0; tick < ticks; tick += 1) {
    world = advance(world, log, 1);
    for (const entry of world.fixed.agenda.inOrder) {
      if (seen.has(entry.place) || !hasActed(world.state, world.fixed, entry)) continue;
      seen.add(entry.place);
      told.push(`${entry.name ?? entry.event?.do ?? ''}@${tick}`);
    }
  }
  return told;
}

describe('times', () => {
  it('at a time: every so many seconds behind the first, so often and no more', () => {
    expect(acting({ events: [{ name: 'a', do: 'level', when: { atS: 1 }, times: 3, everyS: 0.5 }] }, 400)).toEqual(['a@100', 'a@150', 'a@200']);
  });

  it('a trigger of held time: the first in the tick behind, the others everyS behind the first', () => {
    // Held from tick 0; 1 s held at the end of tick 99; acts in 100, then 100 + 70, 100 + 140.
    expect(acting({ events: [{ name: 'a', do: 'level', when: { heldS: 1 }, times: 3, everyS: 0.7 }] }, 400, HELD)).toEqual(['a@100', 'a@170', 'a@240']);
  });

  it('after: the first behind the named thing, the others behind its own first', () => {
    const events = [{ name: 'a', do: 'level', when: { atS: 1 } }, { name: 'b', do: 'level', when: { after: 'a', delayS: 0.2 }, times: 2, everyS: 0.01 }];
    expect(acting({ events }, 300)).toEqual(['a@100', 'b@120', 'b@121']);
  });

  it('others wait for its first time only', () => {
    const events = [{ name: 'a', do: 'level', when: { heldS: 1 }, times: 3, everyS: 1 }, { name: 'b', do: 'level', when: { after: 'a', delayS: 1.5 } }];
    expect(acting({ events }, 500, HELD)).toEqual(['a@100', 'a@200', 'b@250', 'a@300']);
  });

  it('a crossing comes anew each time it is crossed, and not by standing there', () => {
    const hold = (way: string, tick: number, seq: number) => ({ do: way === 'off' ? 'releaseDrive' : 'holdDrive', ...(way === 'off' ? {} : { way }), tick, rank: 2, seq }) as Command;
    const to = (place: string, tick: number, seq: number) => ({ do: 'setDrive', to: place, tick, rank: 2, seq }) as Command;
    // Out over 6 deg, back in over it, out again: three crossings, of which two rise and one falls.
    const log = [{ do: 'arm', tick: 0, rank: 2, seq: 0 } as Command, hold('extend', 0, 1), hold('off', 2000, 2), to('retract', 2200, 3), to('off', 4000, 4), hold('extend', 4200, 5)];
    const start = { flapDeg: 5.8, flapLeverDeg: 4 };
    const run = (edge: string, times: number) => acting({ start, events: [{ name: 'a', do: 'level', when: { flapDeg: 6, edge }, times }] }, 6000, log);
    const either = run('either', 5);
    expect(either).toHaveLength(3);
    expect(run('rising', 5)).toEqual([either[0], either[2]]);
    expect(run('falling', 5)).toEqual([either[1]]);
    expect(run('either', 2)).toEqual(either.slice(0, 2));
  });

  it('in one tick a further time acts where its thing stands in the file', () => {
    const events = [{ name: 'a', do: 'level', when: { atS: 1 }, times: 2, everyS: 1 }, { name: 'b', do: 'level', when: { atS: 2 } }];
    expect(acting({ faults: [dead({ atS: 1 }, { times: 2, everyS: 1 })], events }, 300)).toEqual(['f@100', 'a@100', 'f@200', 'a@200', 'b@200']);
  });

  it('needs everyS where nothing comes anew, and everyS needs times; at the key', () => {
    const said = (fault: object): string[] => {
      const read = tryAs(scenarioSchema, { ...JSON.parse(JSON.stringify(scenario())) as object, faults: [fault] });
      return read.ok ? [] : read.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
    };
    expect(said(dead({ heldS: 1 }, { times: 2 }))).toEqual(['faults.0.times: everyS beside times, since such a trigger does not come anew']);
    expect(said(dead({ any: [{ flapDeg: 5 }] }, { times: 2 }))).toEqual(['faults.0.times: everyS beside times, since such a trigger does not come anew']);
    expect(said(dead({ flapDeg: 5 }, { times: 2 }))).toEqual([]);
    expect(said(dead({ atS: 5 }, { everyS: 2 }))).toEqual(['faults.0.everyS: everyS only beside times']);
    expect(said(dead({ atS: 5 }, { times: 21, everyS: 2 }))).toHaveLength(1);
  });

  it('as often as there is room for, and once more is refused', () => {
    const many = (count: number) => scenario({ events: Array.from({ length: 3 }, (_, k) => ({ do: 'level', when: { atS: 1 }, times: k === 2 ? count : 20, everyS: 1 })) });
    expect(misfits(many(20), AIRFRAME)).toEqual([]);
    expect(acting(many(20) as object, 2200)).toHaveLength(60);
    expect(misfits(scenario({ ...many(20), faults: [dead({ atS: 1 })] }), AIRFRAME).map(({ allowed }) => allowed))
      .toEqual(['at most 60 faults and events, each counted as often as it may act, not 61']);
    const memos = (count: number) => scenario({ events: Array.from({ length: count }, () => ({ do: 'level', when: { heldS: 1 }, times: 2, everyS: 1 })) });
    expect(misfits(memos(8), AIRFRAME)).toEqual([]);
    expect(misfits(memos(9), AIRFRAME)).toHaveLength(1);
  });
});

describe('clearFault', () => {
  const after = (faults: object[], events: object[], ticks: number, log = HELD): State => advance(worldOf(faults, events), log, ticks).state;
  const worldOf = (faults: object[], events: object[]): World => expand(scenario({ start: { flapDeg: 6, flapLeverDeg: 9 }, faults, events }), AIRFRAME, 1);
  const clear = (atS: number, fault = 'f') => ({ do: 'clearFault', fault, when: { atS } });

  it('the words of its key name every kind that can end', () => {
    const { meaning } = keyTable('scenario').find(({ path }) => path === 'events[].fault (clearFault)')!;
    expect(meaning).toBe(`Name of the fault. Only ${CLEARABLE.slice(0, -1).join(', ')} and ${CLEARABLE[CLEARABLE.length - 1]} can end.`);
  });

  it('a lag ends: the sides keep the distance they have then', () => {
    const lag = { name: 'f', kind: 'lag', side: 'right', ratio: 0.5, when: { atS: 1 } };
    const gap = (ticks: number): number => { const s = after([lag], [clear(5)], ticks); return s.leftDeg - s.rightDeg; };
    expect(gap(500)).toBeGreaterThan(0.2);
    expect(gap(1500)).toBeCloseTo(gap(500), 12);
    const left = after([lag], [clear(5)], 1500).leftDeg;
    expect(left).toBeGreaterThan(after([lag], [clear(5)], 500).leftDeg + 0.5);
  });

  it.each<[string, object, (s: State) => number, number, number]>([
    ['slip', { kind: 'slip', side: 'left', ratio: 0, periodS: 1, onS: 0.5 }, (s) => s.latched.leftSlip, 1, 0],
    ['pointer stuck', { kind: 'pointer', side: 'left', mode: 'stuck' }, (s) => s.latched.leftStuck, 1, 0],
    ['pointer bias', { kind: 'pointer', side: 'right', mode: 'bias', biasDeg: 2 }, (s) => s.rightBiasDeg, 2, 0],
    ['pointer drift', { kind: 'pointer', side: 'right', mode: 'drift', driftDegPerS: 0.2 }, (s) => s.latched.rightDriftDegPerS, 0.2, 0],
    ['dead', { kind: 'dead' }, (s) => s.latched.driveDead, 1, 0],
    ['slow', { kind: 'slow', factor: 0.5 }, (s) => s.latched.driveFactor, 0.5, 1],
    ['runsOn', { kind: 'runsOn' }, (s) => s.latched.contactorStuck, 1, 0],
    ['leadingEdge', { kind: 'leadingEdge', stopsAt: 0.5 }, (s) => s.latched.leadingEdgeStop, 0.5, 1],
  ])('%s: in force before its tick, whole from it on', (_what, fault, term, ill, whole) => {
    const faults = [{ name: 'f', when: { atS: 1 }, ...fault }];
    expect(term(after(faults, [clear(2)], 200))).toBe(ill);
    expect(term(after(faults, [clear(2)], 201))).toBe(whole);
  });

  it('in the same tick the fault acts first, and nothing of it is left', () => {
    expect(after([dead({ atS: 1 })], [clear(1)], 101).latched.driveDead).toBe(0);
  });

  it('before the fault has acted it changes nothing, and the fault comes all the same', () => {
    const lag = { name: 'f', kind: 'lag', side: 'right', ratio: 0.5, when: { atS: 3 } };
    const other = { name: 'g', kind: 'lag', side: 'right', ratio: 0.8, when: { atS: 1 } };
    expect(after([lag, other], [clear(2)], 250).latched.rightRatio).toBe(0.8);
    expect(after([lag, other], [clear(2)], 350).latched.rightRatio).toBe(0.5);
  });

  it('a drive that has stopped for good stays so when another fault of it ends', () => {
    expect(after([dead({ atS: 1 }), { name: 'g', kind: 'quits', when: { atS: 2 } }], [clear(3)], 400).latched.driveDead).toBe(1);
  });

  it('comes and goes: a lag three times, each ended two seconds on', () => {
    const faults = [{ name: 'f', kind: 'lag', side: 'right', ratio: 0, when: { heldS: 2 }, times: 3, everyS: 4 }];
    const events = [{ name: 'over', do: 'clearFault', fault: 'f', when: { after: 'f', delayS: 2 }, times: 3, everyS: 4 }];
    const ratios = [199, 201, 399, 401, 599, 601, 799, 801, 999, 1001, 1201, 1601].map((ticks) => after(faults, events, ticks).latched.rightRatio);
    expect(ratios).toEqual([1, 0, 0, 1, 1, 0, 0, 1, 1, 0, 1, 1]);
    const told = fly({ scenario: scenario({ faults, events }), airframe: AIRFRAME, seed: 1 }, HELD).events.filter(({ what }) => what === 'fault' || what === 'cleared');
    expect(told.map(({ what, atS }) => `${what} ${atS}`)).toEqual(['fault 2', 'cleared 4', 'fault 6', 'cleared 8', 'fault 10', 'cleared 12']);
  });

  it('names a fault of the file that can end', () => {
    const said = (kind: string, fault = 'f'): string[] => {
      const one = ['disconnect', 'jam', 'blowback'].includes(kind) ? { name: 'f', kind, side: 'left', when: { atS: 1 } } : { name: 'f', kind, when: { atS: 1 } };
      const read = tryAs(scenarioSchema, { ...JSON.parse(JSON.stringify(scenario())) as object, faults: [one], events: [clear(2, fault)] });
      return read.ok ? [] : read.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
    };
    expect(said('dead')).toEqual([]);
    for (const kind of ['disconnect', 'jam', 'blowback', 'quits']) expect(said(kind)).toEqual([`events.0.fault: a fault that can end: a ${kind} stays`]);
    expect(said('dead', 'g')).toEqual(['events.0.fault: the name of a fault']);
  });
});
