/** A table as text: RFC 4180, lines ended by CR LF, the last one too. */

/** A number as few decimals as it needs, at most so many; nothing for null. */
export const figure = (value: number | null, most: number): string => (value === null ? '' : String(Number(value.toFixed(most))));

const cellOf = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** @param rows the header first */
export const tableText = (rows: readonly (readonly string[])[]): string => rows.map((row) => `${row.map(cellOf).join(',')}\r\n`).join('');
