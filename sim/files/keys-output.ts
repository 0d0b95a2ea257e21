/** What `keys` prints with --json; see output.ts for the other commands. */
import * as z from 'zod/mini';

const said = (description: string) => z.string().check(z.meta({ description }));

/** The keys of one kind of file; `keyTable` makes the rows. */
export const keysOutput = z.strictObject({
  kind: said('Kind of file.'),
  keys: z.array(z.strictObject({
    path: said('Where it stands; behind it in brackets the kinds that have it.'),
    unit: said('Unit; empty for none.'), allowed: said('What may be written, in words.'),
    default: said('"required", the default as JSON, or empty: may be left out.'), meaning: said('What it means.'),
  })),
});

/** Shape of `keys --json`: `keysOutput` parses it. */
export type KeysOutput = z.infer<typeof keysOutput>;
