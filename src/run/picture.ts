/** From a world to the picture that the drill shows. */
import type { Airframe, ReadyScenario } from '../../sim/files/index.js';
import { FT, headingDeg, leftPointer, limitNow, lowestNow, manoeuvreKt, rightPointer, withNumbers, type Limit, type World } from '../../sim/index.js';
import type { Panel, Picture, Talk } from '../view/picture.js';

/** Both sides count as there this close to the setting, deg. */
const THERE_DEG = 0.5;
/** The strip reaches this far past the lowest and the highest speed that matter, kt. */
const STRIP_MARGIN_KT = 12;

/** What of the panel does not change in a run. */
export function panelOf(airframe: Airframe, world: World): Panel {
  const { settings, drive, gauge, engines } = airframe;
  const full = settings[settings.length - 1]?.deg ?? 0;
  const low = lowestNow(withNumbers(world.state, { leftDeg: full, rightDeg: full, leadingEdge: 1 }), world.fixed);
  const high = Math.max(...settings.map(({ limitKt }) => limitKt ?? 0), airframe.limits.leadingEdgeKt);
  const ten = (kt: number): number => 10 * Math.round(kt / 10);
  return {
    settings: settings.map(({ deg, name }) => ({ deg, name })),
    stopDeg: drive.stopDeg,
    dial: gauge.dial,
    extendSwitch: drive.extendSwitch,
    retractSwitch: drive.retractSwitch,
    stripKt: [ten(low - STRIP_MARGIN_KT), ten(high + STRIP_MARGIN_KT)],
    tlaMaxDeg: engines.leverMap[engines.leverMap.length - 1]?.tlaDeg ?? 0,
  };
}

function limitWords({ source, settingDeg }: Limit, airframe: Airframe): string {
  switch (source) {
    case 'lever': case 'leftSide': case 'rightSide':
      return `limit for ${airframe.settings.find(({ deg }) => deg === settingDeg)?.name ?? settingDeg}`;
    case 'leadingEdge': return 'limit, leading edge';
    case 'drive': return 'limit, drive running';
    case 'gear': return 'limit, gear';
    case 'none': return 'no limit';
  }
}

/** What the page knows beside the world. */
export interface Beside {
  /** Pause and assessment blank every instrument. */
  readonly blank: boolean;
  readonly frozen: boolean;
  readonly coverOpen: boolean;
  readonly holdLetGo: boolean;
  readonly talk: Talk | null;
  /** Lever angles may be shown against the horn's threshold. */
  readonly training: boolean;
}

const DEG = 180 / Math.PI;

/** The picture of one moment. Every key is written out: one literal, one shape; with a spread in it a frame of the stream took twenty times as long. */
export function pictureOf(world: World, airframe: Airframe, scenario: ReadyScenario, { blank, frozen, coverOpen, holdLetGo, talk, training }: Beside): Picture {
  const { state: s, fixed } = world;
  const limit = limitNow(s, airframe);
  const left = leftPointer(s, fixed.noise);
  const right = rightPointer(s, fixed.noise);
  const isThere = (deg: number): boolean => Math.abs(deg - s.latched.flapLeverDeg) <= THERE_DEG;
  return {
    blank, frozen, coverOpen, holdLetGo, talk,
    timeS: s.tick / 100,
    leftPointerDeg: left, rightPointerDeg: right,
    speedKt: s.casKt, selectedKt: s.latched.selectedKt, speedHold: s.latched.speedHold === 1,
    limitKt: limit.kt, limitOf: limitWords(limit, airframe),
    lowestKt: lowestNow(s, fixed),
    manoeuvreKt: manoeuvreKt(airframe, fixed, s.latched.flapLeverDeg, scenario.start.icing),
    manoeuvreHollow: !(isThere(left) && isThere(right)),
    altitudeFt: s.heightM / FT,
    path: s.pathSin < 0 ? 'down' : s.pathSin > 0 ? 'up' : 'level',
    leadingEdge: s.leadingEdge <= 0 ? 'in' : s.leadingEdge >= 1 ? 'out' : 'moving',
    guardOpen: s.latched.guardOpen === 1, armed: s.latched.armed === 1,
    drive: s.latched.drive > 0 ? 'extend' : s.latched.drive < 0 ? 'retract' : 'off',
    flapLeverDeg: s.latched.flapLeverDeg,
    leftTlaDeg: s.leftTlaDeg, rightTlaDeg: s.rightTlaDeg,
    hornTlaDeg: training ? (s.latched.leftLive + s.latched.rightLive === 2 ? airframe.horn.bothLiveTlaDeg : airframe.horn.oneLiveTlaDeg) : null,
    gearLever: s.latched.gearLever === 1 ? 'down' : 'up',
    gear: s.gear >= 1 ? 'down' : s.gear <= 0 ? 'up' : 'moving',
    horn: s.latched.horn === 2 ? 'insists' : s.latched.horn === 1 ? 'sounds' : 'silent', hornSilenced: s.latched.hornSilenced === 1,
    otherFlies: fixed.otherFlies,
    headingDeg: ((Math.round(headingDeg(fixed.headingRad, s.turnedRad)) + 359) % 360) + 1,
    bankDeg: s.bankRad * DEG, control: s.control, handControl: s.latched.handControl, autopilot: s.latched.autopilot === 1,
  };
}
