/** Scenario + airframe + seed -> the world at tick 0. All dice are thrown here, once; the tick throws none. */
import { dice, type Dice } from './dice.js';
import {
  MOST_CROSSINGS, MOST_ENTRIES, MOST_MEMOS, type Agenda, type Condition, type DrawnEvent, type DrawnFault, type Entry, type Side,
} from './entry.js';
import type { Airframe } from './files/airframe.js';
import type { ScenarioEvent } from './files/event.js';
import type { Fault } from './files/fault.js';
import type { ReadyScenario } from './ready.js';
import type { Trigger } from './files/trigger.js';
import { pressureRatio, soundSpeed, tasOfCas } from './flight/atmosphere.js';
import { drag, dynamicPressure } from './flight/motion.js';
import { leverOfFraction, thrustAvailable } from './flight/thrust.js';
import type { World } from './fixed.js';
import { QUIET, throwNoise } from './noise.js';
import { exp } from './portable.js';
import { prepare, type Prepared } from './prepare.js';
import { initialState, type State } from './state.js';
import { AFTER_BLOW_BACK_TICKS, AFTER_TICKS, type EndMode, type TaskRule } from './task/rule.js';
import { DT, FT, ticksOf } from './units.js';

/**
 * The world at the start of a run.
 * @param seed unsigned 32-bit whole number
 * @param whole the run lasts its whole time whatever happens (scripted inputs)
 * @throws RangeError for a seed out of range, or a scenario with more entries, crossings or names than the state can latch
 */
export function expand(scenario: ReadyScenario, airframe: Airframe, seed: number, whole = false): World {
  const prepared = prepare(airframe, scenario.start.massT);
  const task = taskRule(scenario, airframe, whole);
  const { drive, flight, horn, gearPerTick } = prepared;
  const fixed = { // written out: a spread would give each run a shape of its own, and the tick would pay for it
    drive, flight, horn, gearPerTick, task,
    agenda: agendaOf(scenario, seed, task.limitTicks),
    noise: scenario.pointerNoise ? throwNoise(airframe, seed, task.limitTicks) : QUIET,
    groundM: scenario.start.groundFt * FT,
  };
  return { fixed, state: startState(scenario, prepared) };
}

function taskRule(scenario: ReadyScenario, airframe: Airframe, whole: boolean): TaskRule {
  const { recognition, task, faults } = scenario;
  const mode: EndMode = whole ? 'whole' : recognition === undefined ? 'drill' : 'scored';
  return {
    settings: task.settings, limitTicks: ticksOf(task.limitS), legTicks: task.legS === undefined ? Infinity : ticksOf(task.legS), mode,
    recognition: recognition !== undefined,
    limitDeg: recognition?.limitDeg ?? airframe.recognition.limitDeg,
    seenDeg: recognition?.seenDeg ?? 0.1,
    afterTicks: task.afterS !== undefined ? ticksOf(task.afterS)
      : mode === 'drill' && faults.some(({ kind }) => kind === 'blowback') ? AFTER_BLOW_BACK_TICKS : AFTER_TICKS,
  };
}

function startState(scenario: ReadyScenario, prepared: Prepared): State {
  const { start } = scenario;
  const n = prepared.flight;
  const s = initialState();
  s.guardOpen = start.guard === 'open' ? 1 : 0;
  s.flapLeverDeg = start.flapLeverDeg;
  s.driveDeg = s.leftDeg = s.rightDeg = start.flapDeg;
  s.motorHeat = start.motorHeat;
  s.leadingEdge = s.leadingEdgeGoing = start.leadingEdge === 'out' ? 1 : 0;
  s.gear = s.gearLever = start.gear === 'down' ? 1 : 0;
  s.heightM = start.altitudeFt * FT;
  s.casKt = s.selectedKt = start.speedKt;
  s.speedMps = tasOfCas(start.speedKt, s.heightM);
  s.speedHold = scenario.speedHold ? 1 : 0;
  s.rightLive = start.liveEngines === 2 ? 1 : 0;
  const q = dynamicPressure(s.speedMps, s.heightM);
  const available = thrustAvailable(n, pressureRatio(s.heightM), s.speedMps / soundSpeed(s.heightM));
  const wanted = drag(n, s, s.leftDeg, s.rightDeg, q, n.weightN) / ((s.leftLive + s.rightLive) * available);
  const idle = n.leverMap[0]?.fraction ?? 0;
  const fraction = Math.min(1, Math.max(idle, wanted));
  const tla = leverOfFraction(n, fraction);
  s.leftTlaDeg = s.rightTlaDeg = tla;
  s.leftThrust = fraction;
  s.rightThrust = s.rightLive === 1 ? fraction : 0;
  return s;
}

