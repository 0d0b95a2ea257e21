/** Who flies the parts of a sweep: worker threads, or this thread alone. The rows are the same whoever does. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { flyPart, type Part, type SweepOrder, type SweepRow } from '../../sim/index.js';

export interface FlownPart {
  part: Part;
  rows: SweepRow[];
}

export interface Crew {
  /** Flies parts; `done` is told of each as it comes in. Rejects when one could not be flown, or with the reason of the signal. */
  fly(order: SweepOrder, parts: readonly Part[], done: (flown: FlownPart) => void, signal: AbortSignal): Promise<void>;
}

/** The worker's file lies beside the built command line. A command line that is not built flies in its own thread. */
const workerFile = join(dirname(fileURLToPath(import.meta.url)), 'worker.js');

/** A crew of so many. */
export const crewOf = (workers: number): Crew => (workers > 1 && existsSync(workerFile) ? threads(workers) : alone);

const alone: Crew = {
  async fly(order, parts, done, signal) {
    for (const part of parts) {
      signal.throwIfAborted();
      done({ part, rows: flyPart(order, part) });
      await new Promise((next) => { setImmediate(next); }); // lets a signal in
    }
    signal.throwIfAborted();
  },
};

const threads = (workers: number): Crew => ({
  async fly(order, parts, done, signal) {
    signal.throwIfAborted();
    const left = [...parts].reverse();
    const crew = Array.from({ length: Math.min(workers, parts.length) }, () => new Worker(workerFile, { workerData: order }));
    try {
      await Promise.all(crew.map((worker) => new Promise<void>((resolve, reject) => {
        const next = (): void => {
          const part = left.pop();
          if (part === undefined) resolve();
          else worker.postMessage(part);
        };
        worker.on('message', (flown: FlownPart) => { done(flown); next(); });
        worker.once('error', reject).once('exit', () => reject(new Error('a worker ended before its work')));
        signal.addEventListener('abort', () => reject(signal.reason as Error), { once: true });
        next();
      })));
    } finally {
      await Promise.all(crew.map((worker) => worker.removeAllListeners('exit').terminate()));
    }
  },
});
