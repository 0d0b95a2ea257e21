// What the drill says: nothing finer than the eye reads, nothing while it is blanked, nothing of what is hidden.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CONTROLS, READINGS } from '../../src/view/instruments.js';
import type { Panel, Picture } from '../../src/view/picture.js';
import { knobSpring } from '../../src/view/spring.js';
import { bankWords, controlWords, feet, spokenDeg } from '../../src/view/words.js';
import { anywhere } from '../draw.js';

const panel: Panel = {
  settings: [{ deg: 0, name: 'up' }, { deg: 4, name: '4' }, { deg: 16, name: '16' }], stopDeg: 38,
  dial: [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 38, dialDeg: 86 }],
  extendSwitch: 'sprung', retractSwitch: 'latched', stripKt: [100, 250], tlaMaxDeg: 55,
};
const picture: Picture = {
  timeS: 10, blank: false, leftPointerDeg: 8.31, rightPointerDeg: 7.2, speedKt: 167.4, selectedKt: 167, speedHold: true,
  limitKt: 210, limitOf: 'limit for 16', lowestKt: 118.2, manoeuvreKt: 151.6, manoeuvreHollow: true, altitudeFt: 5596,
  leadingEdge: 'out', guardOpen: true, armed: false, drive: 'extend', flapLeverDeg: 16, leftTlaDeg: 25.2, rightTlaDeg: 24.6,
  hornTlaDeg: null, gearLever: 'down', gear: 'moving', horn: 'sounds', hornSilenced: false, coverOpen: false, path: 'down', bankDeg: -2.4, control: 0.23,
  handControl: 0, autopilot: false, holdLetGo: false, frozen: false, talk: null, otherFlies: false, headingDeg: 90,
};

test('readings in words', () => {
  expect(Object.fromEntries(READINGS.map(({ id, say }) => [id, say(picture, panel)]))).toEqual({
    speed: '167 knots', selected: '167 knots, speed hold on', limit: '210 knots, limit for 16',
    manoeuvre: '152 knots, once both sides are there', lowest: '118 knots', altitude: '5600 feet, descending',
    heading: '090 degrees', bank: '2 degrees left', control: 'some right', gearState: 'moving', alerts: 'warning: gear horn, can be silenced; warning: autopilot off, roll by hand',
    thrust: 'left 25, right 25 degrees', leftPointer: '8.5 degrees', rightPointer: '7.0 degrees', leadingEdge: 'out',
  });
});

test('no limit is no number', () => {
  const limit = READINGS.find(({ id }) => id === 'limit')!;
  expect(limit.say({ ...picture, limitKt: Infinity, limitOf: 'no limit' }, panel)).toBe('none');
});

test('bank to the degree, and one is one', () => {
  expect([0.4, 1.2, -0.6, -15.4].map(bankWords)).toEqual(['level', '1 degree right', '1 degree left', '15 degrees left']);
});

test('a blanked instrument says so and nothing else', () => {
  for (const { say } of READINGS) expect(say({ ...picture, blank: true }, panel)).toBe('blank');
});

test('states of the controls in words', () => {
  const said = Object.fromEntries(CONTROLS.map(({ id, say, on }) => [id, [say(picture, panel), on(picture, panel)]]));
  expect(said).toEqual({
    gear: ['down', true], leftThrust: ['25 degrees', null], bothThrust: ['left 25, right 25 degrees', null], rightThrust: ['25 degrees', null],
    speedHold: ['on', true], goAround: ['', null], lever: ['16', null], selectSpeed: ['167 knots', null],
    speedDown5: ['', null], speedDown: ['', null], speedUp: ['', null], speedUp5: ['', null], roll: ['in the middle', null],
    guard: ['open', true], arm: ['not armed', false], retract: ['stays where it is put', false], off: ['', false], extend: ['springs back when let go', true],
    call: ['', null], callClear: ['', null], callFailed: ['', null], callMoving: ['', null], silenceCover: ['shut', false], silence: ['under its cover', null],
  });
});

test('down is told of the gear only once it is locked (14 CFR 25.729(e)(1))', () => {
  const gear = READINGS.find(({ id }) => id === 'gearState')!;
  expect((['up', 'moving', 'down'] as const).map((state) => gear.say({ ...picture, gear: state }, panel))).toEqual(['up', 'moving', 'down and locked']);
});

test('a deflection is told without a figure', () => {
  fc.assert(fc.property(anywhere(-1, 1), (part) => {
    const words = controlWords(part);
    expect(words).not.toMatch(/\d/);
    expect(words.includes('right')).toBe(part >= 0.05);
    expect(words.includes('left')).toBe(part <= -0.05);
  }));
});

test('while it is blanked nobody holds a sprung switch, and a latched one stays', () => {
  const extend = CONTROLS.find(({ id }) => id === 'extend')!;
  const retract = CONTROLS.find(({ id }) => id === 'retract')!;
  expect(extend.on({ ...picture, blank: true }, panel)).toBe(false);
  expect(retract.on({ ...picture, blank: true, drive: 'retract' }, panel)).toBe(true);
});

test('pointers are spoken to half a degree, half of the finest division drawn, and never as minus zero', () => {
  expect(spokenDeg(-0.1)).toBe('0.0 degrees');
  fc.assert(fc.property(anywhere(-5, 45), (deg) => {
    const said = Number(spokenDeg(deg).split(' ')[0]);
    expect(Math.abs(said - deg)).toBeLessThanOrEqual(0.25 + 1e-9);
    expect(said * 2).toBe(Math.round(said * 2));
  }));
});

test('a height reads as a clearance writes it: no comma, no minus zero', () => {
  expect([0, -0.4, 999, 5599.6, 25640].map(feet)).toEqual(['0', '0', '999', '5600', '25640']);
});

test('the drawn knob follows the hand at once, and springs back within half a second with one small overshoot', () => {
  const places = { retract: 0, off: 100, extend: 200 };
  const knob = knobSpring(places);
  expect(knob(0, 'off')).toBe(100);
  expect(knob(0.01, 'extend')).toBe(200);
  const way = Array.from({ length: 50 }, (_, tick) => knob(0.02 + tick / 100, 'off'));
  expect(way[0]).toBeLessThan(200);
  expect(Math.min(...way)).toBeLessThan(100);
  expect(Math.min(...way)).toBeGreaterThan(85);
  expect(way[49]).toBe(100);
});

test('less movement: the knob is simply where it belongs', () => {
  const knob = knobSpring({ retract: 0, off: 100, extend: 200 }, true);
  expect(knob(0, 'extend')).toBe(200);
  expect(knob(0.01, 'off')).toBe(100);
});
