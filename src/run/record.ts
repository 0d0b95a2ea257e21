/** The record of a session that is over: inputs as filed, and what replaying them comes to. */
import { composeRecord, type RunRecord } from '../../sim/files/index.js';
import { commandsOfRecord, fly, MODEL_VERSION, requestOf, stampOfTick } from '../../sim/index.js';
import type { DrillOptions, Hand } from './drill.js';
import type { Session } from './session.js';

/**
 * Composes the record. Hash, outcome and score come from playing the log again from tick 0, not from the worlds that
 * were on the screen, so that what is stored is what `verify` will find.
 */
export function recordOf(session: Session, options: DrillOptions, hands: ReadonlySet<Hand>): RunRecord {
  const { scenario, airframe, seed, device, gauge, app } = options;
  if (session.over === null) throw new Error('the run is not over');
  const end = { tick: session.endTick, why: session.over };
  const parts = {
    model: MODEL_VERSION, app, source: 'flown' as const, seed, airframe, scenario, gauge,
    device: { ...device, input: [...hands].sort().join(', ') || 'none' },
    clock: session.clock.filter(({ tick }, index) => index === 0 || tick < end.tick).map((segment) => ({ ...segment })),
    commands: session.log.filter(({ tick }) => tick < end.tick) as RunRecord['commands'],
    marks: [...session.marks.filter(({ tick }) => tick <= end.tick), { tick: end.tick, stampMs: stampOfTick(session.clock, end.tick), what: 'end' as const }],
    end, assessment: null,
  };
  const empty: RunRecord['score'] = {
    onsetS: null, firstFrameS: null, releaseS: null, afterOnsetS: null,
    growthAtReleaseDeg: null, splitAtReleaseDeg: null, finalSplitDeg: 0, rollAuthorityPct: 0,
  };
  const draft = { ...parts, format: 1 as const, hash: '', outcome: 'void' as const, score: empty, digest: '' };
  const flight = fly(requestOf(draft), commandsOfRecord(draft));
  return composeRecord({ ...parts, hash: flight.hash, outcome: flight.outcome, score: flight.score });
}
