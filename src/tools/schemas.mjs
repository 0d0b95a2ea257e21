// Writes the JSON Schemas that editors read (public/schemas) from the schemas that check the files.
// `--check` only compares, and fails when one is stale. A folder may be named in place of public/schemas.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { runnerImport } from 'vite';
import { top } from './fresh.mjs';

const { values: options, positionals } = parseArgs({ options: { check: { type: 'boolean' } }, allowPositionals: true });
const folder = resolve(positionals[0] ?? join(top, 'public/schemas'));
mkdirSync(folder, { recursive: true });

const wanted = await wantedSchemas();
const there = schemasThere();
const stale = [...new Set([...Object.keys(wanted), ...Object.keys(there)])].filter((name) => wanted[name] !== there[name]).sort();
if (options.check) {
  for (const name of stale) console.error(`public/schemas/${name} is not current: npm run schemas`);
  process.exit(stale.length > 0 ? 1 : 0);
}
for (const name of stale) {
  if (name in wanted) writeFileSync(join(folder, name), wanted[name]);
  else rmSync(join(folder, name));
  console.log(`public/schemas/${name} ${name in wanted ? 'written' : 'removed'}`);
}

/** File name to text, from the sources as they stand now. */
async function wantedSchemas() {
  const { module } = await runnerImport(join(top, 'sim/files/index.ts'), { configFile: false, logLevel: 'error', root: top });
  const named = Object.entries(module.jsonSchemas());
  return Object.fromEntries(named.map(([name, schema]) => [`${name}.json`, `${JSON.stringify(schema, null, 2)}\n`]));
}

function schemasThere() {
  const names = readdirSync(folder, { withFileTypes: true }).flatMap((entry) => (entry.isFile() ? [entry.name] : []));
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}
