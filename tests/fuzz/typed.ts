/** The command line: any words, any files behind them. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { main } from '../../src/cli/program.js';
import { door, type Door } from './door.js';
import { must } from './promises.js';
import { untouched } from './watched.js';

const folder = mkdtempSync(join(tmpdir(), 'evenhand-fuzz-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));

/** Not served, and not swept by the thousand: both are other processes. */
const words = fc.oneof(
  fc.constantFrom('check', 'run', 'replay', 'verify', 'measure', 'plan', 'speeds', 'horn', 'budget', 'keys', 'derive', 'help'),
  fc.constantFrom('--json', '--seed', '--trainee', '--inputs', '--trace', '--set', '--seen-deg', '--false-points', '--help', '--version', '--', '-x', '--mass', '--ratio', '--altitude', '--fault', '--flap', '--speed', '--wind'),
  fc.constantFrom('FILE', 'FILE', 'set-16-from-4', 'airframe-a', 'steady', 'a=1', '1', '-1', '0', '4294967296', '1e309', 'NaN', '', '../../etc/passwd', '/dev/null', '/', '__proto__', '\u0000x'),
  fc.string({ maxLength: 12 }),
);

async function typed([text, typedWords]: readonly [string, readonly string[]]): Promise<void> {
  const file = join(folder, 'file.json');
  writeFileSync(file, text);
  const called = typedWords.map((word) => (word === 'FILE' ? file : word)).filter((word) => word !== 'serve' && word !== 'sweep');
  let out = '';
  let err = '';
  const code = await main(called, { out: (more) => { out += more; }, err: (more) => { err += more; } });
  untouched('the command line');
  must(code === 0 || code === 1 || code === 2, `exit code ${code}`);
  must(!/^\s+at .*:\d+:\d+/m.test(out + err), `a stack is shown: ${(out + err).slice(0, 300)}`);
  must(code === 0 || out + err !== '', `exit code ${code} without a word`);
  if (called.includes('--json') && out !== '' && code !== 0 && !called.includes('--')) JSON.parse(out);
}

export const typedDoor = (texts: fc.Arbitrary<string>): Door => door('command line', 5, fc.tuple(texts, fc.array(words, { maxLength: 7 })), typed);
