/** Presses and releases as the task sees them: first touch, arrival, or the release that is scored. */
import { latch, type State } from '../state.js';
import { ARRIVAL_DEG, type TaskRule } from './rule.js';

/** A press of the drive in this tick. Writes the press keys. */
export function notePress(s: State): void {
  latch(s, 'pressTick', s.tick);
  latch(s, 'pressLeadingEdge', s.leadingEdge);
  latch(s, 'ranSincePress', 0);
  if (s.latched.releaseTick >= 0 && s.latched.repressTick < 0) latch(s, 'repressTick', s.tick);
}

/**
 * A release in this tick. The first touch, which only sends the leading edge out, and an arrival at a setting before
 * the last are neither scored nor a pause. Writes settingNext and releaseTick.
 */
export function noteRelease(s: State, rule: TaskRule): void {
  if (s.latched.ranSincePress === 0) return;
  if (s.latched.pressLeadingEdge === 0 && s.leadingEdge < s.latched.leadingEdgeStop) return;
  const setting = rule.settings[s.latched.settingNext];
  const arrives = setting !== undefined && Math.abs(s.driveDeg - setting) <= ARRIVAL_DEG;
  if (arrives) {
    latch(s, 'settingNext', s.latched.settingNext + 1);
    if (s.latched.settingNext < rule.settings.length) return;
  }
  // Scored runs keep the first; a drill keeps the last before the call, since there a release is a pause.
  if (s.latched.releaseTick < 0 || (!rule.recognition && s.latched.splitCallTick < 0)) latch(s, 'releaseTick', s.tick);
}
