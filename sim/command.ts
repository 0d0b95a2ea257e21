/** Commands: acts with their tick and rank, in one total order. */
import type { Act } from './files/act.js';
import type { DeskAct } from './files/desk-act.js';
import { arm, closeGuard, holdDrive, releaseDrive, setDrive } from './drive/switchgear.js';
import { levelOff, startPath } from './events.js';
import { selectHeading } from './flight/heading.js';
import type { Fixed } from './fixed.js';
import type { State } from './state.js';
import { RAD } from './units.js';

/** 0 the agenda, 1 a desk, 2 the trainee; within a tick the lower acts first. */
export type Rank = 0 | 1 | 2;

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
    case 'openGuard': s.guardOpen = 1; return;
    case 'closeGuard': closeGuard(s); return;
    case 'arm': arm(s); return;
    case 'disarm': s.armed = 0; return;
    case 'holdDrive': holdDrive(s, act.way); return;
    case 'releaseDrive': releaseDrive(s, fixed.drive); return;
    case 'setDrive': setDrive(s, fixed.drive, act.to); return;
    case 'setFlapLever': s.flapLeverDeg = act.settingDeg; return;
    case 'setThrust': setThrust(s, act.tlaDeg, act.lever ?? 'both'); return;
    case 'selectSpeed': s.selectedKt = act.speedKt; return;
    case 'setSpeedHold': s.speedHold = act.on ? 1 : 0; return;
    case 'setGear': s.gearLever = act.to === 'down' ? 1 : 0; return;
    case 'silenceHorn': if (s.horn === 1) s.hornSilenced = 1; return;
    case 'callSplit': if (s.splitCallTick < 0) s.splitCallTick = s.tick; return;
    case 'callClear': s.clearCallTick = s.tick; return;
    case 'callDriveFailed': if (s.failedCallTick < 0) s.failedCallTick = s.tick; return;
    case 'callStillMoving': if (s.movingCallTick < 0) s.movingCallTick = s.tick; return;
    case 'descend': startPath(s, act.toFt, act.pathDeg); return;
    case 'level': levelOff(s); return;
    case 'turn': s.headingHold = 0; s.turnRad = act.bankDeg * RAD; return;
    case 'selectHeading': selectHeading(s, fixed.headingRad, act.toDeg); return;
    case 'goAround': goAround(s, fixed); return;
    case 'roll': s.autopilot = 0; s.handControl = act.control; return;
    case 'answer': return;
  }
}

function setThrust(s: State, tlaDeg: number, lever: 'left' | 'right' | 'both'): void {
  s.speedHold = 0;
  if (lever !== 'right') s.leftTlaDeg = tlaDeg;
  if (lever !== 'left') s.rightTlaDeg = tlaDeg;
}

function goAround(s: State, fixed: Fixed): void {
  const top = fixed.flight.leverMap[fixed.flight.leverMap.length - 1]?.tlaDeg ?? 0;
  setThrust(s, top, 'both');
  s.goAround = 1;
}
