// A command line as it is typed, in this process: what stands on which stream, and the exit code.
import { expect } from 'vitest';
import { tryAs, type Schema } from '../../sim/files/index.js';
import { main } from '../../src/cli/program.js';

export async function type(...words: string[]): Promise<{ code: number; out: string; err: string }> {
  let out = '';
  let err = '';
  const code = await main(words, { out: (text) => { out += text; }, err: (text) => { err += text; } });
  expect(out + err).not.toMatch(/^\s+at .*:\d+:\d+/m); // never a stack
  return { code, out, err };
}

/** With --json: exactly one object, one line, in the shape that --help prints. */
export async function json<T>(schema: Schema<T>, ...words: string[]): Promise<{ code: number; value: T; err: string }> {
  const { code, out, err } = await type(...words, '--json');
  expect(out.endsWith('\n') && out.trimEnd().split('\n').length === 1).toBe(true);
  const value: unknown = JSON.parse(out);
  const read = tryAs(schema, value);
  if (!read.ok) throw new Error(`not in its shape: ${JSON.stringify(read.issues)}`);
  expect(read.value).toEqual(value);
  return { code, value: read.value, err };
}
