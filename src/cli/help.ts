/** The end of each command's --help: a worked example, and the keys of its JSON, made from the schema. */
import { columns } from './columns.js';
import type { OutputName } from './outputs.js';

let rowsOf: ((name: OutputName) => string[][]) | null = null;

/** Whether these words ask for help. */
export const asksForHelp = (words: readonly string[]): boolean => words.some((word) => word === 'help' || word === '--help' || word === '-h');

/** Fetches what help is made from. Before any help is printed. */
export async function loadHelp(): Promise<void> {
  rowsOf = (await import('./outputs.js')).outputRows;
}

/** @throws Error where help is printed that nobody asked for by `asksForHelp` */
export function helpEnd(example: readonly string[], output: OutputName | null, head = 'With --json one object on standard output:'): () => string {
  return () => {
    if (rowsOf === null) throw new Error('help was asked for in words that are not known');
    const keys = output === null ? [] : ['', head, ...columns(rowsOf(output)).map((line) => `  ${line}`)];
    const examples = example.length === 0 ? [] : ['', 'Example:', ...example.map((line) => `  ${line}`)];
    return [...examples, ...keys].join('\n');
  };
}
