/** What a debrief says in words. Figures come from the replayed record; nothing is said that it does not hold. */
import type { RunRecord } from '../../sim/files/index.js';
import type { Debrief } from '../../sim/index.js';

export const OUTCOME_WORDS: Readonly<Record<RunRecord['outcome'], string>> = {
  caught: 'caught', late: 'late', missed: 'missed', falseRelease: 'false release', held: 'held', undecided: 'undecided',
  void: 'void', completed: 'completed', lost: 'control lost', timeUp: 'time up',
};

const VERBS: Readonly<Record<string, string>> = {
  disconnect: 'stopped', lag: 'fell behind', jam: 'jammed', slip: 'slipped', blowback: 'was blown back',
};

export const seconds = (s: number): string => `${s.toFixed(1)} s`;
export const degrees = (deg: number): string => `${(Math.abs(deg) < 0.005 ? 0 : deg).toFixed(2)}°`;
export const percent = (pct: number): string => `${Math.round(pct)} %`;

/** Where the faulted side was when the fault began to act, deg; null for a run without one. */
function placeAtOnset({ fault, rows, flight }: Debrief): number | null {
  const { onsetS } = flight.score;
  if (fault === null || fault.side === null || onsetS === null) return null;
  const row = rows.findLast(({ atS }) => atS <= onsetS) ?? rows[0];
  return row === undefined ? null : fault.side === 'left' ? row.leftDeg : row.rightDeg;
}

/** What went wrong, as a sentence; null when nothing did. */
export function whatHappened(debrief: Debrief): string | null {
  const { fault } = debrief;
  if (debrief.flight.score.onsetS === null) return null;
  if (fault === null || fault.side === null) return 'The drive failed.';
  if (fault.kind === 'pointer') return `The ${fault.side} pointer went false; the side itself was whole.`;
  const place = placeAtOnset(debrief);
  return `The ${fault.side} side ${VERBS[fault.kind] ?? 'parted'}${place === null ? '' : ` at ${place.toFixed(1)}°`}.`;
}

/** The one line: what happened, and what the hand did about it. */
export function headline(debrief: Debrief): string[] {
  const happened = whatHappened(debrief);
  return [happened, whatTheHandDid(debrief, happened !== null)].filter((one) => one !== null);
}

function whatTheHandDid({ flight, limitDeg }: Debrief, parted: boolean): string {
  const { score } = flight;
  const { releaseS, afterOnsetS, growthAtReleaseDeg, finalSplitDeg } = score;
  const measured = afterOnsetS !== null && growthAtReleaseDeg !== null;
  if (measured && (flight.outcome !== 'missed' && flight.outcome !== 'undecided')) {
    const past = growthAtReleaseDeg >= limitDeg ? `, past the limit of ${degrees(limitDeg)}` : '';
    return `You let go ${seconds(afterOnsetS)} later, ${degrees(growthAtReleaseDeg)} further apart${past}.`;
  }
  if (parted && releaseS !== null && score.onsetS !== null && releaseS < score.onsetS) return `You had let go before that, at ${seconds(releaseS)}.`;
  if (parted) return `The hand stayed on, and the sides came to stand ${degrees(finalSplitDeg)} apart.`;
  if (flight.outcome === 'falseRelease') return `You let go at ${seconds(releaseS ?? 0)}. Nothing had parted.`;
  if (flight.outcome === 'held') return 'Nothing parted, and you drove to the setting.';
  if (flight.outcome === 'timeUp' || flight.outcome === 'undecided') return 'Time was up before the run could be decided. Nothing had parted.';
  return releaseS === null ? 'Nothing parted, and nothing was let go.' : `You let go at ${seconds(releaseS)}. Nothing parted.`;
}

/** What a second more would have cost; not known of a run that was stopped before it could cost it. */
export const secondMore = ({ flight, oneSecondMore }: Debrief): Debrief['oneSecondMore'] => (flight.end.why === 'stopped' ? null : oneSecondMore);

/** What it cost, and what a second more would have. */
export function cost(debrief: Debrief): string {
  const { score } = debrief.flight;
  if (score.onsetS === null) return 'Both sides stayed together; no roll authority was used.';
  const used = `The sides came to stand ${degrees(score.finalSplitDeg)} apart, which used ${percent(score.rollAuthorityPct)} of the roll authority.`;
  const more = secondMore(debrief);
  if (more === null) return used;
  return `${used} One second more on the switch: ${degrees(more.finalSplitDeg)} and ${percent(more.rollAuthorityPct)}.`;
}

const DISTURBED: Readonly<Partial<Record<RunRecord['marks'][number]['what'], string>>> = {
  focusLost: 'the window or the device lost the hand', hidden: 'the page was hidden', pause: 'it was paused',
  stall: 'the clock stood still', late: 'an input came too late to be filed',
};

/** Why a run does not count; null when it does. */
export function whyVoid(record: RunRecord): string | null {
  if (record.outcome !== 'void') return null;
  const whys = [...new Set(record.marks.map(({ what }) => DISTURBED[what]))].filter((why) => why !== undefined);
  if (record.end.why === 'stopped') whys.push('it was stopped before its end');
  return whys.length === 0 ? 'This run does not count.' : `This run does not count: ${whys.join(', and ')}.`;
}

/** The trainee's own words beside what was. */
export function assessed(said: NonNullable<RunRecord['assessment']>, score: RunRecord['score']): { what: string; said: string; was: string }[] {
  const yes = { yes: 'yes', no: 'no', unsure: 'not sure' } as const;
  const rows = [{ what: 'A split', said: said.split === null ? 'nothing' : yes[said.split], was: score.onsetS === null ? 'no' : 'yes' }];
  if (said.growthDeg !== null || score.splitAtReleaseDeg !== null) {
    rows.push({
      what: 'Apart when you let go',
      said: said.growthDeg === null ? 'cannot say' : `${said.growthDeg.toFixed(1)}°`,
      was: score.splitAtReleaseDeg === null ? 'never let go' : degrees(score.splitAtReleaseDeg),
    });
  }
  return rows;
}
