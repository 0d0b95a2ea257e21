/** How far one person has come in a course: worked out from their runs each time it is asked for, and kept nowhere. */
import { canonical, readyFor, sealed, withFirstLook, type Airframe, type RunRecord, type Scenario } from '../../sim/files/index.js';
import {
  firstLookAt, MODEL_VERSION, nextOf, replay, standOf, type Proposal, type ReadyCourse, type ReadyStep, type StepFacts, type StepRun, type StepStand,
} from '../../sim/index.js';
import { historyFrom, type PersonHistory } from './history.js';
import { nextPlace, taskIn, type Entry } from './logbook/index.js';
import { setNameOf, type ShelvedCourse } from './courses.js';
import type { RunsOf } from './runs.js';
import type { ShelvedSet } from './sets.js';

/** A run in which the fault came that nobody had announced. It enters no figure and no step. */
export interface FirstLook {
  readonly step: number;
  /** Entry of the run. */
  readonly id: string;
  readonly atMs: number;
  readonly outcome: RunRecord['outcome'];
  /** Onset came: without one there was nothing to be seen. */
  readonly parted: boolean;
  /** Let go behind onset, s; null: not let go for it. */
  readonly afterOnsetS: number | null;
  readonly growthDeg: number | null;
  readonly passed: boolean | null;
}

/** Where one person stands, step by step, and what to fly next. */
export interface CourseProgress {
  readonly stands: readonly StepStand[];
  readonly proposal: Proposal;
  readonly firstLook: FirstLook | null;
  readonly history: PersonHistory;
  /** Runs of the steps that are of another model version: flown, but not to be judged here. */
  readonly older: number;
}

/** @throws LogbookTrouble */
export async function progressOf({ of }: Pick<ShelvedCourse, 'of'>, sets: readonly ShelvedSet[], runs: RunsOf): Promise<CourseProgress> {
  const history = await historyFrom(runs, sets);
  const { byStep, looks, counted } = await runsOfSteps(of, runs);
  const facts = of.steps.map((step, at): StepFacts => (step.flies.kind === 'drill' ? { kind: 'drill', runs: byStep[at] ?? [] } : setFacts(step, sets, runs, history)));
  const stands = standOf(of.steps, facts);
  const advised = sets[history.advice.fly - 1]?.of.set;
  const proposal = nextOf({
    steps: of.steps, stands, advice: history.advice, adviceMinutes: advised === undefined ? 0 : Math.round(advised.runs * (advised.legS * 0.5 + 20) / 60),
    practised: practisedIn(runs, counted),
  });
  return { stands, proposal, firstLook: looks[0] ?? null, history, older: byStep.flat().filter(({ outcome, passed }) => passed === null && outcome !== 'void' && outcome !== 'undecided').length };
}

function setFacts(step: ReadyStep, sets: readonly ShelvedSet[], { attempts }: RunsOf, { groups }: PersonHistory): StepFacts {
  const name = setNameOf(step);
  const number = sets.findIndex((one) => one.name === name) + 1;
  const open = attempts.find((one) => one.set === name && nextPlace(one) !== null);
  const seenDeg = step.flies.kind === 'set' ? step.flies.of.set.seenDeg : 0;
  return {
    kind: 'set', seenDeg, groups: groups.filter(({ set }) => set === number),
    underway: open === undefined ? null : { done: open.done.length, runs: open.runs, blocks: open.blocks },
  };
}

/** What is flown with a seed, without what is only told of it: another wording is no other drill. */
function flownKey(scenario: Scenario, airframe: Airframe, seed: number): string {
  const { title: _title, brief: _brief, airframe: _named, ...flown } = sealed(readyFor(scenario, airframe, seed));
  return canonical({ flown, airframe });
}

/** The steps that a scenario is flown for. */
interface Meaning {
  readonly steps: readonly number[];
  readonly firstLook: boolean;
}

/** Finds what a run means. A step whose numbers are drawn is another scenario with each seed. */
function meaningsIn(of: ReadyCourse): (run: Pick<RunRecord, 'scenario' | 'airframe' | 'seed'>) => Meaning | undefined {
  const isDrawn = (step: ReadyStep): boolean => step.flies.kind === 'drill' && step.flies.scenario.parameters !== undefined;
  const still = meanings(of, 0, (step) => !isDrawn(step));
  const drawn = of.steps.some(isDrawn);
  return ({ scenario, airframe, seed }) => {
    const key = flownKey(scenario, airframe, seed);
    return still.get(key) ?? (drawn ? meanings(of, seed, isDrawn).get(key) : undefined);
  };
}

