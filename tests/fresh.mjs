// As a newcomer would: clones the last commit elsewhere, runs .ci/run there, then `npm start`, and asks for the page. Then packs it,
// installs the package in a folder of its own, and takes command line, library and types from there.
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { top } from '../src/tools/fresh.mjs';

const clone = join(mkdtempSync(join(tmpdir(), 'evenhand-clone-')), 'evenhand');
const inherit = { stdio: ['ignore', 'inherit', 'inherit'] };
let fine = spawnSync('git', ['clone', '--quiet', '--no-hardlinks', top, clone], inherit).status === 0;
fine &&= spawnSync(join(clone, '.ci/run'), { cwd: clone, ...inherit }).status === 0;
fine &&= await starts();
fine &&= packs();
rmSync(join(clone, '..'), { recursive: true, force: true });
console.log(fine ? 'A fresh clone builds, passes its tests, starts, and serves as a package.' : 'A fresh clone does not do (above).');
process.exit(fine ? 0 : 1);

/** True when `npm start` prints an address within a minute, and the page is there. */
async function starts() {
  const child = spawn(process.execPath, ['src/tools/start.mjs'], { cwd: clone, stdio: ['ignore', 'pipe', 'inherit'] });
  const address = await Promise.race([
    new Promise((done) => child.stdout.on('data', (text) => done(/http:\S+/.exec(String(text))?.[0]))),
    new Promise((done) => setTimeout(done, 60_000)),
  ]);
  const page = address ? await fetch(address).then((answer) => answer.text()) : '';
  child.kill();
  console.log(address ? `npm start: ${address}` : 'npm start printed no address.');
  return page.includes('<title>');
}

/** True when the packed package works for somebody who installs it. */
function packs() {
  const user = join(clone, '../user');
  mkdirSync(user);
  writeFileSync(join(user, 'package.json'), '{ "private": true, "type": "module" }');
  writeFileSync(join(user, 'uses.mts'), [
    "import { advance } from 'evenhand/sim';", "import { scenarioSchema } from 'evenhand/files';",
    '// @ts-expect-error a name that is not there', "import { nothing } from 'evenhand/sim';", 'const step: (...of: never[]) => object = advance;', 'console.log(typeof step, typeof scenarioSchema, typeof nothing);',
  ].join('\n'));
  const typescript = join(clone, 'node_modules/typescript/bin/tsc');
  return [
    ['npm', ['pack', '--ignore-scripts', '--silent', '--pack-destination', user], clone],
    ['npm', ['install', '--no-audit', '--no-fund', '--silent', './evenhand-0.1.0.tgz'], user],
    ['npx', ['evenhand', 'run', 'set-16-from-4', '--trainee', 'prompt'], user],
    [process.execPath, [typescript, '--strict', '--module', 'nodenext', '--target', 'es2022', '--noEmit', 'uses.mts'], user],
    [process.execPath, ['--input-type=module', '-e', "import { advance } from 'evenhand/sim'; import { scenarioSchema } from 'evenhand/files'; console.log(typeof advance, typeof scenarioSchema)"], user],
  ].every(([program, words, cwd]) => spawnSync(program, words, { cwd, ...inherit }).status === 0);
}
