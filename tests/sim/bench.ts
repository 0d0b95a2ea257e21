/** Worlds for tests: Airframe A and a scenario with everything neutral, each key open to change. */
import { readFileSync } from 'node:fs';
import { parseTree, getNodeValue } from 'jsonc-parser';
import { airframeSchema, scenarioSchema, type Airframe } from '../../sim/files/index.js';
import { ready, type ReadyScenario } from '../../sim/ready.js';

const read = (path: string): unknown => {
  const tree = parseTree(readFileSync(new URL(`../../scenarios/${path}`, import.meta.url), 'utf8'));
  if (tree === undefined) throw new Error(`${path} is empty`);
  return getNodeValue(tree);
};

export const AIRFRAME: Airframe = airframeSchema.parse(read('airframes/airframe-a.json'));
export const AIRFRAME_B: Airframe = airframeSchema.parse(read('airframes/airframe-b.json'));

/** A scenario from the keys given, without noise unless asked; the rest is neutral. */
export function scenarioOn(airframe: Airframe, keys: Record<string, unknown>): ReadyScenario {
  const { start, task, ...rest } = keys as { start?: object; task?: object };
  return ready(scenarioSchema.parse({
    format: 1, title: 't', brief: 'b', airframe: airframe.name, pointerNoise: false,
    start: { massT: 48, altitudeFt: 5600, speedKt: 167, flapDeg: 4, guard: 'open', ...start },
    task: { settings: [16], limitS: 300, ...task },
    ...rest,
  }), airframe);
}

/** The same on Airframe A. */
export const scenario = (keys: Record<string, unknown> = {}): ReadyScenario => scenarioOn(AIRFRAME, keys);

/** The airframe that a shipped scenario names. */
export const airframeOf = ({ airframe }: Pick<ReadyScenario, 'airframe'>): Airframe => {
  const found = [AIRFRAME, AIRFRAME_B].find(({ name }) => name === airframe);
  if (found === undefined) throw new Error('no shipped airframe of that name');
  return found;
};

/** A shipped drill, ready to fly. */
export function drill(name: string): ReadyScenario {
  const made = scenarioSchema.parse(read(`drills/${name}.json`));
  return ready(made, airframeOf(made));
}
