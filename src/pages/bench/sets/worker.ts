/** A worker of the bench: flies whole sets for the figures and gates of one that is being written. It knows no page. */
import { figuresOf, gatesOf, type Gate, type ReadySet, type SetFigures } from '../../../../sim/index.js';

export type Answer =
  | { readonly is: 'figures'; readonly figures: SetFigures; readonly gates: readonly Gate[] }
  | { readonly is: 'failed'; readonly why: string };

addEventListener('message', ({ data }: MessageEvent<ReadySet>) => {
  try {
    const figures = figuresOf(data);
    postMessage({ is: 'figures', figures, gates: gatesOf(data, figures) } satisfies Answer);
  } catch (problem) {
    postMessage({ is: 'failed', why: problem instanceof Error ? problem.message : String(problem) } satisfies Answer);
  }
});
