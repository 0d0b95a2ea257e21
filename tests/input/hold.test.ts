// The hold as a machine: who takes the switch, who lets it go. A small honest model attacks it with random events.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { holdStep, latchedEvent, type Deed, type Grip, type Held, type HoldEvent } from '../../src/input/hold.js';

function play(events: readonly HoldEvent[]): { held: Held; deeds: Deed[] } {
  let held: Held = null;
  const deeds: Deed[] = [];
  for (const event of events) {
    const next = holdStep(held, event);
    held = next.held;
    if (next.deed !== null) deeds.push(next.deed);
  }
  return { held, deeds };
}

const press = (grip: Grip, way: 'extend' | 'retract' = 'extend'): HoldEvent => ({ what: 'press', grip, way });
const lift = (grip: Grip): HoldEvent => ({ what: 'lift', grip });

test('press holds, lift releases', () => {
  expect(play([press('pointer 1'), lift('pointer 1')])).toEqual({ held: null, deeds: [{ deed: 'hold', way: 'extend' }, { deed: 'release' }] });
  expect(play([press('key KeyE', 'retract')]).held).toEqual({ grip: 'key KeyE', way: 'retract' });
});

test('a second pointer or key neither doubles the hold nor lets it go', () => {
  const { held, deeds } = play([press('pointer 1'), press('pointer 2'), press('key KeyE'), lift('pointer 2'), lift('key KeyE')]);
  expect(held).toEqual({ grip: 'pointer 1', way: 'extend' });
  expect(deeds).toEqual([{ deed: 'hold', way: 'extend' }]);
});

test('the finger that stays does not take the switch over when the first one lifts', () => {
  expect(play([press('pointer 1'), press('pointer 2'), lift('pointer 1')]).held).toBeNull();
});

test('capture lost behind a lift is nothing new; without one the device lost the hand', () => {
  const gone: HoldEvent = { what: 'gone', grip: 'pointer 1' };
  expect(play([press('pointer 1'), lift('pointer 1'), gone]).deeds).toHaveLength(2);
  expect(play([press('pointer 1'), gone]).deeds[1]).toEqual({ deed: 'lose', loss: 'focusLost' });
});

test('focus that moves inside the page ends the hold of a key, not that of a finger', () => {
  expect(play([press('key Space'), { what: 'moved' }])).toEqual({ held: null, deeds: [{ deed: 'hold', way: 'extend' }, { deed: 'release' }] });
  expect(play([press('pointer 1'), { what: 'moved' }]).held).not.toBeNull();
});

test('a pause lets go whatever holds, and is nothing where nothing is held', () => {
  expect(play([press('key KeyE'), { what: 'letGo' }, lift('key KeyE')]).deeds).toEqual([{ deed: 'hold', way: 'extend' }, { deed: 'release' }]);
  expect(play([{ what: 'letGo' }]).deeds).toEqual([]);
});

test('window or page lost is told whether or not anything is held', () => {
  expect(play([{ what: 'lost', loss: 'hidden' }]).deeds).toEqual([{ deed: 'lose', loss: 'hidden' }]);
  expect(play([press('pointer 1'), { what: 'lost', loss: 'focusLost' }, lift('pointer 1')])).toEqual({
    held: null, deeds: [{ deed: 'hold', way: 'extend' }, { deed: 'lose', loss: 'focusLost' }],
  });
});

const grip = fc.constantFrom<Grip>('pointer 1', 'pointer 2', 'key KeyE', 'key KeyR', 'key Space');
const event: fc.Arbitrary<HoldEvent> = fc.oneof(
  fc.record({ what: fc.constant('press' as const), grip, way: fc.constantFrom('extend' as const, 'retract' as const) }),
  fc.record({ what: fc.constant('lift' as const), grip }),
  fc.record({ what: fc.constant('gone' as const), grip }),
  fc.constantFrom<HoldEvent>({ what: 'moved' }, { what: 'letGo' }),
  fc.record({ what: fc.constant('lost' as const), loss: fc.constantFrom('focusLost' as const, 'hidden' as const) }),
);

test('holds and let-goes alternate, and a loss at the end always leaves the switch free', () => {
  fc.assert(fc.property(fc.array(event, { maxLength: 40 }), (events) => {
    const { deeds } = play(events);
    let holding = false;
    for (const { deed } of deeds) {
      if (deed === 'hold') {
        expect(holding).toBe(false);
        holding = true;
      } else {
        if (deed === 'release') expect(holding).toBe(true);
        holding = false;
      }
    }
    expect(play([...events, { what: 'lost', loss: 'hidden' }]).held).toBeNull();
  }));
});

/** The same events for a hand that cannot hold. */
function playLatched(events: readonly HoldEvent[]): { held: Held; deeds: Deed[] } {
  let held: Held = null;
  const deeds: Deed[] = [];
  for (const event of events) {
    const meant = latchedEvent(held, event);
    if (meant === null) continue;
    const next = holdStep(held, meant);
    held = next.held;
    if (next.deed !== null) deeds.push(next.deed);
  }
  return { held, deeds };
}

test('latched: press runs, lifting and slipping change nothing, the next press of any kind stops', () => {
  const tap = [press('pointer 1'), lift('pointer 1'), { what: 'gone', grip: 'pointer 1' }, { what: 'moved' }] as const;
  expect(playLatched(tap)).toEqual({ held: { grip: 'latch', way: 'extend' }, deeds: [{ deed: 'hold', way: 'extend' }] });
  expect(playLatched([...tap, press('key KeyE'), lift('key KeyE')])).toEqual({ held: null, deeds: [{ deed: 'hold', way: 'extend' }, { deed: 'release' }] });
});

test('latched: a lost page lets go all the same', () => {
  expect(playLatched([press('pointer 1'), { what: 'lost', loss: 'hidden' }])).toEqual({ held: null, deeds: [{ deed: 'hold', way: 'extend' }, { deed: 'lose', loss: 'hidden' }] });
  expect(playLatched([press('pointer 1'), { what: 'letGo' }]).deeds).toEqual([{ deed: 'hold', way: 'extend' }, { deed: 'release' }]);
});
