/** A record as a file of the person who flew it: out by a download, in by a choice or a drop. */
import { verify, type RunRecord } from '../../sim/files/index.js';
import { MOST_BYTES, readRecord, type Problem } from '../text/index.js';

/** `more` counts problems beyond those listed. */
export type Opened =
  | { readonly ok: true; readonly record: RunRecord }
  | { readonly ok: false; readonly name: string; readonly problems: readonly Problem[]; readonly more: number };

/** The name tells the run by its digest alone: the drill's own name would give it away. */
export const fileName = (record: RunRecord): string => `evenhand-run-${record.digest.slice(0, 8)}.json`;

/** Hands the record to the browser as a download. */
export const saveRecord = (record: RunRecord): void => download(new Blob([`${JSON.stringify(record)}\n`], { type: 'application/json' }), fileName(record));

/** Hands a file to the browser under a name. */
export function download(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has taken its copy by the next turn; the address would keep the text alive.
  setTimeout(() => URL.revokeObjectURL(address));
}

/**
 * Reads a file that was chosen or dropped. A wrong file is refused with every problem and its place, and so is a record
 * that does not follow from its inputs; one of another model version passes, since it cannot be played again here.
 */
export async function openRecord(file: File): Promise<Opened> {
  if (file.size > MOST_BYTES) {
    const found = `${file.size} bytes`;
    return { ok: false, name: file.name, problems: [{ file: file.name, line: 1, column: 1, path: '', found, allowed: `at most ${MOST_BYTES} bytes` }], more: 0 };
  }
  const read = readRecord(await file.text(), file.name);
  if (!read.ok) return { ok: false, name: file.name, problems: read.problems, more: read.more };
  const verdict = verify(read.value);
  if (verdict.ok || !verdict.replayable) return { ok: true, record: read.value };
  const problems = verdict.refused.map(({ path, found, expected }) => ({ file: file.name, line: 0, column: 0, path, found, allowed: `${expected}, as its inputs give` }));
  return { ok: false, name: file.name, problems, more: 0 };
}
