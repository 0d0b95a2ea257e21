/** Release budgets from a worker, in the order in which they are asked for. */
import type { Budget, BudgetRequest } from '../../sim/index.js';

type Answer = { readonly id: number; readonly budget: Budget } | { readonly id: number; readonly problem: string };

let worker: Worker | null = null;
let last = 0;
const waiting = new Map<number, { done: (budget: Budget) => void; failed: (why: Error) => void }>();

/** @throws Error in words, where a budget cannot be worked out */
export function budget(request: BudgetRequest): Promise<Budget> {
  worker ??= start();
  const id = (last += 1);
  return new Promise((done, failed) => {
    waiting.set(id, { done, failed });
    worker?.postMessage({ id, request });
  });
}

function start(): Worker {
  const made = new Worker(new URL('./budget-worker.ts', import.meta.url), { type: 'module' });
  made.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if ('budget' in data) asked?.done(data.budget);
    else asked?.failed(new Error(data.problem));
  });
  made.addEventListener('error', () => {
    for (const { failed } of waiting.values()) failed(new Error('the worker has stopped'));
    waiting.clear();
    worker = null; // asked again, it is started again
  });
  return made;
}
