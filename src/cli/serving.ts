/** `serve`: hands out the built app until it is told to stop. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { existsSync } from 'node:fs';
import type { Served } from '../serve/server.js';
import { type Io, printLines } from './io.js';
import { shippedPath } from './places.js';
import { DONE, Trouble } from './trouble.js';

export async function serve(io: Io, options: { port?: number; lan?: boolean }): Promise<number> {
  // Loaded only here: the other commands start sooner without a web server in them.
  const { announcement, serve: serveFolder } = await import('../serve/server.js');
  let served: Served;
  try {
    served = await serveFolder({ root: builtFolder(), ...options });
  } catch (problem) {
    throw new Trouble(problem instanceof Error ? problem.message : String(problem));
  }
  printLines(io, announcement(served));
  await told();
  await served.close();
  return DONE;
}

/** The built app lies beside the built command line; a command line that is not built serves what was built last. */
function builtFolder(): string {
  const here = dirname(fileURLToPath(import.meta.url));
  return existsSync(join(here, 'index.html')) ? here : shippedPath('dist');
}

const told = (): Promise<void> => new Promise((done) => {
  process.once('SIGINT', () => done()).once('SIGTERM', () => done());
});
