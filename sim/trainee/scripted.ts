/**
 * Scripted trainees: they fly a scenario's settings in order without a page, lever first, as the procedure asks.
 * They look at the pointers, as a person would, and at nothing that a person cannot see.
 */
import type { Command } from '../command.js';
import type { Act } from '../files/act.js';
import type { Fixed } from '../fixed.js';
import type { Pilot } from '../replay.js';
import type { State } from '../state.js';
import { answersOf } from './answers.js';
import { aroundOf } from './around.js';
import { openEye } from './eye.js';
import { findingOf } from './finding.js';
import { readingOf } from './reading.js';
import { rollOf } from './roll.js';
import { throttleOf } from './throttle.js';
import type { Watch } from './watcher.js';

/** What a trainee knows of the run beforehand. */
export interface Sheet {
  /** The first release is scored, and the hand stays off behind it. */
  readonly scored: boolean;
  /** Manoeuvre speed of a setting, kt. */
  manoeuvreKt(settingDeg: number): number;
  /** Settings of the flap lever, deg, in rising order. */
  readonly settingsDeg: readonly number[];
  /** The normal drive is said to work: the lever is tried first. */
  readonly normalFirst: boolean;
  /** The list is read behind a split. */
  readonly list: boolean;
  /** Height above the ground from which the flaps are thought of in a go-around, ft. */
  readonly safeFt: number;
  /** Longest hold at a time, and the rest behind it, ticks; Infinity and 0 where the brief asks for none. */
  readonly holdMostTicks: number;
  readonly restTicks: number;
}

/** Hands take a second between two acts; the drive is let go this much before the setting, for what it coasts. */
const PAUSE_TICKS = 100;
const COAST_DEG = 0.015;
const FIRST_TOUCH_TICKS = 50;
/** After a release in doubt: three seconds to look, then on. */
const LOOK_TICKS = 300;
/** The leading edge should have been out by now. */
const LEADING_EDGE_TICKS = 1500;
/** A horn is met this long behind its start on the way down. */
const HORN_TICKS = 400;
/** Slow enough for the next setting, or fast enough to retract, kt. */
const SLOW_KT = 8;
const FAST_KT = 2;

/** Why the hand came off for good. */
type Off = { readonly tick: number; readonly call: Act | null };

