// Bytes that a tick makes: how far the young heap has grown when so many frames were stepped without a collection in between.
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { median } from './timing.mjs';
import { model } from './model.mjs';

const CALLS = 1000; // less than half of a young heap of 8 MB, at any size that may be shipped
const ROUNDS = 15;

export async function bytes({ spoil }) {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc');
  const { sim, airframe, drill } = await model();
  const scenario = drill('set-16-from-4');
  const { commands } = sim.flyTrainee(scenario, airframe, 1, 'never');
  let world = sim.expand(scenario, airframe, 1, true);
  let held = null;
  const some = () => {
    for (let call = 0; call < CALLS; call += 1) {
      world = sim.advance(world, commands, 2);
      if (spoil) held = new Array(160).fill(held === null ? 1.5 : 2.5); // a plain one: the numbers of a typed one lie outside the heap that is counted
    }
  };
  for (let round = 0; round < 8; round += 1) some();
  const found = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    collect();
    const before = process.memoryUsage().heapUsed;
    some();
    found.push((process.memoryUsage().heapUsed - before) / (2 * CALLS));
  }
  return [{ id: 'bytes', value: median(found), notes: [`least ${Math.min(...found).toFixed(0)}, most ${Math.max(...found).toFixed(0)} of ${ROUNDS} rounds; ${sim.STATE_KEYS.length} numbers in a state`] }];
}
