/** Files as texts, and texts as files. */
import { closeSync, openSync, readSync, writeFileSync } from 'node:fs';
import { MOST_BYTES } from '../text/index.js';
import { Trouble } from './trouble.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such file', ENOTDIR: 'no such file', EISDIR: 'a folder, not a file', EACCES: 'a file this user may not open',
  EPERM: 'a file this user may not open', ENAMETOOLONG: 'a name that is too long', ELOOP: 'links that go round in a circle',
  ENOSPC: 'the disk is full', EROFS: 'the disk is read-only', ERR_INVALID_ARG_VALUE: 'a name with a character no file name may hold',
};

const reason = (problem: unknown): string => {
  const code = problem instanceof Error && 'code' in problem ? String(problem.code) : '';
  return REASONS[code] ?? `a file that cannot be opened${code === '' ? '' : ` (${code})`}`;
};

/** The text of a file in UTF-8. @throws Trouble that says why there is none. */
export function readText(file: string): string {
  const bytes = readBytes(file);
  if (bytes.length > MOST_BYTES) throw new Trouble(`${file}: a file of more than ${MOST_BYTES} bytes`);
  if (bytes.includes(0)) throw new Trouble(`${file}: a binary file`);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Trouble(`${file}: a file that is not in UTF-8`);
  }
}

/** At most one byte more than a file may have, so that a device without an end is no trap. */
function readBytes(file: string): Uint8Array {
  try {
    const bytes = new Uint8Array(MOST_BYTES + 1);
    const handle = openSync(file, 'r');
    try {
      let length = 0;
      for (let read = -1; read !== 0 && length < bytes.length; length += read) read = readSync(handle, bytes, length, bytes.length - length, null);
      return bytes.subarray(0, length);
    } finally {
      closeSync(handle);
    }
  } catch (problem) {
    throw new Trouble(`${file}: ${reason(problem)}`);
  }
}

/** Writes a text. @throws Trouble that says why it could not. */
export function writeText(file: string, text: string): void {
  try {
    writeFileSync(file, text);
  } catch (problem) {
    throw new Trouble(`${file} was not written: ${reason(problem)}`);
  }
}