/** A pilot that flies the task of a world. A fresh one is needed for every run. */
export function scriptedTrainee(watch: Watch, fixed: Fixed, sheet: Sheet): Pilot {
  const { settings } = fixed.task;
  const eye = openEye(fixed, watch);
  const { hurries } = watch;
  const answers = answersOf(fixed, hurries);
  const around = aroundOf(fixed, sheet.safeFt, hurries);
  const finds = findingOf(eye, sheet.settingsDeg);
  const read = readingOf(eye, sheet.list && !hurries);
  const throttle = throttleOf();
  const roll = rollOf();
  let seq = 0;
  let free = PAUSE_TICKS; // next tick in which the hand is free
  let off: Off | null = null;
  let target = 0;
  let hornTicks = 0;
  let touchTick = -1;
  let touching = false;

  return (s, push) => {
    const file = (what: Act): void => {
      push({ ...what, tick: s.tick, rank: 2, seq } as Command);
      seq += 1;
    };
    const act = (what: Act): void => {
      file(what);
      free = s.tick + PAUSE_TICKS;
    };
    const handOff = (call: Act | null): void => { off = { tick: s.tick, call }; };

    eye.look(s);
    answers(s, file);
    throttle(s, file);
    roll(s, file);
    const flaps = around.step(s, file);
    hornTicks = s.latched.horn !== 0 && s.pathSin < 0 && s.latched.gearLever === 0 ? hornTicks + 1 : 0;
    if (hornTicks === HORN_TICKS && !fixed.otherFlies && !hurries) file({ do: 'setGear', to: 'down' });
    if (off !== null) {
      if (off.call !== null && s.tick === off.tick + PAUSE_TICKS) act(off.call);
      else if (off.call?.do === 'callSplit' && hurries && s.tick === off.tick + 2 * PAUSE_TICKS) act({ do: 'closeGuard' });
      else if (off.call?.do === 'callSplit') read(s, s.tick - off.tick, act);
      return;
    }
    const setting = settings[target];
    if (s.latched.drive !== 0) {
      const there = setting !== undefined
        && (s.latched.drive > 0 ? Math.max(eye.leftDeg, eye.rightDeg) >= setting - COAST_DEG : Math.min(eye.leftDeg, eye.rightDeg) <= setting + COAST_DEG);
      const touched = touching && s.tick >= touchTick + FIRST_TOUCH_TICKS;
      const splits = eye.splits(s);
      const nothing = eye.drivesNothing(s);
      const doubts = !splits && !nothing && eye.doubts(s);
      const warm = !hurries && s.tick - s.latched.pressTick >= sheet.holdMostTicks;
      if (hurries && setting !== undefined && s.latched.flapLeverDeg !== setting && s.tick >= free) act({ do: 'setFlapLever', settingDeg: setting });
      const behind = s.latched.mainDrive === 1 && hurries && !sheet.normalFirst;
      if (!there && !touched && !splits && !nothing && !doubts && !warm && !behind) return;
      act(letGo(s, fixed));
      if (splits || (there && eye.isUneven(setting))) handOff({ do: 'callSplit' });
      else if (nothing) handOff({ do: 'callDriveFailed' });
      else if (there) target += 1;
      else if (doubts && sheet.scored) handOff(null);
      else if (doubts) free = s.tick + LOOK_TICKS;
      else if (warm) free = s.tick + sheet.restTicks;
      touching = false;
      return;
    }
    if (eye.runsOn(s) && s.latched.guardOpen === 1) {
      act({ do: 'closeGuard' });
      handOff({ do: 'callDriveFailed' });
      return;
    }
    if (s.tick < free || s.latched.contactor !== 0) return;
    // The normal drive is back: handed over once all is reached, with the lever there; in a hurry at once.
    if (s.latched.mainDrive === 1 && !sheet.normalFirst && (setting === undefined || hurries)) {
      if (s.latched.guardOpen === 1 && s.rateDegPerS === 0) act({ do: 'closeGuard' });
      return;
    }
    if (setting === undefined) return;
    const extends_ = setting > s.driveDeg;
    if (sheet.normalFirst && !hurries && !finds(s, setting, act)) return;
    if (sheet.normalFirst && hurries && s.latched.guardOpen === 0 && s.latched.flapLeverDeg !== setting) {
      act({ do: 'setFlapLever', settingDeg: setting });
      free = s.tick + LOOK_TICKS * 2;
      return;
    }
    if (s.latched.guardOpen === 0) act({ do: 'openGuard' });
    else if (s.latched.armed === 0) act({ do: 'arm' });
    else if (!flaps) return;
    else if (!hurries && !fitSpeed(s, extends_ ? settings[target - 1] : setting, extends_, fixed.otherFlies, sheet, act)) return;
    else if (s.latched.flapLeverDeg !== setting && !hurries) act({ do: 'setFlapLever', settingDeg: setting });
    else if (s.latched.leadingEdgeGoing === 1 && s.leadingEdge < 1 && !hurries) {
      if (touchTick >= 0 && s.tick >= touchTick + LEADING_EDGE_TICKS && !watch.lapsed) handOff({ do: 'callDriveFailed' });
    } else {
      touching = s.latched.leadingEdgeGoing === 0 && extends_ && !hurries;
      if (touching) touchTick = s.tick;
      act(press(extends_ ? 'extend' : 'retract', fixed));
    }
  };
}

/**
 * Speed first where it matters: extending, the manoeuvre speed of what is out before the next setting; retracting, that
 * of the setting to come before the lever. @returns whether the speed is there
 */
function fitSpeed(s: State, settingDeg: number | undefined, extending: boolean, otherFlies: boolean, sheet: Sheet, act: (what: Act) => void): boolean {
  if (settingDeg === undefined || (s.latched.speedHold === 0 && s.latched.goAround === 0)) return true;
  const wanted = Math.floor(sheet.manoeuvreKt(settingDeg) + 0.5);
  if (!otherFlies && (extending ? s.latched.selectedKt > wanted : s.latched.selectedKt < wanted)) {
    act({ do: 'selectSpeed', speedKt: wanted });
    return false;
  }
  const aimedKt = otherFlies ? wanted : s.latched.selectedKt;
  return extending ? s.casKt <= aimedKt + SLOW_KT : s.casKt >= aimedKt - FAST_KT;
}

function press(way: 'extend' | 'retract', fixed: Fixed): Act {
  const kind = way === 'extend' ? fixed.drive.extendSwitch : fixed.drive.retractSwitch;
  return kind === 'sprung' ? { do: 'holdDrive', way } : { do: 'setDrive', to: way };
}

function letGo(s: State, fixed: Fixed): Act {
  const kind = s.latched.drive > 0 ? fixed.drive.extendSwitch : fixed.drive.retractSwitch;
  return kind === 'sprung' ? { do: 'releaseDrive' } : { do: 'setDrive', to: 'off' };
}
