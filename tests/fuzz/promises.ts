/** What every run keeps, whoever flew it: each promise throws with what broke it. */
import { flownRecord, sealed, verify, type RunRecord } from '../../sim/files/index.js';
import {
  advance, debriefOf, dueRows, expand, fly, flyTrainee, numberOf, PROCEDURE_ITEMS, restore, snapshot, STATE_KEYS, withDesk,
  type Command, type Flight, type Flown, type State, type StateKey, type TraineeName,
} from '../../sim/index.js';
import { readRecord } from '../../src/text/index.js';
import type { Flyable, FuzzedRun } from './run-of.js';
import { wordsOf } from './words-of.js';

export function must(ok: boolean, what: string): asserts ok {
  if (!ok) throw new Error(what);
}
/** Told from where the two differ. */
export function same(one: unknown, other: unknown, what: string): void {
  const [here, there] = [JSON.stringify(one), JSON.stringify(other)];
  if (here === there) return;
  let from = 0;
  while (here[from] === there[from]) from += 1;
  from = Math.max(0, from - 60);
  throw new Error(`${what}: ${here.slice(from, from + 200)} against ${there.slice(from, from + 200)}`);
}

const TRUTH = ['driveDeg', 'leftDeg', 'rightDeg', 'speedMps', 'bankRad', 'motorHeat', 'leftTlaDeg', 'fuelKg', 'heightM', 'horn', 'endTick'] as const;
const LATERAL = ['turn', 'goAround', 'selectHeading', 'roll', 'setThrust', 'handRoll', 'setRoll'];

/** What costs least of every run; what costs more of every second or fourth, by its seed. @returns the flight, for whoever counts */
export function keepsAll(flyable: Flyable, { by, pieces, made }: FuzzedRun): Flight {
  const { scenario, airframe, seed } = flyable;
  const flown = by === 'hands' || by === 'desk' ? null : flyTrainee(scenario, airframe, seed, by);
  const all = flown?.commands ?? flyable.log;
  const whole = fly({ scenario, airframe, seed }, all); // the hash throws where a number is none
  // A page files nothing in a run that is over, and no record holds it. What a desk did there would stand in the agenda.
  const log = all.filter(({ tick }) => tick < whole.end.tick);
  const flight = log.length === all.length ? whole : fly({ scenario, airframe, seed }, log);
  same(flight.end, whole.end, 'acts behind the end');
  if (by !== 'desk') same(flight, whole, 'acts of a hand behind the end');
  if (flown !== null) same(flown.flight, whole, 'a trainee and its log');
  if (seed % 4 === 3) same(fly({ scenario, airframe, seed }, [...log].reverse()), flight, 'the same log in another order');
  endsInTime(flyable, log, flight);
  inPieces(flyable, log, flight, pieces);
  figuresHold(flight);
  if (by === 'desk' || seed % 2 === 0) recorded(flyable, log, flight);
  if (by !== 'desk' && seed % 4 === 0) neutralChangesNothing(flyable, log);
  if (!made.noisy && seed % 4 === 1) mirrors(flyable, log);
  if (flown !== null && seed % 4 === 2) seesNothingBefore(flyable, by as TraineeName);
  return flight;
}

function endsInTime({ scenario, airframe, seed }: Flyable, log: readonly Command[], { ticks, end }: Flight): void {
  const { turns } = withDesk(expand(scenario, airframe, seed), log).fixed.agenda;
  const most = scenario.task.limitS * 100 + (turns[turns.length - 1]?.by ?? 0);
  must(ticks <= Math.round(most) && end.tick === ticks, `ended at tick ${ticks} of ${most}`);
}

/** Stepped in any pieces, kept and brought back between, it is the same world. */
function inPieces({ scenario, airframe, seed }: Flyable, log: readonly Command[], { ticks }: Flight, pieces: readonly number[]): void {
  const start = withDesk(expand(scenario, airframe, seed), log);
  const whole = advance(start, log, ticks).state;
  let world = start;
  for (let at = 0; world.state.tick < ticks; at += 1) {
    world = advance(world, log, Math.min(pieces[at % pieces.length] as number, ticks - world.state.tick));
    if (at % 50 === 0) {
      world = { ...world, state: restore(snapshot(world.state)) };
      dueRows(world);
    }
  }
  legal(world.state, airframe.drive.stopDeg);
  for (const key of STATE_KEYS) must(Object.is(numberOf(world.state, key) + 0, numberOf(whole, key) + 0), `in pieces ${key} is ${numberOf(world.state, key)}, at once ${numberOf(whole, key)}`);
}

