// From the address a browser asks for to a file below the root, or to nothing. Nothing outside the root is ever named.
import { realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';

/** The path of a request, decoded once; null when it is not a plain path below the root. */
export function requestPath(target: string): string | null {
  const raw = target.split(/[?#]/, 1)[0] ?? '';
  let path: string;
  try {
    path = decodeURIComponent(raw);
  } catch {
    return null; // a broken percent escape
  }
  if (!path.startsWith('/') || path.includes('\0') || path.includes('\\')) return null;
  // Names that begin with a dot: '..' climbs out, and no shipped file has one.
  if (path.split('/').some((name) => name.startsWith('.'))) return null;
  return path;
}

export interface Place {
  file: string;
  bytes: number;
  modifiedMs: number;
}

/** The regular file behind a path, null when there is none. `root` must be a real path: links that lead out are refused. */
export async function findFile(root: string, path: string): Promise<Place | null> {
  try {
    const file = await realpath(join(root, path === '/' ? 'index.html' : path));
    if (!file.startsWith(root + sep)) return null;
    const found = await stat(file);
    return found.isFile() ? { file, bytes: found.size, modifiedMs: found.mtimeMs } : null;
  } catch {
    return null; // not there, a file taken for a folder, a name too long: all of them "not here"
  }
}
