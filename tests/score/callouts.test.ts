/** Callouts: to whom an answer belongs, and when it is in time. */
import { describe, expect, it } from 'vitest';
import { scriptedRecord } from '../../sim/files/index.js';
import { debriefOf, fly, hornAngle, hornRule, MODEL_VERSION, type Command } from '../../sim/index.js';
import fc from 'fast-check';
import { AIRFRAME, scenario } from '../sim/bench.js';
import { anywhere } from '../draw.js';

const ask = (atS: number, text: string, withinS = 10) => ({ do: 'callout', text, answers: ['yes', 'no'], right: 'yes', withinS, when: { atS } });
const made = scenario({ task: { limitS: 30 }, events: [ask(0, 'one'), ask(5, 'two'), ask(25, 'three')] });
const answer = (tick: number, text: string, seq = 0) => ({ do: 'answer', text, tick, rank: 2, seq }) as Command;

function callouts(log: Command[]) {
  const { end, hash, outcome, score } = fly({ scenario: made, airframe: AIRFRAME, seed: 1 }, log);
  return debriefOf(scriptedRecord({ model: MODEL_VERSION, app: 'test', seed: 1, airframe: AIRFRAME, scenario: made, commands: log, end, hash, outcome, score })).callouts;
}

describe('callouts', () => {
  it('are asked in the tick of their event; the oldest open one is answered first', () => {
    expect(callouts([answer(600, 'yes'), answer(700, 'no', 1)]).map(({ atS, answer: said, answeredS, ok }) => [atS, said, answeredS, ok])).toEqual([
      [0, 'yes', 6, true], [5, 'no', 2, false], [25, null, null, null],
    ]);
  });
  it('take an answer up to the last tick of their time, and none behind it', () => {
    expect(callouts([answer(1000, 'yes')])[0]).toMatchObject({ answeredS: 10, ok: true });
    // One tick later the first is closed, and the answer is the second's.
    expect(callouts([answer(1001, 'yes')]).map(({ ok }) => ok)).toEqual([false, true, null]);
  });
  it('take no answer that they do not offer', () => {
    expect(callouts([answer(600, 'perhaps')]).map(({ ok }) => ok)).toEqual([false, false, null]);
  });
});

describe('the lever angle of the horn', () => {
  it('decides where it is told, and nothing decides where it is not', () => {
    fc.assert(fc.property(
      anywhere(0, 38), anywhere(0, 60), fc.constantFrom(1, 2), fc.constantFrom(0, 0.5, 1), anywhere(0, 3000),
      (flapDeg, tlaDeg, live, gear, heightFt) => {
        const angle = hornAngle(AIRFRAME.horn, flapDeg, live, gear, heightFt);
        const horn = hornRule(AIRFRAME.horn, flapDeg, tlaDeg, live, gear, heightFt);
        if (angle === null) expect(horn).toBe(hornRule(AIRFRAME.horn, flapDeg, 60 - tlaDeg, live, gear, heightFt));
        else expect(horn > 0).toBe(tlaDeg < angle);
      },
    ));
  });
});
