/** The end of each command's --help: a worked example, and the keys of its JSON, made from the schema. */
import { keysOf, type KeyRow, type Schema } from '../../sim/files/index.js';
import { columns } from './columns.js';

export function helpEnd(example: readonly string[], output: Schema | null): () => string {
  return () => {
    const keys = output === null ? [] : ['', 'With --json one object on standard output:', ...columns(keysOf(output).map(cells)).map((line) => `  ${line}`)];
    return ['', 'Example:', ...example.map((line) => `  ${line}`), ...keys].join('\n');
  };
}

const cells = ({ path, allowed, default: filled, meaning }: KeyRow): string[] =>
  [path, filled === 'required' ? allowed : `${allowed}, or left out`, meaning];
