// Figures and reasons in words, each in its own.
import { expect, test } from 'vitest';
import { OUTCOMES, type RunRecord } from '../../sim/files/index.js';
import { degrees, OUTCOME_MEANS, OUTCOME_WORDS, percent, whyVoid } from '../../src/pages/words.js';

test('every outcome has a word and a meaning of its own', () => {
  expect(new Set(OUTCOMES.map((one) => OUTCOME_WORDS[one])).size).toBe(OUTCOMES.length);
  expect(new Set(OUTCOMES.map((one) => OUTCOME_MEANS[one])).size).toBe(OUTCOMES.length);
});

test('figures: no minus zero, whole percents', () => {
  expect([degrees(-0.004), degrees(1.295), percent(9.6)]).toEqual(['0.00°', '1.29°', '10 %']);
});

test('why a run does not count, each reason once', () => {
  const record = (what: RunRecord['marks'][number]['what'][], why: RunRecord['end']['why'], outcome: RunRecord['outcome'] = 'void') =>
    ({ outcome, marks: what.map((one) => ({ tick: 0, stampMs: 0, what: one })), end: { tick: 1, why } }) as RunRecord;
  expect(whyVoid(record(['start', 'pause', 'resume', 'pause', 'end'], 'stopped'))).toBe('This run does not count: it was paused, and it was ended by hand.');
  expect(whyVoid(record(['start', 'hidden'], 'scored'))).toBe('This run does not count: the page was hidden.');
  expect(whyVoid(record(['start', 'pause'], 'scored', 'caught'))).toBeNull();
});
