/** One worker for one kind of work at a time: what is asked anew ends what was asked before. */
import type { Answer, Asked } from './worker.js';

export const startWorker = (): Worker => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

export interface Hand {
  /** Asks; rejects with the worker's own words. Whatever was asked before is dropped, and its promise never settles. */
  ask(asked: Asked): Promise<Answer>;
  /** Ends the work, if there is any. */
  drop(): void;
  close(): void;
}

/** @param start makes a worker; tests bring one of their own */
export function openHand(start: () => Worker = startWorker): Hand {
  let worker: Worker | null = null;
  let busy = false;
  const drop = (): void => {
    if (!busy) return;
    // A run cannot be asked to stop: its worker goes, and the next work gets a new one.
    worker?.terminate();
    worker = null;
    busy = false;
  };
  return {
    drop,
    ask(asked) {
      drop();
      worker ??= start();
      const mine = worker;
      busy = true;
      return new Promise<Answer>((done, fail) => {
        const end = (): void => {
          busy = false;
          mine.removeEventListener('message', heard);
          mine.removeEventListener('error', broke);
        };
        const heard = ({ data }: MessageEvent<Answer>): void => {
          end();
          if (data.is === 'failed') fail(new Error(data.why));
          else done(data);
        };
        const broke = (): void => {
          end();
          worker = null;
          fail(new Error('the worker could not be started'));
        };
        mine.addEventListener('message', heard);
        mine.addEventListener('error', broke);
        mine.postMessage(asked, []);
      });
    },
    close() {
      worker?.terminate();
      worker = null;
      busy = false;
    },
  };
}
