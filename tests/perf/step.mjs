// What a tick costs, in microseconds of processor time: `node tests/perf/step.mjs`. Absolute figures move with the machine;
// compare two of them only when taken one right behind the other.
import { readFileSync } from 'node:fs';
import { getNodeValue, parseTree } from 'jsonc-parser';
import { bundled } from './bundle.mjs';

const { sim, files } = await bundled();
const read = (path) => getNodeValue(parseTree(readFileSync(new URL(`../../scenarios/${path}`, import.meta.url), 'utf8')));
const airframe = files.airframeSchema.parse(read('airframes/airframe-a.json'));
const drill = (name) => files.ready(files.scenarioSchema.parse(read(`drills/${name}.json`)), airframe);
const scenario = drill('set-16-from-4');
const { commands } = sim.flyTrainee(scenario, airframe, 1, 'never');

const rowTicks = sim.flyTrainee(scenario, airframe, 1, 'never').flight.ticks;

const cases = {
  'advance, 1 tick a call': () => {
    let world = sim.expand(scenario, airframe, 1, true);
    for (let i = 0; i < 18000; i += 1) world = sim.advance(world, commands, 1);
    return 18000;
  },
  'advance, 2 ticks a call': () => {
    let world = sim.expand(scenario, airframe, 1, true);
    for (let i = 0; i < 9000; i += 1) world = sim.advance(world, commands, 2);
    return 18000;
  },
  'advance, 100 ticks a call': () => {
    let world = sim.expand(scenario, airframe, 1, true);
    for (let i = 0; i < 180; i += 1) world = sim.advance(world, commands, 100);
    return 18000;
  },
  'run, with its hash': () => sim.run(sim.expand(scenario, airframe, 1, true), commands).ticks,
  'fly, judged': () => sim.fly({ scenario, airframe, seed: 1, whole: true }, commands).ticks,
  'a row of a sweep': () => { sim.flyRow(scenario, airframe, 1, 'never'); return rowTicks; },
  'a trainee, judged': () => sim.flyTrainee(scenario, airframe, 1, 'slow').flight.ticks,
};

const REPEATS = 20;
for (const [name, once] of Object.entries(cases)) {
  for (let i = 0; i < 5; i += 1) once();
  let best = Infinity;
  for (let i = 0; i < REPEATS; i += 1) {
    const before = process.cpuUsage();
    const ticks = once();
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / ticks);
  }
  console.log(`${name.padEnd(28)} ${best.toFixed(3)} us a tick`);
}
