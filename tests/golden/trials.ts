/** The golden run of recognition as trials, from the table beside this file. */
import { readFileSync } from 'node:fs';
import type { Trial } from '../../sim/stats/trial.js';

const text = readFileSync(new URL('recognition.csv', import.meta.url), 'utf8');
const figure = (cell: string | undefined): number | null => (cell === undefined || cell === '' ? null : Number(cell));

export const goldenTrials: readonly Trial[] = text.trim().split('\n').slice(1).map((line): Trial => {
  const [, rate, onset, release, end, limit] = line.split(',');
  return { rateDegPerS: figure(rate), onsetS: figure(onset), releaseS: figure(release), endS: Number(end), limitDeg: Number(limit) };
});
