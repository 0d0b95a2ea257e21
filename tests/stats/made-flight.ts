// Flights of a set as a logbook keeps them: flown by a scripted trainee, told as if by hand.
import { composeRecord, scriptedRecord, type RunRecord } from '../../sim/files/index.js';
import { drawSet, flyTrainee, MODEL_VERSION, TRAINEE_NUMBERS, watcherOf, type FlightOfSet, type ReadySet, type TraineeNumbers } from '../../sim/index.js';

/** Records of a whole set. */
export function flownRecords(of: ReadySet, seed: number, numbers: TraineeNumbers = TRAINEE_NUMBERS.steady, runs = of.set.runs): RunRecord[] {
  const watcher = watcherOf(numbers, seed);
  return drawSet(of, seed).slice(0, runs).map(({ rate, seed: dice }) => {
    const scenario = of.scenarios[rate] as (typeof of.scenarios)[number];
    const { commands, flight: { end, hash, outcome, score } } = flyTrainee(scenario, of.airframe, dice, watcher);
    const made = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed: dice, airframe: of.airframe, scenario, commands, end, hash, outcome, score });
    const { format: _format, digest: _digest, ...parts } = made;
    return composeRecord({ ...parts, source: 'flown', device: { ...made.device, input: 'mouse' }, gauge: { ...made.gauge, pxPerDeg: 4.61 } });
  });
}

export const madeFlight = (of: ReadySet, records: readonly RunRecord[], more: Partial<FlightOfSet> = {}): FlightOfSet =>
  ({ id: 'a', name: '', startedMs: 0, runs: of.set.runs, leftOff: false, set: 1, of, records, ...more });
