/** The figures of a set follow what is typed: a worker flies them, and one that is outrun is ended. */
import type { Gate, ReadySet, SetFigures } from '../../../../sim/index.js';
import type { Answer } from './worker.js';

export type Came =
  | { readonly is: 'flying' }
  | { readonly is: 'here'; readonly of: ReadySet; readonly figures: SetFigures; readonly gates: readonly Gate[] }
  | { readonly is: 'failed'; readonly why: string };

/** So long the hand must rest before anything is flown, ms. */
const REST_MS = 350;

/** Begins to fly; what comes of it is told once. @returns ends it */
export function flyFigures(of: ReadySet, told: (came: Came) => void): () => void {
  let worker: Worker | null = null;
  const rest = setTimeout(() => {
    worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('error', () => told({ is: 'failed', why: 'the worker could not be started' }));
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      worker?.terminate();
      told(data.is === 'failed' ? data : { is: 'here', of, figures: data.figures, gates: data.gates });
    });
    worker.postMessage(of, []);
  }, REST_MS);
  return () => {
    clearTimeout(rest);
    worker?.terminate();
  };
}
