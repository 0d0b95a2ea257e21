/**
 * Scripted trainees: they fly a scenario's settings in order without a page, lever first, as the procedure asks.
 * They look at the pointers, as a person would, and at nothing that a person cannot see.
 */
import type { Command } from '../command.js';
import type { Act } from '../files/act.js';
import type { Fixed } from '../fixed.js';
import { leftPointer, rightPointer } from '../pointers.js';
import type { Pilot } from '../replay.js';
import type { State } from '../state.js';

/** How long behind one degree of shown split each lets go, ticks; null: never. */
const LETS_GO = { prompt: 100, slow: 600, never: null } as const;

export type TraineeName = keyof typeof LETS_GO;
/** Names of the scripted trainees. */
export const TRAINEES = Object.keys(LETS_GO) as readonly TraineeName[];

const SEEN_DEG = 1;
/** Hands take a second between two acts; the drive is let go this much before the setting, for what it coasts. */
const PAUSE_TICKS = 100;
const COAST_DEG = 0.015;
const FIRST_TOUCH_TICKS = 50;

/** A pilot that flies the task of a world. A fresh one is needed for every run. */
export function scriptedTrainee(name: TraineeName, fixed: Fixed): Pilot {
  const letsGo = LETS_GO[name];
  const { settings } = fixed.task;
  let seq = 0;
  let free = PAUSE_TICKS; // next tick in which the hand is free
  let seenTick = -1;
  let letGoTick = -1;
  let target = 0;
  let touching = false;

  return (s, push) => {
    const act = (what: Act): void => {
      push({ ...what, tick: s.tick, rank: 2, seq } as Command);
      seq += 1;
      free = s.tick + PAUSE_TICKS;
    };
    const left = leftPointer(s, fixed.noise);
    const right = rightPointer(s, fixed.noise);
    if (seenTick < 0 && Math.abs(left - right) >= SEEN_DEG) seenTick = s.tick;
    if (letGoTick >= 0) {
      if (s.tick === letGoTick + PAUSE_TICKS) act({ do: 'callSplit' });
      return;
    }
    const holding = s.drive !== 0;
    if (holding) {
      const setting = settings[target] as number;
      const there = s.drive > 0 ? Math.max(left, right) >= setting - COAST_DEG : Math.min(left, right) <= setting + COAST_DEG;
      const touched = touching && s.tick >= free - PAUSE_TICKS + FIRST_TOUCH_TICKS;
      const splits = seenTick >= 0 && letsGo !== null && s.tick >= seenTick + letsGo;
      if (!there && !touched && !splits) return;
      act(letGo(s, fixed));
      if (splits) letGoTick = s.tick;
      else if (there) target += 1;
      touching = false;
      return;
    }
    if (s.tick < free || target >= settings.length || s.contactor !== 0) return;
    const setting = settings[target] as number;
    if (s.guardOpen === 0) act({ do: 'openGuard' });
    else if (s.armed === 0) act({ do: 'arm' });
    else if (s.flapLeverDeg !== setting) act({ do: 'setFlapLever', settingDeg: setting });
    else if (s.leadingEdgeGoing === 1 && s.leadingEdge < s.leadingEdgeStop) return;
    else {
      touching = s.leadingEdgeGoing === 0 && setting > s.driveDeg;
      act(press(setting > s.driveDeg ? 'extend' : 'retract', fixed));
    }
  };
}

function press(way: 'extend' | 'retract', fixed: Fixed): Act {
  const kind = way === 'extend' ? fixed.drive.extendSwitch : fixed.drive.retractSwitch;
  return kind === 'sprung' ? { do: 'holdDrive', way } : { do: 'setDrive', to: way };
}

function letGo(s: State, fixed: Fixed): Act {
  const kind = s.drive > 0 ? fixed.drive.extendSwitch : fixed.drive.retractSwitch;
  return kind === 'sprung' ? { do: 'releaseDrive' } : { do: 'setDrive', to: 'off' };
}
