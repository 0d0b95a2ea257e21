// The model in one file, as the build makes it, for figures that do not hang on a loader.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

const top = fileURLToPath(new URL('../..', import.meta.url));

/** Imports `sim` and its doors from a bundle of their own. */
export async function bundled() {
  mkdirSync(join(top, '.cache'), { recursive: true });
  const folder = mkdtempSync(join(top, '.cache/perf-'));
  try {
    await build({
      configFile: false, root: top, publicDir: false, logLevel: 'error', ssr: { noExternal: true, target: 'node' },
      build: {
        ssr: true, outDir: folder, emptyOutDir: false, minify: false, target: 'node20',
        rolldownOptions: {
          input: { sim: join(top, 'sim/index.ts'), files: join(top, 'sim/files/index.ts') },
          output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
        },
      },
    });
    const load = (name) => import(pathToFileURL(join(folder, `${name}.mjs`)).href);
    return { sim: await load('sim'), files: await load('files') };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
