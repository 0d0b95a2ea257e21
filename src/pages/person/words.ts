/** Sentences of the page of one person: conditions, what blocks show, what to practise. Plain, and no more than the figures say. */
import type { Advice, BlockPair, Condition, ConditionGroup } from '../../../sim/index.js';
import { upper } from '../../view/words.js';

const HELPS: Readonly<Record<string, string>> = { latchedHold: 'a switch that stays pressed', spokenPointers: 'spoken pointers' };
const helps = (assisted: readonly string[]): string => assisted.map((one) => HELPS[one] ?? one).join(' and ');

export function conditionWords(condition: Condition | null, airframe: string): string {
  if (condition === null) return 'The gauge, the hand or a help changed within this flight. It stands alone and is compared with nothing.';
  const { input, assisted, limitDeg } = condition;
  return `${airframe}; ${gaugeWords(condition)}; by ${input}${assisted.length > 0 ? `, assisted by ${helps(assisted)}` : ''}; late from ${limitDeg}°.`;
}

/** A gauge by its size for the eye where that is known, else by its size on the screen. */
function gaugeWords({ pxPerDeg, minPerDeg, apartDeg }: Condition): string {
  const size = minPerDeg === null ? `gauge of ${(pxPerDeg ?? 0).toFixed(2)} px a degree` : `gauge of ${minPerDeg.toFixed(1)}′ of arc a degree`;
  return apartDeg === null ? size : `${size}, ${apartDeg}° from the speed`;
}

const PARTS: readonly (readonly [part: keyof Condition | 'gauge', words: (one: Condition) => string])[] = [
  ['airframe', ({ airframe }) => airframe], ['limitDeg', ({ limitDeg }) => `late from ${limitDeg}°`], 
  ['gauge', (one) => `a ${gaugeWords(one)}`],
  ['input', ({ input }) => `flown by ${input}`], ['assisted', ({ assisted }) => (assisted.length === 0 ? 'no help' : helps(assisted))],
];

/** Why a group stands apart from the later one of the same set; null where it does not. */
export function apartWords(group: ConditionGroup, groups: readonly ConditionGroup[]): string | null {
  const { condition } = group;
  const other = groups.find((one) => one !== group && one.set === group.set && one.condition !== null)?.condition;
  if (condition === null || other === undefined || other === null) return null;
  const different = PARTS.filter(([, words]) => words(condition) !== words(other));
  return `Not put together with the other flights of this set: here ${different.map(([, words]) => words(condition)).join(', ')}; there ${different.map(([, words]) => words(other)).join(', ')}. What the eye sees or the hand does is not the same.`;
}

const times = (ratio: number): string => ratio.toFixed(2);
const rate = (perMin: number): string => perMin.toFixed(2);

/** What a named block shows against the one before it. */
export function pairWords({ earlier, later, change }: BlockPair): string {
  const { verdict, ratio, falsePerMin, caughtShare, decided, moreRuns, moreForRatio, shownRatio } = change;
  const names = `“${earlier}” to “${later}”`;
  if (verdict === 'tooFew' || ratio === null || falsePerMin === null || caughtShare === null) {
    return `From ${names}: too few runs to compare. Each needs 8 decided runs; they have ${decided[0]} and ${decided[1]}.`;
  }
  const size = `The splits of “${later}” are ${times(ratio.median)} times those of “${earlier}” (95 % interval ${times(ratio.lo)} to ${times(ratio.hi)}).`;
  const falses = `false releases ${rate(falsePerMin[0])} before, ${rate(falsePerMin[1])} a minute now`;
  switch (verdict) {
    case 'noClearChange': {
      const less = `a change to ${moreForRatio} times`;
      return `From ${names}: no clear change yet. ${size} ${moreRuns > 0 ? `About ${moreRuns} more decided runs a block would show ${less}.` : `Blocks of this size show ${shownRatio === null ? less : `a change to ${times(shownRatio)} times`} four times in five.`}`;
    }
    case 'improved': return `From ${names}: let go sooner. ${size} There were no more false releases, and no smaller part was caught.`;
    case 'fasterMoreFalse': return `From ${names}: let go sooner, but also more often for nothing. ${size} ${upper(falses)}. That may be a moved hand and not a better eye.`;
    case 'fasterCaughtFewer': return `From ${names}: let go sooner on the whole, yet a smaller part was caught. ${size}`;
    case 'slower': return `From ${names}: let go later. ${size} ${upper(falses)}.`;
  }
}

/** Why, in one or two sentences; the link to the set stands behind it. */
export function adviceWords(advice: Advice): string {
  switch (advice.why) {
    case 'first': return 'Nothing has been flown to its end yet. The short set takes ten minutes and shows how a set counts.';
    case 'finish': return `The last flight has too few decided runs for its numbers: ${advice.runs} more would do. Fly that set through.`;
    case 'falseReleases': return `Hold until you see it: ${advice.count} false releases in ${(advice.quietS / 60).toFixed(1)} quiet minutes, at least ${rate(advice.loPerMin)} a minute. In the aeroplane letting go in doubt is free; here it hides how soon you see.`;
    case 'fastRate': return `The fast ones get away: at ${advice.rateDegPerS.toFixed(2)}° a second ${advice.notCaught} of ${advice.decided} were late or missed, the slow ones all caught. Look at the pointers oftener, not longer.`;
    case 'loaded': return 'Not yet flown through: the true drive with questions to answer. In the aeroplane the eye has other work, and your margin is drawn from that set.';
    case 'moreRuns': return `The comparison with “${advice.name}” lacks runs: about ${advice.runs} more decided runs a block. Fly the set again under the same name.`;
    case 'steady': return 'Nothing stands out. Fly the same set again after some weeks, under a name, to see whether it lasts.';
  }
}
