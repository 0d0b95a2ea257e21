/** From what a page notes of a run to its record: while it is flown, at its end, or when its page went away. */
import { stampOfTick } from '../stamp.js';
import { fly } from '../score/flight.js';
import { commandsOfRecord, requestOf } from '../score/replayed.js';
import { MODEL_VERSION } from '../world.js';
import { composeRecord } from './compose.js';
import type { RunRecord } from './record.js';

/** What does not change in a run. `device.input` is filled in from what was used. */
export type FlownSetting = Pick<RunRecord, 'app' | 'seed' | 'airframe' | 'scenario' | 'device' | 'gauge' | 'plan'>;

/** How far a run has come: inputs as filed, not worlds. */
export interface FlownDraft {
  /** Ticks stepped so far. */
  readonly tick: number;
  readonly clock: RunRecord['clock'];
  readonly commands: RunRecord['commands'];
  readonly marks: RunRecord['marks'];
  /** A desk was there, whether it did something or not. */
  readonly live?: boolean;
  /** Kinds of input used so far. */
  readonly input: readonly string[];
  /** The gauge has changed its size since the start. */
  readonly resized?: boolean;
}

const NO_SCORE: RunRecord['score'] = {
  onsetS: null, firstFrameS: null, releaseS: null, afterOnsetS: null,
  growthAtReleaseDeg: null, splitAtReleaseDeg: null, finalSplitDeg: 0, rollAuthorityPct: 0,
};

/**
 * The record of a flown run. Hash, outcome and score come from playing the log again from tick 0, not from the worlds
 * that were on the screen, so that what is stored is what `verify` will find.
 */
export function flownRecord({ device, gauge, ...setting }: FlownSetting, draft: FlownDraft, end: RunRecord['end']): RunRecord {
  const parts = {
    model: MODEL_VERSION, source: draft.live === true ? 'live' as const : 'flown' as const, ...setting,
    device: { ...device, input: [...draft.input].sort().join(', ') || 'none' },
    gauge: draft.resized === true ? { ...gauge, changed: true as const } : gauge,
    clock: draft.clock.filter(({ tick }, index) => index === 0 || tick <= end.tick).map((segment) => ({ ...segment })),
    commands: draft.commands.filter(({ tick }) => tick < end.tick),
    marks: [...draft.marks.filter(({ tick }) => tick <= end.tick), { tick: end.tick, stampMs: stampOfTick(draft.clock, end.tick), what: 'end' as const }],
    end, assessment: null,
  };
  const unflown = { ...parts, format: 1 as const, hash: '', outcome: 'void' as const, score: NO_SCORE, digest: '' };
  const flight = fly(requestOf(unflown), commandsOfRecord(unflown));
  return composeRecord({ ...parts, hash: flight.hash, outcome: flight.outcome, score: flight.score });
}

/** The record of a run whose page went away: stopped where its last note stands; null where nothing had been flown. */
export const abandonedRecord = (setting: FlownSetting, draft: FlownDraft): RunRecord | null =>
  (draft.tick === 0 ? null : flownRecord(setting, draft, { tick: draft.tick, why: 'stopped' }));
