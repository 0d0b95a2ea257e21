// The judge of `npm run perf`: exact at each limit of every row, and no row that nobody measures. Nothing is timed here.
import { expect, test } from 'vitest';

interface Budget { id: string; what: string; way: 'most' | 'least'; aim: number; fails: number; low?: number }
const from = async <T>(file: string): Promise<T> => (await import(new URL(`./perf/${file}`, import.meta.url).href)) as T;
const { BUDGETS } = await from<{ BUDGETS: readonly Budget[] }>('budgets.mjs');
const { judged, tableOf, verdictOf } = await from<{
  judged: (budgets: readonly Budget[], found: readonly { id: string; value: number | null; notes?: string[] }[]) => { id: string; verdict: string }[];
  tableOf: (rows: readonly unknown[]) => string;
  verdictOf: (budget: Budget, value: number | null) => string;
}>('judge.mjs');
const { CASES } = await from<{ CASES: Record<string, { rows: readonly string[] }> }>('cases.mjs');

const PAST = 1e-9;

test.each(BUDGETS)('$id: meets at its aim, is short of it just past, fails just past its limit and no sooner', (budget) => {
  const worse = budget.way === 'most' ? 1 : -1;
  expect(verdictOf(budget, budget.aim)).toBe('meets');
  expect(verdictOf(budget, budget.fails + worse * PAST)).toBe('fails');
  expect(verdictOf(budget, budget.fails)).toBe(budget.fails === budget.aim ? 'meets' : 'short of aim');
  if (budget.fails !== budget.aim) expect(verdictOf(budget, budget.aim + worse * PAST)).toBe('short of aim');
  expect(worse * (budget.fails - budget.aim)).toBeGreaterThanOrEqual(0);
});

test('a row that was not measured is no pass, and what is no number fails', () => {
  for (const budget of BUDGETS) {
    expect(verdictOf(budget, null)).toBe('short of aim');
    expect(verdictOf(budget, NaN)).toBe('fails');
  }
});

test('a heap that shrinks below its band is short of the aim: it was measured before it had settled', () => {
  const heap = BUDGETS.find(({ id }) => id === 'heap')!;
  expect(verdictOf(heap, 0.8)).toBe('meets');
  expect(verdictOf(heap, 0.8 - PAST)).toBe('short of aim');
});

test('every row is measured by one case, and every row of a case is a budget', () => {
  const measured = Object.values(CASES).flatMap(({ rows }) => rows).sort();
  expect(measured).toEqual(BUDGETS.map(({ id }) => id).sort());
});

test('the table has a line a row with its figure, both limits and the verdict', () => {
  const rows = judged(BUDGETS, [{ id: 'step', value: 1.234, notes: ['so and so'] }, { id: 'sweep', value: 1.5 }, { id: 'twin', value: null }]);
  expect(rows.map(({ verdict }) => verdict)).toEqual(['short of aim', 'short of aim', 'fails']);
  const table = tableOf(rows);
  expect(table).toMatch(/the same step in place +1\.23 +<= 1\.2 +> 1\.5 +short of aim\n/);
  expect(table).toMatch(/times faster +1\.50 +>= 1\.8 +< 1\.6 +fails\n/);
  expect(table).toMatch(/step: so and so/);
});
