/** Words and figures of a debrief. Everything comes from the replayed record; nothing is said that it does not hold. */
import type { RunRecord } from '../../sim/files/index.js';

export const OUTCOME_WORDS: Readonly<Record<RunRecord['outcome'], string>> = {
  caught: 'caught', late: 'late', missed: 'missed', falseRelease: 'false release', held: 'held', undecided: 'undecided',
  void: 'void', completed: 'completed', lost: 'control lost', timeUp: 'time up',
};

/** What an outcome means, for whoever meets its word for the first time. */
export const OUTCOME_MEANS: Readonly<Record<RunRecord['outcome'], string>> = {
  caught: 'let go in time', late: 'let go past the limit', missed: 'did not let go for the split', falseRelease: 'let go or called for nothing',
  held: 'nothing came, and nothing was let go for it', undecided: 'over before it could be decided', void: 'does not count',
  completed: 'the task was done or the call was right', lost: 'roll control ran out', timeUp: 'the task was not done in time',
};

export const seconds = (s: number): string => `${s.toFixed(1)} s`;
export const degrees = (deg: number): string => `${(Math.abs(deg) < 0.005 ? 0 : deg).toFixed(2)}°`;
export const percent = (pct: number): string => `${Math.round(pct)} %`;
export const knots = (kt: number): string => `${Math.round(kt)} kt`;

const DISTURBED: Readonly<Partial<Record<RunRecord['marks'][number]['what'], string>>> = {
  focusLost: 'the window or the device lost the hand', hidden: 'the page was hidden', pause: 'it was paused',
  stall: 'the clock stood still', late: 'an input came too late to be filed',
};

/** Why a run does not count; null when it does. */
export function whyVoid(record: RunRecord): string | null {
  if (record.outcome !== 'void') return null;
  const whys = [...new Set(record.marks.map(({ what }) => DISTURBED[what]))].filter((why) => why !== undefined);
  if (record.end.why === 'stopped') whys.push('it was ended by hand');
  return whys.length === 0 ? 'This run does not count.' : `This run does not count: ${whys.join(', and ')}.`;
}

/** Who flew, as the subject of a sentence. */
export const whoFlew = ({ source }: Pick<RunRecord, 'source'>): string => (source === 'scripted' ? 'The script' : 'You');

/** Keeps a figure and its unit on one line. */
export const tight = (text: string): string => text.replace(/(\d) (s|kt|ft|%)(?![\w])/g, '$1\u00a0$2');

const HELPS: Readonly<Record<NonNullable<RunRecord['device']['assisted']>[number], string>> = {
  latchedHold: 'a switch that stays pressed', spokenPointers: 'spoken pointers',
};

/** Helps that were in use, as words; null for a run without. */
export function assistedBy({ device: { assisted = [] } }: Pick<RunRecord, 'device'>): string | null {
  return assisted.length === 0 ? null : assisted.map((one) => HELPS[one]).join(' and ');
}
