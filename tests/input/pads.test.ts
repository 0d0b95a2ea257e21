// Switches and levers of devices: fakes of them are moved by hand, frame by frame, and what is filed is looked at.
import fc from 'fast-check';
import { Subject, type Subscription } from 'rxjs';
import { describe, expect, test } from 'vitest';
import type { Act } from '../../sim/files/index.js';
import { foreseen } from '../../src/input/foreseen.js';
import { holdStep, type Held } from '../../src/input/hold.js';
import { controlOf, padBindingsOf, partOf, takenBy, withUse, type PadBindings, type PadUse } from '../../src/input/padBindings.js';
import { clear, padGroups, putLever, putSwitch, setDead, setStays, turnRound } from '../../src/input/padCard.js';
import { padChanges, padFelt, padPresses } from '../../src/input/padHands.js';
import { padEvents, type PadNow } from '../../src/input/pads.js';
import { bindingsOf } from '../../src/input/keys.js';
import type { Deck } from '../../src/input/deck.js';
import type { Panel, Picture } from '../../src/view/picture.js';
import { anywhere } from '../draw.js';

const PANEL: Panel = {
  settings: [0, 4, 9, 16, 26, 36].map((deg) => ({ deg, name: `${deg}` })), stopDeg: 38, dial: [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 38, dialDeg: 86 }],
  extendSwitch: 'sprung', retractSwitch: 'latched', stripKt: [100, 250], tlaMaxDeg: 55,
};
const NOW = {
  blank: false, frozen: false, guardOpen: true, armed: true, drive: 'off', flapLeverDeg: 4, gearLever: 'up', leftTlaDeg: 20, rightTlaDeg: 20,
  selectedKt: 167, speedHold: false, autopilot: false, handControl: 0, coverOpen: false, talk: null,
} as unknown as Picture;

const pad = (over: Partial<PadNow> = {}): PadNow => ({ index: 0, id: 'box', timestampMs: 0, buttons: [false, false, false, false], axes: [0, 0], ...over });
const on = (...pressed: number[]): boolean[] => [0, 1, 2, 3].map((button) => pressed.includes(button));

/** A deck on which everything that is filed is noted, and a drawer of fakes that the test moves. */
function bench(uses: readonly PadUse[] | PadBindings, now: Partial<Picture> = {}) {
  const bindings: PadBindings = Array.isArray(uses) ? { box: uses as readonly PadUse[] } : uses as PadBindings;
  const filed: { act: Act; stampMs: number; hand: string }[] = [];
  const told: string[] = [];
  let picture = { ...NOW, ...now } as Picture;
  const deck: Deck = {
    panel: PANEL, now: () => picture, bindings: () => bindingsOf({}), pads: () => bindings, letters: () => true, latched: () => false,
    act: (stampMs, act, hand) => filed.push({ act, stampMs, hand }), lose: (_, loss) => told.push(loss), pause: () => told.push('pause'), cover: () => told.push('cover'), mute: () => told.push('mute'),
  };
  let pads: readonly PadNow[] = [];
  let frameMs = 1000;
  const frame$ = new Subject<number>();
  const events = padChanges(frame$, () => pads, () => frameMs + 2);
  let held: Held = null;
  const felt: Subscription = padFelt(events, deck).subscribe(({ event, stampMs, hand }) => {
    const next = holdStep(held, event);
    held = next.held;
    if (next.deed === null) return;
    if (next.deed.deed === 'lose') told.push(`lose ${next.deed.loss}`);
    else filed.push({ act: next.deed.deed === 'hold' ? { do: 'holdDrive', way: next.deed.way } : { do: 'releaseDrive' }, stampMs, hand });
  });
  felt.add(padPresses(events, foreseen(deck)));
  return {
    filed, told,
    acts: () => filed.map(({ act }) => act),
    /** The next frame, 16 ms on, with the devices so. @returns when they were read */
    frame(...next: PadNow[]) { pads = next; frameMs += 16; frame$.next(frameMs); return frameMs + 2; },
    show(next: Partial<Picture>) { picture = { ...picture, ...next } as Picture; },
    isHeld: () => held !== null,
  };
}

