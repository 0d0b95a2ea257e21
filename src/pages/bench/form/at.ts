/** What stands at a path of the document, and what is wrong there. */
import type { Json, Path, Problem } from '../../../text/index.js';
import { pathText } from '../../../text/index.js';
import type { Draft } from '../draft.js';

export function valueAt(json: Json | undefined, path: Path): Json | undefined {
  let here: Json | undefined = json;
  for (const part of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = Array.isArray(here) ? here[Number(part)] : Object.hasOwn(here, String(part)) ? here[String(part)] : undefined;
  }
  return here;
}

/** Problems of exactly this place. */
export const problemsAt = (draft: Draft, path: Path): Problem[] => {
  const at = pathText(path);
  return draft.read.value.problems.filter((problem) => problem.path === at);
};

/** Problems of this place and of all inside it. */
export const problemsIn = (draft: Draft, path: Path): Problem[] => {
  const at = pathText(path);
  return draft.read.value.problems.filter(({ path: there }) => there === at || there.startsWith(`${at}.`) || there.startsWith(`${at}[`));
};

/** A place as an id of the page. */
export const idOf = (path: Path): string => `at-${path.join('-')}`;
