/** Works release budgets out apart from the page: each runs the drive for minutes of its own time. */
import { budgetOf, type BudgetRequest } from '../../sim/index.js';

interface Asked {
  readonly id: number;
  readonly request: BudgetRequest;
}

addEventListener('message', ({ data: { id, request } }: MessageEvent<Asked>) => {
  try {
    postMessage({ id, budget: budgetOf(request) });
  } catch (problem) {
    postMessage({ id, problem: problem instanceof Error ? problem.message : String(problem) });
  }
});
