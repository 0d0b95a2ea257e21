/**
 * The order of one tick, written here and nowhere else:
 *   0. where a desk has taken the run back, the state of an earlier tick returns
 *   1. what is due acts: agenda (rank 0, then what a desk did, rank 1, in order), then the trainee's commands by sequence (2)
 *   2. presses and releases are noted
 *   3. motion: contactor, flight, drive, sides, leading edge, heat, roll, heading, gear
 *   4. rules: onset, horn, watchers, the end
 *   5. tick + 1
 * Value semantics outside: `advance` copies once. One straight-line mutable step inside, no object made in it.
 */
import { actDue, comeBack, watch } from './agenda.js';
import { applyAct, byOrder, type Command } from './command.js';
import type { Act } from './files/act.js';
import { stepHeat } from './drive/heat.js';
import { stepLeadingEdge } from './drive/leading-edge.js';
import { stepNormalDrive } from './drive/normal.js';
import { isHeld, stepContactor } from './drive/switchgear.js';
import { followed, stepBlowBack, stepTravel } from './drive/travel.js';
import { ratioNow, splitsInForce } from './faults.js';
import type { Fixed, World } from './fixed.js';
import { stepGear } from './flight/gear.js';
import { stepHeading } from './flight/heading.js';
import { dynamicPressure, feelStart, stepMotion, stepThrust } from './flight/motion.js';
import { rollAuthorityPct, stepRoll } from './flight/roll.js';
import { lowerLiveTla } from './flight/thrust.js';
import { inTick } from './in-tick.js';
import type { Noise } from './noise.js';
import { growth, leftPointerAt, rightPointerAt } from './pointers.js';
import { copyState, latch, type State } from './state.js';
import { stepEnding } from './task/ending.js';
import { notePress, noteRelease } from './task/release.js';
import { DT, FT } from './units.js';
import { hornRule } from './warning/horn.js';

export type { Fixed, World } from './fixed.js';

/** What the rules of the tick in hand tell each other: nothing in it outlives the tick. */
const t = inTick();

/** Version of the model. A record of another version is shown, not replayed. */
export const MODEL_VERSION = 2;

/**
 * The world `ticks` ticks later.
 * @param commands acts with their ticks; those of other ticks are left alone, so a whole log may be given
 * @param ticks whole number, 0 or more
 */
export function advance(world: World, commands: readonly Command[], ticks: number): World {
  const state = copyState(world.state);
  const sorted = isSorted(commands) ? commands : [...commands].sort(byOrder);
  let next = firstAt(sorted, state.tick);
  for (let i = 0; i < ticks; i += 1) next = step(world.fixed, state, sorted, next);
  return { fixed: world.fixed, state };
}

function isSorted(commands: readonly Command[]): boolean {
  for (let i = 1; i < commands.length; i += 1) {
    if (byOrder(commands[i - 1] as Command, commands[i] as Command) > 0) return false;
  }
  return true;
}

/** Index of the first command at or behind a tick. */
export function firstAt(sorted: readonly Command[], tick: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as Command).tick < tick) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * One tick in place, for those who own their state. Commands at `next` and behind, in order, act while their tick is due.
 * @returns index of the first command of a later tick
 */
export function step(fixed: Fixed, s: State, sorted: readonly Command[], next: number): number {
  if (fixed.agenda.turns.length > 0) comeBack(s, fixed);
  const wasHeld = isHeld(s);
  const { leftBiasDeg, rightBiasDeg, latched: { leftStuck, rightStuck } } = s;
  t.driveDeg = s.driveDeg;
  t.casKt = s.casKt;
  t.heightM = s.heightM;
  t.speedMps = s.speedMps;
  t.leftDeg = s.leftDeg;
  t.rightDeg = s.rightDeg;

  actDue(s, fixed);
  let after = next;
  while (after < sorted.length && (sorted[after] as Command).tick === s.tick) {
    const command = sorted[after] as Command;
    if (command.rank === 2) applyAct(s, fixed, command as Act);
    after += 1;
  }
  const held = isHeld(s);
  if (held && !wasHeld) notePress(s);
  if (!held && wasHeld) noteRelease(s, fixed.task);

  move(s, fixed, held);

  const moved = s.driveDeg !== t.driveDeg || s.latched.leftBlown + s.latched.rightBlown > 0;
  if (moved) driftPointers(s);
  if (moved && s.latched.onsetTick < 0 && splitsInForce(s)) {
    const leftBy = s.latched.leftStuck === 1 ? 0 : s.leftDeg + s.leftBiasDeg - (t.leftDeg + leftBiasDeg);
    const rightBy = s.latched.rightStuck === 1 ? 0 : s.rightDeg + s.rightBiasDeg - (t.rightDeg + rightBiasDeg);
    // A pointer that jumped while the drive stood has its onset when the drive next moves, counted from before the jump.
    const jump = leftBy === rightBy ? s.leftBiasDeg - s.rightBiasDeg : 0;
    // What was shown before the tick is asked for only here, where it is needed; where a pointer sticks, it stays.
    const leftWas = leftStuck === 1 ? s.latched.leftStuckDeg : leftPointerAt(fixed.noise, t.leftDeg, leftBiasDeg);
    const rightWas = rightStuck === 1 ? s.latched.rightStuckDeg : rightPointerAt(fixed.noise, t.rightDeg, rightBiasDeg);
    noteOnset(s, leftBy - rightBy + jump, leftWas - rightWas - jump);
  }
  soundHorn(s, fixed);
  if (fixed.agenda.watched.length > 0) watch(s, fixed, t);
  end(s, fixed);
  s.tick += 1;
  return after;
}

