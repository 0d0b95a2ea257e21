/** What several keys together get wrong: rules that a schema of single keys cannot say. */

/** The key that is named, as keys and places in lists from the top of the file, and what would be allowed there, in words. */
export interface Misfit {
  path: (string | number)[];
  allowed: string;
}

type Rule = readonly [holds: boolean, path: string, allowed: string];

/** The rules that do not hold. A path is written with dots; whole numbers in it are places in lists. */
export function broken(rules: readonly Rule[]): Misfit[] {
  return rules.filter(([holds]) => !holds).map(([, path, allowed]) => ({ path: partsOf(path), allowed }));
}

const partsOf = (path: string): (string | number)[] =>
  path.split('.').map((part) => (/^\d+$/.test(part) ? Number(part) : part));

/** One misfit for each place where a list does not go the way it must. `goes` compares a value with the one before. */
export function disorder<T>(
  list: readonly T[], path: string, key: keyof T & string, goes: (before: T, now: T) => boolean, allowed: (before: T) => string,
): Misfit[] {
  return list.flatMap((now, index) => {
    const before = list[index - 1];
    return before === undefined || goes(before, now) ? [] : [{ path: [...partsOf(path), index, key], allowed: allowed(before) }];
  });
}
