/** What a schema says of a place in a file; where it forks, the values in the file tell which way. */
import type { ChoiceShape, ObjectShape, Shape } from '../../sim/files/index.js';
import type { Path } from './problem.js';
import type { locator } from './values.js';

type Locate = ReturnType<typeof locator>;

/** The shape of what stands, or may stand, at a path; null where nothing may. */
export function shapeAt(top: Shape, path: Path, locate: Locate): Shape | null {
  let shape: Shape | null = taken(top, [], locate);
  for (const [index, part] of path.entries()) {
    const here: Shape | null = shape;
    const inner: Shape | undefined = here?.kind === 'list' ? here.item : here?.kind === 'object' ? here.keys.get(String(part))?.shape
      : here?.kind === 'choice' ? (part === here.by ? wordsOf(here.options, here.by) : shared(here, String(part))) : undefined;
    if (inner === undefined) return null;
    shape = index === path.length - 1 && inner.kind === 'either' ? inner : taken(inner, path.slice(0, index + 1), locate);
  }
  return shape;
}

function taken(shape: Shape, path: Path, locate: Locate): Shape {
  if (shape.kind === 'choice') {
    const word = locate([...path, shape.by]).value;
    return (word?.type === 'string' && shape.options.get(word.value as string)) || shape;
  }
  if (shape.kind === 'either') return shape.options.find(({ kind }) => kind === 'object') ?? shape;
  return shape;
}

/** Of a choice that is not made yet: a key that all options have alike. */
const shared = ({ options }: ChoiceShape, key: string): Shape | undefined => {
  const [first, ...others] = [...options.values()].map(({ keys }) => keys.get(key)?.shape);
  return others.every((shape) => shape === first) ? first : undefined;
};

/** The words under the key that tells the options apart. */
export const wordsOf = (options: ReadonlyMap<string, ObjectShape>, by: string): Shape => ({
  kind: 'word', words: [...options.keys()], nullable: false, description: [...options.values()][0]?.keys.get(by)?.shape.description,
});
