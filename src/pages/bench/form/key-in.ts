/** What may stand at a path of the schema, and whether it must. */
import type { Key, Shape } from '../../../../sim/files/index.js';

/** @throws when the schema has no such key: a form that asks for it is wrong */
export function keyIn(shape: Shape, ...path: readonly string[]): Key {
  let here: Key = { shape, required: true, fallback: undefined };
  for (const key of path) {
    const found = here.shape.kind === 'object' ? here.shape.keys.get(key) : undefined;
    if (found === undefined) throw new Error(`the schema has no key ${path.join('.')}`);
    here = found;
  }
  return here;
}

