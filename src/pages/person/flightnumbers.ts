/** The three numbers of a flight as words, each with its interval. They are never made one. */
import type { SetFlight } from '../../../sim/index.js';
import { degrees } from '../words.js';

/** null: too few runs, or beyond what was seen. */
export interface Numbers {
  readonly value: number | null;
  readonly lo: number | null;
  readonly hi: number | null;
  readonly words: string;
}

export const share = (part: number): string => `${Math.round(part * 100)} %`;
const NONE: Numbers = { value: null, lo: null, hi: null, words: 'too few runs' };

export function caught({ result: { person } }: SetFlight): Numbers {
  const found = person.caught;
  return found === null ? NONE : { value: found.k / found.n, lo: found.lo, hi: found.hi, words: `${found.k} of ${found.n}` };
}

export function falseReleases({ result: { person } }: SetFlight): Numbers {
  const found = person.falseReleases;
  return found === null ? NONE : { value: found.perMin, lo: found.lo, hi: found.hi, words: found.perMin.toFixed(2) };
}

export function median({ result: { person } }: SetFlight): Numbers {
  const found = person.median;
  if (found === null || found.deg === null) return { ...NONE, words: found === null ? NONE.words : 'beyond what was seen' };
  return { value: found.deg, lo: found.lo, hi: found.hi, words: degrees(found.deg) };
}

export const whole = ({ value, lo, hi, words }: Numbers, say: (value: number) => string): string =>
  (value === null ? words === NONE.words ? '–' : words : `${words} (${lo === null ? '–' : say(lo)} to ${hi === null ? 'beyond' : say(hi)})`);
