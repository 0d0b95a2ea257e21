/** When a run is over, looked at at the end of every tick. */
import type { State } from '../state.js';
import { END_WHYS, flightTick, LOST_BANK_RAD, LOST_TICKS, STILL_TICKS, type EndWhy, type TaskRule } from './rule.js';

/** Whether so much has been flown behind a call or a release. `now` is a tick of the flight, as all times here. */
const isBehind = (tick: number, now: number, rule: TaskRule): boolean => tick >= 0 && now - flightTick(rule.turns, tick) >= rule.afterTicks;

/** Why the run ends at `now`; null while it goes on. Growth is looked at only before a scored release. */
function whyNow(s: State, rule: TaskRule, growthDeg: number, now: number): EndWhy | null {
  if (rule.mode === 'whole') return now >= rule.limitTicks ? 'timeUp' : null;
  if (s.lostTicks >= LOST_TICKS || Math.abs(s.bankRad) > LOST_BANK_RAD) return 'lost';
  if (rule.mode === 'scored') {
    if (isBehind(s.releaseTick, now, rule)) return 'scored';
    if (s.releaseTick < 0 && growthDeg >= 2 * rule.limitDeg) return 'twiceLimit';
  } else {
    if (isBehind(s.splitCallTick, now, rule) || isBehind(s.failedCallTick, now, rule)) return 'called';
    if (s.stillTicks >= STILL_TICKS) return 'done';
  }
  return now >= rule.limitTicks || s.heldTicks >= rule.legTicks ? 'timeUp' : null;
}

/** One tick. Writes stillTicks, lostTicks, endTick and endWhy; the end that comes first stays. */
export function stepEnding(s: State, rule: TaskRule, growthDeg: number, rollAuthorityPct: number): void {
  const still = s.settingNext >= rule.settings.length && s.contactor === 0 && s.rateDegPerS === 0;
  s.stillTicks = still ? s.stillTicks + 1 : 0;
  s.lostTicks = rollAuthorityPct >= 100 ? s.lostTicks + 1 : 0;
  if (s.endTick >= 0) return;
  const why = whyNow(s, rule, growthDeg, flightTick(rule.turns, s.tick) + 1);
  if (why === null) return;
  s.endTick = s.tick + 1;
  s.endWhy = END_WHYS.indexOf(why);
}
