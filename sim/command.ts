/** Commands: acts with their tick and rank, in one total order. */
import type { Act } from './files/act.js';
import type { DeskAct } from './files/desk-act.js';
import { arm, closeGuard, holdDrive, releaseDrive, setDrive } from './drive/switchgear.js';
import { levelOff, startPath } from './events.js';
import { selectHeading } from './flight/heading.js';
import type { Fixed } from './fixed.js';
import { latch, type State } from './state.js';
import { RAD } from './units.js';

/** 0 the agenda, 1 a desk, 2 the trainee; within a tick the lower acts first. */
export type Rank = 0 | 1 | 2;

/** An act with the tick at whose beginning it is done, and its sequence `seq`: a whole number from 0, counted up as acts are filed. */
export type Command = (Act | DeskAct) & { readonly tick: number; readonly rank: Rank; readonly seq: number };

/** The total order: tick, rank, sequence. */
export const byOrder = (a: Command, b: Command): number => a.tick - b.tick || a.rank - b.rank || a.seq - b.seq;

/** Who flies has speed, thrust, gear and path in hand; a trainee who drives while another flies has not. */
const FLYING: readonly Act['do'][] = [
  'setThrust', 'selectSpeed', 'setSpeedHold', 'setGear', 'descend', 'level', 'turn', 'selectHeading', 'goAround',
];

/** Whether an act of the trainee belongs to whoever flies. */
export const isOfFlying = (act: Pick<Act, 'do'>): boolean => FLYING.includes(act.do);

/**
 * Does what the trainee's hand or voice says. Acts that change nothing are allowed, and so are those that are not the
 * trainee's to give: they do nothing. What a desk did stands in the agenda: see `sim/desk`.
 */
export function applyAct(s: State, fixed: Fixed, act: Act): void {
  if (fixed.otherFlies && isOfFlying(act)) return;
  switch (act.do) {
    case 'openGuard': latch(s, 'guardOpen', 1); return;
    case 'closeGuard': closeGuard(s); return;
    case 'arm': arm(s); return;
    case 'disarm': latch(s, 'armed', 0); return;
    case 'holdDrive': holdDrive(s, act.way); return;
    case 'releaseDrive': releaseDrive(s, fixed.drive); return;
    case 'setDrive': setDrive(s, fixed.drive, act.to); return;
    case 'setFlapLever': latch(s, 'flapLeverDeg', act.settingDeg); return;
    case 'setThrust': setThrust(s, act.tlaDeg, act.lever ?? 'both'); return;
    case 'selectSpeed': latch(s, 'selectedKt', act.speedKt); return;
    case 'setSpeedHold': latch(s, 'speedHold', act.on ? 1 : 0); return;
    case 'setGear': latch(s, 'gearLever', act.to === 'down' ? 1 : 0); return;
    case 'silenceHorn': if (s.latched.horn === 1) latch(s, 'hornSilenced', 1); return;
    case 'callSplit': if (s.latched.splitCallTick < 0) latch(s, 'splitCallTick', s.tick); return;
    case 'callClear': latch(s, 'clearCallTick', s.tick); return;
    case 'callDriveFailed': if (s.latched.failedCallTick < 0) latch(s, 'failedCallTick', s.tick); return;
    case 'callStillMoving': if (s.latched.movingCallTick < 0) latch(s, 'movingCallTick', s.tick); return;
    case 'descend': startPath(s, act.toFt, act.pathDeg); return;
    case 'level': levelOff(s); return;
    case 'turn': latch(s, 'headingHold', 0); s.turnRad = act.bankDeg * RAD; return;
    case 'selectHeading': selectHeading(s, fixed.headingRad, act.toDeg); return;
    case 'goAround': goAround(s, fixed); return;
    case 'roll': latch(s, 'autopilot', 0); latch(s, 'handControl', act.control); return;
    case 'answer': return;
  }
}

function setThrust(s: State, tlaDeg: number, lever: 'left' | 'right' | 'both'): void {
  latch(s, 'speedHold', 0);
  if (lever !== 'right') s.leftTlaDeg = tlaDeg;
  if (lever !== 'left') s.rightTlaDeg = tlaDeg;
}

function goAround(s: State, fixed: Fixed): void {
  const top = fixed.flight.leverMap[fixed.flight.leverMap.length - 1]?.tlaDeg ?? 0;
  setThrust(s, top, 'both');
  latch(s, 'goAround', 1);
}
