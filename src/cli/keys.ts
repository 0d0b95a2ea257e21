/** `keys`: every key of a kind of file, as the help page tells it. */
import { keyTable, type FileKind, type KeysOutput } from '../../sim/files/index.js';
import { columns } from './columns.js';
import { type Io, printJson, printLines } from './io.js';
import { DONE } from './trouble.js';

export function keys(io: Io, kind: FileKind, json: boolean): number {
  const output: KeysOutput = { kind, keys: keyTable(kind) };
  if (json) printJson(io, output);
  else printLines(io, columns(output.keys.map(({ path, allowed, default: filled, meaning }) => [path, filled === '' || filled === 'required' ? allowed : `${allowed}; ${filled} if left out`, meaning])));
  return DONE;
}
