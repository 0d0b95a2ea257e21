// Writes the JSON Schemas that editors read (public/schemas), and the table of keys in DEVELOPERS.md, from the schemas that
// check the files. `--check` only compares, and fails when one is stale. A folder may be named in place of public/schemas;
// then DEVELOPERS.md is left alone.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { runnerImport } from 'vite';
import { top } from './fresh.mjs';

/** Blocks that are told in one row in the guide; help and the JSON Schema tell each of their keys. */
const FOLDED = ['parameters[]', 'plan', 'lesson'];

const { values: options, positionals } = parseArgs({ options: { check: { type: 'boolean' } }, allowPositionals: true });
const folder = resolve(positionals[0] ?? join(top, 'public/schemas'));
mkdirSync(folder, { recursive: true });

const { module: files } = await runnerImport(join(top, 'sim/files/index.ts'), { configFile: false, logLevel: 'error', root: top });
const wanted = wantedSchemas();
const there = schemasThere();
const stale = [...new Set([...Object.keys(wanted), ...Object.keys(there)])].filter((name) => wanted[name] !== there[name]).sort();
const guide = join(top, 'DEVELOPERS.md');
const guideStale = positionals.length === 0 && withTable(readFileSync(guide, 'utf8')) !== readFileSync(guide, 'utf8');
if (options.check) {
  for (const name of stale) console.error(`public/schemas/${name} is not current: npm run schemas`);
  if (guideStale) console.error('The table of keys in DEVELOPERS.md is not current: npm run schemas');
  process.exit(stale.length > 0 || guideStale ? 1 : 0);
}
if (guideStale) {
  writeFileSync(guide, withTable(readFileSync(guide, 'utf8')));
  console.log('DEVELOPERS.md: table of keys written');
}
for (const name of stale) {
  if (name in wanted) writeFileSync(join(folder, name), wanted[name]);
  else rmSync(join(folder, name));
  console.log(`public/schemas/${name} ${name in wanted ? 'written' : 'removed'}`);
}

/** File name to text, from the sources as they stand now. */
function wantedSchemas() {
  const named = Object.entries(files.jsonSchemas());
  return Object.fromEntries(named.map(([name, schema]) => [`${name}.json`, `${JSON.stringify(schema, null, 2)}\n`]));
}

function schemasThere() {
  const names = readdirSync(folder, { withFileTypes: true }).flatMap((entry) => (entry.isFile() ? [entry.name] : []));
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}

/** The guide with the keys of a scenario between its two marks. When and how often stand once, since both lists have them. */
function withTable(text) {
  const all = files.keyTableMarkdown('scenario').split('\n').filter((line) => !/`events\[\]\.(when\.|when`|times`|everyS`)/.test(line));
  const within = (line) => FOLDED.find((block) => line.startsWith(`| \`${block}.`));
  const lines = all.filter((line) => within(line) === undefined).map((line) => {
    const block = FOLDED.find((one) => line.startsWith(`| \`${one.replace('[]', '')}\``));
    const keys = all.filter((other) => block !== undefined && within(other) === block).map((other) => `\`${/`[^`]*\.([^`]*)`/.exec(other)[1]}\``);
    return keys.length === 0 ? line : line.replace(/ \|$/, ` With ${keys.join(', ')}. |`);
  });
  return text.replace(/(<!-- keys -->\n)[^]*(<!-- \/keys -->)/, (_, open, close) => `${open}${lines.join('\n')}\n${close}`);
}
