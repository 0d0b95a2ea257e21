/** A picture for the first drawing of a panel, which is the dear one: drawn before the clock starts, and never seen. */
import type { Panel, Picture } from './picture.js';

/** As much as can be drawn at once is in it, so that little is drawn for the first time in a run. */
export function atRest({ stripKt: [low, high] }: Panel): Picture {
  const middle = (low + high) / 2;
  return {
    timeS: 0, blank: false, leftPointerDeg: 0, rightPointerDeg: 0, speedKt: middle, selectedKt: middle, speedHold: true,
    limitKt: high, limitOf: 'limit', lowestKt: low, manoeuvreKt: middle, manoeuvreHollow: true, altitudeFt: 0,
    leadingEdge: 'in', guardOpen: false, armed: false, drive: 'off', flapLeverDeg: 0, leftTlaDeg: 0, rightTlaDeg: 0,
    hornTlaDeg: null, gearLever: 'up', gear: 'up', horn: 'insists', hornSilenced: false, coverOpen: false, path: 'level', bankDeg: 0, control: 0,
    handControl: 0, autopilot: false, holdLetGo: true, frozen: false, talk: null, otherFlies: true, headingDeg: 360,
  };
}
