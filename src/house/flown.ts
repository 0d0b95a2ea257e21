/** The scenario that is flown, wherever it comes from: the shelf of drills, a set, a practice. */
import type { Book } from '../records/logbook/index.js';
import type { ShelvedSet } from '../records/sets.js';
import type { Shelved } from '../records/shelf.js';
import type { Flown } from '../pages/house.js';
import { setsOfCourses, stepFlown } from './course.js';
import { flightOf } from './own.js';

let shelved: Promise<Shelved[]> | null = null;
export const shelf = (): Promise<Shelved[]> => (shelved ??= import('../records/shelf.js').then((module) => module.shelf()));

let shelvedSets: Promise<ShelvedSet[]> | null = null;
const shippedSets = (): Promise<ShelvedSet[]> => (shelvedSets ??= import('../records/sets.js').then((module) => module.sets()));
/** The shipped sets by their numbers, and behind them those that stand in a course in full. */
export const sets = async (): Promise<ShelvedSet[]> => (await Promise.all([shippedSets(), setsOfCourses()])).flat();

/** The set on whose run a practice is flown: the first calm one in which a side stops. */
let practising: Promise<{ of: ShelvedSet['of']; stopDegPerS: number }> | null = null;
export const practiceSet = (): Promise<{ of: ShelvedSet['of']; stopDegPerS: number }> => (practising ??= Promise.all([shippedSets(), import('../../sim/index.js')]).then(([all, { realisedRates }]) => {
  for (const { of } of all) {
    if (of.set.load !== 'calm' || (of.scenarios[0]?.task.settings[0] ?? 0) < (of.scenarios[0]?.start.flapDeg ?? 0)) continue;
    const stop = realisedRates(of).find(({ ratio }) => ratio === 0);
    if (stop !== undefined) return { of, stopDegPerS: stop.degPerS };
  }
  throw new Error('no shipped set has a side that stops');
}));

/** The scenario that is flown, and its dice. Sealed, whatever it comes from: its record is the trainee's. */
export async function flownOf(of: Flown, book: () => Promise<Book>): Promise<Shelved & { seed: number }> {
  const [found, { sealed, settled }] = await Promise.all([lookUp(of, book), import('../../sim/files/index.js')]);
  return { ...found, scenario: sealed(settled(found.scenario, found.seed)) };
}

async function lookUp(of: Flown, book: () => Promise<Book>): Promise<Shelved & { seed: number }> {
  if ('course' in of) {
    return { ...await stepFlown(of.course, of.step, book), seed: crypto.getRandomValues(new Uint32Array(1))[0] as number };
  }
  if ('own' in of) {
    const flight = await flightOf(of.own);
    if (flight === null) throw new RangeError('there is no such run');
    const seed = flight.seed ?? (crypto.getRandomValues(new Uint32Array(1))[0] as number);
    return { ...flight, scenario: (await import('../../sim/index.js')).settled(flight.scenario, seed), seed };
  }
  if ('drill' in of) {
    const drill = (await shelf())[of.drill - 1];
    if (drill === undefined) throw new RangeError(`there is no drill ${of.drill}`);
    return { ...drill, seed: of.seed ?? (crypto.getRandomValues(new Uint32Array(1))[0] as number) };
  }
  if ('practice' in of) {
    const [{ of: set, stopDegPerS }, { practiceScenario }] = await Promise.all([practiceSet(), import('../../sim/index.js')]);
    return { scenario: practiceScenario(set, stopDegPerS, of.practice), airframe: set.airframe, seed: crypto.getRandomValues(new Uint32Array(1))[0] as number };
  }
  const [all, { drawSet }] = await Promise.all([sets(), import('../../sim/index.js')]);
  const set = all[of.set - 1]?.of;
  const run = set === undefined ? undefined : drawSet(set, of.attempt.seed)[of.place];
  const scenario = run === undefined ? undefined : set?.scenarios[run.rate];
  if (set === undefined || run === undefined || scenario === undefined) throw new RangeError('there is no such run');
  return { scenario, airframe: set.airframe, seed: run.seed };
}

