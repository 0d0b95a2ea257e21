// Can the bench itself fail? Every case is measured once more with a delay, a weight, a leak or a wrong answer put in on purpose.
import { BUDGETS } from './budgets.mjs';
import { judged } from './judge.mjs';

/** True when every row of every spoilt case failed. */
export async function selfTest(cases) {
  let held = true;
  for (const [name, { measure, rows, spoils = ['spoil'] }] of cases) {
    for (const how of spoils) {
      const found = judged(BUDGETS, await measure({ [how]: true }));
      for (const id of rows) {
        const row = found.find((one) => one.id === id);
        if (row?.value === null) { console.log(`${name} (${how}): ${id} could not be measured here`); continue; }
        const failed = row?.verdict === 'fails';
        console.log(`${name} (${how}): ${id} ${row?.value} ${failed ? 'fails, as it must' : `was not caught: ${row?.verdict ?? 'no row'}`}`);
        held &&= failed;
      }
    }
  }
  return held;
}
