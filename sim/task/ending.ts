/** When a run is over, looked at at the end of every tick. */
import type { InTick } from '../in-tick.js';
import { latch, type State } from '../state.js';
import { END_WHYS, flightTick, LOST_BANK_RAD, LOST_TICKS, STILL_TICKS, type EndWhy, type TaskRule } from './rule.js';

/** Whether so much has been flown behind a call or a release. `now` is a tick of the flight, as all times here. */
const isBehind = (tick: number, now: number, rule: TaskRule): boolean => tick >= 0 && now - flightTick(rule.turns, tick) >= rule.afterTicks;

/** Why the run ends at `now`; null while it goes on. Growth is looked at only before a scored release. */
function whyNow(s: State, rule: TaskRule, growthDeg: number, now: number): EndWhy | null {
  if (rule.mode === 'whole') return now >= rule.limitTicks ? 'timeUp' : null;
  if (s.lostTicks >= LOST_TICKS || Math.abs(s.bankRad) > LOST_BANK_RAD) return 'lost';
  if (rule.mode === 'scored') {
    if (isBehind(s.latched.releaseTick, now, rule)) return 'scored';
    if (s.latched.releaseTick < 0 && growthDeg >= 2 * rule.limitDeg) return 'twiceLimit';
  } else {
    if (isBehind(s.latched.splitCallTick, now, rule) || isBehind(s.latched.failedCallTick, now, rule)) return 'called';
    if (s.stillTicks >= STILL_TICKS) return 'done';
  }
  return now >= rule.limitTicks || s.heldTicks >= rule.legTicks ? 'timeUp' : null;
}

/** One tick. Writes stillTicks, lostTicks, endTick and endWhy; the end that comes first stays. */
export function stepEnding(s: State, rule: TaskRule, { growthDeg, usedPct }: InTick): void {
  const still = s.latched.settingNext >= rule.settings.length && s.latched.contactor === 0 && s.rateDegPerS === 0;
  s.stillTicks = still ? s.stillTicks + 1 : 0;
  s.lostTicks = usedPct >= 100 ? s.lostTicks + 1 : 0;
  if (s.latched.endTick >= 0) return;
  const why = whyNow(s, rule, growthDeg, flightTick(rule.turns, s.tick) + 1);
  if (why === null) return;
  latch(s, 'endTick', s.tick + 1);
  latch(s, 'endWhy', END_WHYS.indexOf(why));
}
