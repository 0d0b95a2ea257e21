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

type Seen = Pick<State,
  'guardOpen' | 'armed' | 'drive' | 'rateDegPerS' | 'flapLeverDeg' | 'leadingEdge' | 'settingNext' | 'onsetTick' | 'limiterTripped'
  | 'cutOutOpen' | 'splitCallTick' | 'clearCallTick' | 'failedCallTick' | 'movingCallTick' | 'horn' | 'gear' | 'autopilot'
  | 'leftCut' | 'rightCut' | 'leftJam' | 'rightJam' | 'endTick'>;

const KEYS: readonly (keyof Seen)[] = [
  'guardOpen', 'armed', 'drive', 'rateDegPerS', 'flapLeverDeg', 'leadingEdge', 'settingNext', 'onsetTick', 'limiterTripped',
  'cutOutOpen', 'splitCallTick', 'clearCallTick', 'failedCallTick', 'movingCallTick', 'horn', 'gear', 'autopilot',
  'leftCut', 'rightCut', 'leftJam', 'rightJam', 'endTick',
];

/** Whether something happened that is told. Written out: to walk the names in every tick costs more than the tick itself. */
const differs = (a: Seen, b: Seen): boolean =>
  a.guardOpen !== b.guardOpen || a.armed !== b.armed || a.drive !== b.drive || (a.rateDegPerS === 0) !== (b.rateDegPerS === 0)
  || a.flapLeverDeg !== b.flapLeverDeg || a.leadingEdge !== b.leadingEdge || a.settingNext !== b.settingNext
  || a.onsetTick !== b.onsetTick || a.limiterTripped !== b.limiterTripped || a.cutOutOpen !== b.cutOutOpen
  || a.splitCallTick !== b.splitCallTick || a.clearCallTick !== b.clearCallTick || a.failedCallTick !== b.failedCallTick
  || a.movingCallTick !== b.movingCallTick || a.horn !== b.horn || a.gear !== b.gear || a.autopilot !== b.autopilot
  || a.leftCut !== b.leftCut || a.rightCut !== b.rightCut || a.leftJam !== b.leftJam || a.rightJam !== b.rightJam
  || a.endTick !== b.endTick;

/** A witness of a run: shown every state in turn, it lists what happened. */
export interface Witness {
  /** The state at the end of a tick. */
  see(state: State): void;
  readonly events: RunEvent[];
}

/** A witness that starts from the state of tick 0. */
export function witness(fixed: Fixed, start: State): Witness {
  const events: RunEvent[] = [];
  const before = {} as Seen;
  for (const key of KEYS) before[key] = start[key];
  let apart = false;
  const told = fixed.agenda.entries.filter((entry) => entry.fault !== null || entry.clears >= 0);
  const acted = new Set<number>();

  const see = (s: State): void => {
    const atS = (s.tick - 1) / 100;
    const say = (what: RunEvent['what'], more: { name?: string; deg?: number } = {}): void => { events.push({ atS, what, ...more }); };
    const rose = (key: keyof Seen): boolean => before[key] === 0 && s[key] !== 0;
    const fell = (key: keyof Seen): boolean => before[key] !== 0 && s[key] === 0;
    const came = (key: keyof Seen): boolean => before[key] < 0 && s[key] >= 0;

    for (const entry of told) {
      if (acted.has(entry.place)) continue;
      if (!hasActed(s, fixed, entry)) continue;
      acted.add(entry.place);
      const fault = entry.clears < 0 ? entry : fixed.agenda.entries[entry.clears];
      if (fault === undefined || !hasActed(s, fixed, fault)) continue; // the end of what had not begun is nothing
      say(fault === entry ? 'fault' : 'cleared', { name: fault.name ?? String(fault.place) });
    }
    const parts = !apart && s.onsetTick >= 0 && Math.abs(shownDifference(s, fixed.noise)) >= ONE_DEGREE;
    if (!parts && !differs(before, s)) return;
    if (rose('guardOpen')) say('guardOpen');
    if (fell('guardOpen')) say('guardClosed');
    if (rose('armed')) say('armed');
    if (fell('armed')) say('disarmed');
    if (s.flapLeverDeg !== before.flapLeverDeg) say('lever', { deg: s.flapLeverDeg });
    if (s.drive !== before.drive) say(s.drive === 0 ? 'release' : s.drive > 0 ? 'extend' : 'retract');
    if (rose('rateDegPerS')) say('driveRuns');
    if (fell('rateDegPerS')) say('driveStops');
    if (before.leadingEdge === 0 && s.leadingEdge > 0) say('leadingEdgeMoves');
    if (before.leadingEdge < 1 && s.leadingEdge >= 1) say('leadingEdgeOut');
    if (s.settingNext !== before.settingNext) say('setting', { deg: fixed.task.settings[before.settingNext] as number });
    if (came('onsetTick')) say('onset');
    if (parts) { apart = true; say('oneDegree'); }
    if ((s.leftJam === 1 && rose('leftCut')) || (s.rightJam === 1 && rose('rightCut'))) say('sheared');
    if (rose('limiterTripped')) say('limiter');
    if (rose('cutOutOpen')) say('cutOut');
    if (came('splitCallTick')) say('splitCall');
    if (s.clearCallTick !== before.clearCallTick) say('clearCall');
    if (came('failedCallTick')) say('failedCall');
    if (came('movingCallTick')) say('movingCall');
    if (rose('horn')) say('horn');
    if (fell('horn')) say('hornStops');
    if (before.gear !== s.gear && (before.gear === 0 || before.gear === 1)) say('gearMoves');
    if (before.gear < 1 && s.gear >= 1) say('gearDown');
    if (before.gear > 0 && s.gear <= 0) say('gearUp');
    if (fell('autopilot')) say('autopilotOff');
    if (came('endTick')) events.push({ atS: s.tick / 100, what: 'end' }); // the count of ticks, not the last tick
    for (const key of KEYS) before[key] = s[key];
  };
  return { see, events };
}
