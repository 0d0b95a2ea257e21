/** How hard a scenario is, in a sentence that an instructor can use. */
import type { Difficulty } from '../../../../sim/index.js';
import { percent, seconds } from '../../words.js';

/** The bands are ours: no source. They say how often an ordinary watcher is in time, and nothing of a person. */
const BANDS = [[0.95, 'Easy'], [0.8, 'Fair'], [0.5, 'Hard'], [0.2, 'Very hard'], [0, 'Hardly to be caught']] as const;

export function hardWords({ runs, limitDeg, withinLimit: { k, n }, oneDegreeToLimitS, rollAuthorityAtLimitPct }: Difficulty): string {
  if (n === 0) return `Nothing to catch: in none of ${runs} runs was a split decided.`;
  const band = BANDS.find(([from]) => k / n >= from)?.[1] ?? '';
  const who = `${band}: an ordinary watcher lets go before ${limitDeg}° in ${percent((100 * k) / n)} of the runs with a split (${k} of ${n})`;
  if (oneDegreeToLimitS === null || rollAuthorityAtLimitPct === null) return `${who}. If the hand stays on, the split never comes that far.`;
  return `${who}. From 1° shown there are ${seconds(oneDegreeToLimitS)} until ${limitDeg}°, where ${percent(rollAuthorityAtLimitPct)} of the roll authority is used.`;
}
