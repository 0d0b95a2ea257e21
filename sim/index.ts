/**
 * Evenhand's model as a library: plain data, plain functions; no page, no clock, no dice in the tick, no I/O.
 * A run: `expand` a ready scenario with a seed, `advance` it with commands, or `fly` a whole log and read what it came to.
 */
export { advance, MODEL_VERSION } from './world.js';
export type { Fixed, World } from './fixed.js';
export { expand, hazardTicks } from './expand.js';
export { byOrder, type Command, type Rank } from './command.js';
export { copyState, initialState, restore, snapshot, STATE_KEYS, type State, type StateKey } from './state.js';
export { startHash, type Hash } from './hash.js';
export { growth, leftPointer, rightPointer, shownDifference } from './pointers.js';
export { limitKtNow, limitNow, lowestNow, manoeuvreKt, type Limit, type LimitSource } from './marks.js';
export { segmentOf, stampOfTick, tickInSegment, tickOfStamp, type ClockSegment } from './stamp.js';
export { FT, KT, secondsOf, ticksOf, TICKS_PER_S } from './units.js';
export { run, runBy, type Pilot, type Run } from './replay.js';
export { END_WHYS, type EndWhy } from './task/rule.js';
export { fly, judge, type Flight, type FlightRequest, type Timing } from './score/flight.js';
export { ONE_DEGREE, type RunEvent } from './score/events.js';
export { PROCEDURE_ITEMS, type ProcedureItem } from './score/items/item.js';
export { passedOf } from './score/procedure.js';
export { traceRow, traceRows, type TraceRow } from './score/trace.js';
export { commandsOfRecord, isVoided, replay, requestOf, timingOf } from './score/replayed.js';
export { debriefOf, type Debrief } from './score/debrief.js';
export type { Callout } from './score/callouts.js';
export type { DebriefRow } from './score/debrief-row.js';
export { commandsOf, flyInputs, flyTrainee, pilotOf, type Flown, type Trainee } from './trainee/fly.js';
export { TRAINEE_NUMBERS, TRAINEES, type TraineeName, type TraineeNumbers } from './trainee/numbers.js';
export { watcherOf, watchOf, type Watch, type Watcher } from './trainee/watcher.js';
export { dice, diceOf, type Dice } from './dice.js';
export { bankOfLoad, speedsOf, type SettingSpeeds, type Speeds } from './advise/speeds.js';
export { BUDGET_FAULTS, budgetOf, type Budget, type BudgetFault, type BudgetRequest } from './advise/budget.js';
export { hornAngle, hornRule, type HornThresholds } from './warning/horn.js';
export { flyRow, type SweepRow } from './sweep/row.js';
export { seedsOf } from './sweep/seeds.js';
export { flyPart, partsOf, together, type Part, type Rows, type SweepOrder } from './sweep/parts.js';
export { summaryOf, type OutcomeShare, type SweepSummary } from './sweep/summary.js';
export { difficultyOf, type Difficulty } from './sweep/difficulty.js';
export { shareOf, type Share } from './sweep/share.js';
export { quantileOf, spreadOf, type Spread } from './sweep/spread.js';
