/** Files as texts, and texts as files. */
import { closeSync, openSync, readSync, statSync, writeFileSync } from 'node:fs';
import { MOST_BYTES } from '../text/index.js';
import { Trouble } from './trouble.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file', ENOTDIR: 'there is no such file', EISDIR: 'it is a folder', EACCES: 'it may not be opened by this user',
  EPERM: 'it may not be opened by this user', ENAMETOOLONG: 'the name is too long', ELOOP: 'its links go round in a circle',
  ENOSPC: 'the disk is full', EROFS: 'the disk is read-only', ERR_INVALID_ARG_VALUE: 'the name holds a character no file name may hold',
};

const reason = (problem: unknown): string => {
  const code = problem instanceof Error && 'code' in problem ? String(problem.code) : '';
  return REASONS[code] ?? (code === '' ? 'it cannot be opened' : `it cannot be opened (${code})`);
};

/** The text of a file in UTF-8. @throws Trouble that says why there is none. */
export function readText(file: string): string {
  const bytes = readBytes(file);
  if (bytes.length > MOST_BYTES) throw new Trouble(`${file}: larger than ${MOST_BYTES} bytes`);
  if (bytes.includes(0)) throw new Trouble(`${file}: not a text file`);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Trouble(`${file}: not a text in UTF-8`);
  }
}

/** At most one byte more than a file may have, so that a device without an end is no trap. */
function readBytes(file: string): Uint8Array {
  try {
    if (statSync(file).isDirectory()) throw new Trouble(`${file}: it is a folder, not a file`);
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
    throw problem instanceof Trouble ? problem : new Trouble(`${file}: ${reason(problem)}`);
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
