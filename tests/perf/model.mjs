// The runs that the bench flies: shipped drills, and runs of its own without anything that a twin cannot hold.
import { readFileSync } from 'node:fs';
import { getNodeValue, parseTree } from 'jsonc-parser';
import { bundled } from './bundle.mjs';

const read = (path) => getNodeValue(parseTree(readFileSync(new URL(`../../scenarios/${path}`, import.meta.url), 'utf8')));

export async function model() {
  const sim = await bundled();
  const airframe = sim.airframeSchema.parse(read('airframes/airframe-a.json'));
  const drill = (name) => sim.ready(sim.scenarioSchema.parse(read(`drills/${name}.json`)), airframe);
  const own = (keys) => sim.ready(sim.scenarioSchema.parse({
    format: 1, title: 'bench', brief: 'bench', airframe: 'airframe-a', pointerNoise: true, speedHold: true, task: { settings: [16], limitS: 150 }, ...keys,
    start: { massT: 48, altitudeFt: 5600, groundFt: 700, speedKt: 167, flapDeg: 4, flapLeverDeg: 4, ...keys.start },
  }), airframe);
  return { sim, airframe, drill, own };
}
