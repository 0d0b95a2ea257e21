/**
 * Does a record follow from its inputs? Digest, then clock and order, then a replay whose end, hash, outcome and score
 * must be those of the record to the last bit. No signature: who replays and digests anew can forge, and is not caught.
 */
import type { Flight } from '../score/flight.js';
import { replay } from '../score/replayed.js';
import { MODEL_VERSION } from '../world.js';
import { inconsistencies } from './consistent.js';
import { digestOf } from './digest.js';
import { recordMisfits } from './record-fit.js';
import type { RunRecord } from './record.js';

/** One place where a record and what follows from it differ; `path` is its key, empty for the whole. */
export interface Refusal {
  /** digest, model, clock, order, rank, stamp, mark, behindEnd, fit, replay, end, hash, outcome, score. */
  code: string;
  path: string;
  found: string;
  expected: string;
}

/** Made by `verify`. `refused` holds 50 at the most. */
export interface Verdict {
  ok: boolean;
  /** false: of another model version; its stored outcome may be shown as "not replayable here". */
  replayable: boolean;
  refused: Refusal[];
  /** What nothing in the record can prove, whatever `ok` says. */
  notProvable: string[];
}

/** Believed, not proved: nothing in a replay depends on it, or only within less than a tick. */
export const NOT_PROVABLE = [
  'source', 'app', 'device', 'gauge', 'assessment', 'plan', 'marks', 'clock where no act stands beside it', 'commands[].stampMs within its tick', 'commands[].seq where the order stays',
  'acts that change nothing in the run, such as answers', 'texts of scenario and airframe', 'what of scenario and airframe no moment of the run asked for',
];

/** Most refusals listed. */
const MOST_REFUSALS = 50;

/** Checks a record that has passed its schema. Never throws. */
export function verify(record: RunRecord): Verdict {
  const model = record.model === MODEL_VERSION ? [] : [refusal('model', 'model', record.model, `${MODEL_VERSION}: not replayable here`)];
  const before = [...digestAgrees(record), ...model, ...inconsistencies(record), ...fits(record)];
  const refused = before.length > 0 ? before : replayAgrees(record);
  return { ok: refused.length === 0, replayable: model.length === 0, refused: refused.slice(0, MOST_REFUSALS), notProvable: [...NOT_PROVABLE] };
}

const refusal = (code: string, path: string, found: unknown, expected: unknown): Refusal =>
  ({ code, path, found: String(found), expected: String(expected) });

function digestAgrees(record: RunRecord): Refusal[] {
  try {
    const digest = digestOf(record);
    return digest === record.digest ? [] : [refusal('digest', 'digest', record.digest, digest)];
  } catch (problem) {
    return [refusal('digest', 'digest', problem instanceof Error ? problem.message : problem, 'a record of plain JSON values')];
  }
}

const fits = (record: RunRecord): Refusal[] =>
  recordMisfits(record).map(({ path, allowed }) => refusal('fit', path.join('.'), 'a scenario and an airframe that do not belong together', allowed));

function replayAgrees(record: RunRecord): Refusal[] {
  let flight: Flight;
  try {
    flight = replay(record);
  } catch (problem) {
    return [refusal('replay', '', problem instanceof Error ? problem.message : problem, 'a run that can be replayed')];
  }
  return differences(record, flight);
}

/** Where a record and its replay differ; empty when they agree to the last bit. */
export function differences(record: Pick<RunRecord, 'end' | 'hash' | 'outcome' | 'score'>, flight: Pick<Flight, 'end' | 'hash' | 'outcome' | 'score'>): Refusal[] {
  const keys = <T extends object>(of: T) => Object.keys(of) as (keyof T & string)[];
  const rows: [code: string, path: string, found: unknown, expected: unknown][] = [
    ...keys(record.end).map((key) => ['end', `end.${key}`, record.end[key], flight.end[key]] as [string, string, unknown, unknown]),
    ['hash', 'hash', record.hash, flight.hash],
    ['outcome', 'outcome', record.outcome, flight.outcome],
    ...keys(record.score).map((key) => ['score', `score.${key}`, record.score[key], flight.score[key]] as [string, string, unknown, unknown]),
  ];
  return rows.filter(([, , found, expected]) => found !== expected).map((row) => refusal(...row));
}