function move(s: State, fixed: Fixed, held: boolean): void {
  const { drive, flight } = fixed;
  stepContactor(s, drive);
  if (held) {
    s.heldTicks += 1;
    if (s.latched.contactor !== 0 && s.latched.ranSincePress === 0) latch(s, 'ranSincePress', 1);
  }
  predict(s, fixed);
  feelStart(s, flight, t);
  stepThrust(s, flight, t);
  stepMotion(s, flight, t);
  if (s.latched.leftSlip !== 0) s.leftSlipTicks += 1;
  if (s.latched.rightSlip !== 0) s.rightSlipTicks += 1;
  stepTravel(s, drive, t);
  stepNormalDrive(s, drive);
  stepBlowBack(s, drive, t);
  stepLeadingEdge(s, drive);
  stepHeat(s, drive);
  feelGust(s, fixed.noise);
  stepRoll(s, flight, t);
  stepHeading(s);
  stepGear(s, fixed);
}

/** How the sides follow in this tick, and where they will be in its middle. */
function predict(s: State, fixed: Fixed): void {
  const { leftCut, leftJam, leftRatio, leftSlip, rightCut, rightJam, rightRatio, rightSlip } = s.latched;
  const half = s.rateDegPerS * (DT / 2);
  t.leftFollow = followed(leftCut, leftJam, ratioNow(fixed, leftRatio, leftSlip, s.leftSlipTicks));
  t.rightFollow = followed(rightCut, rightJam, ratioNow(fixed, rightRatio, rightSlip, s.rightSlipTicks));
  t.leftMidDeg = s.leftDeg + t.leftFollow * half;
  t.rightMidDeg = s.rightDeg + t.rightFollow * half;
}

/** Natural disturbance in this tick: straight lines between knots, and the trim offset. */
function feelGust(s: State, noise: Noise): void {
  while ((noise.gustTicks[s.gustKnot + 1] ?? Infinity) <= s.tick) s.gustKnot += 1;
  const from = noise.gustTicks[s.gustKnot] as number;
  const to = noise.gustTicks[s.gustKnot + 1];
  const low = noise.gusts[s.gustKnot] as number;
  const part = to === undefined ? 0 : (s.tick - from) / (to - from);
  t.disturbance = noise.trim + low + ((noise.gusts[s.gustKnot + 1] ?? low) - low) * part;
}

function driftPointers(s: State): void {
  s.leftBiasDeg += s.latched.leftDriftDegPerS * DT;
  s.rightBiasDeg += s.latched.rightDriftDegPerS * DT;
}

/**
 * The first tick in which a fault's terms change the difference while the drive, or a blown side, moves. Which way is
 * read without mismatch and wander, since these can outweigh a small lag; growth is counted on the pointers as shown.
 */
function noteOnset(s: State, changeDeg: number, baseDeg: number): void {
  if (Math.abs(changeDeg) < 1e-12) return;
  latch(s, 'onsetTick', s.tick);
  latch(s, 'onsetBaseDeg', baseDeg);
  latch(s, 'onsetSign', changeDeg > 0 ? 1 : -1);
}

function soundHorn(s: State, fixed: Fixed): void {
  const flapDeg = Math.max(s.leftDeg, s.rightDeg);
  const heightFt = (s.heightM - fixed.groundM) / FT;
  const now = hornRule(fixed.horn, flapDeg, lowerLiveTla(s), s.latched.leftLive + s.latched.rightLive, s.gear, heightFt);
  // Re-armed when levers advance or the flaps leave the band.
  if (now !== 1 && s.latched.hornSilenced !== 0) latch(s, 'hornSilenced', 0);
  const heard = s.latched.hornSilenced === 1 ? 0 : now;
  if (heard !== s.latched.horn) latch(s, 'horn', heard);
}

function end(s: State, fixed: Fixed): void {
  t.usedPct = 0;
  t.growthDeg = 0;
  if (s.leftDeg !== s.rightDeg) useAuthority(s, fixed);
  // Growth decides only in a scored run that nobody has let go yet.
  if (fixed.task.mode === 'scored' && s.latched.releaseTick < 0 && s.latched.onsetTick >= 0) t.growthDeg = growth(s, fixed.noise);
  stepEnding(s, fixed.task, t);
}

function useAuthority(s: State, { flight }: Fixed): void {
  t.usedPct = rollAuthorityPct(flight, dynamicPressure(s.speedMps, s.heightM), s.leftDeg, s.rightDeg, s.leadingEdge);
}
