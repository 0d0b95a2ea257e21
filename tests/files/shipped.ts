// The shipped files, for tests: read from the disk, through the same door as everywhere.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Airframe, Scenario } from '../../sim/files/index.js';
import { readAirframe, readScenario } from '../../src/text/index.js';

const folder = fileURLToPath(new URL('../../scenarios/', import.meta.url));

export const textOf = (path: string): string => readFileSync(`${folder}${path}`, 'utf8');
export const airframeText = textOf('airframes/airframe-a.json');
export const drillNames = readdirSync(`${folder}drills`).filter((name) => name.endsWith('.json')).map((name) => name.slice(0, -5)).sort();
export const drillText = (name: string): string => textOf(`drills/${name}.json`);

function airframe(file: string): Airframe {
  const read = readAirframe(textOf(`airframes/${file}`), file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}
export const airframeA = airframe('airframe-a.json');
const airframeB = airframe('airframe-b.json');
export const lookup = (name: string): Airframe | undefined => [airframeA, airframeB].find((one) => one.name === name);
/** The airframe that a shipped drill names. */
export const airframeFor = (scenario: Scenario): Airframe => lookup(scenario.airframe as string) as Airframe;

export function drill(name: string): Scenario {
  const scenario = readScenario(drillText(name), name, lookup);
  if (!scenario.ok) throw new Error(JSON.stringify(scenario.problems));
  return scenario.value;
}

/** A deep copy with one place changed. */
export function changed<T>(value: T, path: readonly (string | number)[], to: unknown): T {
  const copy = structuredClone(value);
  let at = copy as Record<string | number, unknown>;
  for (const part of path.slice(0, -1)) at = at[part] as Record<string | number, unknown>;
  const last = path.at(-1)!;
  if (to === undefined) delete at[last];
  else at[last] = to;
  return copy;
}
