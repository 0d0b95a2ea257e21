/** Whole runs and what is said of them: the fraction of a tick at the stamp, arrivals, procedure, and the trainees' own figures. */
import { describe, expect, it } from 'vitest';
import { debriefOf, expand, fly, flyTrainee, MODEL_VERSION, run, shownDifference, traceRows, type Command } from '../../sim/index.js';
import { growth } from '../../sim/pointers.js';
import { requestOf } from '../../sim/score/replayed.js';
import { scriptedRecord, verify } from '../../sim/files/index.js';
import { AIRFRAME, drill, scenario } from '../sim/bench.js';

const at = (tick: number, act: object, seq: number) => ({ ...act, tick, rank: 2, seq }) as Command;
const stop = { faults: [{ name: 'stop', kind: 'disconnect', side: 'right', when: { heldS: 5 } }], recognition: {} };
const driving = [at(0, { do: 'arm' }, 0), at(0, { do: 'setFlapLever', settingDeg: 16 }, 1), at(0, { do: 'holdDrive', way: 'extend' }, 2)];

describe('growth at release', () => {
  const made = scenario(stop);
  const log = [...driving, at(1500, { do: 'releaseDrive' }, 3)];
  const atFraction = (fraction: number) => fly({ scenario: made, airframe: AIRFRAME, seed: 1, timing: { fractionAt: () => fraction, firstFrameS: () => null, voided: false } }, log).score;

  it('is linear between the ends of the tick that holds the stamp', () => {
    const world = expand(made, AIRFRAME, 1);
    const ends: number[] = [];
    run(world, log, (s) => { if (s.tick === 1500 || s.tick === 1501) ends.push(growth(s, world.fixed.noise)); }, 1501);
    const [from, to] = ends as [number, number];
    expect(to).toBeGreaterThan(from);
    expect(atFraction(0).growthAtReleaseDeg).toBe(from);
    expect(atFraction(0.25).growthAtReleaseDeg).toBeCloseTo(from + 0.25 * (to - from), 14);
    expect(atFraction(0.999).growthAtReleaseDeg).toBeCloseTo(to, 5);
    expect(atFraction(0.5).releaseS).toBe(15.005);
  });
  it('final split is the true one, behind drop-out and braking', () => {
    const { growthAtReleaseDeg, finalSplitDeg } = atFraction(0);
    // 0.08 s at the rate of one side driving, and braking: 0.017 deg by the model's release budget.
    expect(finalSplitDeg - (growthAtReleaseDeg ?? 0)).toBeCloseTo(0.017, 2);
  });
});

describe('arrivals', () => {
  const quiet = scenario({ start: { flapDeg: 14 }, recognition: {} });
  const driveTo = (deg: number, keys: object = {}): Command[] => {
    const made = scenario({ start: { flapDeg: 14 }, recognition: {}, ...keys });
    const rows = traceRows({ scenario: made, airframe: AIRFRAME, seed: 1 }, driving, 5000, 1);
    const tick = rows.findIndex((row) => Math.max(row.leftDeg, row.rightDeg) >= deg);
    return [...driving, at(tick, { do: 'releaseDrive' }, 3)];
  };
  const outcome = (log: Command[], made = quiet) => fly({ scenario: made, airframe: AIRFRAME, seed: 1 }, log).outcome;
  it('within half a degree of the last setting: held when quiet; sooner it is a false release', () => {
    expect(outcome(driveTo(15.51))).toBe('held');
    expect(outcome(driveTo(15.4))).toBe('falseRelease');
  });
  it('with a degree shown and no call: missed; called within 5 s it is a reaction', () => {
    const keys = { faults: [{ name: 'f', kind: 'disconnect', side: 'left', when: { flapDeg: 14.2 } }] };
    const made = scenario({ start: { flapDeg: 14 }, recognition: {}, ...keys });
    const log = driveTo(15.9, keys);
    expect(outcome(log, made)).toBe('missed');
    const tick = log.at(-1)?.tick ?? 0;
    expect(outcome([...log, at(tick + 400, { do: 'callSplit' }, 4)], made)).toBe('caught');
  });
  it('at a setting before the last neither scores nor ends anything', () => {
    const made = scenario({ start: { flapDeg: 8 }, task: { settings: [9, 16], limitS: 60 }, recognition: {} });
    const { score, outcome: came } = fly({ scenario: made, airframe: AIRFRAME, seed: 1 }, [...driving, at(550, { do: 'releaseDrive' }, 3)]);
    expect(score.releaseS).toBe(null);
    expect(came).toBe('held');
  });
});

