/** What comes with Evenhand, read and checked. */
import { readFileSync } from 'node:fs';
import { type Airframe, type Lookup, type ScenarioLookup, type SetLookup } from '../../sim/files/index.js';
import { readAirframe, readScenario, readSet } from '../text/index.js';
import { airframeNames, drillPath, setPath, shippedPath } from './places.js';

/** Finds shipped drills by name. */
export function drills(): ScenarioLookup {
  const lookup = airframes();
  return (name) => {
    const file = drillPath(name);
    if (file === null) return undefined;
    const read = readScenario(readFileSync(file, 'utf8'), file, lookup);
    return read.ok ? read.value : undefined;
  };
}

/** Finds shipped sets by name. */
export function sets(): SetLookup {
  const [lookup, named] = [airframes(), drills()];
  return (name) => {
    const file = setPath(name);
    if (file === null) return undefined;
    const read = readSet(readFileSync(file, 'utf8'), file, lookup, named);
    return read.ok ? read.value : undefined;
  };
}

/** Finds shipped airframes by name; each file is read once. */
export function airframes(): Lookup {
  const known = new Map<string, Airframe | undefined>();
  return (name) => {
    if (!known.has(name)) known.set(name, airframeNames().includes(name) ? shippedAirframe(name) : undefined);
    return known.get(name);
  };
}

function shippedAirframe(name: string): Airframe | undefined {
  const file = shippedPath('scenarios', 'airframes', `${name}.json`);
  const read = readAirframe(readFileSync(file, 'utf8'), file);
  return read.ok ? read.value : undefined;
}
