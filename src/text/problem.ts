/** Problems of a file: where, what was found, what is allowed. Found by several checks, told in one list. */
import { placer } from './place.js';

export interface Problem {
  file: string;
  /** From 1. */
  line: number;
  /** From 1, in characters. */
  column: number;
  /** `start.speedKt`, `faults[0].when.atS`; empty for the file as a whole. */
  path: string;
  found: string;
  allowed: string;
}

/** A file of which nothing is used. */
export interface Refused {
  ok: false;
  /** In the order of the file, at most MOST_PROBLEMS. */
  problems: Problem[];
  /** How many further problems are not listed. */
  more: number;
}

/** A value, or every reason why there is none. */
export type Read<T> = { ok: true; value: T } | Refused;

/** A problem before it is placed and worded: only those that are listed are worded. */
export interface Finding {
  /** Offset in the text, UTF-16 units. */
  offset: number;
  say(): Pick<Problem, 'path' | 'found' | 'allowed'>;
}

export type Path = readonly (string | number)[];

/** Most problems listed of one file: more would hide the first. */
export const MOST_PROBLEMS = 200;

/** Findings as problems in the order of the file; a thing said twice about one place is said once. */
export function refuse(file: string, text: string, findings: readonly Finding[]): Refused {
  const place = placer(text);
  const problems = new Map<string, Problem>();
  const inOrder = [...findings].sort((a, b) => a.offset - b.offset);
  let looked = 0;
  for (const finding of inOrder) {
    if (problems.size >= MOST_PROBLEMS) break;
    looked++;
    const problem = { file, ...place(finding.offset), ...finding.say() };
    problems.set(JSON.stringify(problem), problem);
  }
  return { ok: false, problems: [...problems.values()], more: inOrder.length - looked };
}

/** A path as it is written in problems. Keys that are no plain words stand in brackets and quotes, cut short. */
export function pathText(path: Path): string {
  return path.map((part, index) => {
    if (typeof part === 'number') return `[${part}]`;
    if (!/^[A-Za-z_$][\w$]{0,63}$/.test(part)) return `[${quoted(part)}]`;
    return index === 0 ? part : `.${part}`;
  }).join('');
}

const LONGEST_TEXT = 60;

/** A text of the file in double quotes, on one line, cut short. */
export function quoted(text: string): string {
  const cut = text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT)}...` : text;
  return JSON.stringify(cut).replace(/[\u007f-\u009f\u2028\u2029]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
