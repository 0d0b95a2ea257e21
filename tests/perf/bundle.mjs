// Model and running drill in one file, as the build makes it, for figures that do not hang on a loader.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { top } from '../../src/tools/fresh.mjs';

const cache = join(top, '.cache');

/** Work in a folder of its own, which is gone afterwards. */
export async function inFolder(work) {
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, 'perf-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

let loaded;
/** What `inner.ts` gives out, imported from a bundle. */
export const bundled = () => (loaded ??= inFolder(async (outDir) => {
  await build({
    configFile: false, root: top, publicDir: false, logLevel: 'error', ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: true, outDir, emptyOutDir: false, minify: false, target: 'node20',
      rolldownOptions: { input: { inner: join(top, 'tests/perf/inner.ts') }, output: { format: 'es', entryFileNames: '[name].mjs' } },
    },
  });
  return import(pathToFileURL(join(outDir, 'inner.mjs')).href);
}));