const EXTEND: PadUse = { does: 'extend', button: 0, stays: false };

describe('what changed', () => {
  const AT = [{ readMs: 1002 }, { readMs: 1018 }] as const;
  test('a button with the device’s own time where that has gone on, else with that of the reading, which is never before it', () => {
    const events = (timestampMs: number) => padEvents([pad({ timestampMs: 900 })], [pad({ timestampMs, buttons: on(1) })], ...AT);
    expect(events(1009)).toEqual([{ index: 0, id: 'box', stampMs: 1009, clock: 'device', what: 'button', button: 1, on: true }]);
    // It stands; it is older than the reading that would have shown it; it lies ahead of now.
    for (const strange of [900, 950, 1018.1, 4e9]) expect(events(strange)[0], `${strange}`).toMatchObject({ stampMs: 1018, clock: 'frame' });
    expect(events(1018)[0]).toMatchObject({ stampMs: 1018, clock: 'device' });
  });
  test('a device that is new, or another in the same place, brings no change; one that is not there any more is gone', () => {
    expect(padEvents([], [pad({ buttons: on(0, 1) })], ...AT)).toEqual([]);
    expect(padEvents([pad()], [pad({ id: 'other', buttons: on(0) })], ...AT).map(({ what, id }) => `${what} ${id}`)).toEqual(['gone box']);
    expect(padEvents([pad()], [], ...AT)).toMatchObject([{ what: 'gone', index: 0 }]);
  });
  test('an axis that trembles by less than a thousandth has not moved', () => {
    expect(padEvents([pad()], [pad({ axes: [0.0009, 0] })], ...AT)).toEqual([]);
    expect(padEvents([pad()], [pad({ axes: [0.0011, 0] })], ...AT)).toMatchObject([{ what: 'axis', axis: 0, before: 0 }]);
  });
});

