// Is it fast? `npm run perf` measures every row of budgets.mjs and exits 1 where one is past its failing limit. Words pick cases
// (`npm run perf step heap`), `--json` prints the rows as JSON, `--self-test` spoils every case and demands that it fails.
// Figures are ratios taken inside one run; absolute ones are side notes and move with the machine.
import { loadavg } from 'node:os';
import { BUDGETS } from './budgets.mjs';
import { CASES } from './cases.mjs';
import { judged, tableOf } from './judge.mjs';
import { selfTest } from './self-test.mjs';

const words = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const flags = process.argv.slice(2).filter((word) => word.startsWith('--'));
const unknown = [...words.filter((word) => !(word in CASES)), ...flags.filter((flag) => !['--json', '--self-test'].includes(flag))];
if (unknown.length > 0) {
  console.error(`Unknown: ${unknown.join(', ')}. Cases: ${Object.keys(CASES).join(', ')}; --json, --self-test.`);
  process.exit(2);
}
const picked = Object.entries(CASES).filter(([name]) => words.length === 0 || words.includes(name));
if (flags.includes('--self-test')) process.exit(await selfTest(picked) ? 0 : 1);

const found = [];
for (const [name, { measure, rows }] of picked) {
  console.error(`${name} ... (load ${loadavg()[0].toFixed(1)})`);
  try {
    found.push(...await measure({}));
  } catch (problem) {
    found.push(...rows.map((id) => ({ id, value: NaN, notes: [String(problem.stack ?? problem)] })));
  }
}
const rows = judged(BUDGETS, found);
console.log(flags.includes('--json') ? JSON.stringify(rows, null, 2) : tableOf(rows));
process.exit(rows.some(({ verdict }) => verdict === 'fails') ? 1 : 0);
