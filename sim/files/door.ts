/** The one way through a schema, so that nobody outside this folder needs to know the library behind it. */
import * as z from 'zod/mini';

/** A schema of a file, by what it gives. */
export type Schema<T = unknown> = z.ZodMiniType<T>;

/** What a schema refuses; `errors` hold the issues of each branch where one of several forms was possible. */
export interface Issue {
  code: string;
  path: (string | number)[];
  message: string;
  keys?: string[];
  errors?: Issue[][];
}

/** A value with its defaults filled in, or all that the schema refuses. Never throws. */
export function tryAs<T>(schema: Schema<T>, value: unknown): { ok: true; value: T } | { ok: false; issues: Issue[] } {
  const { success, data, error } = z.safeParse(schema, value);
  return success ? { ok: true, value: data } : { ok: false, issues: error.issues as unknown as Issue[] };
}
