/** Rows of cells as lines of aligned columns. */

/** Wider cells do not push the next column out for everyone. */
const WIDEST = 48;

/** @param right columns that are aligned to the right (numbers) */
export function columns(rows: readonly (readonly string[])[], right: readonly number[] = []): string[] {
  const widths: number[] = [];
  for (const row of rows) row.forEach((cell, at) => { widths[at] = Math.max(widths[at] ?? 0, Math.min(cell.length, WIDEST)); });
  return rows.map((row) => row
    .map((cell, at) => (right.includes(at) ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0)))
    .join('  ').trimEnd());
}
