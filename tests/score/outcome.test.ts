/** The outcome table of scored runs and drills, every limit hit exactly and missed by the least. Limits by hand: 2.5 deg, 0.15 s, 0.1 deg, 1 deg, 5 s. */
import { describe, expect, it } from 'vitest';
import { isReaction, outcomeOf } from '../../sim/score/outcome.js';
import type { Facts } from '../../sim/score/facts.js';
import type { TaskRule } from '../../sim/task/rule.js';

const rule: TaskRule = { settings: [16], limitTicks: 10000, legTicks: Infinity, recognition: true, limitDeg: 2.5, seenDeg: 0.1, mode: 'scored', afterTicks: 2000, turns: [] };
const drill: TaskRule = { ...rule, recognition: false, mode: 'drill' };
const LEAST = 1e-9;

const NO_FAILURE = { tick: -1, kind: null, stoppedTick: -1, rightlyCalled: false } as const;

/** A caught run: onset at tick 1000, let go 6 s later at 1 deg of growth, called a second later. */
const facts = (change: Partial<Facts> = {}): Facts => ({
  onsetTick: 1000, releaseTick: 1600, releaseFraction: 0, arrived: false, growthAtReleaseDeg: 1, splitAtReleaseDeg: 1.1, growthAtEndDeg: 1.02,
  splitCallTick: 1700, growthAtCallDeg: 1, failedCallTick: -1, failure: NO_FAILURE, missedArrivalTick: -1, pressTick: 100,
  finalSplitDeg: 1.02, rollAuthorityPct: 7, settingsReached: 0, ...change,
});
const scored = (change: Partial<Facts>, voided = false) => outcomeOf(facts(change), rule, 'scored', voided);

describe('scored', () => {
  it.each([
    ['caught', {}],
    ['caught at the last of the limit', { growthAtReleaseDeg: 2.5 - LEAST }],
    ['late at the limit itself', { growthAtReleaseDeg: 2.5 }],
    ['late far behind it', { growthAtReleaseDeg: 4.9 }],
    ['falseRelease before onset', { onsetTick: -1, growthAtReleaseDeg: 0 }],
    ['falseRelease sooner than anyone reacts: 0.1499 s', { releaseTick: 1014, releaseFraction: 0.99 }],
    ['caught at 0.15 s exactly', { releaseTick: 1015, releaseFraction: 0 }],
    ['falseRelease on a growth nobody sees', { growthAtReleaseDeg: 0.1 - LEAST }],
    ['caught at the growth that can be seen', { growthAtReleaseDeg: 0.1 }],
    ['missed, never let go', { releaseTick: -1, growthAtEndDeg: 2.5 }],
    ['undecided, never let go and too little', { releaseTick: -1, growthAtEndDeg: 2.5 - LEAST }],
    ['held, never let go and quiet', { releaseTick: -1, onsetTick: -1, growthAtEndDeg: 0 }],
    ['held, arrived and quiet', { arrived: true, onsetTick: -1, growthAtReleaseDeg: 0, splitCallTick: -1 }],
    ['missed, arrived with a degree shown and no call', { arrived: true, splitAtReleaseDeg: 1, growthAtReleaseDeg: 0.9, splitCallTick: -1 }],
    ['undecided, arrived with less', { arrived: true, splitAtReleaseDeg: 1 - LEAST, growthAtReleaseDeg: 0.9, splitCallTick: -1 }],
    ['missed, arrived past the limit though little is shown', { arrived: true, splitAtReleaseDeg: 0.9, growthAtReleaseDeg: 2.5, splitCallTick: -1 }],
    ['caught, arrived and called within 5 s', { arrived: true, splitCallTick: 2100 }],
    ['missed, arrived and called too late', { arrived: true, splitCallTick: 2101 }],
  ] as const)('%s', (name, change) => expect(scored(change)).toBe(name.split(/[ ,]/)[0]));

  it('disturbed or stopped is void, whatever it was', () => {
    expect(scored({}, true)).toBe('void');
    expect(outcomeOf(facts(), rule, 'stopped', false)).toBe('void');
  });
  it('the stamp within the tick counts', () => {
    expect(isReaction(facts({ releaseTick: 1014, releaseFraction: 0.9999 }), rule)).toBe(false);
    expect(isReaction(facts({ releaseTick: 1015, releaseFraction: 0 }), rule)).toBe(true);
  });
});

describe('drills', () => {
  it.each([
    ['completed', { settingsReached: 1, onsetTick: -1, arrived: true, splitCallTick: -1 }, 'done'],
    ['completed', {}, 'called'],
    ['missed', { settingsReached: 1, arrived: true, splitCallTick: -1, missedArrivalTick: 1600 }, 'done'],
    ['completed', { growthAtCallDeg: 0.1 }, 'called'],
    ['falseRelease', { growthAtCallDeg: 0.1 - LEAST }, 'called'],
    ['completed', { splitCallTick: -1, failedCallTick: 1700, failure: { tick: 1600, kind: 'nothing', stoppedTick: -1, rightlyCalled: true } }, 'called'],
    ['falseRelease', { splitCallTick: -1, failedCallTick: 1700 }, 'called'],
    ['timeUp', { splitCallTick: -1, releaseTick: -1 }, 'timeUp'],
    ['lost', {}, 'lost'],
  ] as const)('%s', (outcome, change, why) => expect(outcomeOf(facts(change), drill, why, false)).toBe(outcome));
  it('are not void for a pause', () => expect(outcomeOf(facts(), drill, 'called', true)).toBe('completed'));
});
