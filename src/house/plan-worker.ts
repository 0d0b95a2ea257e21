/** Flies plans apart from the page: each is some twenty minutes of the model's own time. */
import { planOf, type PlanRequest } from '../../sim/index.js';

interface Asked {
  readonly id: number;
  readonly request: PlanRequest;
}

addEventListener('message', ({ data: { id, request } }: MessageEvent<Asked>) => {
  try {
    postMessage({ id, plan: planOf(request) });
  } catch (problem) {
    postMessage({ id, problem: problem instanceof Error ? problem.message : String(problem) });
  }
});
