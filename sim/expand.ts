/** Scenario + airframe + seed -> the world at tick 0. All dice are thrown here, once; the tick throws none. */
import { agendaOf } from './agenda-of.js';
import type { Airframe } from './files/airframe.js';
import type { ReadyScenario } from './ready.js';
import { pressureRatio, soundSpeed, tasOfCas } from './flight/atmosphere.js';
import { drag, dynamicPressure } from './flight/motion.js';
import { leverOfFraction, thrustAvailable } from './flight/thrust.js';
import type { World } from './fixed.js';
import { QUIET, throwNoise } from './noise.js';
import { prepare, type Prepared } from './prepare.js';
import { initialState, withNumbers, type State } from './state.js';
import { AFTER_BLOW_BACK_TICKS, AFTER_TICKS, type EndMode, type TaskRule } from './task/rule.js';
import { FT, RAD, ticksOf } from './units.js';

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
    agenda: agendaOf(scenario, seed, task.limitTicks), seed,
    noise: scenario.pointerNoise ? throwNoise(airframe, seed, task.limitTicks) : QUIET,
    otherFlies: scenario.role === 'driving',
    headingRad: (scenario.start.headingDeg ?? EAST_DEG) * RAD,
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
    turns: [],
  };
}

/** Heading at the start where the scenario gives none, deg. */
const EAST_DEG = 90;

function startState(scenario: ReadyScenario, prepared: Prepared): State {
  const { start } = scenario;
  const n = prepared.flight;
  const heightM = start.altitudeFt * FT;
  const out = start.leadingEdge === 'out' ? 1 : 0;
  const down = start.gear === 'down' ? 1 : 0;
  const s = withNumbers(initialState(), {
    guardOpen: start.guard === 'open' ? 1 : 0,
    flapLeverDeg: start.flapLeverDeg, driveDeg: start.flapDeg, leftDeg: start.flapDeg, rightDeg: start.flapDeg,
    motorHeat: start.motorHeat,
    leadingEdge: out, leadingEdgeGoing: out, gear: down, gearLever: down,
    heightM, levelAtM: heightM,
    mainDrive: scenario.mainDrive === 'works' ? 1 : 0,
    casKt: start.speedKt, selectedKt: start.speedKt, speedMps: tasOfCas(start.speedKt, heightM),
    speedHold: scenario.speedHold ? 1 : 0,
    rightLive: start.liveEngines === 2 ? 1 : 0,
  });
  const q = dynamicPressure(s.speedMps, heightM);
  const available = thrustAvailable(n, pressureRatio(heightM), s.speedMps / soundSpeed(heightM));
  const wanted = drag(n, s, s.leftDeg, s.rightDeg, q, n.weightN) / ((s.latched.leftLive + s.latched.rightLive) * available);
  const idle = n.leverMap[0]?.fraction ?? 0;
  const fraction = Math.min(1, Math.max(idle, wanted));
  const tla = leverOfFraction(n, fraction);
  s.leftTlaDeg = s.rightTlaDeg = tla;
  s.leftThrust = fraction;
  s.rightThrust = s.latched.rightLive === 1 ? fraction : 0;
  return s;
}
