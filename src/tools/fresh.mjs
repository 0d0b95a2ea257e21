// Is dist made from the sources that stand here now? Told by content, so neither a touched file nor a deleted one misleads.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const top = fileURLToPath(new URL('../..', import.meta.url));
export const dist = join(top, 'dist');
const stampFile = join(dist, 'build.json');

const folders = ['sim', 'src', 'scenarios', 'public'];
const files = ['vite.config.ts', 'tsconfig.json', 'package.json', 'package-lock.json'];

/** One line of text that changes when anything that dist is made from changes. */
export function fingerprint(at = top) {
  const hash = createHash('sha256').update(`node ${process.versions.node.split('.')[0]}\n`);
  const below = folders.flatMap((folder) =>
    readdirSync(join(at, folder), { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name)),
  );
  for (const file of [...below, ...files.map((name) => join(at, name))].sort()) {
    hash.update(`${relative(at, file)}\n`).update(readFileSync(file)).update('\n');
  }
  return hash.digest('hex');
}

export const stamp = (made) => `${JSON.stringify({ madeFrom: made })}\n`;

export function isFresh() {
  try {
    return readFileSync(stampFile, 'utf8') === stamp(fingerprint());
  } catch {
    return false; // no dist, or no stamp in it
  }
}
