/** Procedure items, each with the moment that proves it. `ok` is null where the run never asked for it. */
import type { Airframe } from '../files/airframe.js';
import type { ReadyScenario } from '../ready.js';
import type { Fixed } from '../fixed.js';
import { limitNow } from '../marks.js';
import type { State } from '../state.js';
import type { Facts } from './facts.js';
import { CALL_TICKS, isReaction } from './outcome.js';

export interface ProcedureItem {
  readonly item: 'leverFirst' | 'insideLimit' | 'splitCalled' | 'leftAlone';
  readonly ok: boolean | null;
  /** The moment that proves it, s; null where there is none. */
  readonly atS: number | null;
}

export interface Watcher {
  see(state: State): void;
  items(facts: Facts): ProcedureItem[];
}

/** Watches the procedure from the start of a run. */
export function procedureWatcher(fixed: Fixed, scenario: ReadyScenario, airframe: Airframe): Watcher {
  let pressTick = -1;
  let leverOk: boolean | null = null;
  let leverAtS: number | null = null;
  let closestKt = Infinity;
  let closestAtS = 0;
  const asked = scenario.procedure;
  return {
    see(s) {
      const atS = (s.tick - 1) / 100;
      const over = limitNow(s, airframe).kt - s.casKt;
      if (over < closestKt) { closestKt = over; closestAtS = atS; }
      if (s.pressTick === pressTick) return;
      pressTick = s.pressTick;
      const setting = fixed.task.settings[s.settingNext];
      if (setting === undefined || s.drive === 0) return;
      const ahead = s.drive > 0 ? s.flapLeverDeg >= setting : s.flapLeverDeg <= setting;
      if (leverOk === false) return;
      leverOk = ahead;
      leverAtS = atS;
    },
    items(facts) {
      const split = isReaction(facts, fixed.task);
      const inTime = facts.splitCallTick >= 0 && facts.splitCallTick - facts.releaseTick <= CALL_TICKS;
      const at = (tick: number): number | null => (tick < 0 ? null : tick / 100);
      const items: ProcedureItem[] = [{ item: 'insideLimit', ok: closestKt >= 0, atS: closestAtS }];
      if (asked.leverFirst) items.unshift({ item: 'leverFirst', ok: leverOk, atS: leverAtS });
      if (asked.call) items.push({ item: 'splitCalled', ok: split ? inTime : null, atS: split ? at(facts.splitCallTick) : null });
      if (asked.leaveAlone) items.push({ item: 'leftAlone', ok: split ? facts.repressTick < 0 : null, atS: split ? at(facts.repressTick) : null });
      return items;
    },
  };
}
