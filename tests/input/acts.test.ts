// What an intent does where the controls stand.
import { expect, test } from 'vitest';
import type { Act } from '../../sim/files/index.js';
import { actsOf, afterAct, answer, leverTo, putAct, rollTo, selectTo, stays, thrustTo, type Now } from '../../src/input/acts.js';
import type { Panel } from '../../src/view/picture.js';

const panel: Panel = {
  settings: [0, 4, 9, 16].map((deg) => ({ deg, name: `${deg}` })), stopDeg: 38, dial: [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 38, dialDeg: 86 }],
  extendSwitch: 'sprung', retractSwitch: 'latched', stripKt: [100, 250], tlaMaxDeg: 55,
};
const now: Now = {
  guardOpen: false, armed: false, drive: 'off', flapLeverDeg: 9, gearLever: 'up', leftTlaDeg: 25.2, rightTlaDeg: 25.2, selectedKt: 167, speedHold: true,
  autopilot: true, handControl: 0, coverOpen: false, talk: null,
};

test('guard and arm go to the other place', () => {
  expect(actsOf('guard', now, panel)).toEqual([{ do: 'openGuard' }]);
  expect(actsOf('guard', { ...now, guardOpen: true }, panel)).toEqual([{ do: 'closeGuard' }]);
  expect(actsOf('arm', now, panel)).toEqual([{ do: 'arm' }]);
  expect(actsOf('arm', { ...now, armed: true }, panel)).toEqual([{ do: 'disarm' }]);
  expect(actsOf('call', now, panel)).toEqual([{ do: 'callSplit' }]);
});

test('the lever steps between settings and stops at the ends', () => {
  expect(actsOf('leverAft', now, panel)).toEqual([{ do: 'setFlapLever', settingDeg: 16 }]);
  expect(actsOf('leverForward', now, panel)).toEqual([{ do: 'setFlapLever', settingDeg: 4 }]);
  expect(actsOf('leverAft', { ...now, flapLeverDeg: 16 }, panel)).toEqual([]);
  expect(actsOf('leverForward', { ...now, flapLeverDeg: 0 }, panel)).toEqual([]);
  expect(leverTo(2, now, panel)).toEqual([]);
  expect(leverTo(0, now, panel)).toEqual([{ do: 'setFlapLever', settingDeg: 0 }]);
});

test('a second press before the next picture counts on from the first', () => {
  expect(afterAct(now, { do: 'setFlapLever', settingDeg: 16 })).toEqual({ ...now, flapLeverDeg: 16 });
  expect(afterAct(now, { do: 'arm' })).toEqual(now);
  const open = afterAct(now, { do: 'openGuard' });
  expect(afterAct(open, { do: 'arm' })).toEqual({ ...now, guardOpen: true, armed: true });
  expect(afterAct({ ...now, guardOpen: true, armed: true, drive: 'retract' }, { do: 'closeGuard' })).toEqual(now);
  expect(afterAct(now, { do: 'setDrive', to: 'retract' })).toEqual(now);
  expect(afterAct(open, { do: 'setDrive', to: 'retract' })).toMatchObject({ drive: 'retract' });
});

test('a place that stays is put, and put again goes to off', () => {
  expect(stays('retract', panel)).toBe(true);
  expect(stays('extend', panel)).toBe(false);
  expect(putAct('retract', now)).toEqual({ do: 'setDrive', to: 'retract' });
  expect(putAct('retract', { ...now, drive: 'retract' })).toEqual({ do: 'setDrive', to: 'off' });
  expect(actsOf('off', now, panel)).toEqual([{ do: 'setDrive', to: 'off' }]);
});

test('every call is an act of its own', () => {
  const dos = (['call', 'callClear', 'callFailed', 'callMoving'] as const).map((press) => actsOf(press, now, panel).map((act) => act.do));
  expect(dos).toEqual([['callSplit'], ['callClear'], ['callDriveFailed'], ['callStillMoving']]);
});