describe('procedure', () => {
  const items = (log: Command[], made = scenario(stop)) => Object.fromEntries(fly({ scenario: made, airframe: AIRFRAME, seed: 1 }, log).procedure.map(({ item, ok }) => [item, ok]));
  const released = at(1500, { do: 'releaseDrive' }, 5);
  it('lever at the setting before the drive; behind it is not', () => {
    expect(items([...driving, released])['leverFirst']).toBe(true);
    const late = [at(0, { do: 'arm' }, 0), at(0, { do: 'holdDrive', way: 'extend' }, 1), at(100, { do: 'setFlapLever', settingDeg: 16 }, 2), released];
    expect(items(late)['leverFirst']).toBe(false);
  });
  it('the call counts within 5 s of the release', () => {
    expect(items([...driving, released, at(2000, { do: 'callSplit' }, 6)])['splitCalled']).toBe(true);
    expect(items([...driving, released, at(2001, { do: 'callSplit' }, 6)])['splitCalled']).toBe(false);
    expect(items([...driving, released])['splitCalled']).toBe(false);
  });
  it('a press behind a split is a fault; without a split nobody asks', () => {
    expect(items([...driving, released])['leftAlone']).toBe(true);
    expect(items([...driving, released, at(1700, { do: 'holdDrive', way: 'extend' }, 6)])['leftAlone']).toBe(false);
    expect(items([...driving, released], scenario({ recognition: {} }))['leftAlone']).toBe(null);
  });
  it('speed past the limit is told', () => {
    const fast = [...driving, at(0, { do: 'selectSpeed', speedKt: 225 }, 4), released];
    expect(items(fast)['insideLimit']).toBe(true);
    const faster = scenario({ ...stop, start: { speedKt: 212 } }); // lever at 16: limit 210
    expect(items([...driving, released], faster)['insideLimit']).toBe(false);
  });
});

describe('scripted trainees', () => {
  const made = drill('set-16-from-4');
  it.each([['prompt', 1], ['slow', 6]] as const)('%s lets go so long behind one degree of shown split, and calls 1 s later', (name, seconds) => {
    for (const seed of [1, 2, 3]) {
      const { commands, flight } = flyTrainee(made, AIRFRAME, seed, name);
      const world = expand(made, AIRFRAME, seed);
      let seenTick = -1;
      run(world, commands, (s) => { if (seenTick < 0 && Math.abs(shownDifference(s, world.fixed.noise)) >= 1) seenTick = s.tick; });
      expect(flight.score.releaseS).toBeCloseTo(seenTick / 100 + seconds, 9);
      const call = commands.find((command) => command.do === 'callSplit');
      expect((call?.tick ?? 0) / 100 - (flight.score.releaseS ?? 0)).toBeCloseTo(1, 9);
    }
  });
});

describe('debrief', () => {
  it('tells the fault, and what one second more would have cost, by flying it', () => {
    const { commands, flight } = flyTrainee(drill('set-16-from-4'), AIRFRAME, 5, 'prompt');
    const { end, hash, outcome, score } = flight;
    const record = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed: 5, airframe: AIRFRAME, scenario: drill('set-16-from-4'), commands, end, hash, outcome, score });
    const debrief = debriefOf(record);
    expect(debrief.fault).toMatchObject({ kind: 'disconnect' });
    expect(debrief.flight.hash).toBe(hash);
    // One second at the split rate of one side driving, about 0.16 deg/s.
    expect((debrief.oneSecondMore?.finalSplitDeg ?? 0) - score.finalSplitDeg).toBeCloseTo(0.16, 2);
    expect(score.finalSplitDeg - (debrief.oneSecondSooner?.finalSplitDeg ?? 9)).toBeCloseTo(0.16, 2);
    expect(requestOf(record).whole).toBe(undefined);
  });
});

it('an act of the hand behind the end is no part of the run', () => {
  const asked = scenario({ task: { settings: [16], limitS: 10 }, events: [{ do: 'callout', from: 'otherPilot', text: 'x?', answers: ['4', '9'], right: '4', withinS: 100, when: { atS: 1 } }] });
  const flown = (log: Command[]) => fly({ scenario: asked, airframe: AIRFRAME, seed: 1 }, log);
  for (const text of ['4', '9']) expect(flown([at(1000, { do: 'answer', text }, 0)])).toEqual(flown([]));
  expect(flown([at(999, { do: 'answer', text: '9' }, 0)]).procedure).not.toEqual(flown([]).procedure);
});

describe('a scripted record', () => {
  it('that ends by its own rule on the very tick of its limit still verifies', () => {
    const made = scenario({ ...stop, task: { limitS: 30 } });
    const commands = [...driving, at(1000, { do: 'releaseDrive' }, 3)];
    const { end, hash, outcome, score } = fly({ scenario: made, airframe: AIRFRAME, seed: 1 }, commands);
    expect(end).toEqual({ tick: 3000, why: 'scored' });
    const record = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed: 1, airframe: AIRFRAME, scenario: made, commands, end, hash, outcome, score });
    expect(verify(record).refused).toEqual([]);
  });
});
