// From what was measured to a verdict, and from verdicts to a table that can be read.

/** 'meets' at the aim and on its good side, 'short of aim' up to and at the failing limit, 'fails' past it or where it was not a number. */
export function verdictOf({ way, aim, fails, low }, value) {
  if (value === null) return 'short of aim'; // not measured is no pass
  if (Number.isNaN(value)) return 'fails';
  const past = (limit) => (way === 'most' ? value > limit : value < limit);
  if (past(fails)) return 'fails';
  return past(aim) || (low !== undefined && value < low) ? 'short of aim' : 'meets';
}

/** What was measured, judged, in the order of the budgets. */
export const judged = (budgets, found) => budgets.flatMap((budget) => {
  const one = found.find(({ id }) => id === budget.id);
  return one === undefined ? [] : [{ ...budget, ...one, verdict: verdictOf(budget, one.value) }];
});

const shown = (value, unit) => (value === null ? '-' : unit === 'B' ? value.toFixed(0) : Number.isInteger(value) && value === 0 ? '0' : value.toFixed(value < 0.1 ? 3 : 2));

/** The table, one row a budget; absolute figures and spreads below it. */
export function tableOf(rows) {
  const lines = [['', 'measured', 'aim', 'falls short at', 'verdict'], ...rows.map(({ what, value, aim, fails, way, low, unit, verdict }) => {
    const sign = way === 'most' ? '<=' : '>=';
    const past = way === 'most' ? '>' : '<';
    return [what, shown(value, unit), low === undefined ? `${sign} ${aim}` : `${low} to ${aim}`, `${past} ${fails}`, verdict];
  })];
  const wide = lines[0].map((_, at) => Math.max(...lines.map((line) => line[at].length)));
  const table = lines.map((line) => line.map((cell, at) => (at === 1 ? cell.padStart(wide[at]) : cell.padEnd(wide[at]))).join('  ').trimEnd());
  return [...table, '', ...rows.flatMap(({ id, notes = [] }) => notes.map((note) => `${id}: ${note}`))].join('\n');
}
