/** `check`: are these files right? */
import type { CheckOutput, SetCheck } from '../../sim/files/index.js';
import { readAny, type Problem } from '../text/index.js';
import { columns } from './columns.js';
import { type Io, printJson, printLines } from './io.js';
import { readText } from './paper.js';
import { counted, problemLines } from './problems.js';
import { checkSet, setLines } from './set-checked.js';
import { airframes, drills, sets as setsShipped } from './shipped.js';
import { DONE, FAILED, Trouble, WRONG } from './trouble.js';

interface Checked {
  file: string;
  /** What kind of file it is, where that could be told and it is right. */
  kind: string | null;
  readable: boolean;
  problems: Problem[];
  more: number;
  /** Figures of a set that can be flown. */
  set: SetCheck | null;
}

/** Checks every file, whatever is wrong with the others. */
export function check(io: Io, files: readonly string[], json: boolean): number {
  const lookup = airframes();
  const shippedDrills = drills();
  const shippedSets = setsShipped();
  const checked = files.map((file): Checked => {
    try {
      const text = readText(file);
      const read = readAny(text, file, lookup, shippedDrills, shippedSets);
      if (!read.ok) return { file, kind: null, readable: true, set: null, ...read };
      const { kind, value } = read.value;
      if (kind !== 'set') return { file, kind, readable: true, problems: [], more: 0, set: null };
      const { figures, problems } = checkSet(value, text, file);
      return { file, kind: problems.length === 0 ? kind : null, readable: true, problems, more: 0, set: figures };
    } catch (problem) {
      if (!(problem instanceof Trouble)) throw problem;
      return { file, kind: null, readable: false, problems: [unreadable(file, problem.message)], more: 0, set: null };
    }
  });
  const problems = checked.flatMap((one) => one.problems);
  const more = checked.reduce((sum, one) => sum + one.more, 0);
  const sets = checked.flatMap(({ set }) => set ?? []);
  const output: CheckOutput = { ok: problems.length === 0, problems, more, sets };
  if (json) printJson(io, output);
  else printLines(io, [...report(checked, problems.length + more), ...sets.flatMap(setLines)]);
  if (checked.some(({ readable }) => !readable)) return WRONG;
  return output.ok ? DONE : FAILED;
}

/** A file that cannot be read has its problem at its very beginning. */
const unreadable = (file: string, message: string): Problem =>
  ({ file, line: 1, column: 1, path: '', found: message.startsWith(`${file}: `) ? message.slice(file.length + 2) : message, allowed: 'a text file that can be read' });

function report(checked: readonly Checked[], count: number): string[] {
  const right = columns(checked.filter(({ kind }) => kind !== null).map(({ file, kind }) => [file, `${kind}, no problem`]));
  const wrong = checked.filter(({ problems }) => problems.length > 0).flatMap((one) => problemLines(one));
  return [...right, ...wrong, `${counted(checked.length, 'file')}, ${counted(count, 'problem')}`];
}
