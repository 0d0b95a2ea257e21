// When exactly a trigger acts, at values hit exactly: ticks worked out by hand, 100 a second. A watcher is looked at at the
// end of a tick and acts at the start of the next; "a@100" reads: a has acted in tick 100.
import { describe, expect, it } from 'vitest';
import { actDue, watch } from '../../sim/agenda.js';
import { agendaOf } from '../../sim/agenda-of.js';
import { copyState, expand, hasActed, latch, withNumbers, type Fixed, type State } from '../../sim/index.js';
import { FT } from '../../sim/units.js';
import { AIRFRAME, scenario } from './bench.js';

type Value = Partial<Pick<State, 'driveDeg' | 'casKt' | 'heightM' | 'heldTicks'>>;

/** Steps the agenda alone over values given tick by tick (the last stays), so that each can be hit to the last bit. */
function acting(when: object, values: Value[], ticks = values.length + 3, more: object[] = []): string[] {
  const made = scenario({ events: [{ name: 'a', do: 'level', when }, ...more] });
  const world = expand(made, AIRFRAME, 1);
  const fixed: Fixed = { ...world.fixed, agenda: agendaOf(made, 1, 30000) };
  const s = withNumbers(world.state, { ...values[0], heldTicks: 0 });
  const told: string[] = [];
  for (let tick = 0; tick < ticks; tick += 1) {
    const before = { driveDeg: s.driveDeg, casKt: s.casKt, heightM: s.heightM };
    actDue(s, fixed);
    Object.assign(s, values[Math.min(tick + 1, values.length - 1)]);
    watch(s, fixed, before);
    s.tick += 1;
    for (const entry of fixed.agenda.inOrder) if (hasActed(s, fixed, entry) && !told.some((one) => one.startsWith(`${entry.name}@`))) told.push(`${entry.name}@${tick}`);
  }
  return told;
}
const drive = (...degs: number[]): Value[] => degs.map((driveDeg) => ({ driveDeg }));

describe('a crossing', () => {
  // Values before and after each tick; the crossing made in tick 1 acts in tick 2.
  it.each<[string, number[], string, string[]]>([
    ['rises to exactly the value', [5, 5.9, 6, 6], 'rising', ['a@2']],
    ['rises over it', [5, 5.9, 6.1], 'rising', ['a@2']],
    ['falls to exactly the value', [7, 6.1, 6, 6], 'falling', ['a@2']],
    ['falls over it', [7, 6.1, 5.9], 'falling', ['a@2']],
    ['stands on it from the start and leaves upward: not passed', [6, 6, 7], 'either', []],
    ['stands on it from the start and leaves downward: not passed', [6, 6, 5], 'either', []],
    ['comes to it and goes back: it was reached', [5, 6, 5], 'rising', ['a@1']],
    ['comes from above and waits for rising', [7, 6, 5], 'rising', []],
    ['comes from below and waits for falling', [5, 6, 7], 'falling', []],
    ['either, from above', [7, 6], 'either', ['a@1']],
    ['stays just short of it', [5, 6 - 2 ** -50, 6 - 2 ** -50], 'rising', []],
  ])('%s', (_what, degs, edge, told) => expect(acting({ flapDeg: 6, edge }, drive(...degs))).toEqual(told));

  it('left out, edge is either', () => expect(acting({ flapDeg: 6 }, drive(7, 5))).toEqual(acting({ flapDeg: 6, edge: 'either' }, drive(7, 5))));
  it('of speed and of height, in kt and in ft', () => {
    expect(acting({ speedKt: 160, edge: 'falling' }, [{ casKt: 161 }, { casKt: 160 }])).toEqual(['a@1']);
    // 3000 ft = 914.4 m exactly.
    expect(acting({ altitudeFt: 3000, edge: 'falling' }, [{ heightM: 915 }, { heightM: 914.4 }])).toEqual(['a@1']);
    expect(3000 * FT).toBe(914.4000000000001);
  });
});

