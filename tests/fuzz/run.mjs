// `npm run fuzz -- KIND`: hostile (files at every door), scenarios (runs held to every promise), kills, soak. `--count N`, `--seed N`,
// `--workers N`, `--minutes N` (soak). A failure is printed with its seed and written, shrunk, to .cache/fuzz; then exit 1.
import { fork, spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { top } from '../../src/tools/fresh.mjs';

const COUNT = 100_000;
const KILLS = 200;
const BATCH = 250;
/** No batch takes so long, its shrinking counted in, ms: one that does hangs. */
const LONGEST_MS = 900_000;
const folder = join(top, '.cache/fuzz');

if (process.send !== undefined) await follow();
else await lead();

async function lead() {
  const { values, positionals: [kind = ''] } = parseArgs({ allowPositionals: true, options: Object.fromEntries(['count', 'seed', 'workers', 'minutes'].map((name) => [name, { type: 'string' }])) });
  if (kind === 'kills' || kind === 'soak') return process.exit(handOn(kind, values));
  if (kind !== 'hostile' && kind !== 'scenarios') {
    console.error('npm run fuzz -- hostile | scenarios | kills | soak [--count N] [--seed N] [--workers N] [--minutes N]');
    return process.exit(1);
  }
  const [count, seed, workers] = [Number(values.count ?? COUNT), Number(values.seed ?? 1), Number(values.workers ?? 1)];
  await bundle(kind);
  process.exit(await thrown(kind, count, seed, workers));
}

/** Kills and soak have programs of their own. */
function handOn(kind, { count, seed, minutes }) {
  const words = kind === 'soak'
    ? ['tests/fuzz/soak.mjs', ...(minutes === undefined ? [] : ['--minutes', minutes]), ...(seed === undefined ? [] : ['--seed', seed])]
    : ['tests/browser/run.mjs', 'killed'];
  const env = { ...process.env, EVENHAND_KILLS: count ?? String(KILLS), ...(seed === undefined ? {} : { EVENHAND_SEED: seed }) };
  return spawnSync(process.execPath, words, { cwd: top, env, stdio: 'inherit' }).status ?? 1;
}

/** In one file two folders below the top, where the shipped files are found as from tests/fuzz. */
function bundle(kind) {
  return build({
    configFile: false, root: top, publicDir: false, logLevel: 'error', oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } }, ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: true, outDir: folder, emptyOutDir: false, minify: false, target: 'node20',
      rolldownOptions: { input: { [kind]: join(top, `tests/fuzz/${kind}.ts`) }, output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: `${kind}-[name].mjs` } },
    },
  });
}

/** Batches, each under a seed of its own, to whoever is free. @returns the exit code */
function thrown(kind, count, seed, workers) {
  mkdirSync(folder, { recursive: true });
  const batches = Math.ceil(count / BATCH);
  const began = performance.now();
  const seen = new Map();
  let [next, back, done, failures] = [0, 0, 0, 0];
  const fail = ({ seed: at, path, why, shrunk }) => {
    failures += 1;
    const file = join(folder, `${kind}-${at}.json`);
    writeFileSync(file, shrunk);
    console.error(`FAILED: ${kind} --seed ${at} --count ${BATCH}, path ${path}: ${why.slice(0, 1200)}\n  the least such case: ${file}`);
  };
  const tell = () => {
    const s = (performance.now() - began) / 1000;
    const left = (s / back) * (batches - back);
    console.log(`${done} of ${batches * BATCH}, ${(done / s).toFixed(1)} a second, ${failures} failed, ${back === batches ? `${s.toFixed(0)} s` : `${Math.ceil(left / 60)} min left`}`);
  };
  const one = () => new Promise((ended) => {
    let [child, timer, at] = [null, null, null];
    const give = () => {
      clearTimeout(timer);
      if (next === batches) return void child.send(null);
      at = seed + next;
      next += 1;
      child.send({ kind, seed: at, size: Math.min(BATCH, count - (at - seed) * BATCH) });
      timer = setTimeout(() => { child.kill('SIGKILL'); }, LONGEST_MS);
    };
    const start = () => {
      child = fork(fileURLToPath(import.meta.url), { stdio: 'inherit' });
      child.on('message', (told) => {
        if (told !== 'ready') {
          back += 1;
          at = null;
          done += told.done;
          for (const [what, times] of told.seen) seen.set(what, (seen.get(what) ?? 0) + times);
          if (told.failed !== null) fail(told.failed);
          if (back % 8 === 0 || back === batches) tell();
        }
        give();
      });
      child.on('exit', () => {
        clearTimeout(timer);
        if (at === null) return ended();
        // It hung, or brought its process down: both are failures of that seed.
        back += 1;
        fail({ seed: at, path: '', why: 'the process ended, or gave no answer in time', shrunk: '' });
        at = null;
        if (next < batches) start(); else ended();
      });
    };
    start();
  });
  return Promise.all(Array.from({ length: workers }, one)).then(() => {
    console.log([...seen].sort(([a], [b]) => (a < b ? -1 : 1)).map(([what, times]) => `${what} ${times}`).join('; '));
    return failures > 0 ? 1 : 0;
  });
}

async function follow() {
  setPriority(10);
  process.on('message', async (job) => {
    if (job === null) return process.disconnect();
    const { batch, seen } = await import(pathToFileURL(join(folder, `${job.kind}.mjs`)).href);
    const { done, failed } = await batch(job.seed, job.size);
    const told = [...seen];
    seen.clear();
    process.send({ done, failed, seen: told });
  });
  process.send('ready');
}
