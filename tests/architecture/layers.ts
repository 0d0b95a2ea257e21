// Every import against the table; and no way round in a circle.
import { posix } from 'node:path';
import { ourFile, type Import, type Source } from './source.js';
import { apart, nodeRows, refusals, ruleFolders, ruleLeaves, ruleTypesFrom, simRows, srcRows, typesOnlyFrom, type Row } from './table.js';

const fits = (place: string, path: string): boolean => (place.endsWith('/') ? path.startsWith(place) : path === place);

/** The row whose longest place fits, as its number; -1 when none does. */
function rowOf(rows: Row[], path: string): number {
  const candidates = rows.flatMap(({ places }, row) => places.filter((place) => fits(place, path)).map((place) => ({ row, length: place.length })));
  return candidates.sort((a, b) => b.length - a.length)[0]?.row ?? -1;
}

export function importProblems(sources: Source[]): string[] {
  const paths = new Set(sources.map(({ path }) => path));
  return sources.flatMap((source) => {
    if (house(source.path) === null) return [`${source.path}: has no place in tests/architecture/table.ts`];
    const wrong = source.imports.flatMap((one) => {
      const why = whyNot(source, one, paths);
      return why === null ? [] : [`${source.path}:${one.line}: may not import '${one.from}': ${why}`];
    });
    return [...wrong, ...together(source)];
  });
}

/** The rows that rule a path. */
function house(path: string): Row[] | null {
  const rows = path.startsWith('sim/') ? simRows : rowOf(nodeRows.slice(1), path) >= 0 ? nodeRows : srcRows;
  return rowOf(rows, path) >= 0 ? rows : null;
}

function whyNot(source: Source, one: Import, paths: ReadonlySet<string>): string | null {
  const from = source.path;
  if (one.from === '(computed)') return 'an import must name what it imports';
  if (!one.from.startsWith('.')) return whyNotPackage(from, one.from);
  const to = ourFile(source, one.from, paths);
  if (to === null) return whyNotData(from, posix.join(posix.dirname(from), one.from));
  const refused = refusals.find((row) => fits(row.from, from) && fits(row.to, to));
  if (refused) return refused.why;
  if (to.startsWith('sim/') && !from.startsWith('sim/')) return null;
  const rows = house(from) ?? [];
  const [own, other] = [rowOf(rows, from), rowOf(rows, to)];
  if (other < 0) return 'that part is not for this one';
  const folder = ruleFolders.find((place) => fits(place, from));
  if (folder) return whyNotInRule(folder, to, one.typeOnly);
  if (typesOnlyFrom.some((place) => fits(place, to) && !fits(place, from))) return one.typeOnly ? null : 'only its types (import type)';
  return other <= own ? null : 'it stands above this part';
}

function whyNotInRule(folder: string, to: string, typeOnly: boolean): string | null {
  if (fits(folder, to) || ruleLeaves.includes(to)) return null;
  if (ruleTypesFrom.includes(to)) return typeOnly ? null : 'a rule may have its type only (import type)';
  return 'a rule knows numbers, not other parts';
}

function whyNotPackage(from: string, name: string): string | null {
  const allowed = (house(from) ?? []).flatMap(({ packages = {} }) =>
    Object.entries(packages).flatMap(([place, names]) => (from.startsWith(place) ? names : [])),
  );
  const fine = allowed.some((one) => (one.endsWith(':') ? name.startsWith(one) : name === one || name.startsWith(`${one}/`)));
  return fine ? null : 'that package is not for this part';
}

/** Styles, pictures and scenarios. Code that is not there ends here too. */
function whyNotData(from: string, place: string): string | null {
  if (/\.(js|ts|tsx)$/.test(place)) return 'there is no such file';
  if (from.startsWith('sim/')) return 'sim imports code of sim only';
  return /^(src|scenarios|public)\//.test(place) ? null : 'that lies outside src, scenarios and public';
}

function together(source: Source): string[] {
  const uses = (name: string): boolean => source.imports.some(({ from }) => from === name || from.startsWith(`${name}/`));
  return apart.filter((names) => names.every(uses)).map((names) => `${source.path}: ${names.join(' and ')} in one file`);
}

/** Each circle once, as the files along it. `import type` does not count: it leaves nothing behind to load. */
export function circles(sources: Source[]): string[] {
  const byPath = new Map(sources.map((source) => [source.path, source]));
  const paths = new Set(byPath.keys());
  const done = new Set<string>();
  const found: string[] = [];
  const follow = (path: string, trail: string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) {
      found.push([...trail.slice(at), path].join(' -> '));
      return;
    }
    if (done.has(path)) return;
    const source = byPath.get(path)!;
    for (const one of source.imports) {
      const next = one.typeOnly ? null : ourFile(source, one.from, paths);
      if (next !== null) follow(next, [...trail, path]);
    }
    done.add(path);
  };
  for (const path of paths) follow(path, []);
  return found;
}
