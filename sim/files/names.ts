/** Names inside a scenario: who has one, who is referred to, and whether `after` goes round in a circle. */
import type { Trigger } from './trigger.js';

type Path = (string | number)[];
interface Named { name?: string | undefined; when: Trigger }
interface Things { faults: readonly Named[]; events: readonly Named[] }

interface Entry { name: string | undefined; path: Path; refers: { after: string; path: Path }[] }

function entries(things: Things): Entry[] {
  return (['faults', 'events'] as const).flatMap((list) =>
    things[list].map((thing, index) => ({
      name: thing.name,
      path: [list, index],
      refers: references(thing.when, [list, index, 'when']),
    })));
}

function references(when: Trigger, path: Path): { after: string; path: Path }[] {
  const own = when.after === undefined ? [] : [{ after: when.after, path: [...path, 'after'] }];
  const inner = (['all', 'any'] as const).flatMap((group) =>
    (when[group] ?? []).flatMap((leaf, index) => references(leaf, [...path, group, index])));
  return [...own, ...inner];
}

/** All names, and those that stand twice with the path of the later one. */
export function namesOf(things: Things): { names: Set<string>; repeated: { name: string; path: Path }[] } {
  const names = new Set<string>();
  const repeated: { name: string; path: Path }[] = [];
  for (const entry of entries(things)) {
    if (entry.name === undefined) continue;
    if (names.has(entry.name)) repeated.push({ name: entry.name, path: [...entry.path, 'name'] });
    names.add(entry.name);
  }
  return { names, repeated };
}

/** Every `after` that names nothing in the file. */
export function unknownAfter(things: Things): { after: string; path: Path }[] {
  const { names } = namesOf(things);
  return entries(things).flatMap((entry) => entry.refers).filter((reference) => !names.has(reference.after));
}

/**
 * The first circle of `after` found, with the reference that closes it, or null. A circle could never act, so it is a
 * mistake. Every name is walked once, so a file of any shape is done in time.
 */
export function cycleOfAfter(things: Things): { names: string[]; path: Path } | null {
  const byName = new Map<string, Entry>();
  for (const entry of entries(things)) if (entry.name !== undefined && !byName.has(entry.name)) byName.set(entry.name, entry);
  const done = new Set<string>();
  const trail: string[] = [];
  const visit = (name: string): { names: string[]; path: Path } | null => {
    trail.push(name);
    for (const { after, path } of byName.get(name)?.refers ?? []) {
      const at = trail.indexOf(after);
      if (at >= 0) return { names: [...trail.slice(at), after], path };
      const found = done.has(after) ? null : visit(after);
      if (found !== null) return found;
    }
    trail.pop();
    done.add(name);
    return null;
  };
  for (const name of byName.keys()) {
    const found = done.has(name) ? null : visit(name);
    if (found !== null) return found;
  }
  return null;
}
