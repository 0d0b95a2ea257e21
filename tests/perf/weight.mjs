// Script that the drill page loads, gzip, parted by its source maps into libraries and the app's own; the libraries' part stands
// against a plain page of pixi.js, rxjs and zod that is built the same way. "Plus the app" is thereby taken off on our side.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { top } from '../../src/tools/fresh.mjs';
import { inFolder } from './bundle.mjs';
import { dist, inBrowser, started } from './built.mjs';

const gzip = (file) => gzipSync(readFileSync(file), { level: 9 }).length;
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Part of a script's letters that come from packages, by its source map (base64 VLQ, ECMA-426); a script without one is the bundler's own. */
function libraryPart(file) {
  if (!existsSync(`${file}.map`)) return 1;
  const { mappings, sources } = JSON.parse(readFileSync(`${file}.map`, 'utf8'));
  const lines = readFileSync(file, 'utf8').split('\n');
  let source = 0;
  let library = 0;
  let all = 0;
  mappings.split(';').forEach((line, row) => {
    let column = 0;
    const spans = line.split(',').filter((one) => one !== '').map((segment) => {
      const fields = [];
      let value = 0;
      let shift = 0;
      for (const letter of segment) {
        const digit = LETTERS.indexOf(letter);
        value += (digit & 31) << shift;
        shift += 5;
        if ((digit & 32) === 0) { fields.push(value & 1 ? -(value >> 1) : value >> 1); value = 0; shift = 0; }
      }
      column += fields[0];
      source += fields[1] ?? 0;
      return { column, source: fields.length > 1 ? source : -1 };
    });
    spans.forEach((span, at) => {
      const wide = (spans[at + 1]?.column ?? lines[row]?.length ?? 0) - span.column;
      all += wide;
      if (span.source >= 0 && sources[span.source]?.includes('node_modules')) library += wide;
    });
  });
  return all === 0 ? 0 : library / all;
}

async function plainBytes() {
  return inFolder(async (outDir) => {
    await build({
      configFile: false, root: join(top, 'tests/perf/plain'), publicDir: false, logLevel: 'error', base: './',
      build: { outDir, emptyOutDir: false, target: 'es2022', modulePreload: { polyfill: false }, rolldownOptions: { input: join(top, 'tests/perf/plain/libraries.html') } },
    });
    return readdirSync(join(outDir, 'assets')).filter((name) => name.endsWith('.js')).reduce((sum, name) => sum + gzip(join(outDir, 'assets', name)), 0);
  });
}

export async function weight({ spoil }) {
  const plain = await plainBytes();
  return inBrowser(dist, async (browser, url) => {
    const page = await browser.newPage();
    const scripts = new Set();
    page.on('request', (request) => { if (request.url().endsWith('.js')) scripts.add(new URL(request.url()).pathname); });
    await started(page, url);
    await page.waitForLoadState('networkidle');
    const files = [...scripts].map((path) => join(dist, path)).map((file) => ({ bytes: gzip(file), part: libraryPart(file) }));
    const all = files.reduce((sum, { bytes }) => sum + bytes, 0);
    const libraries = files.reduce((sum, { bytes, part }) => sum + bytes * part, 0) + (spoil ? plain : 0);
    return [{ id: 'weight', value: libraries / plain, notes: [`kB: ${files.length} scripts of the drill page ${(all / 1000).toFixed(0)}, of these libraries ${(libraries / 1000).toFixed(0)} and the app's own ${((all - libraries) / 1000).toFixed(0)}; the plain page ${(plain / 1000).toFixed(0)}`] }];
  });
}