function meanings({ steps, firstLook }: ReadyCourse, seed: number, taken: (step: ReadyStep) => boolean): Map<string, Meaning> {
  const found = new Map<string, Meaning>();
  const add = (key: string, step: number, isLook: boolean): void => void found.set(key, { steps: [...found.get(key)?.steps ?? [], step], firstLook: isLook });
  steps.forEach((step, at) => {
    const { flies } = step;
    if (flies.kind !== 'drill' || !taken(step)) return;
    add(flownKey(flies.scenario, flies.airframe, seed), at, false);
    if (firstLook?.among.includes(at) === true) add(flownKey(withFirstLook(flies.scenario, firstLook.fault), flies.airframe, seed), at, true);
  });
  return found;
}

interface StepRuns {
  /** Runs of each step, oldest first. */
  readonly byStep: readonly (readonly StepRun[])[];
  readonly looks: readonly FirstLook[];
  /** Ids of the entries that count for a step. */
  readonly counted: ReadonlySet<string>;
}

/** A run that a page was left in, or that was stopped, was not flown to its end. */
const isFlown = ({ attempt, source, abandoned }: Entry): boolean => attempt === null && source === 'flown' && !abandoned;

async function runsOfSteps(of: ReadyCourse, { entries, record }: RunsOf): Promise<StepRuns> {
  const meaningOf = meaningsIn(of);
  // Told by its entry, a run of another task need not be opened.
  const tasks = new Set(of.steps.flatMap(({ flies }) => (flies.kind === 'drill' ? [taskIn(flies)] : [])));
  const byStep = of.steps.map((): StepRun[] => []);
  const looks: FirstLook[] = [];
  const counted = new Set<string>();
  for (const entry of entries) {
    if (!isFlown(entry) || !tasks.has(entry.task)) continue;
    const run = await record(entry.id);
    const means = run === null || run.end.why === 'stopped' ? undefined : meaningOf(run);
    if (run === null || means === undefined) continue;
    counted.add(entry.id);
    const passed = passedIn(run);
    if (means.firstLook) {
      const { onsetS, afterOnsetS, growthAtReleaseDeg } = run.score;
      looks.push({ step: means.steps[0] as number, id: entry.id, atMs: entry.atMs, outcome: run.outcome, parted: onsetS !== null, afterOnsetS, growthDeg: growthAtReleaseDeg, passed });
    } else for (const step of means.steps) byStep[step]?.push({ atMs: entry.atMs, seed: run.seed, outcome: run.outcome, passed, assisted: (run.device.assisted ?? []).length > 0 });
  }
  return { byStep, looks, counted };
}

/** What was worked out already, by the digest of the record: a replay takes a while. */
const judged = new Map<string, boolean | null>();
const GOOD: readonly RunRecord['outcome'][] = ['caught', 'held', 'completed'];
const OPEN: readonly RunRecord['outcome'][] = ['void', 'undecided'];

/** Whether a run passed; the record stores its outcome, and the procedure is in its replay alone. */
function passedIn(run: RunRecord): boolean | null {
  if (run.model !== MODEL_VERSION || OPEN.includes(run.outcome)) return null;
  if (!GOOD.includes(run.outcome)) return false;
  const before = judged.get(run.digest);
  if (before !== undefined) return before;
  const { passed } = replay(run);
  judged.set(run.digest, passed);
  return passed;
}

const TRIALS: readonly RunRecord['outcome'][] = ['caught', 'late', 'missed', 'falseRelease', 'held'];

/** Runs of practice are those of no drill, no step and no set that decided something. */
function practisedIn({ entries }: RunsOf, counted: ReadonlySet<string>): { ever: number; since: number } {
  const lastOfSet = entries.reduce((last, { attempt, atMs }) => (attempt === null ? last : Math.max(last, atMs)), -Infinity);
  const practice = entries.filter((entry) => isFlown(entry) && entry.drill === null && !counted.has(entry.id) && TRIALS.includes(entry.outcome));
  return { ever: practice.length, since: practice.filter(({ atMs }) => atMs > lastOfSet).length };
}

/** What is flown for a step: its drill, or, where the dice have it so and it was not met yet, the same with a fault. */
export async function flownFor({ of }: Pick<ShelvedCourse, 'of'>, step: number, seed: number, runs: RunsOf): Promise<{ scenario: Scenario; airframe: Airframe }> {
  const flies = of.steps[step]?.flies;
  if (flies?.kind !== 'drill') throw new RangeError(`step ${step} is no drill`);
  const { scenario, airframe } = flies;
  if (of.firstLook?.among.includes(step) !== true) return { scenario, airframe };
  const { byStep, looks } = await runsOfSteps(of, runs);
  const comes = looks.length === 0 && firstLookAt(of.firstLook.among, seed, (place) => (byStep[place]?.length ?? 0) > 0) === step;
  return { scenario: comes ? withFirstLook(scenario, of.firstLook.fault) : scenario, airframe };
}

/** Whether a run is the first look of one of these courses. */
export const isFirstLook = (courses: readonly Pick<ShelvedCourse, 'of'>[], run: Pick<RunRecord, 'scenario' | 'airframe' | 'seed'>): boolean =>
  courses.some(({ of }) => of.firstLook !== null && meaningsIn(of)(run)?.firstLook === true);