function legal(s: State, stopDeg: number): void {
  for (const key of STATE_KEYS) must(Number.isFinite(numberOf(s, key)), `${key} is ${numberOf(s, key)}`);
  for (const deg of [s.driveDeg, s.leftDeg, s.rightDeg]) must(deg >= 0 && deg <= stopDeg, `flaps at ${deg} deg of ${stopDeg}`);
  must(s.leadingEdge >= 0 && s.leadingEdge <= 1 && s.gear >= 0 && s.gear <= 1 && Math.abs(s.control) <= 1, 'leading edge, gear or control out of its range');
  must(s.speedMps > 0 && s.motorHeat >= 0 && s.fuelKg >= 0, 'speed, heat or fuel out of its range');
}

function figuresHold({ score, events, procedure, end, outcome, passed }: Flight): void {
  const endS = end.tick / 100;
  for (const atS of [score.onsetS, score.releaseS]) must(atS === null || (atS >= 0 && atS <= endS), `${atS} s in a run of ${endS} s`);
  must((score.growthAtReleaseDeg === null) === (score.afterOnsetS === null), 'growth without a time behind onset');
  must(score.afterOnsetS === null || score.afterOnsetS >= 0, 'a release before its onset');
  events.forEach(({ atS }, at) => must(atS >= (events[at - 1]?.atS ?? 0) && atS <= endS, `an event at ${atS} s`));
  for (const { item, ok, atS, value } of procedure) {
    must(PROCEDURE_ITEMS.includes(item) && (ok === null || typeof ok === 'boolean'), `an item ${item}`);
    must(atS === null || (atS >= 0 && atS <= endS), `${item} at ${atS} s of ${endS}`);
    must(value === null || Number.isFinite(value), `${item}: ${value}`);
  }
  must((passed === null) === (outcome === 'void' || outcome === 'undecided') || passed !== null, `${outcome} and passed ${passed}`);
}

