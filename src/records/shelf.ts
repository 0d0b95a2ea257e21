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

const nameOf = (file: string): string => /([^/]+)\.json$/.exec(file)?.[1] ?? file;

/** The airframes by name. */
export const airframesOnShelf = (): Map<string, Airframe> => new Map(
  Object.entries(airframeTexts).map(([file, text]) => {
    const airframe = sound(readAirframe(text, file));
    return [airframe.name, airframe] as const;
  }),
);

/** The drills by the name of their file. */
export function drillsOnShelf(): Map<string, Scenario> {
  const airframes = airframesOnShelf();
  return new Map(Object.entries(drillTexts).map(([file, text]) => [nameOf(file), sound(readScenario(text, file, (name) => airframes.get(name)))] as const));
}

const byNumber = (a: Scenario, b: Scenario): number => (a.order ?? Infinity) - (b.order ?? Infinity);

/** Names of the drills in the order of their numbers. */
export const drillNames = (): string[] => [...drillsOnShelf()].sort(([, a], [, b]) => byNumber(a, b)).map(([name]) => name);

/** The drills in the order of their numbers, first 1. */
export function shelf(): Shelved[] {
  const airframes = airframesOnShelf();
  return [...drillsOnShelf()]
    .map(([file, scenario]) => {
      const airframe = airframeOf(scenario, (name) => airframes.get(name));
      if (airframe === undefined) throw new Error(`${file}: names an airframe that is not shipped`);
      return { scenario, airframe };
    })
    .sort((a, b) => byNumber(a.scenario, b.scenario));
}

/** A shipped file with a problem is a fault of the build, and is not passed over. */
export function sound<T>(read: Read<T>): T {
  if (read.ok) return read.value;
  throw new Error(read.problems.map(({ file, line, column, found }) => `${file}:${line}:${column}: ${found}`).join('\n'));
}
