// What an intent does where the controls stand.
import { expect, test } from 'vitest';
import { actOf, afterAct, leverTo, putAct, stays } from '../../src/input/acts.js';
import type { Panel } from '../../src/view/picture.js';

const panel: Panel = {
  settings: [0, 4, 9, 16].map((deg) => ({ deg, name: `${deg}` })), stopDeg: 38, dial: [{ flapDeg: 0, dialDeg: 0 }, { flapDeg: 38, dialDeg: 86 }],
  extendSwitch: 'sprung', retractSwitch: 'latched', stripKt: [100, 250], tlaMaxDeg: 55,
};
const now = { guardOpen: false, armed: false, drive: 'off', flapLeverDeg: 9 } as const;

test('guard and arm go to the other place', () => {
  expect(actOf('guard', now, panel)).toEqual({ do: 'openGuard' });
  expect(actOf('guard', { ...now, guardOpen: true }, panel)).toEqual({ do: 'closeGuard' });
  expect(actOf('arm', now, panel)).toEqual({ do: 'arm' });
  expect(actOf('arm', { ...now, armed: true }, panel)).toEqual({ do: 'disarm' });
  expect(actOf('call', now, panel)).toEqual({ do: 'callSplit' });
});

test('the lever steps between settings and stops at the ends', () => {
  expect(actOf('leverAft', now, panel)).toEqual({ do: 'setFlapLever', settingDeg: 16 });
  expect(actOf('leverForward', now, panel)).toEqual({ do: 'setFlapLever', settingDeg: 4 });
  expect(actOf('leverAft', { ...now, flapLeverDeg: 16 }, panel)).toBeNull();
  expect(actOf('leverForward', { ...now, flapLeverDeg: 0 }, panel)).toBeNull();
  expect(leverTo(2, now, panel)).toBeNull();
  expect(leverTo(0, now, panel)).toEqual({ do: 'setFlapLever', settingDeg: 0 });
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
  expect(actOf('off', now, panel)).toEqual({ do: 'setDrive', to: 'off' });
});
