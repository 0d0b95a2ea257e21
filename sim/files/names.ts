/** Names inside a scenario: who has one, who is referred to, and whether `after` goes round in a circle. */
import { type Trigger } from './trigger.js';

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

/** The first circle of `after` found, or null. A circle could never act, so it is a mistake. */
export function cycleOfAfter(things: Things): { names: string[]; path: Path } | null {
  const all = entries(things);
  const byName = new Map(all.flatMap((entry) => (entry.name === undefined ? [] : [[entry.name, entry] as const])));
  const done = new Set<string>();
  for (const start of byName.keys()) {
    const trail: string[] = [];
    let found: string[] | null = null;
    const visit = (name: string): void => {
      const at = trail.indexOf(name);
      if (at >= 0) { found ??= [...trail.slice(at), name]; return; }
      if (done.has(name)) return;
      trail.push(name);
      for (const reference of byName.get(name)?.refers ?? []) visit(reference.after);
      trail.pop();
      done.add(name);
    };
    visit(start);
    if (found !== null) return { names: found, path: byName.get(found[0] as string)?.refers[0]?.path ?? [] };
  }
  return null;
}
