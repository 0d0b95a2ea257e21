/** What happened in a run, read off its states one tick after another. Facts only; words for people are made elsewhere. */
import { hasActed } from '../latches.js';
import type { Fixed } from '../fixed.js';
import { shownDifference } from '../pointers.js';
import type { State } from '../state.js';

/** One thing that happened. `atS` is the time of the tick in which it did. */
export interface RunEvent {
  readonly atS: number;
  readonly what:
    | 'guardOpen' | 'guardClosed' | 'armed' | 'disarmed' | 'extend' | 'retract' | 'release' | 'driveRuns' | 'driveStops'
    | 'lever' | 'leadingEdgeMoves' | 'leadingEdgeOut' | 'setting' | 'fault' | 'cleared' | 'onset' | 'oneDegree' | 'sheared'
    | 'limiter' | 'cutOut' | 'splitCall' | 'clearCall' | 'failedCall' | 'movingCall' | 'horn' | 'hornStops'
    | 'gearMoves' | 'gearDown' | 'gearUp' | 'autopilotOff' | 'end';
  /** Name of the fault, for `fault` and `cleared`. */
  readonly name?: string;
  /** Setting in deg, for `lever` and `setting`. */
  readonly deg?: number;
}

/** The shown split at which a debrief says "one degree apart", deg. */
export const ONE_DEGREE = 1;

type Latched = State['latched'];
type LatchedKey = keyof Latched;

/** A witness of a run: shown every state in turn, it lists what happened. */
export interface Witness {
  /** The state at the end of a tick. */
  see(state: State): void;
  readonly events: RunEvent[];
}

/** A witness that starts from the state of tick 0. */
export function witness(fixed: Fixed, start: State): Witness {
  const events: RunEvent[] = [];
  let was = start.latched;
  let { leadingEdge, gear } = start;
  let ran = start.rateDegPerS !== 0;
  let apart = false;
  const told = fixed.agenda.entries.filter((entry) => entry.fault !== null || entry.clears >= 0);
  const acted = new Set<number>();

  const see = (s: State): void => {
    const atS = (s.tick - 1) / 100;
    const say = (what: RunEvent['what'], more: { name?: string; deg?: number } = {}): void => { events.push({ atS, what, ...more }); };
    const rose = (key: LatchedKey): boolean => was[key] === 0 && s.latched[key] !== 0;
    const fell = (key: LatchedKey): boolean => was[key] !== 0 && s.latched[key] === 0;
    const came = (key: LatchedKey): boolean => was[key] < 0 && s.latched[key] >= 0;

    for (const entry of told) {
      if (acted.has(entry.place)) continue;
      if (!hasActed(s, fixed, entry)) continue;
      acted.add(entry.place);
      const fault = entry.clears < 0 ? entry : fixed.agenda.entries[entry.clears];
      if (fault === undefined || !hasActed(s, fixed, fault)) continue; // the end of what had not begun is nothing
      say(fault === entry ? 'fault' : 'cleared', { name: fault.name ?? String(fault.place) });
    }
    const parts = !apart && s.latched.onsetTick >= 0 && Math.abs(shownDifference(s, fixed.noise)) >= ONE_DEGREE;
    const runs = s.rateDegPerS !== 0;
    // Latches are replaced when one of them changes, so that nothing has happened as long as they are the same.
    if (!parts && s.latched === was && runs === ran && s.leadingEdge === leadingEdge && s.gear === gear) return;
    if (rose('guardOpen')) say('guardOpen');
    if (fell('guardOpen')) say('guardClosed');
    if (rose('armed')) say('armed');
    if (fell('armed')) say('disarmed');
    if (s.latched.flapLeverDeg !== was.flapLeverDeg) say('lever', { deg: s.latched.flapLeverDeg });
    if (s.latched.drive !== was.drive) say(s.latched.drive === 0 ? 'release' : s.latched.drive > 0 ? 'extend' : 'retract');
    if (runs && !ran) say('driveRuns');
    if (!runs && ran) say('driveStops');
    if (leadingEdge === 0 && s.leadingEdge > 0) say('leadingEdgeMoves');
    if (leadingEdge < 1 && s.leadingEdge >= 1) say('leadingEdgeOut');
    if (s.latched.settingNext !== was.settingNext) say('setting', { deg: fixed.task.settings[was.settingNext] as number });
    if (came('onsetTick')) say('onset');
    if (parts) { apart = true; say('oneDegree'); }
    if ((s.latched.leftJam === 1 && rose('leftCut')) || (s.latched.rightJam === 1 && rose('rightCut'))) say('sheared');
    if (rose('limiterTripped')) say('limiter');
    if (rose('cutOutOpen')) say('cutOut');
    if (came('splitCallTick')) say('splitCall');
    if (s.latched.clearCallTick !== was.clearCallTick) say('clearCall');
    if (came('failedCallTick')) say('failedCall');
    if (came('movingCallTick')) say('movingCall');
    if (rose('horn')) say('horn');
    if (fell('horn')) say('hornStops');
    if (gear !== s.gear && (gear === 0 || gear === 1)) say('gearMoves');
    if (gear < 1 && s.gear >= 1) say('gearDown');
    if (gear > 0 && s.gear <= 0) say('gearUp');
    if (fell('autopilot')) say('autopilotOff');
    if (came('endTick')) events.push({ atS: s.tick / 100, what: 'end' }); // the count of ticks, not the last tick
    was = s.latched;
    ({ leadingEdge, gear } = s);
    ran = runs;
  };
  return { see, events };
}
