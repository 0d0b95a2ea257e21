// `npm run study`: flies the study on two worker threads and writes tests/study/result.md. `--drawn N --known N` for other numbers of
// sets, `--out FILE` for another page. Exit 1 when an interval does not cover as asked. The same seeds, the same page.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { build } from 'vite';
import { top } from '../../src/tools/fresh.mjs';

const WORKERS = 2;
const CHUNK = 50;

if (isMainThread) await lead();
else await follow();

async function lead() {
  const { values } = parseArgs({ options: { drawn: { type: 'string' }, known: { type: 'string' }, out: { type: 'string' } } });
  const bundle = join(top, '.cache/study/study.mjs');
  mkdirSync(join(top, '.cache/study'), { recursive: true });
  await build({
    configFile: false, root: top, publicDir: false, logLevel: 'warn',
    build: { outDir: join(top, '.cache/study'), emptyOutDir: true, target: 'es2022', minify: false, lib: { entry: join(top, 'tests/study/study.ts'), formats: ['es'], fileName: () => 'study.mjs' } },
  });
  const study = await import(pathToFileURL(bundle).href);
  const parts = study.parts(Number(values.drawn ?? 2500), Number(values.known ?? 1000));
  const jobs = parts.flatMap((part, at) => Array.from({ length: Math.ceil(part.sets / CHUNK) }, (_, k) => ({ at, part, from: k * CHUNK + 1, to: Math.min(part.sets, (k + 1) * CHUNK) })));
  const results = await flown(jobs, bundle);
  // Added in the order of the jobs, whoever flew them.
  const done = parts.map((part, at) => ({ part, all: jobs.reduce((all, job, index) => (job.at === at ? study.together(all, results[index]) : all), study.NOTHING) }));
  const out = resolve(values.out ?? join(top, 'tests/study/result.md'));
  writeFileSync(out, study.page(done));
  const bad = done.flatMap(({ part, all }) => study.failures(part, all).map((name) => `${part.plan}, ${part.watcher ?? 'drawn'}: ${name}`));
  console.log(bad.length === 0 ? `Every interval covers as asked. ${out}` : `Not as asked: ${bad.join('; ')}. ${out}`);
  process.exit(bad.length === 0 ? 0 : 1);
}

/** Each worker takes the next job as soon as it is free. */
function flown(jobs, bundle) {
  const results = [];
  let [next, back] = [0, 0];
  const one = () => new Promise((ended, failed) => {
    const worker = new Worker(new URL(import.meta.url), { workerData: bundle });
    const give = () => worker.postMessage(next < jobs.length ? { index: next, ...jobs[next++] } : null);
    worker.on('message', ({ index, all }) => {
      results[index] = all;
      back += 1;
      if (back % 10 === 0 || back === jobs.length) console.log(`${back} of ${jobs.length} parts of ${CHUNK} sets`);
      give();
    });
    worker.on('error', failed);
    worker.on('exit', ended);
    give();
  });
  return Promise.all(Array.from({ length: WORKERS }, one)).then(() => results);
}

async function follow() {
  const { coverage } = await import(pathToFileURL(workerData).href);
  parentPort.on('message', (job) => {
    if (job === null) parentPort.close();
    else parentPort.postMessage({ index: job.index, all: coverage(job.part.plan, job.part.watcher, job.from, job.to) });
  });
}
