/** The record of a session, and its draft while it goes on. */
import { flownRecord, type FlownDraft, type FlownSetting, type RunRecord } from '../../sim/files/index.js';
import type { DrillOptions, Hand } from './drill.js';
import type { Session } from './session.js';

/** What does not change in a run. */
export const settingOf = ({ scenario, airframe, seed, device, gauge, app, plan }: DrillOptions): FlownSetting =>
  ({ scenario, airframe, seed, device, gauge, app, ...(plan === undefined ? {} : { plan }) });

/** How far a session has come. */
export const draftOf = (session: Session, hands: ReadonlySet<Hand>, resized: boolean, live: boolean): FlownDraft => ({
  tick: session.world.state.tick, clock: [...session.clock], commands: session.log as RunRecord['commands'], marks: [...session.marks], input: [...hands], resized, live,
});

/** The record of a session that is over. */
export function recordOf(session: Session, options: DrillOptions, hands: ReadonlySet<Hand>, resized: boolean, live: boolean): RunRecord {
  if (session.over === null) throw new Error('the run is not over');
  return flownRecord(settingOf(options), draftOf(session, hands, resized, live), { tick: session.endTick, why: session.over });
}
