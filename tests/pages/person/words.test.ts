/** Sentences of one person over time: what each verdict and each advice says, and that no more is said than the figures hold. */
import { describe, expect, it } from 'vitest';
import type { Advice, BlockChange, BlockVerdict, Condition, ConditionGroup } from '../../../sim/index.js';
import { adviceWords, apartWords, conditionWords, pairWords } from '../../../src/pages/person/words.js';

const CHANGE: BlockChange = {
  verdict: 'noClearChange', ratio: { median: 0.95, lo: 0.8, hi: 1.12 }, sigma: 0.35, falsePerMin: [0.2, 0.3], caughtShare: [0.8, 0.9],
  decided: [12, 20], shownRatio: 0.67, moreRuns: 27, moreForRatio: 0.8,
};
const pair = (more: Partial<BlockChange>): string => pairWords({ earlier: 'before', later: 'after', change: { ...CHANGE, ...more } });

describe('blocks', () => {
  it('no clear change, with how many more; with enough runs, what they would have shown', () => {
    expect(pair({})).toBe('From “before” to “after”: no clear change yet. The splits of “after” are 0.95 times those of “before” (95 % interval 0.80 to 1.12). About 27 more decided runs a block would show a change to 0.8 times.');
    expect(pair({ moreRuns: 0 })).toContain('Blocks of this size show a change to 0.67 times four times in five.');
  });
  it('too few runs give no ratio', () => {
    expect(pair({ verdict: 'tooFew', ratio: null, falsePerMin: null, caughtShare: null, decided: [5, 9] })).toBe('From “before” to “after”: too few runs to compare. Each needs 8 decided runs; they have 5 and 9.');
  });
  it.each([
    ['improved', 'let go sooner.'], ['fasterMoreFalse', 'False releases 0.20 before, 0.30 a minute now.'], ['fasterCaughtFewer', 'yet a smaller part was caught'], ['slower', 'let go later.'],
  ] as const satisfies readonly (readonly [BlockVerdict, string])[])('%s', (verdict, words) => {
    expect(pair({ verdict })).toContain(words);
    expect(pair({ verdict })).toContain('0.95 times');
  });
});

const CONDITION: Condition = { set: 1, airframe: 'airframe-a', limitDeg: 2.5, pxPerDeg: 4.61, minPerDeg: null, apartDeg: null, input: 'mouse', assisted: [] };
const group = (condition: Condition | null, set = 1): ConditionGroup => ({ condition, set, flights: [], pairs: [] });

describe('conditions', () => {
  it('told in full, with the help that was in use', () => {
    expect(conditionWords({ ...CONDITION, assisted: ['latchedHold'] }, 'Airframe A')).toBe('Airframe A; gauge of 4.61 px a degree; by mouse, assisted by a switch that stays pressed; late from 2.5°.');
    expect(conditionWords(null, 'Airframe A')).toContain('compared with nothing');
    expect(conditionWords({ ...CONDITION, pxPerDeg: null, minPerDeg: 11.5, apartDeg: 24 }, 'Airframe A')).toBe('Airframe A; gauge of 11.5′ of arc a degree, 24° from the speed; by mouse; late from 2.5°.');
  });
  it('apart for what differs and for nothing else; another set or a flight alone is no reason', () => {
    const [here, there] = [group(CONDITION), group({ ...CONDITION, input: 'touch' })];
    expect(apartWords(here, [here, there])).toContain('here flown by mouse; there flown by touch.');
    const measured = group({ ...CONDITION, pxPerDeg: null, minPerDeg: 11.5, apartDeg: 24 });
    expect(apartWords(here, [here, measured])).toContain('here a gauge of 4.61 px a degree; there a gauge of 11.5′ of arc a degree, 24° from the speed.');
    expect(apartWords(here, [here, group({ ...CONDITION, set: 2, input: 'touch' }, 2), group(null)])).toBeNull();
  });
});

it('every advice gives its figures', () => {
  const all: [Advice, string][] = [
    [{ why: 'first', fly: 1 }, 'ten minutes'], [{ why: 'finish', fly: 1, runs: 3 }, '3 more'], [{ why: 'falseReleases', fly: 1, loPerMin: 0.63, count: 9, quietS: 240 }, '9 false releases in 4.0 quiet minutes, at least 0.63 a minute'],
    [{ why: 'fastRate', fly: 1, rateDegPerS: 0.155, notCaught: 2, decided: 7 }, 'at 0.15° a second 2 of 7'], [{ why: 'loaded', fly: 3 }, 'questions to answer'],
    [{ why: 'moreRuns', fly: 1, name: 'after', runs: 27 }, 'about 27 more'], [{ why: 'steady', fly: 1 }, 'Nothing stands out'],
  ];
  for (const [advice, words] of all) expect(adviceWords(advice)).toContain(words);
});
