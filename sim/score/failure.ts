/** A drive that fails, as it shows itself to the hand: nothing moves, it runs on, or the leading edge stops short. */
import type { State } from '../state.js';

/** Held so long with nothing moving, the drive has failed: let go. */
const NOTHING_TICKS = 500;
/** Fed so long behind a release, the drive runs on: longer than any contactor takes to drop out. */
const RUNS_ON_TICKS = 50;
/** The leading edge has stood short for so long. */
const SHORT_TICKS = 500;

export interface Failure {
  /** Tick in which it showed itself; -1 for none. */
  readonly tick: number;
  readonly kind: 'nothing' | 'runsOn' | 'leadingEdge' | null;
  /** Tick in which a drive that ran on was stopped; -1 for never. */
  readonly stoppedTick: number;
  /** A failure was in force when the drive was first called failed. */
  readonly rightlyCalled: boolean;
}

export interface FailureWatcher {
  see(state: State): void;
  failure(): Failure;
}

/** Watches from the start of a run. */
export function failureWatcher(): FailureWatcher {
  let nothing = 0;
  let runsOn = 0;
  let short = 0;
  let found: { tick: number; kind: Failure['kind'] } = { tick: -1, kind: null };
  let stoppedTick = -1;
  let rightlyCalled = false;
  return {
    see(s) {
      const fails = s.latched.driveDead === 1 || s.latched.cutOutOpen === 1 || s.latched.limiterTripped === 1;
      const sticks = s.latched.drive === 0 && s.latched.contactor !== 0;
      const stands = s.latched.leadingEdgeStop < 1 && s.leadingEdge >= s.latched.leadingEdgeStop;
      nothing = fails && s.latched.drive !== 0 && s.rateDegPerS === 0 ? nothing + 1 : 0;
      runsOn = sticks ? runsOn + 1 : 0;
      short = stands ? short + 1 : 0;
      if (found.kind === null) {
        if (nothing >= NOTHING_TICKS) found = { tick: s.tick - 1, kind: 'nothing' };
        else if (runsOn >= RUNS_ON_TICKS) found = { tick: s.tick - 1, kind: 'runsOn' };
        else if (short >= SHORT_TICKS) found = { tick: s.tick - 1, kind: 'leadingEdge' };
      }
      if (found.kind === 'runsOn' && stoppedTick < 0 && s.latched.contactor === 0) stoppedTick = s.tick - 1;
      if (s.latched.failedCallTick === s.tick - 1 && s.latched.failedCallTick >= 0) rightlyCalled = fails || sticks || stands || s.latched.contactorStuck === 1;
    },
    failure: () => ({ ...found, stoppedTick, rightlyCalled }),
  };
}
