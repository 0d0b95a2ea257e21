// A source as the checkers see it: its path from the top of the checkout, its syntax tree, and what it imports.
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { parseSync } from 'vite';

export interface Node {
  type: string;
  start: number;
  [key: string]: unknown;
}

export interface Import {
  /** As written: './world.js', 'rxjs'. */
  from: string;
  typeOnly: boolean;
  line: number;
}

export interface Source {
  path: string;
  text: string;
  program: Node;
  imports: Import[];
}

export function parseSource(path: string, text: string): Source {
  const parsed = parseSync(path, text);
  const error = parsed.errors[0];
  if (error) throw new Error(`${path}: ${error.message}`);
  const line = (at: number): number => lineOf(text, at);
  const found = parsed.module;
  // Only `import type ...` and `export type ...` leave nothing in the built file; `import { type A }` still loads the other one.
  const typeOnly = (start: number): boolean => /^(import|export)\s+type\b(?!\s+from)/.test(text.slice(start));
  const imports: Import[] = [
    ...found.staticImports.map(({ start, moduleRequest }) => ({ from: moduleRequest.value, typeOnly: typeOnly(start), line: line(start) })),
    ...found.staticExports.flatMap(({ start, entries }) => {
      const from = entries[0]?.moduleRequest?.value;
      return from === undefined ? [] : [{ from, typeOnly: typeOnly(start), line: line(start) }];
    }),
    ...found.dynamicImports.map(({ start, moduleRequest }) => ({
      from: /^['"`](.*)['"`]$/s.exec(text.slice(moduleRequest.start, moduleRequest.end))?.[1] ?? '(computed)',
      typeOnly: false,
      line: line(start),
    })),
  ];
  return { path, text, program: parsed.program as unknown as Node, imports };
}

export const lineOf = (text: string, at: number): number => text.slice(0, at).split('\n').length;

export function readSources(top: string, folders: string[]): Source[] {
  return folders
    .flatMap((folder) => readdirSync(join(top, folder), { recursive: true, encoding: 'utf8' }).map((name) => posix.join(folder, name)))
    .filter((path) => /\.tsx?$/.test(path))
    .sort()
    .map((path) => parseSource(path, readFileSync(join(top, path), 'utf8')));
}

/** The file of ours that an import means: './world.js' is world.ts or world.tsx; null for a package or a file that is not code. */
export function ourFile(source: Source, from: string, paths: ReadonlySet<string>): string | null {
  if (!from.startsWith('.')) return null;
  const place = posix.join(posix.dirname(source.path), from);
  return [place.replace(/\.js$/, '.ts'), place.replace(/\.js$/, '.tsx')].find((path) => paths.has(path)) ?? null;
}

/** Every node of a tree with the node it hangs on and the name of the branch. */
export function walk(node: Node, visit: (node: Node, parent: Node | null, key: string) => void, parent: Node | null = null, branch = ''): void {
  visit(node, parent, branch);
  for (const [key, value] of Object.entries(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (child !== null && typeof child === 'object' && 'type' in child) walk(child as Node, visit, node, key);
    }
  }
}
