/** A sweep in web workers: parts go out as workers come free, rows come back, and what they come to hangs on no worker. */
import { PART_RUNS, partsOf, together, type Part, type Rows, type SweepOrder, type SweepRow } from '../../../../sim/index.js';
import { startWorker } from './hand.js';
import type { Answer, Asked } from './worker.js';

/** At least one, and no more than there are cores. */
export const workersHere = (): number => Math.max(1, Math.floor(navigator.hardwareConcurrency || 1));

const runsIn = ({ from, to }: Part): number => to - from;

/** Runs that a sweep flies in all, those for its difficulty included. */
export const runsOf = (runs: number): number => partsOf(runs, PART_RUNS).reduce((sum, part) => sum + runsIn(part), 0);

/**
 * Flies a sweep.
 * @param progress told of runs done whenever a part comes in
 * @returns all rows in their order; rejects with the signal's reason, or with what a worker says
 */
export function flySweep(order: SweepOrder, workers: number, progress: (done: number) => void, stop: AbortSignal, start: () => Worker = startWorker): Promise<Rows> {
  const left = partsOf(order.seeds.length, PART_RUNS).reverse();
  const flown: { part: Part; rows: SweepRow[] }[] = [];
  const all = left.length;
  const crew: Worker[] = [];
  let done = 0;
  return new Promise<Rows>((resolve, reject) => {
    const end = (work: () => void): void => {
      stop.removeEventListener('abort', stopped);
      for (const worker of crew) worker.terminate();
      work();
    };
    const stopped = (): void => end(() => reject(stop.reason as Error));
    if (stop.aborted) return stopped();
    stop.addEventListener('abort', stopped);
    for (let at = 0; at < Math.min(workers, all); at += 1) {
      const worker = start();
      crew.push(worker);
      const ask = (asked: Asked): void => worker.postMessage(asked, []);
      const next = (): void => {
        const part = left.pop();
        if (part !== undefined) ask({ do: 'part', part });
      };
      worker.addEventListener('error', () => end(() => reject(new Error('a worker could not be started'))));
      worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
        if (data.is === 'failed') return end(() => reject(new Error(data.why)));
        if (data.is !== 'part') return;
        flown.push({ part: data.part, rows: data.rows });
        done += runsIn(data.part);
        progress(done);
        if (flown.length === all) end(() => resolve(together(flown)));
        else next();
      });
      ask({ do: 'sweep', of: order });
      next();
    }
  });
}
