/** A run looked about in: whatever way a tick is come to, its state is the one that the replay has there, to the last bit. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commandsOfRecord, requestOf, timelineOf } from '../../sim/index.js';
import { expand, run } from '../../sim/index.js';
import { debriefRow, type DebriefRow } from '../../sim/score/debrief-row.js';
import { copyState, type State } from '../../sim/state.js';
import { FAULTS_OF_THE_JOB, flown } from '../pages/flown.js';

const { record } = flown({ fault: FAULTS_OF_THE_JOB.lag }, 'slow');
const request = requestOf(record);

/** Every state of the run, and every row, played once from the start to its end. */
const world = expand(request.scenario, request.airframe, request.seed, request.whole);
const states: State[] = [copyState(world.state)];
const rows: DebriefRow[] = [debriefRow(world.state, world.fixed, request)];
run(world, commandsOfRecord(record), (s) => {
  states[s.tick] = copyState(s);
  rows[s.tick] = debriefRow(s, world.fixed, request);
}, request.stopTick);

describe('the state at a tick', () => {
  it('is the one of the replay, tick by tick onwards', () => {
    const timeline = timelineOf(record);
    expect(timeline.endTick).toBe(record.end.tick);
    expect(timeline.endTick).toBeGreaterThan(1500);
    for (let tick = 0; tick <= timeline.endTick; tick += 1) expect(timeline.at(tick).state).toStrictEqual(states[tick]);
  });
  it('is the same backwards, and in any jumps, from the very first', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: record.end.tick }), { minLength: 1, maxLength: 12 }), (ticks) => {
      const timeline = timelineOf(record);
      for (const tick of ticks) {
        expect(timeline.at(tick).state).toStrictEqual(states[tick]);
        expect(timeline.rowAt(tick)).toStrictEqual(rows[tick]);
      }
    }));
    const timeline = timelineOf(record);
    for (let tick = timeline.endTick; tick >= timeline.endTick - 1100; tick -= 1) expect(timeline.rowAt(tick)).toStrictEqual(rows[tick]);
  });
  it('is cut to the run, and hits both ends and every kept state exactly', () => {
    const timeline = timelineOf(record);
    for (const [asked, is] of [[-5, 0], [0, 0], [499, 499], [500, 500], [501, 501], [1000, 1000], [record.end.tick, record.end.tick], [record.end.tick + 1, record.end.tick]] as const) {
      expect(timeline.at(asked).state.tick).toBe(is);
      expect(timeline.at(asked).state).toStrictEqual(states[is]);
    }
  });
  it('handed out is not the timeline’s own: to write to it spoils nothing', () => {
    const timeline = timelineOf(record);
    (timeline.at(700).state as State).leftDeg = 99;
    expect(timeline.at(700).state).toStrictEqual(states[700]);
    expect(timeline.at(701).state).toStrictEqual(states[701]);
  });
});
