// Makes dist: the app, the command line (cli.js, with the worker.js of its sweeps), the server (serve.js), the libraries (sim.js, files.js) and their types.
// All of it is made in a folder of its own and moved over at the end, so that a running server never meets half a build.
// `--no-types` leaves the types out: to look at the app, nobody needs them.
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { build } from 'vite';
import { dist, fingerprint, stamp, top } from './fresh.mjs';

const quiet = { logLevel: 'warn', clearScreen: false };
const shebang = '#!/usr/bin/env node';

const app = (outDir) => build({ ...quiet, configFile: join(top, 'vite.config.ts'), build: { outDir, emptyOutDir: true } });

// Shared pieces lie beside the entries, so `new URL('../scenarios/', import.meta.url)` means the same in all of them.
const output = {
  format: 'es',
  entryFileNames: '[name].js',
  chunkFileNames: '[name]-[hash].js',
  banner: ({ name }) => (name === 'cli' ? shebang : ''),
};

/** Bundles without a page. Everything they need is inside: they start fast and stand alone. */
const bundle = (outDir, entry, node) =>
  build({
    ...quiet,
    configFile: false,
    root: top,
    publicDir: false,
    ...(node && { ssr: { noExternal: true, target: 'node' } }),
    build: {
      outDir,
      emptyOutDir: false,
      sourcemap: true,
      minify: node, // read faster at each start; a library is read by people
      target: node ? 'node20' : 'es2022',
      ...(node ? { ssr: true } : { lib: { entry, formats: ['es'] } }),
      rolldownOptions: { input: entry, output },
    },
  });

const nodeEntries = { cli: join(top, 'src/cli/main.ts'), worker: join(top, 'src/cli/worker.ts'), serve: join(top, 'src/serve/server.ts') };
const libraryEntries = { sim: join(top, 'sim/index.ts'), files: join(top, 'sim/files/index.ts') };

const madeFrom = fingerprint(); // before the build: what changes meanwhile is stale
const missing = [join(top, 'src/index.html'), ...Object.values(nodeEntries), ...Object.values(libraryEntries)].filter(
  (file) => !existsSync(file),
);
const there = (entries) => Object.fromEntries(Object.entries(entries).filter(([, file]) => !missing.includes(file)));

mkdirSync(join(top, '.cache'), { recursive: true });
const made = mkdtempSync(join(top, '.cache/build-'));
try {
  if (existsSync(join(top, 'src/index.html'))) await app(made);
  await bundle(made, there(nodeEntries), true);
  if (Object.keys(there(libraryEntries)).length > 0) await bundle(made, there(libraryEntries), false);
  if (existsSync(join(made, 'cli.js'))) chmodSync(join(made, 'cli.js'), 0o755);
  if (missing.length === 0) writeFileSync(join(made, 'build.json'), stamp(madeFrom));
  await oneAtATime(moveOver);
} finally {
  rmSync(made, { recursive: true, force: true });
}

for (const file of missing) console.error(`build: ${relative(top, file)} is missing, and so is what is made from it.`);
const typed = process.argv.includes('--no-types') || declarations();
process.exit(missing.length === 0 && typed ? 0 : 1);

/** The types stay where they are: tsc keeps them current itself. */
function moveOver() {
  mkdirSync(dist, { recursive: true });
  for (const name of readdirSync(dist)) {
    if (name !== 'types') rmSync(join(dist, name), { recursive: true, force: true });
  }
  for (const name of readdirSync(made)) renameSync(join(made, name), join(dist, name));
}

/** Two builds may end together (`npm start` beside `npm test`): the second waits. A lock older than 10 s was left by a build that died. */
async function oneAtATime(work) {
  const lock = join(top, '.cache/build.lock');
  for (let waitedMs = 0; !locked(lock); waitedMs += 50) {
    if (waitedMs >= 10_000) rmSync(lock, { recursive: true, force: true });
    await new Promise((done) => setTimeout(done, 50));
  }
  try {
    work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

function locked(lock) {
  try {
    mkdirSync(lock);
    return true;
  } catch {
    return false;
  }
}

function declarations() {
  const tsc = join(top, 'node_modules/typescript/bin/tsc');
  const { status } = spawnSync(process.execPath, [tsc, '-b', 'sim'], { cwd: top, stdio: ['ignore', 'inherit', 'inherit'] });
  if (status !== 0) console.error('build: the types of sim do not hold (above); all but dist/types is made.');
  return status === 0;
}
