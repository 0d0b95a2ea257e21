/** A file from outside: chosen, dropped, or come in an address. It is checked whole, and nothing of a wrong one is used. */
import { MOST_BYTES, type Problem, readAny } from '../../../text/index.js';
import { isBenchKind, readKind, type BenchKind, type Known } from '../kinds.js';

export type Opened =
  | { readonly ok: true; readonly kind: BenchKind; readonly name: string; readonly text: string }
  | { readonly ok: false; readonly name: string; readonly why: string; readonly problems: readonly Problem[]; readonly more: number };

const refuse = (name: string, why: string, problems: readonly Problem[] = [], more = 0): Opened => ({ ok: false, name, why, problems, more });

/** Where files go that the bench does not write. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  record: 'It is the record of a run; the first page opens those.',
  inputs: 'It is a list of inputs; the command line flies those.',
};

/** A text of any kind, taken for what it is. @param name of its file, with or without ending */
export function openedText(text: string, name: string, known: Known): Opened {
  const bare = fileStem(name);
  const any = readAny(text, name, (one) => known.airframes.get(one), (one) => known.drills.get(one));
  if (!any.ok) return refuse(name, 'Nothing of it was used.', any.problems, any.more);
  const { kind } = any.value;
  if (!isBenchKind(kind)) return refuse(name, ELSEWHERE[kind] ?? `The bench writes no file of this kind (${kind}).`);
  const read = readKind(kind, text, name, known);
  return read.ok ? { ok: true, kind, name: bare, text } : refuse(name, 'Nothing of it was used.', read.problems, read.more);
}

/** A file that was chosen or dropped. */
export async function openedFile(file: File, known: Known): Promise<Opened> {
  if (file.size > MOST_BYTES) return refuse(file.name, `It holds ${file.size} bytes; at most ${MOST_BYTES} are read. Nothing of it was used.`);
  return openedText(await file.text(), file.name, known);
}

const LONGEST = 64;

/** The name of a file without its ending. */
export const fileStem = (name: string): string => name.replace(/\.jsonc?$/i, '').slice(0, LONGEST) || 'untitled';

/** A name as a file may have it: letters, digits and hyphens. */
export const slug = (name: string): string => name.toLowerCase().normalize('NFKD').replace(/\p{M}+/gu, '').replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, LONGEST).replace(/-+$/, '') || 'untitled';

/** The name that a text gives itself by its title. */
export function titleOf(text: string): string {
  const title = /"title"\s*:\s*"((?:[^"\\]|\\.){1,120})"/.exec(text)?.[1] ?? '';
  return slug(title.replace(/\\u[0-9a-f]{4}|\\./gi, ' '));
}