function agendaOf(scenario: ReadyScenario, seed: number, limitTicks: number): Agenda {
  const names = new Map<string, number>();
  const things: (Fault | ScenarioEvent)[] = [...scenario.faults, ...scenario.events];
  for (const thing of things) noteAfter(thing.when, names);
  const counts = { leaves: 0 };
  const entries = things.map((thing, place): Entry => {
    const hazard = dice(seed, `hazard ${place}`);
    const sided = 'side' in thing && thing.side === 'drawn' ? { ...thing, side: drawnSide(seed, place) } : thing;
    const timed = thing.when.atS !== undefined;
    return {
      place, name: thing.name ?? null,
      tick: timed ? ticksOf(thing.when.atS ?? 0) : -1,
      when: timed ? null : condition(thing.when, names, counts, hazard, limitTicks),
      memo: thing.name === undefined ? -1 : names.get(thing.name) ?? -1,
      fault: 'kind' in sided ? sided as DrawnFault : null,
      event: 'do' in sided ? sided as DrawnEvent : null,
    };
  });
  if (entries.length > MOST_ENTRIES) throw new RangeError(`${entries.length} faults and events; at most ${MOST_ENTRIES}`);
  if (counts.leaves > MOST_CROSSINGS) throw new RangeError(`${counts.leaves} crossings; at most ${MOST_CROSSINGS}`);
  if (names.size > MOST_MEMOS) throw new RangeError(`${names.size} names behind after; at most ${MOST_MEMOS}`);
  const timed = entries.filter((entry) => entry.when === null).sort((a, b) => a.tick - b.tick || a.place - b.place);
  return { entries, timed, watched: entries.filter((entry) => entry.when !== null) };
}

const drawnSide = (seed: number, place: number): Side => (dice(seed, `side ${place}`).uniform() < 0.5 ? 'left' : 'right');

function noteAfter(when: Trigger, names: Map<string, number>): void {
  if (when.after !== undefined && !names.has(when.after)) names.set(when.after, names.size);
  for (const inner of [...(when.all ?? []), ...(when.any ?? [])]) noteAfter(inner, names);
}

function condition(
  when: Trigger, names: Map<string, number>, counts: { leaves: number }, hazard: Dice, limitTicks: number,
): Condition {
  const crossing = (of: 'driveDeg' | 'casKt' | 'heightM', at: number): Condition =>
    ({ kind: 'crossing', of, at, edge: when.edge ?? 'either', leaf: counts.leaves++ });
  const inner = (triggers: readonly Trigger[]): Condition[] =>
    triggers.map((trigger) => condition(trigger, names, counts, hazard, limitTicks));
  if (when.atS !== undefined) return { kind: 'tick', tick: ticksOf(when.atS) };
  if (when.flapDeg !== undefined) return crossing('driveDeg', when.flapDeg);
  if (when.speedKt !== undefined) return crossing('casKt', when.speedKt);
  if (when.altitudeFt !== undefined) return crossing('heightM', when.altitudeFt * FT);
  if (when.heldS !== undefined) return { kind: 'held', ticks: ticksOf(when.heldS) };
  if (when.after !== undefined) return { kind: 'after', memo: names.get(when.after) as number, delayTicks: ticksOf(when.delayS ?? 0) };
  if (when.hazardPerS !== undefined) return { kind: 'held', ticks: strikeTicks(when, hazard.uniform(), limitTicks) };
  if (when.all !== undefined) return { kind: 'all', of: inner(when.all) };
  if (when.any !== undefined) return { kind: 'any', of: inner(when.any) };
  throw new Error('a trigger without a kind');
}

/** The trigger of a hazard. */
type Hazard = Pick<Trigger, 'hazardPerS' | 'hazardFromS' | 'hazardForS'>;

/** Held ticks until the hazard of a trigger strikes: flat inside its window, none before and none behind. Infinity for never. */
function strikeTicks({ hazardPerS = 0, hazardFromS = 0, hazardForS }: Hazard, u: number, limitTicks: number): number {
  return ticksOf(hazardFromS) + hazardTicks(hazardPerS, u, hazardForS === undefined ? limitTicks : ticksOf(hazardForS));
}

/** The same for the trigger at a place of the file, by the seed of a run: whoever draws sets knows it without flying. */
export const hazardStrikes = (when: Hazard, seed: number, place: number, limitTicks: number): number =>
  strikeTicks(when, dice(seed, `hazard ${place}`).uniform(), limitTicks);

/**
 * Held ticks until a flat hazard strikes: the chance of no strike shrinks by the same factor each tick until it falls
 * below `u`. Exact for any rate and needs no logarithm. Behind the limit of the run it never strikes.
 * @param u uniform in (0, 1)
 */
export function hazardTicks(hazardPerS: number, u: number, limitTicks: number): number {
  const kept = exp(-hazardPerS * DT);
  let survival = 1;
  for (let ticks = 1; ticks <= limitTicks; ticks += 1) {
    survival *= kept;
    if (survival < u) return ticks;
  }
  return Infinity;
}
