/** Records of a set as trials: time from the first press, growth as scored, what is no release, and the same counts as the set's own. */
import { describe, expect, it } from 'vitest';
import { scriptedRecord, type RunRecord } from '../../sim/files/index.js';
import { drawSet, flownSet, flyTrainee, MODEL_VERSION, trialOfRun, watcherOf, TRAINEE_NUMBERS } from '../../sim/index.js';
import { shippedSet } from '../set/shipped.js';

const of = shippedSet('short');
const person = watcherOf(TRAINEE_NUMBERS.steady, 3);
const records: RunRecord[] = drawSet(of, 3).map(({ rate, seed }) => {
  const scenario = of.scenarios[rate] as (typeof of.scenarios)[number];
  const { commands, flight } = flyTrainee(scenario, of.airframe, seed, person);
  const { end, hash, outcome, score } = flight;
  return scriptedRecord({ model: MODEL_VERSION, app: 'test', seed, airframe: of.airframe, scenario, commands, end, hash, outcome, score });
});

describe('a record as a trial', () => {
  const rates = new Map([[0, 0.15], [-1, 0.3]]);
  it('counts its time from the first press', () => {
    for (const record of records) {
      const trial = trialOfRun(record, rates);
      const pressS = (record.commands.find(({ do: what }) => what === 'holdDrive')?.tick ?? NaN) / 100;
      expect(trial.endS).toBeCloseTo(record.end.tick / 100 - pressS, 12);
      expect((trial.onsetS ?? -pressS) + pressS).toBeCloseTo(record.score.onsetS ?? 0, 9);
      expect(trial.outcome).toBe(record.outcome);
      if (record.outcome === 'caught' || record.outcome === 'late') expect(trial.growthDeg).toBe(record.score.growthAtReleaseDeg);
    }
  });
  it('takes an arrival for holding, and what is no outcome of a trial for void', () => {
    const [first] = records as [RunRecord];
    expect(trialOfRun({ ...first, outcome: 'held' }, rates).releaseS).toBe(null);
    expect(trialOfRun({ ...first, outcome: 'lost' }, rates).outcome).toBe('void');
  });
});

describe('a set', () => {
  it('comes to the counts of its runs; assisted, void and a changed gauge are told', () => {
    const flown = flownSet(of, records);
    const caught = records.filter(({ outcome }) => outcome === 'caught').length;
    expect([flown.counts.runs, flown.counts.caught, flown.person.outcomes.caught]).toEqual([12, caught, caught]);
    expect([flown.void, flown.assisted, flown.gaugeChanged]).toEqual([0, 0, false]);
    const [first, ...rest] = records as [RunRecord, ...RunRecord[]];
    const odd: RunRecord = { ...first, outcome: 'void', device: { ...first.device, assisted: ['latchedHold'] }, gauge: { ...first.gauge, pxPerDeg: 3 } };
    expect(flownSet(of, [odd, ...rest])).toMatchObject({ void: 1, assisted: 1, gaugeChanged: true });
  });
});
