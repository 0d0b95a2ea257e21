/** From what was typed on the command line to a scenario, an inputs file or a record that is right. */
import { readySet, TRAINEES, type ReadySet, type Trainee, type Trial } from '../../sim/index.js';
import { airframeOf, type Airframe, baseOf, type Inputs, numbersOf, readyFor, type ReadyScenario, type RunRecord, type Scenario } from '../../sim/files/index.js';
import { looksLikeSet, nearest, readAirframe, readInputs, readRecord, readScenario, readSet, readTrainee, readTrials, type Read, type Values } from '../text/index.js';
import { readText } from './paper.js';
import { counted } from './problems.js';
import { airframeNames, drillNames, drillPath, setNames, setPath } from './places.js';
import { airframes, drills } from './shipped.js';
import { Trouble } from './trouble.js';

/** A set by path, or a shipped one by name, ready to be flown; null for what is no set. @throws Trouble with every problem of the file. */
export function openSet(typed: string): ReadySet | null {
  const name = /^[a-z0-9-]{1,64}$/.test(typed);
  const file = name ? setPath(typed) : typed;
  if (file === null || (name && drillPath(typed) !== null)) return null;
  const text = readText(file);
  if (!looksLikeSet(text, file)) return null;
  const set = used(readSet(text, file, airframes(), drills()), file);
  const found = baseOf(set, airframes(), drills());
  return 'base' in found ? readySet(set, found.base, found.airframe) : null;
}

/**
 * A scenario by path, or a shipped drill by name; what is drawn in it is still to be drawn.
 * @param values numbers of its parameters, set beforehand @throws Trouble with every problem of the file.
 */
export function openDrill(typed: string, values: Values): { scenario: Scenario; airframe: Airframe } {
  const lookup = airframes();
  const file = fileOf(typed);
  const scenario = used(readScenario(readText(file), file, lookup, values), file);
  const airframe = airframeOf(scenario, lookup);
  if (airframe === undefined) throw new Trouble(`${file}: its airframe is not there`);
  return { scenario, airframe };
}

/** The same, ready to be flown with the dice of a seed. @throws Trouble with every problem of the file. */
export function openScenario(typed: string, seed: number, values: Values = {}): { scenario: ReadyScenario; airframe: Airframe } {
  const { scenario, airframe } = openDrill(typed, values);
  return { scenario: readyFor(scenario, airframe, seed), airframe };
}

/** Plain words are names of drills; anything with a dot or a slash is a path. */
function fileOf(typed: string): string {
  if (!/^[a-z0-9-]{1,64}$/.test(typed)) return typed;
  const shipped = drillPath(typed);
  if (shipped !== null) return shipped;
  if (setPath(typed) !== null) throw new Trouble(`"${typed}" is a set, not a drill: evenhand run flies it.`);
  const near = nearest(typed, [...drillNames(), ...setNames()]);
  const hint = near === null ? `Shipped: ${drillNames().join(', ')}.` : `Did you mean ${near}?`;
  throw new Trouble(`There is no shipped drill "${typed}". ${hint} A file is named by its path: ./${typed}`);
}

/** A shipped airframe by name, or an airframe file by path. @throws Trouble with every problem of the file. */
export function openAirframe(typed: string): Airframe {
  if (/^[a-z0-9-]{1,64}$/.test(typed)) {
    const shipped = airframes()(typed);
    if (shipped === undefined) throw new Trouble(`There is no shipped airframe "${typed}". Shipped: ${airframeNames().join(', ')}. A file is named by its path: ./${typed}`);
    return shipped;
  }
  return used(readAirframe(readText(typed), typed), typed);
}

/** A scripted trainee by name, or the numbers of a trainee file by path. @throws Trouble with every problem of the file. */
export const openTrainee = (typed: string): Trainee => TRAINEES.find((one) => one === typed) ?? numbersOf(used(readTrainee(readText(typed), typed), typed));

/** The acts of a hand on an airframe. @throws Trouble with every problem of the file, a flap lever at none of its settings among them */
export const openInputs = (file: string, airframe: Airframe): Inputs => used(readInputs(readText(file), file, airframe), file);
/** A table of trials. @throws Trouble with every problem of the file. */
export const openTrials = (file: string): Trial[] => used(readTrials(readText(file), file), file);
export const openRecord = (file: string): RunRecord => used(readRecord(readText(file), file), file);

function used<T>(read: Read<T>, file: string): T {
  if (read.ok) return read.value;
  throw new Trouble(`${file} has ${counted(read.problems.length + read.more, 'problem')}; nothing of it is used.`, read);
}