describe('times', () => {
  it('at 0 acts in the first tick, and 0.01 in the second', () => {
    expect(acting({ atS: 0 }, [{}], 3)).toEqual(['a@0']);
    expect(acting({ atS: 0.01 }, [{}], 3)).toEqual(['a@1']);
  });
  it('0.29 s is tick 29, which floor would miss', () => expect(acting({ atS: 0.29 }, [{}], 40)).toEqual(['a@29']));
  it('held: at exactly the ticks, one tick behind', () => {
    const held = Array.from({ length: 60 }, (_, tick) => ({ heldTicks: tick }));
    expect(acting({ heldS: 0.5 }, held, 70)).toEqual(['a@50']); // held 50 at the end of tick 49
    expect(acting({ heldS: 0 }, held, 70)).toEqual(['a@1']);
  });
  it.each([[undefined, 'b@11'], [0, 'b@11'], [0.01, 'b@11'], [0.02, 'b@12'], [1, 'b@110']] as const)('after a at tick 10 with delay %s: %s', (delayS, told) => {
    expect(acting({ atS: 0.1 }, [{}], 200, [{ name: 'b', do: 'level', when: { after: 'a', ...(delayS === undefined ? {} : { delayS }) } }])).toEqual(['a@10', told]);
  });
  it('a chain of after takes a tick a link, whatever the order of the file', () => {
    const b = { name: 'b', do: 'level', when: { after: 'c' } };
    const c = { name: 'c', do: 'level', when: { after: 'a' } };
    expect(acting({ atS: 0.1 }, [{}], 30, [b, c])).toEqual(['a@10', 'c@11', 'b@12']);
    expect(acting({ atS: 0.1 }, [{}], 30, [c, b])).toEqual(['a@10', 'c@11', 'b@12']);
  });
});

describe('groups', () => {
  it('all: with the last of them; crossings made and undone before count', () => {
    expect(acting({ all: [{ flapDeg: 6 }, { flapDeg: 7 }] }, drive(5, 6, 5, 6.5, 7, 7))).toEqual(['a@4']);
    expect(acting({ all: [{ flapDeg: 7 }, { flapDeg: 6 }] }, drive(5, 6, 5, 6.5, 7, 7))).toEqual(['a@4']);
    expect(acting({ all: [{ flapDeg: 6 }, { atS: 0.08 }] }, drive(5, 6), 20)).toEqual(['a@8']);
  });
  it('any: with the first of them', () => {
    expect(acting({ any: [{ atS: 0.08 }, { flapDeg: 6 }] }, drive(5, 5, 6), 20)).toEqual(['a@2']);
    expect(acting({ any: [{ atS: 0.02 }, { flapDeg: 6 }] }, drive(5, 5, 5, 5, 5), 20)).toEqual(['a@2']);
  });
  it('nested: any of an all and a time', () => {
    const when = { any: [{ all: [{ flapDeg: 6 }, { speedKt: 160, edge: 'falling' }] }, { atS: 0.09 }] };
    expect(acting(when, [{ driveDeg: 5, casKt: 165 }, { driveDeg: 6 }, { casKt: 159 }], 20)).toEqual(['a@2']);
    expect(acting(when, [{ driveDeg: 5, casKt: 165 }, { driveDeg: 6 }], 20)).toEqual(['a@9']);
  });
  it('a group of one is its one, at its own tick', () => expect(acting({ all: [{ any: [{ flapDeg: 6 }] }] }, drive(5, 6))).toEqual(['a@1']));
  it('after inside a group waits for the thing itself', () => {
    const b = { name: 'b', do: 'level', when: { all: [{ after: 'a', delayS: 0.05 }, { atS: 0.02 }] } };
    expect(acting({ atS: 0.1 }, [{}], 30, [b])).toEqual(['a@10', 'b@15']);
  });
});

describe('in one tick', () => {
  it('faults before events, each in the order of the file, whatever made them act', () => {
    const dead = (name: string, when: object) => ({ name, kind: 'dead', when });
    const made = scenario({
      faults: [dead('f1', { heldS: 0.1 }), dead('f2', { atS: 0.1 })],
      events: [{ name: 'e1', do: 'selectSpeed', speedKt: 150, when: { atS: 0.1 } }, { name: 'e2', do: 'selectSpeed', speedKt: 160, when: { heldS: 0.1 } }],
    });
    expect(agendaOf(made, 1, 1000).inOrder.map(({ name }) => name)).toEqual(['f1', 'f2', 'e1', 'e2']);
    const swapped = scenario({ events: [...made.events].reverse() });
    const s = (one: typeof made): number => {
      const { fixed, state: start } = expand(one, AIRFRAME, 1);
      const state = copyState(start);
      const all = fixed.agenda.watched.reduce((bits, { place }) => bits | 1 << place, 0);
      latch(state, 'pending0', all);
      latch(state, 'done0', all);
      state.tick = 10;
      actDue(state, fixed);
      return state.latched.selectedKt;
    };
    expect([s(made), s(swapped)]).toEqual([160, 150]); // the later one of the file has the last word
  });
});