describe('the hold', () => {
  test('on holds, off releases, each with its stamp and by which clock', () => {
    const { frame, filed } = bench([EXTEND]);
    frame(pad());
    const at = frame(pad({ buttons: on(0) }));
    frame(pad({ buttons: on(0) }));
    frame(pad({ timestampMs: at + 30 }));
    expect(filed).toEqual([
      { act: { do: 'holdDrive', way: 'extend' }, stampMs: at, hand: 'gamepad by frames' },
      { act: { do: 'releaseDrive' }, stampMs: at + 30, hand: 'gamepad' },
    ]);
  });
  test('on from before the run, or on a device that comes up on: it must be let go first', () => {
    const { frame, acts } = bench([EXTEND]);
    frame(pad({ buttons: on(0) }));
    frame(pad({ buttons: on(0) }));
    expect(acts()).toEqual([]);
    frame(pad());
    frame(pad({ buttons: on(0) }));
    expect(acts()).toEqual([{ do: 'holdDrive', way: 'extend' }]);
    const late = bench([EXTEND]);
    late.frame();
    late.frame(pad({ buttons: on(0) }));
    late.frame(pad({ buttons: on(0) }));
    expect(late.acts()).toEqual([]);
  });
  test('a device that goes lets go as a lost window does; one that had no hand in the run goes unnoticed', () => {
    const { frame, told, acts, isHeld } = bench({ box: [EXTEND], idle: [EXTEND] });
    frame(pad(), pad({ index: 1, id: 'idle' }));
    frame(pad({ buttons: on(0) }), pad({ index: 1, id: 'idle' }));
    frame(pad({ buttons: on(0) }));
    expect([told, isHeld()]).toEqual([[], true]);
    frame();
    expect([told, isHeld(), acts()]).toEqual([['lose focusLost'], false, [{ do: 'holdDrive', way: 'extend' }]]);
    // Back with its button on: nothing before it has been off.
    frame(pad({ buttons: on(0) }));
    frame(pad({ buttons: on(0) }));
    expect(isHeld()).toBe(false);
  });
  test('a second device neither doubles the hold nor lets it go', () => {
    const { frame, acts, isHeld } = bench([EXTEND]);
    const second = (buttons: boolean[]) => pad({ index: 1, buttons });
    frame(pad(), second(on()));
    frame(pad({ buttons: on(0) }), second(on()));
    frame(pad({ buttons: on(0) }), second(on(0)));
    frame(pad({ buttons: on(0) }), second(on()));
    expect(isHeld()).toBe(true);
    frame(pad(), second(on()));
    expect(acts()).toEqual([{ do: 'holdDrive', way: 'extend' }, { do: 'releaseDrive' }]);
  });
  test('while the clock stands no switch is taken; held through it, it must be let go first', () => {
    const { frame, acts, show } = bench([EXTEND], { blank: true });
    frame(pad());
    frame(pad({ buttons: on(0) }));
    show({ blank: false });
    frame(pad({ buttons: on(0) }));
    expect(acts()).toEqual([]);
    frame(pad());
    frame(pad({ buttons: on(0) }));
    expect(acts()).toEqual([{ do: 'holdDrive', way: 'extend' }]);
  });
  test('whatever is pressed, pulled out and plugged in, holds and let-goes alternate, and without devices nothing is held', () => {
    const state = fc.array(fc.record({ index: fc.constantFrom(0, 1), id: fc.constantFrom('box', 'other'), down: fc.boolean() }), { maxLength: 2 });
    fc.assert(fc.property(fc.array(state, { maxLength: 30 }), (frames) => {
      const { frame, filed, isHeld } = bench({ box: [EXTEND], other: [{ ...EXTEND, button: 1 }] });
      for (const pads of frames) frame(...pads.filter(({ index }, at) => pads.findIndex((one) => one.index === index) === at).map(({ index, id, down }) => pad({ index, id, buttons: down ? on(0, 1) : on() })));
      frame();
      expect(isHeld()).toBe(false);
      for (const [at, { act }] of filed.entries()) if (act.do === 'releaseDrive') expect(filed[at - 1]?.act.do).toBe('holdDrive');
    }));
  });
});

describe('switches', () => {
  const press = (uses: PadUse[], now: Partial<Picture> = {}) => {
    const one = bench(uses, now);
    one.frame(pad());
    one.frame(pad({ buttons: on(0) }));
    one.frame(pad());
    return one;
  };
  test('each press acts once, as the key would', () => {
    expect(press([{ does: 'call', button: 0, stays: false }]).acts()).toEqual([{ do: 'callSplit' }]);
    expect(press([{ does: 'guard', button: 0, stays: false }]).acts()).toEqual([{ do: 'closeGuard' }]);
    // Latched: put by a press, taken back by the next.
    expect(press([{ does: 'retract', button: 0, stays: false }]).acts()).toEqual([{ do: 'setDrive', to: 'retract' }]);
    expect(press([{ does: 'silenceCover', button: 0, stays: false }]).told).toEqual(['cover']);
    expect(press([{ does: 'silence', button: 0, stays: false }]).acts()).toEqual([]);
    expect(press([{ does: 'silence', button: 0, stays: false }], { coverOpen: true }).acts()).toEqual([{ do: 'silenceHorn' }]);
    expect(press([{ does: 'pause', button: 0, stays: false }]).told).toEqual(['pause']);
    expect(press([{ does: 'mute', button: 0, stays: false }]).told).toEqual(['mute']);
  });
  test('a switch that stays says where the thing is to be, and nothing where it is already', () => {
    const both = (does: 'guard' | 'arm' | 'gear' | 'retract' | 'speedHold', now: Partial<Picture> = {}) => press([{ does, button: 0, stays: true }], now).acts();
    expect(both('guard', { guardOpen: false })).toEqual([{ do: 'openGuard' }, { do: 'closeGuard' }]);
    expect(both('guard', { guardOpen: true })).toEqual([{ do: 'closeGuard' }]);
    expect(both('arm', { armed: false })).toEqual([{ do: 'arm' }, { do: 'disarm' }]);
    expect(both('gear')).toEqual([{ do: 'setGear', to: 'down' }, { do: 'setGear', to: 'up' }]);
    expect(both('retract')).toEqual([{ do: 'setDrive', to: 'retract' }, { do: 'setDrive', to: 'off' }]);
    expect(both('speedHold')).toEqual([{ do: 'setSpeedHold', on: true }, { do: 'setSpeedHold', on: false }]);
  });
});

