/** Presses and releases as the task sees them: first touch, arrival, or the release that is scored. */
import type { State } from '../state.js';
import { ARRIVAL_DEG, type TaskRule } from './rule.js';

/** A press of the drive in this tick. Writes the press keys. */
export function notePress(s: State): void {
  s.pressTick = s.tick;
  s.pressLeadingEdge = s.leadingEdge;
  s.ranSincePress = 0;
  if (s.releaseTick >= 0 && s.repressTick < 0) s.repressTick = s.tick;
}

/**
 * A release in this tick. The first touch, which only sends the leading edge out, and an arrival at a setting before
 * the last are neither scored nor a pause. Writes settingNext and releaseTick.
 */
export function noteRelease(s: State, rule: TaskRule): void {
  if (s.ranSincePress === 0) return;
  if (s.pressLeadingEdge === 0 && s.leadingEdge < s.leadingEdgeStop) return;
  const setting = rule.settings[s.settingNext];
  const arrives = setting !== undefined && Math.abs(s.driveDeg - setting) <= ARRIVAL_DEG;
  if (arrives) {
    s.settingNext += 1;
    if (s.settingNext < rule.settings.length) return;
  }
  // Scored runs keep the first; a drill keeps the last before the call, since there a release is a pause.
  if (s.releaseTick < 0 || (!rule.recognition && s.splitCallTick < 0)) s.releaseTick = s.tick;
}
