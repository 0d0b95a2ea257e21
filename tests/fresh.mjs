// As a newcomer would: clones the last commit elsewhere, runs .ci/run there, then `npm start`, and asks for the page.
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { top } from '../src/tools/fresh.mjs';

const clone = join(mkdtempSync(join(tmpdir(), 'evenhand-clone-')), 'evenhand');
const inherit = { stdio: ['ignore', 'inherit', 'inherit'] };
let fine = spawnSync('git', ['clone', '--quiet', '--no-hardlinks', top, clone], inherit).status === 0;
fine &&= spawnSync(join(clone, '.ci/run'), { cwd: clone, ...inherit }).status === 0;
fine &&= await starts();
rmSync(join(clone, '..'), { recursive: true, force: true });
console.log(fine ? 'A fresh clone builds, passes its tests and starts.' : 'A fresh clone does not do (above).');
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
