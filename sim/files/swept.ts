/** What a sweep prints and a page saves, from its rows: one way to it, so that both say the same. */
import type { Airframe } from './airframe.js';
import { sha256Hex } from './digest.js';
import { difficultyOf } from '../sweep/difficulty.js';
import type { Rows } from '../sweep/parts.js';
import { summaryOf } from '../sweep/summary.js';
import { OUTCOMES } from './record.js';
import type { Scenario } from './scenario.js';
import type { SweepOutput } from './sweep-output.js';

/** Names of what was swept, as they shall be told. */
export interface Swept {
  readonly scenario: string;
  readonly trainee: string;
  /** Seed from which the seeds of the runs were drawn. */
  readonly seed: number;
}

/** The figures of a sweep. @param rows all of them, in the order of the runs */
export function sweptOutput(names: Swept, scenario: Pick<Scenario, 'recognition'>, airframe: Airframe, rows: Rows): SweepOutput {
  return {
    scenario: names.scenario, trainee: names.trainee, runs: rows.sweep.length, seed: names.seed,
    hash: sha256Hex(rows.sweep.map(({ hash }) => hash).join('')).slice(0, 16),
    ...summaryOf(rows.sweep, OUTCOMES),
    difficulty: difficultyOf(rows.ordinary, rows.held, scenario.recognition?.limitDeg ?? airframe.recognition.limitDeg),
  };
}
