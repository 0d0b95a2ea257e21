// What a debrief says: each outcome in its own words, and no figure that the replay does not hold.
import { expect, test } from 'vitest';
import type { RunRecord } from '../../sim/files/index.js';
import type { Debrief, DebriefRow } from '../../sim/index.js';
import { assessed, cost, headline, whyVoid } from '../../src/pages/words.js';

const row = (atS: number, leftDeg: number, rightDeg: number) => ({ atS, leftDeg, rightDeg }) as DebriefRow;
const quiet: RunRecord['score'] = {
  onsetS: null, firstFrameS: null, releaseS: null, afterOnsetS: null, growthAtReleaseDeg: null, splitAtReleaseDeg: null, finalSplitDeg: 0, rollAuthorityPct: 0,
};
const split: RunRecord['score'] = {
  onsetS: 14, firstFrameS: 14.01, releaseS: 18.21, afterOnsetS: 4.2, growthAtReleaseDeg: 0.66, splitAtReleaseDeg: 0.5, finalSplitDeg: 0.69, rollAuthorityPct: 5.2,
};

function debrief(outcome: RunRecord['outcome'], score: RunRecord['score'], more: Partial<Debrief> = {}): Debrief {
  return {
    flight: { outcome, score, end: { tick: 4000, why: 'scored' }, events: [], procedure: [], seed: 1, ticks: 4000, hash: '', failure: null, passed: null },
    fault: score.onsetS === null ? null : { kind: 'disconnect', side: 'right' }, oneDegreeS: null, limitDeg: 2.5,
    oneSecondMore: score.onsetS === null ? null : { finalSplitDeg: 0.85, rollAuthorityPct: 6.4 },
    oneSecondSooner: null, callouts: [],
    rows: [row(0, 4, 4), row(13.9, 6.1, 6.12), row(14.1, 6.15, 6.13)], ...more,
  };
}
const said = (one: Debrief): string => headline(one).join(' ');

test('a split that was caught, late, or never let go', () => {
  expect(said(debrief('caught', split))).toBe('The right side stopped at 6.1°. You let go 4.2 s later, 0.66° further apart.');
  expect(said(debrief('late', { ...split, growthAtReleaseDeg: 2.61, afterOnsetS: 17.3 }))).toBe('The right side stopped at 6.1°. You let go 17.3 s later, 2.61° further apart, past the limit of 2.50°.');
  expect(said(debrief('missed', { ...split, releaseS: null, afterOnsetS: null, growthAtReleaseDeg: null, finalSplitDeg: 5.02 }))).toBe('The right side stopped at 6.1°. The hand stayed on, and the sides came to stand 5.02° apart.');
  expect(said(debrief('caught', split, { fault: { kind: 'pointer', side: 'left' } }))).toMatch(/^The left pointer went false; the side itself was whole\. You let go/);
});

test('a run in which nothing parted', () => {
  expect(said(debrief('held', quiet))).toBe('Nothing parted, and you drove to the setting.');
  expect(said(debrief('falseRelease', { ...quiet, releaseS: 7.24 }))).toBe('You let go at 7.2 s. Nothing had parted.');
  expect(cost(debrief('held', quiet))).toBe('Both sides stayed together; no roll authority was used.');
});

test('let go before anything parted, which came afterwards', () => {
  expect(said(debrief('falseRelease', { ...split, releaseS: 9, afterOnsetS: null, growthAtReleaseDeg: null }))).toBe('The right side stopped at 6.1°. You had let go before that, at 9.0 s.');
});

test('what a second more would have cost, where that is known', () => {
  expect(cost(debrief('caught', split))).toBe('The sides came to stand 0.69° apart, which used 5 % of the roll authority. One second more on the switch: 0.85° and 6 %.');
  const stopped = debrief('void', split);
  expect(cost({ ...stopped, flight: { ...stopped.flight, end: { tick: 1900, why: 'stopped' } } })).toBe('The sides came to stand 0.69° apart, which used 5 % of the roll authority.');
});

test('why a run does not count, each reason once', () => {
  const record = (what: RunRecord['marks'][number]['what'][], why: RunRecord['end']['why'], outcome: RunRecord['outcome'] = 'void') =>
    ({ outcome, marks: what.map((one) => ({ tick: 0, stampMs: 0, what: one })), end: { tick: 1, why } }) as RunRecord;
  expect(whyVoid(record(['start', 'pause', 'resume', 'pause', 'end'], 'stopped'))).toBe('This run does not count: it was paused, and it was stopped before its end.');
  expect(whyVoid(record(['start', 'hidden'], 'scored'))).toBe('This run does not count: the page was hidden.');
  expect(whyVoid(record(['start', 'pause'], 'scored', 'caught'))).toBeNull();
});

test('own judgement beside what was', () => {
  expect(assessed({ split: 'yes', growthDeg: 1.2 }, split)).toEqual([{ what: 'A split', said: 'yes', was: 'yes' }, { what: 'Apart when you let go', said: '1.2°', was: '0.50°' }]);
  expect(assessed({ split: 'unsure', growthDeg: null }, quiet)).toEqual([{ what: 'A split', said: 'not sure', was: 'no' }]);
});