describe('levers', () => {
  const thrust: PadUse = { does: 'bothThrust', axis: 0, from: -1, to: 1, dead: 0 };
  const move = (use: PadUse, values: number[], now: Partial<Picture> = {}) => {
    const one = bench([use], now);
    one.frame(pad({ axes: [values[0]!, 0] }));
    for (const value of values.slice(1)) one.frame(pad({ axes: [value, 0] }));
    return one.acts();
  };
  test('where it stood at the start it moves nothing; then the lever goes where it is', () => {
    expect(move(thrust, [0, 0, 0])).toEqual([]);
    // Half of 55 degrees is 27.5; 0.6 along is 33.
    expect(move(thrust, [0, 0.2])).toEqual([{ do: 'setThrust', tlaDeg: 33, lever: 'both' }]);
    expect(move(thrust, [0, 1])).toEqual([{ do: 'setThrust', tlaDeg: 55, lever: 'both' }]);
    expect(move({ ...thrust, from: 1, to: -1 }, [0, 1])).toEqual([{ do: 'setThrust', tlaDeg: 0, lever: 'both' }]);
    expect(move({ ...thrust, does: 'leftThrust' }, [0, 0.2])).toEqual([{ do: 'setThrust', tlaDeg: 33, lever: 'left' }]);
  });
  test('a trembling hand, under 4 % of the travel, does not let the speed hold go; a moved lever does', () => {
    expect(move(thrust, [0, 0.07, -0.07, 0.07], { speedHold: true })).toEqual([]);
    expect(move(thrust, [0, 0.09], { speedHold: true })).toEqual([{ do: 'setThrust', tlaDeg: 30, lever: 'both' }]);
  });
  test('the flap lever goes from detent to detent, and between two of them stays', () => {
    const lever: PadUse = { does: 'lever', axis: 0, from: -1, to: 1, dead: 0 };
    // Six settings: detents at -1, -0.6, -0.2, 0.2, 0.6, 1; the lever of the deck stands at the second.
    expect(move(lever, [-0.6, -0.41, -0.39, -0.2])).toEqual([{ do: 'setFlapLever', settingDeg: 9 }]);
    expect(move(lever, [-0.6, -0.2, 0.2, 0.25, 0.15])).toEqual([{ do: 'setFlapLever', settingDeg: 9 }, { do: 'setFlapLever', settingDeg: 16 }]);
    expect(move(lever, [-0.6, 1])).toEqual([{ do: 'setFlapLever', settingDeg: 36 }]);
  });
  test('the roll control rests about its middle', () => {
    const roll: PadUse = { does: 'roll', axis: 0, from: -1, to: 1, dead: 0.1 };
    expect(move(roll, [0, 0.09])).toEqual([]);
    expect(move(roll, [0, 0.55])).toEqual([{ do: 'roll', control: 0.5 }]);
    expect(move(roll, [0, 0.55], { autopilot: true })).toEqual([]);
  });
  test('parts by hand: dead ends are ends, and all of the way lies between', () => {
    const use = { from: -1, to: 1, dead: 0.1 };
    expect([-1, -0.8, 0, 0.8, 1].map((value) => partOf(value, use))).toEqual([0, 0, 0.5, 1, 1]);
    expect([-1, -0.099, 0, 0.099, 1].map((value) => controlOf(value, use))).toEqual([-1, 0, 0, 0, 1]);
    expect(controlOf(0.55, use)).toBeCloseTo(0.5, 12);
    fc.assert(fc.property(anywhere(-1.5, 1.5), anywhere(0, 0.25), (value, dead) => {
      expect(partOf(value, { from: 1, to: -1, dead })).toBeCloseTo(1 - partOf(value, { from: -1, to: 1, dead }), 9);
      expect(Math.abs(controlOf(value, { from: -1, to: 1, dead }))).toBeLessThanOrEqual(1);
    }));
  });
});

