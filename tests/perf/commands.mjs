// The built command line: how soon it starts, and what a second worker is worth.
import { spawnSync } from 'node:child_process';
import { availableParallelism, loadavg } from 'node:os';
import { best, median } from './timing.mjs';
import { built, cli } from './built.mjs';

function wallMs(words) {
  const from = performance.now();
  const { status, stdout } = spawnSync(process.execPath, words, { encoding: 'utf8', maxBuffer: 1 << 26 });
  if (status !== 0) throw new Error(`${words.join(' ')} ended with ${status}`);
  return { ms: performance.now() - from, stdout };
}

const STARTS = 20;
/** Waited at the start of a spoilt command line. */
const DELAY = 'data:text/javascript,for(const until=performance.now()+150;performance.now()<until;);';

export async function start({ spoil }) {
  built();
  const bare = [];
  const ours = [];
  for (let round = 0; round < STARTS; round += 1) {
    bare.push(wallMs(['-e', '0']).ms);
    ours.push(wallMs([...(spoil ? ['--import', DELAY] : []), cli, '--version']).ms);
  }
  return [{ id: 'start', value: best(ours) / best(bare), notes: [`best of ${STARTS}; medians ${(median(ours) / median(bare)).toFixed(2)}; ms: ${best(ours).toFixed(0)} and ${best(bare).toFixed(0)}`] }];
}

/** Twenty seconds of work for one: each further thread learns the tick anew, which costs a second or so however long the sweep. */
const RUNS = 4500;

export async function sweep({ spoil, wrong }) {
  built();
  const flown = (workers) => {
    const { ms, stdout } = wallMs([...(spoil && workers > 1 ? ['--import', DELAY.replace('+150', '+20000')] : []), cli, 'sweep', 'set-16-from-4', '--trainee', 'steady', '--runs', String(RUNS), '--workers', String(workers), '--json']);
    return { ms, hash: JSON.parse(stdout).hash };
  };
  const before = loadavg()[0];
  const rounds = Array.from({ length: spoil || wrong ? 1 : 3 }, () => ({ one: flown(1), two: flown(2) }));
  if (wrong) rounds[0].two.hash = `${rounds[0].two.hash}0`;
  const note = `${RUNS} runs; load before ${before.toFixed(1)} on ${availableParallelism()} cores${before > 0.7 ? ': not quiet, so the second worker had no core to itself' : ''}; s: ${rounds.map(({ one, two }) => `${(one.ms / 1000).toFixed(1)} and ${(two.ms / 1000).toFixed(1)}`).join(', ')}`;
  if (rounds.some(({ one, two }) => one.hash !== two.hash)) return [{ id: 'sweep', value: NaN, notes: ['hashes differ by the number of workers', note] }];
  if (availableParallelism() < 2) return [{ id: 'sweep', value: null, notes: ['not measured: one core here'] }];
  return [{ id: 'sweep', value: best(rounds.map(({ one }) => one.ms)) / best(rounds.map(({ two }) => two.ms)), notes: [note] }];
}