/** Written, read and proved; sealed, proved again; and every word of its debrief can be said. */
function recorded({ scenario, airframe, seed }: Flyable, log: readonly Command[], flight: Flight): void {
  const { end, hash, outcome } = flight;
  const live = log.some(({ rank }) => rank === 1);
  const commands = [...log].sort((a, b) => a.tick - b.tick || a.rank - b.rank || a.seq - b.seq)
    .map((command) => ({ ...command, stampMs: command.tick * 10, ...(command.rank === 1 ? { by: 'desk-1' } : {}) }) as RunRecord['commands'][number]);
  const setting = {
    app: 'fuzz', seed, airframe, scenario: sealed(scenario),
    device: { isolated: false, clockGrainMs: 0.1, renderer: 'none', input: 'script' }, gauge: { pxPerDeg: 4, pixelRatio: 1, mmPerPx: null },
  };
  const record = flownRecord(setting, { tick: end.tick, clock: [{ tick: 0, stampMs: 0 }], commands, marks: [], input: ['keys'], live }, end);
  must(record.hash === hash && record.outcome === outcome, `recorded as ${record.hash} ${record.outcome}, flown as ${hash} ${outcome}`);
  const read = readRecord(JSON.stringify(record), 'r.json');
  if (!read.ok) throw new Error(`its record is refused: ${JSON.stringify(read.problems.slice(0, 2))}`);
  const verdict = verify(read.value);
  must(verdict.ok, `its record is not proved: ${JSON.stringify(verdict.refused.slice(0, 2))}`);
  // A debrief flies the run four times more.
  if (seed % 4 === 0 && !live) return;
  const facts = debriefOf(read.value);
  same(facts.flight, flight, 'a debrief and its run');
  for (const words of wordsOf(facts, read.value)) must(!/undefined|NaN|\bnull\b|Infinity|\[object/.test(words), `says: ${words}`);
}

/** Faults of no strength, put behind all others, leave the truth alone. */
function neutralChangesNothing({ scenario, airframe, seed }: Flyable, log: readonly Command[]): void {
  const when = { atS: 0.5 };
  const neutral = [{ name: 'n0', kind: 'slow', factor: 1, when }, { name: 'n1', kind: 'pointer', mode: 'bias', side: 'left', biasDeg: 0, when }] as const;
  // The slow one is left out where another speeds are in force: the last of two counts.
  const added = scenario.faults.some(({ kind }) => kind === 'slow' || kind === 'pointer') ? [] : neutral;
  const ticks = Math.min(600, scenario.task.limitS * 100);
  const [bare, more] = [scenario.faults, [...scenario.faults, ...added]].map((faults) => advance(expand({ ...scenario, events: [], faults: faults.filter(({ when: of }) => !/after|hazard/.test(JSON.stringify(of))) }, airframe, seed), log, ticks).state) as [State, State];
  for (const key of TRUTH) must(numberOf(bare, key) === numberOf(more, key), `a fault of no strength: ${key} is ${numberOf(more, key)}, without it ${numberOf(bare, key)}`);
}

const swap = (key: string): string => (key.startsWith('left') ? `right${key.slice(4)}` : key.startsWith('right') ? `left${key.slice(5)}` : key);
const FLIPS = ['rollRate', 'bankRad', 'control', 'controlSum', 'onsetSign', 'turnedRad', 'onsetBaseDeg'];

/** With every side the other one, and no noise, the state is the mirrored one to the last bit. */
function mirrors({ scenario, airframe, seed }: Flyable, log: readonly Command[]): void {
  if (scenario.start.liveEngines !== 2 || JSON.stringify(scenario).includes('"drawn"')) return;
  const even = log.filter(({ do: what, rank }) => rank === 2 && !LATERAL.includes(what));
  const events = scenario.events.filter((event) => event.do !== 'clearHeading' && event.do !== 'tellGoAround');
  const other = (one: object): object => ('side' in one ? { ...one, side: one.side === 'left' ? 'right' : 'left' } : one);
  const faults = scenario.faults.filter(({ when }) => !JSON.stringify(when).includes('after'));
  const clean = events.filter((event) => event.do !== 'clearFault' && !JSON.stringify(event.when).includes('after'));
  const plain = { ...scenario, pointerNoise: false, faults, events: clean };
  const ticks = scenario.task.limitS * 100;
  const here = advance(expand(plain, airframe, seed), even, ticks).state;
  const there = advance(expand({ ...plain, faults: faults.map(other) as typeof faults, events: clean.map(other) as typeof clean }, airframe, seed), even, ticks).state;
  for (const key of STATE_KEYS) {
    if (key.startsWith('leadingEdge')) continue;
    const [mine, twin] = [numberOf(here, key), numberOf(there, swap(key) as StateKey)];
    must(twin + 0 === (FLIPS.includes(key) ? -mine : mine) + 0, `mirrored ${key}: ${mine} against ${twin}`);
  }
}

/**
 * What a trainee does before anything has gone wrong is what it does where nothing ever goes wrong. The faults come while
 * the hand has held for some seconds, in a run long enough for it: before the first press nobody could give himself away.
 */
function seesNothingBefore({ scenario, airframe, seed }: Flyable, by: TraineeName): void {
  const faults = scenario.faults.map(({ everyS: _everyS, times: _times, ...fault }) => ({ ...fault, when: { heldS: 3 + (seed % 7) } })) as typeof scenario.faults;
  const task = { ...scenario.task, limitS: Math.min(60, Math.max(30, scenario.task.limitS)) };
  const [wrong, whole] = [faults, []].map((some) => flyTrainee({ ...scenario, task, events: [], faults: some }, airframe, seed, by)) as [Flown, Flown];
  const first = Math.round((wrong.flight.events.find(({ what }) => what === 'fault')?.atS ?? Infinity) * 100);
  const before = ({ commands }: Flown) => commands.filter(({ tick }) => tick < first);
  same(before(wrong), before(whole), 'a trainee knew beforehand');
}
