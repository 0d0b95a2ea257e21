/** When a run is over, looked at at the end of every tick. */
import type { State } from '../state.js';
import { AFTER_RELEASE_TICKS, LOST_BANK_RAD, LOST_TICKS, STILL_TICKS, type TaskRule } from './rule.js';

const SCORED = 1;
const TWICE_LIMIT = 2;
const CALLED = 3;
const DONE = 4;
const LOST = 5;
const TIME_UP = 6;

/** Why the run ends at the tick count `now`, as an index of END_WHYS; 0 while it goes on. */
function whyNow(s: State, rule: TaskRule, growthDeg: number, now: number): number {
  if (rule.mode === 'whole') return now >= rule.limitTicks ? TIME_UP : 0;
  if (s.lostTicks >= LOST_TICKS || Math.abs(s.bankRad) > LOST_BANK_RAD) return LOST;
  if (rule.mode === 'scored') {
    if (s.releaseTick >= 0 && now - s.releaseTick >= AFTER_RELEASE_TICKS) return SCORED;
    if (s.releaseTick < 0 && growthDeg >= 2 * rule.limitDeg) return TWICE_LIMIT;
  } else {
    if (s.splitCallTick >= 0 && now - s.splitCallTick >= AFTER_RELEASE_TICKS) return CALLED;
    if (s.stillTicks >= STILL_TICKS) return DONE;
  }
  return now >= rule.limitTicks ? TIME_UP : 0;
}

/** One tick. Writes stillTicks, lostTicks, endTick and endWhy; the end that comes first stays. */
export function stepEnding(s: State, rule: TaskRule, growthDeg: number, rollAuthorityPct: number): void {
  const still = s.settingNext >= rule.settings.length && s.contactor === 0 && s.rateDegPerS === 0;
  s.stillTicks = still ? s.stillTicks + 1 : 0;
  s.lostTicks = rollAuthorityPct >= 100 ? s.lostTicks + 1 : 0;
  if (s.endTick >= 0) return;
  const why = whyNow(s, rule, growthDeg, s.tick + 1);
  if (why === 0) return;
  s.endTick = s.tick + 1;
  s.endWhy = why;
}
