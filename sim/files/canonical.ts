/** Canonical JSON: one text for one value, by RFC 8785 (JSON Canonicalization Scheme). */

/**
 * The canonical text of a JSON value. Keys are sorted by UTF-16 units, numbers and texts are written as ECMAScript
 * writes them (RFC 8785, 3.2.2 and 3.2.3). A key that holds undefined is left out, as everywhere in JSON.
 * @throws TypeError on what is no JSON: NaN, an infinity, half a surrogate pair, undefined in a list, a function.
 */
export function canonical(value: unknown): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') return numberText(value);
  if (typeof value === 'string') return stringText(value);
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value === 'object' && isPlain(value)) {
    const entries = Object.entries(value).filter(([, inner]) => inner !== undefined);
    entries.sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([key, inner]) => `${stringText(key)}:${canonical(inner)}`).join(',')}}`;
  }
  throw new TypeError(`not a JSON value: ${typeof value}`);
}

function numberText(value: number): string {
  if (!Number.isFinite(value)) throw new TypeError(`not a JSON number: ${value}`);
  return JSON.stringify(value + 0);
}

function stringText(value: string): string {
  if (/\p{Surrogate}/u.test(value)) throw new TypeError('half a surrogate pair is no text');
  return JSON.stringify(value);
}

function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}
