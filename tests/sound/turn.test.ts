// One sound at a time, by priority (AMC 25.1322, 8b), after hand-worked times: a cycle of the horn is 0.5 s, the other sound lasts 1.6 s.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PLANS } from '../../src/sound/plan.js';
import { firstTurn, LATE_S, nextTurn, type Heard, type Turn } from '../../src/sound/turn.js';
import { anywhere } from '../draw.js';

const QUIET: Heard = { horn: false, autopilotOff: false };
const HORN: Heard = { horn: true, autopilotOff: false };
const OFF: Heard = { horn: false, autopilotOff: true };
const BOTH: Heard = { horn: true, autopilotOff: true };

/** What plays after each step: name and since when. */
function play(steps: [nowS: number, heard: Heard | null][], from: Turn = firstTurn(QUIET)): string[] {
  let turn = from;
  return steps.map(([nowS, heard]) => {
    turn = nextTurn(turn, heard, nowS);
    return turn.playing === null ? '-' : `${turn.playing.name} ${turn.playing.sinceS}`;
  });
}

describe('the horn', () => {
  test('begins with its cause, goes on, and stops with it', () => {
    expect(play([[1, QUIET], [2, HORN], [2.7, HORN], [90, HORN], [90.01, QUIET]])).toEqual(['-', 'horn 2', 'horn 2', 'horn 2', '-']);
  });
  test('is heard at once in a run that begins with it', () => {
    expect(play([[0.5, HORN]], firstTurn(HORN))).toEqual(['horn 0.5']);
  });
});

describe('the autopilot letting go', () => {
  test('is said twice, 1.6 s, and not again while it stays off', () => {
    expect(play([[1, OFF], [2.59, OFF], [2.6, OFF], [50, OFF]])).toEqual(['autopilotOff 1', 'autopilotOff 1', '-', '-']);
  });
  test('is said again when it lets go again', () => {
    expect(play([[1, OFF], [3, OFF], [4, QUIET], [5, OFF]])).toEqual(['autopilotOff 1', '-', '-', 'autopilotOff 5']);
  });
  test('stops when the autopilot is back', () => expect(play([[1, OFF], [1.3, QUIET], [1.4, OFF]])).toEqual(['autopilotOff 1', '-', 'autopilotOff 1.4']));
  test('says nothing where it was off from the start', () => expect(play([[1, OFF], [2, OFF]], firstTurn(OFF))).toEqual(['-', '-']));
});

describe('both', () => {
  test('together: the more urgent first, the horn after it', () => {
    expect(play([[1, BOTH], [2.5, BOTH], [2.6, BOTH], [9, BOTH]])).toEqual(['autopilotOff 1', 'autopilotOff 1', 'horn 2.6', 'horn 2.6']);
  });
  test('the horn waits for one that runs', () => {
    expect(play([[1, OFF], [1.2, BOTH], [2.6, BOTH]])).toEqual(['autopilotOff 1', 'autopilotOff 1', 'horn 2.6']);
  });
  test('the horn ends its cycle when that takes no more than 0.1 s, and is cut when it would take longer', () => {
    // Its cycles end at 2.5, 3, ...
    expect(play([[2, HORN], [2.91, BOTH], [2.95, BOTH], [4.6, BOTH]])).toEqual(['horn 2', 'autopilotOff 3', 'autopilotOff 3', 'horn 4.6']);
    expect(play([[2, HORN], [2.89, BOTH]])).toEqual(['horn 2', 'autopilotOff 2.89']);
  });
});

test('blanked is silent; what was cut short is said again, what was said is not', () => {
  expect(play([[1, BOTH], [1.4, null], [7, BOTH], [9, BOTH], [10, null], [20, BOTH]])).toEqual(['autopilotOff 1', '-', 'autopilotOff 7', 'horn 9', '-', 'horn 20']);
  expect(play([[1, OFF], [2.7, null], [7, OFF]])).toEqual(['autopilotOff 1', '-', '-']);
});

test('at any time: only a sound with a cause plays, the most urgent is never late, and silence means nothing waits', () => {
  const step = fc.tuple(anywhere(0.005, 0.7), fc.option(fc.record({ horn: fc.boolean(), autopilotOff: fc.boolean() }), { nil: null }));
  fc.assert(fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
    let [turn, nowS] = [firstTurn(QUIET), 0];
    for (const [laterS, heard] of steps) {
      nowS += laterS;
      const before = turn;
      turn = nextTurn(turn, heard, nowS);
      const { playing } = turn;
      if (heard === null) expect(playing).toBeNull();
      else if (playing === null) expect(heard.horn).toBe(false);
      else expect(heard[playing.name]).toBe(true);
      if (heard?.autopilotOff && !turn.told) expect(playing?.name).toBe('autopilotOff');
      if (playing !== null && playing !== before.playing) {
        expect(playing.sinceS).toBeGreaterThanOrEqual(nowS);
        expect(playing.sinceS).toBeLessThanOrEqual(nowS + LATE_S);
      }
      const { cycles, cycleS } = playing === null ? { cycles: null, cycleS: 0 } : PLANS[playing.name];
      if (playing !== null && cycles !== null) expect(nowS).toBeLessThan(playing.sinceS + cycles * cycleS);
    }
  }));
});
