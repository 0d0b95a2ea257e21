// The preview of a scenario is the debrief of the run that the same trainee flies, and it says when each entry of the file acted.
import { describe, expect, it } from 'vitest';
import { scriptedRecord } from '../../sim/files/index.js';
import { debriefOf, flyTrainee, MODEL_VERSION, previewOf, TRAINEES } from '../../sim/index.js';
import { AIRFRAME, airframeOf, drill, scenario } from '../sim/bench.js';

describe('a preview', () => {
  it.each(['set-16-from-4', 'calls-come-in', 'nothing-moves', 'small-and-quick'])('of %s is what `run` and the debrief of its record say', (name) => {
    const of = drill(name);
    const airframe = airframeOf(of);
    const { commands, flight } = flyTrainee(of, airframe, 7, 'steady');
    const { end, hash, outcome, score } = flight;
    const told = debriefOf(scriptedRecord({ model: MODEL_VERSION, app: 't', seed: 7, airframe, scenario: of, commands, end, hash, outcome, score }));
    const { acted: _acted, commands: flown, ...seen } = previewOf(of, airframe, 7, 'steady');
    expect(flown).toEqual(commands);
    expect(seen).toEqual({ ...told, oneSecondMore: null, oneSecondSooner: null });
  });
  it('differs from trainee to trainee where the trainees do', () => {
    const of = drill('set-16-from-4');
    const outcomes = new Set(TRAINEES.map((trainee) => previewOf(of, AIRFRAME, 1, trainee).flight.outcome));
    expect(outcomes.size).toBeGreaterThan(1);
  });
  it('says when each entry acted, by its place in the file, named or not', () => {
    const of = scenario({
      faults: [{ name: 'never', kind: 'disconnect', side: 'left', when: { flapDeg: 16.5 } }, { name: 'stop', kind: 'disconnect', side: 'right', when: { flapDeg: 8 } }],
      events: [
        { do: 'message', text: 'm', when: { atS: 12.34 } }, { do: 'message', text: 'n', when: { after: 'stop', delayS: 3 } },
        { do: 'message', text: 'o', when: { all: [{ atS: 20 }, { atS: 1 }] } },
      ],
    });
    const { acted, flight, rows } = previewOf(of, AIRFRAME, 1, 'slow');
    const stopped = flight.events.find(({ what, name }) => what === 'fault' && name === 'stop')?.atS;
    expect(stopped).toBeGreaterThan(10);
    expect(acted.faults).toEqual([null, stopped]);
    // A timed entry acts in its tick; one behind another by its delay; a group when the last of it has come.
    expect(acted.events).toEqual([12.34, expect.closeTo(stopped! + 3, 9), 20]);
    // The drive passed 8 deg there and not before.
    const row = rows.findLast(({ atS }) => atS <= stopped!)!;
    expect(Math.max(row.leftDeg, row.rightDeg)).toBeCloseTo(8, 1);
  });
  it('of an hour keeps its rows few', () => {
    const of = scenario({ task: { settings: [16], limitS: 3600 }, faults: [{ name: 'd', kind: 'dead', when: { atS: 0 } }], start: { speedKt: 167 } });
    const { rows, flight } = previewOf(of, AIRFRAME, 1, 'never');
    expect(flight.ticks).toBe(360_000);
    expect(rows.length).toBeGreaterThan(2000);
    expect(rows.length).toBeLessThan(6001);
    expect(rows[0]!.atS).toBe(0);
    expect(rows.at(-1)!.atS).toBe(3600);
  });
});
