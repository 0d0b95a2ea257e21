// What a desk asks of the trainee is judged as what a file asks: an answer, a heading, a height, a caution, a go-around.
import { expect, it } from 'vitest';
import { verify, type Act, type DeskAct } from '../../sim/files/index.js';
import { debriefOf, expand, fly, withDesk, type Command } from '../../sim/index.js';
import { flownRecord, ready, type RunRecord } from '../../sim/files/index.js';
import { AIRFRAME, scenario } from '../sim/bench.js';

const SCENARIO = scenario({ task: { settings: [16], limitS: 60 } });
type Timed = readonly [tick: number, act: DeskAct | Act];

/** A live run of 60 s with the acts of a desk and of a hand, whole with its digest. */
function recordOf(desk: readonly Timed[], hand: readonly Timed[]): RunRecord {
  const filed = [...desk.map(([tick, act]) => ({ ...act, tick, rank: 1, by: 'desk-1' })), ...hand.map(([tick, act]) => ({ ...act, tick, rank: 2 }))]
    .sort((a, b) => a.tick - b.tick || a.rank - b.rank).map((one, seq) => ({ ...one, seq, stampMs: 10 * one.tick }));
  const commands = filed as unknown as RunRecord['commands'];
  const scene = ready(SCENARIO, AIRFRAME);
  const { end } = fly({ scenario: scene, airframe: AIRFRAME, seed: 5 }, filed as unknown as Command[]);
  const draft = { tick: end.tick, clock: [{ tick: 0, stampMs: 0 }], commands, marks: [], input: ['mouse'], live: true };
  return flownRecord({ app: 'test', seed: 5, airframe: AIRFRAME, scenario: scene, device: { isolated: true, clockGrainMs: 0.005, renderer: 'none', input: 'mouse' }, gauge: { pxPerDeg: 5, pixelRatio: 1, mmPerPx: null } }, draft, end);
}

const DESK: readonly Timed[] = [
  [300, { do: 'callout', from: 'otherPilot', text: 'How many on board?', answers: ['16', '61'], right: '61', withinS: 10 }],
  [800, { do: 'clearHeading', from: 'controller', text: 'Fly heading 120.', toDeg: 120, withinS: 15 }],
  [1200, { do: 'clearAltitude', from: 'controller', text: 'Descend to 3000 ft.', toFt: 3000, withinS: 15 }],
  [2000, { do: 'caution', text: 'hydraulic pressure', withinS: 8 }],
];
const HAND: readonly Timed[] = [
  [550, { do: 'answer', text: '61' }], [900, { do: 'selectHeading', toDeg: 140 }], [2700, { do: 'descend', toFt: 3000, pathDeg: -3 }], [2800, { do: 'answer', text: 'noted' }],
];

it('each with its time: right, the wrong one, too late, and at the last tick', () => {
  const record = recordOf(DESK, HAND);
  expect(verify(record)).toMatchObject({ ok: true, refused: [] });
  const { callouts } = debriefOf(record);
  expect(callouts.map(({ atS, kind, from, right, answer, answeredS, ok }) => [atS, kind, from, right, answer, answeredS, ok])).toEqual([
    [3, 'callout', 'otherPilot', '61', '61', 2.5, true],
    [8, 'clearHeading', 'controller', 'heading 120', 'heading 140', 1, false],
    [12, 'clearAltitude', 'controller', '3000 ft', '3000 ft', 15, true], // the last tick of its 15 s
    [20, 'caution', null, 'noted', 'noted', 8, true],
  ]);
});

it('a tick behind the last of its time is no answer', () => {
  const late = HAND.map(([tick, act]): Timed => [tick === 2700 ? 2701 : tick === 2800 ? 2801 : tick, act]);
  expect(debriefOf(recordOf(DESK, late)).callouts.map(({ answer, ok }) => [answer, ok])).toEqual([['61', true], ['heading 140', false], [null, false], [null, false]]);
});

it('what the other pilot asks from a desk is the challenge of the procedure', () => {
  const item = (hand: readonly Timed[]) => debriefOf(recordOf(DESK, hand)).flight.procedure.find(({ item: one }) => one === 'challengeAnswered');
  expect([item(HAND)?.ok, item([])?.ok]).toEqual([true, false]);
});

it('told to go around by a desk: begun within the time told, and by the first that tells it', () => {
  const TOLD: readonly Timed[] = [[500, { do: 'tellGoAround', from: 'controller', text: 'Go around.', withinS: 5 }], [900, { do: 'tellGoAround', text: 'Go around now.', withinS: 60 }]];
  const begun = (tick: number | null) => debriefOf(recordOf(TOLD, tick === null ? [] : [[tick, { do: 'goAround' }]])).flight.procedure.find(({ item }) => item === 'aroundBegun')?.ok;
  expect([begun(1000), begun(1001), begun(null)]).toEqual([true, false, false]);
  expect(debriefOf(recordOf([], [[700, { do: 'goAround' }]])).flight.procedure.find(({ item }) => item === 'aroundBegun')?.ok).toBeNull();
});

it('an altered one is refused', () => {
  const record = recordOf([...DESK, [2500, { do: 'loseMainDrive' }]], HAND);
  const without = { ...record, commands: record.commands.filter(({ do: what }) => what !== 'loseMainDrive') };
  expect(verify(without).ok).toBe(false);
  expect(withDesk(expand(SCENARIO, AIRFRAME, 5), record.commands as unknown as Command[]).fixed.agenda.byHand).toBe(5);
});
