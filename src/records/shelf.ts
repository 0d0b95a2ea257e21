/**
 * What is on the shelf: the shipped drills and airframes, checked as any file is. Only their order is told onward;
 * their names and titles stay here, since they would give a drill away.
 */
import { airframeOf, type Airframe, type Scenario } from '../../sim/files/index.js';
import { readAirframe, readScenario, type Read } from '../text/index.js';

export interface Shelved {
  readonly scenario: Scenario;
  readonly airframe: Airframe;
}

// Taken in whole: one request a file would show its name.
const airframeTexts = import.meta.glob<string>('../../scenarios/airframes/*.json', { query: '?raw', import: 'default', eager: true });
const drillTexts = import.meta.glob<string>('../../scenarios/drills/*.json', { query: '?raw', import: 'default', eager: true });

/** The drills in the order of their numbers, first 1. */
export function shelf(): Shelved[] {
  const airframes = new Map(
    Object.entries(airframeTexts).map(([file, text]) => {
      const airframe = sound(readAirframe(text, file));
      return [airframe.name, airframe] as const;
    }),
  );
  const find = (name: string): Airframe | undefined => airframes.get(name);
  return Object.keys(drillTexts)
    .map((file) => {
      const scenario = sound(readScenario(drillTexts[file] as string, file, find));
      const airframe = airframeOf(scenario, find);
      if (airframe === undefined) throw new Error(`${file}: names an airframe that is not shipped`);
      return { scenario, airframe };
    })
    .sort((a, b) => (a.scenario.order ?? Infinity) - (b.scenario.order ?? Infinity));
}

/** A shipped file with a problem is a fault of the build, and is not passed over. */
function sound<T>(read: Read<T>): T {
  if (read.ok) return read.value;
  throw new Error(read.problems.map(({ file, line, column, found }) => `${file}:${line}:${column}: ${found}`).join('\n'));
}
