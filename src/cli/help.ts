/** The end of each command's --help: a worked example, and the keys of its JSON, made from the schema. */
import { keysOf, type KeyRow, type Schema } from '../../sim/files/index.js';
import { columns } from './columns.js';

export function helpEnd(example: readonly string[], output: Schema | null, head = 'With --json one object on standard output:'): () => string {
  return () => {
    const keys = output === null ? [] : ['', head, ...columns(keysOf(output).map(cells)).map((line) => `  ${line}`)];
    const examples = example.length === 0 ? [] : ['', 'Example:', ...example.map((line) => `  ${line}`)];
    return [...examples, ...keys].join('\n');
  };
}

const cells = ({ path, allowed, default: filled, meaning }: KeyRow): string[] =>
  [path, filled === 'required' ? allowed : `${allowed}, or left out`, meaning];
