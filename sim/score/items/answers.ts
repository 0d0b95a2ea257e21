/** What is said and read: the other pilot's challenge, and the asymmetry list behind a split. */
import type { Fixed } from '../../fixed.js';
import { calloutWatcher } from '../callouts.js';
import { ASYMMETRY_LIST, listReading, PLAN_LINES } from '../list.js';
import { isForSplit } from './split.js';
import { itemOf, type Watcher } from './item.js';

/** What the other pilot asks is answered rightly and in time. */
export function challengeAnswered(fixed: Fixed): Watcher {
  const heard = calloutWatcher(fixed);
  let endTick = 0;
  return {
    see(s) { heard.see(s); endTick = s.tick; },
    items(_, log) {
      const asked = heard.callouts(log, endTick).filter(({ from, ok }) => from === 'otherPilot' && ok !== null);
      const right = asked.filter(({ ok }) => ok === true);
      const shown = asked.find(({ ok }) => ok === false) ?? asked.at(-1);
      return [itemOf('challengeAnswered', asked.length === 0 ? null : right.length === asked.length, shown === undefined ? -1 : Math.floor(shown.atS * 100 + 0.5),
        { value: right.length, limit: asked.length, unit: '1' })];
    },
  };
}

/** Behind a split that was called the list is read to its end, and the landing plan is redone by the right sides. */
export function listRead(fixed: Fixed): Watcher {
  return {
    see: () => undefined,
    items(facts, log) {
      const asked = isForSplit(facts, fixed.task) && facts.splitCallTick >= 0;
      const { lines, doneTick, planned, plannedRight } = listReading(log, facts.splitCallTick);
      return [
        itemOf('listRead', asked ? doneTick >= 0 : null, doneTick, { value: lines, limit: ASYMMETRY_LIST.length, unit: '1' }),
        itemOf('planRedone', asked && planned > 0 ? plannedRight === PLAN_LINES : null, doneTick, { value: plannedRight, limit: PLAN_LINES, unit: '1' }),
      ];
    },
  };
}
