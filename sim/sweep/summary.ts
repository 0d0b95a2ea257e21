/** What the rows of a sweep come to. Rows stand in the order of their runs, so that sums are the same however they were flown. */
import type { Outcome } from '../files/record.js';
import type { SweepRow } from './row.js';
import { shareOf, type Share } from './share.js';
import { spreadOf, type Spread } from './spread.js';

/** Share of all runs of the sweep that came to one outcome. */
export interface OutcomeShare extends Share {
  readonly outcome: Outcome;
}

/** Made by `summaryOf`. A spread is null where no run has its figure. */
export interface SweepSummary {
  /** Outcomes that occurred, in the order of the words. */
  readonly outcomes: OutcomeShare[];
  /** Runs in which a fault came into force while the drive moved. */
  readonly onsets: Share;
  /** Over the runs released behind onset, deg. */
  readonly growthAtReleaseDeg: Spread | null;
  /** Over all runs. */
  readonly finalSplitDeg: Spread | null;
  readonly rollAuthorityPct: Spread | null;
  readonly hornS: Spread | null;
  readonly overLimitS: Spread | null;
  /** Runs in which the speed was above a limit at any time. */
  readonly overLimitRuns: Share;
}

/** @param words the outcomes in the order in which they are told */
export function summaryOf(rows: readonly SweepRow[], words: readonly Outcome[]): SweepSummary {
  const spread = (figure: (row: SweepRow) => number | null): Spread | null =>
    spreadOf(rows.flatMap((row) => figure(row) ?? []));
  const share = (is: (row: SweepRow) => boolean): Share => shareOf(rows.filter(is).length, rows.length);
  return {
    outcomes: words.map((outcome) => ({ outcome, ...share((row) => row.outcome === outcome) })).filter(({ k }) => k > 0),
    onsets: share((row) => row.onsetS !== null),
    growthAtReleaseDeg: spread((row) => row.growthAtReleaseDeg),
    finalSplitDeg: spread((row) => row.finalSplitDeg),
    rollAuthorityPct: spread((row) => row.rollAuthorityPct),
    hornS: spread((row) => row.hornS),
    overLimitS: spread((row) => row.overLimitS),
    overLimitRuns: share((row) => row.overLimitS > 0),
  };
}