test('gear, speed hold, go around', () => {
  expect(actsOf('gear', now, panel)).toEqual([{ do: 'setGear', to: 'down' }]);
  expect(actsOf('gear', { ...now, gearLever: 'down' }, panel)).toEqual([{ do: 'setGear', to: 'up' }]);
  expect(actsOf('speedHold', now, panel)).toEqual([{ do: 'setSpeedHold', on: false }]);
  expect(actsOf('goAround', now, panel)).toEqual([{ do: 'goAround' }]);
});

test('the selected speed goes by 1 and by 5 knots, and stays on the strip', () => {
  const steps = (['speedDown5', 'speedDown', 'speedUp', 'speedUp5'] as const).map((press) => actsOf(press, now, panel));
  expect(steps).toEqual([162, 166, 168, 172].map((speedKt) => [{ do: 'selectSpeed', speedKt }]));
  expect(selectTo(251, { ...now, selectedKt: 249 }, panel)).toEqual([{ do: 'selectSpeed', speedKt: 250 }]);
  expect(selectTo(251, { ...now, selectedKt: 250 }, panel)).toEqual([]);
  expect(selectTo(99.6, { ...now, selectedKt: 101 }, panel)).toEqual([{ do: 'selectSpeed', speedKt: 100 }]);
});

test('levers that stand together move together; levers that stand apart stay apart', () => {
  expect(actsOf('thrustForward', now, panel)).toEqual([{ do: 'setThrust', tlaDeg: 27, lever: 'both' }]);
  expect(actsOf('thrustAft', { ...now, leftTlaDeg: 10, rightTlaDeg: 20 }, panel)).toEqual([
    { do: 'setThrust', tlaDeg: 8, lever: 'left' }, { do: 'setThrust', tlaDeg: 18, lever: 'right' },
  ]);
  expect(thrustTo('left', 99, now, panel)).toEqual([{ do: 'setThrust', tlaDeg: 55, lever: 'left' }]);
  expect(thrustTo('both', -3, { ...now, speedHold: false, leftTlaDeg: 0, rightTlaDeg: 0 }, panel)).toEqual([]);
  // A lever that is moved lets the speed hold go, at whatever angle it stands.
  expect(afterAct(now, { do: 'setThrust', tlaDeg: 30, lever: 'left' })).toMatchObject({ leftTlaDeg: 30, rightTlaDeg: 25.2, speedHold: false });
});

test('roll by hand only once the autopilot is off, in whole steps, to the ends and no further', () => {
  expect(actsOf('rollLeft', now, panel)).toEqual([]);
  const off = { ...now, autopilot: false };
  expect(actsOf('rollLeft', off, panel)).toEqual([{ do: 'roll', control: -0.05 }]);
  expect(rollTo(0.148, off)).toEqual([{ do: 'roll', control: 0.15 }]);
  expect(rollTo(1.7, { ...off, handControl: 0.95 })).toEqual([{ do: 'roll', control: 1 }]);
  expect(rollTo(1.7, { ...off, handControl: 1 })).toEqual([]);
  expect(Object.is((rollTo(-0.01, { ...off, handControl: 0.3 })[0] as { control: number }).control, 0)).toBe(true);
});

test('silence takes two steps: under a cover that is shut the button does nothing (14 CFR 25.729(e)(4))', () => {
  expect(actsOf('silence', now, panel)).toEqual([]);
  expect(actsOf('silence', { ...now, coverOpen: true }, panel)).toEqual([{ do: 'silenceHorn' }]);
});

test('an answer by its place, once, and none where nothing is asked', () => {
  const asked = { ...now, talk: { id: 1, text: 'Speed?', answers: ['150', '160'], acts: [{ do: 'answer', text: '150' }, { do: 'answer', text: '160' }] as Act[], caution: null, part: 1, waiting: 0 } };
  expect(actsOf('answer2', asked, panel)).toEqual([{ do: 'answer', text: '160' }]);
  expect(answer(2, asked)).toEqual([]);
  expect(actsOf('answer1', now, panel)).toEqual([]);
  expect(actsOf('answer1', afterAct(asked, asked.talk.acts[0]!), panel)).toEqual([]);
});