describe('bindings', () => {
  test('of what a store holds only what fits is taken, the first of two that clash', () => {
    const kept = { box: [EXTEND, { does: 'arm', button: 0, stays: false }, { does: 'extend', button: 2, stays: false }, { does: 'call', button: 1, stays: true }, { does: 'nothing', button: 1 }, null, 7, { does: 'lever', axis: 0, from: 0, to: 0.1, dead: 0 }, { does: 'roll', axis: 1, from: -1, to: 1, dead: 0.03 }] };
    expect(padBindingsOf(kept)).toEqual({ box: [EXTEND, { does: 'call', button: 1, stays: false }, { does: 'roll', axis: 1, from: -1, to: 1, dead: 0.03 }] });
  });
  test('a taken switch is told, and goes where it is wanted', () => {
    const bindings = { box: [EXTEND] };
    expect(putSwitch(bindings, 'box', 'call', 0)).toEqual({ what: 'taken', by: 'extend', instead: { box: [{ does: 'call', button: 0, stays: false }] } });
    expect(putSwitch(bindings, 'box', 'extend', 3)).toEqual({ what: 'put', changes: { box: [{ ...EXTEND, button: 3 }] } });
    expect(putSwitch(bindings, 'other', 'call', 0)).toMatchObject({ what: 'put' });
    expect(takenBy([EXTEND], EXTEND)).toBeNull();
    expect(withUse([EXTEND], { does: 'roll', axis: 0, from: -1, to: 1, dead: 0 })).toHaveLength(2);
    expect(putLever({}, 'box', 'bothThrust', 0, 0.1, 0.2)).toMatchObject({ what: 'refused' });
  });
  test('stays, dead zone, turned round, cleared', () => {
    const bindings = { box: [{ does: 'gear', button: 1, stays: false }, { does: 'roll', axis: 0, from: -1, to: 1, dead: 0.03 }] } satisfies PadBindings;
    expect(setStays(bindings, 'box', 'gear', true).box?.[0]).toMatchObject({ stays: true });
    expect(setStays({ box: [{ does: 'call', button: 1, stays: false }] }, 'box', 'call', true).box?.[0]).toMatchObject({ stays: false });
    expect(setDead(bindings, 'box', 'roll', 9).box?.[1]).toMatchObject({ dead: 0.25 });
    expect(turnRound(bindings, 'box', 'roll').box?.[1]).toMatchObject({ from: 1, to: -1 });
    expect(clear(clear(bindings, 'box', 'roll'), 'box', 'gear')).toEqual({});
  });
  test('a page is shown everything once', () => {
    const all = padGroups([EXTEND]).flatMap(({ lines }) => lines.map(({ does }) => does));
    expect(new Set(all).size).toBe(all.length);
    expect(all).toEqual(expect.arrayContaining(['extend', 'pause', 'lever', 'roll']));
    expect(padGroups([EXTEND]).flatMap(({ lines }) => lines).find(({ does }) => does === 'extend')).toMatchObject({ source: 0, held: true, stays: false });
  });
});
