/** The trainee's own judgement beside what was. */
import type { RunRecord } from '../../../sim/files/index.js';
import { failures, lastRow, sideAhead, shownApart, type Facts } from './facts.js';
import { degrees } from '../words.js';

type Said = NonNullable<RunRecord['assessment']>;

export interface Judged {
  readonly what: string;
  readonly said: string;
  readonly was: string;
}

const ANSWER = { yes: 'yes', no: 'no', unsure: 'not sure' } as const;
const SIDE = { left: 'left', right: 'right', unsure: 'cannot say' } as const;

/** What was asked and what the replay holds, row by row; a question that was left out has no row. */
export function assessed(said: Said, facts: Facts, { scenario }: Pick<RunRecord, 'scenario'>): Judged[] {
  const { onsetS, releaseS, splitAtReleaseDeg } = facts.flight.score;
  const parted = onsetS !== null;
  const pointer = facts.fault?.kind === 'pointer';
  const rows: Judged[] = [{ what: 'A split', said: said.split === null ? 'nothing' : ANSWER[said.split], was: parted ? (pointer ? 'on the pointers' : 'yes') : 'no' }];
  if (said.surePct !== undefined) rows.push({ what: 'How sure of that', said: `${Math.round(said.surePct)} %`, was: '' });
  if (said.side !== undefined) {
    const end = lastRow(facts);
    rows.push({ what: 'The side ahead', said: SIDE[said.side], was: sideAhead(facts, releaseS ?? end?.atS ?? 0) ?? 'neither' });
  }
  const end = lastRow(facts);
  if (said.growthDeg !== null || splitAtReleaseDeg !== null) {
    rows.push({
      what: 'Apart when you let go',
      said: said.growthDeg === null ? 'cannot say' : `${said.growthDeg.toFixed(1)}°`,
      was: splitAtReleaseDeg !== null ? degrees(splitAtReleaseDeg) : end === undefined ? 'never let go' : `never let go; ${degrees(shownApart(end))} at the end`,
    });
  }
  if (said.driveFailed !== undefined) {
    const failed = failures(facts, scenario).some(({ showedS }) => showedS !== null);
    rows.push({ what: 'The drive failed', said: ANSWER[said.driveFailed], was: failed ? 'yes' : 'no' });
  }
  return rows;
}
