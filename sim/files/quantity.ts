/**
 * The words every file schema is built from: a number with its unit, range and meaning, a short text, a name.
 * Unit, range and meaning live in the schema's metadata, so that help, JSON Schema and problem texts all say the same.
 */
import * as z from 'zod/mini';
import { isOnGrid } from '../units.js';

// Generated code would trip a strict content policy once a page; interpreted schemas do not.
z.config({ jitless: true });

/**
 * A finite number in [min, max]. `description` says in one line what it means; `unit` is as written in key names (kt, ft, deg, s, t, Nm),
 * '1' for a pure number. Both are carried in the schema's metadata.
 */
export function quantity(description: string, unit: string, min: number, max: number) {
  return z.number().check(z.gte(min), z.lte(max), z.meta({ description, unit }));
}

/** A whole number in [min, max]. */
export function whole(description: string, unit: string, min: number, max: number) {
  return z.int().check(z.gte(min), z.lte(max), z.meta({ description, unit }));
}

/** A time in seconds that must lie on the tick grid. The refinement's text is read back by the wording of problems. */
export function time(description: string, min: number, max: number) {
  return z.number().check(
    z.gte(min),
    z.lte(max),
    z.refine(isOnGrid, { error: 'a whole number of hundredths of a second' }),
    z.meta({ description, unit: 's' }),
  );
}

/** A text of at most `max` characters. */
export function text(description: string, max: number) {
  return z.string().check(z.maxLength(max), z.meta({ description }));
}

/** A name of a shipped file or of a fault: lower-case letters, digits and hyphens, 1 to 64. */
export function name(description: string) {
  return z.string().check(z.regex(/^[a-z0-9-]{1,64}$/, 'letters a-z, digits and hyphens, 1 to 64 of them'), z.meta({ description }));
}

/** One of a few words. */
export function word<const T extends readonly [string, ...string[]]>(description: string, words: T) {
  return z.enum(words).check(z.meta({ description }));
}

export const schemaKey = { $schema: z.optional(text('Where an editor finds the JSON Schema; ignored by Evenhand.', 500)) };
export const formatKey = { format: z.literal(1).check(z.meta({ description: 'Version of the file format. Higher numbers are refused.' })) };
