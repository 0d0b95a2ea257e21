// Both ends of the link part by part: what is told, who is there, what a desk takes from a message.
import { describe, expect, it } from 'vitest';
import { expand } from '../../sim/index.js';
import type { RoomMessage } from '../../sim/files/index.js';
import { openDesks, type Ordered } from '../../src/link/desks.js';
import { openEar } from '../../src/link/ear.js';
import { changeBy, NOTHING, type DeskView } from '../../src/link/known.js';
import { mirrorOf } from '../../src/link/mirror.js';
import { LOST_MS, memoryRooms } from '../../src/link/port.js';
import { openRooms, type Room } from '../../src/link/rooms.js';
import { openSeat } from '../../src/link/seat.js';
import { openTelling } from '../../src/link/telling.js';
import { file, frame, startSession, type Session } from '../../src/run/session.js';
import { AIRFRAME, scenario } from '../sim/bench.js';

const made = scenario({ task: { settings: [16], limitS: 120 } });
const begun = (): Session => startSession(expand(made, AIRFRAME, 3), 0);
const turn = (): Promise<void> => new Promise((done) => { setTimeout(done); });

describe('telling', () => {
  const telling = (now: () => number) => openTelling({ id: 'run-1', title: 'Drill 1', setting: { seed: 3, airframe: AIRFRAME, scenario: made }, now });
  it('tells an act once, and again where it has gone to another tick', () => {
    const tells = telling(() => 0);
    const session = file(frame(begun(), 100), 105, { do: 'openGuard' });
    const acts = (of: Session): unknown[] => tells.step(of, true)?.commands.map(({ seq, tick }) => [seq, tick]) ?? [];
    expect(acts(session)).toEqual([[0, 10]]);
    expect(acts(session)).toEqual([]);
    const moved = { ...session, log: session.log.map((act) => ({ ...act, tick: 12 })) };
    expect(acts(moved)).toEqual([[0, 12]]);
  });
  it('tells what all of it held no second time, and counts on', () => {
    const tells = telling(() => 0);
    const session = file(frame(begun(), 100), 105, { do: 'openGuard' });
    expect(tells.whole(session)).toMatchObject({ kind: 'snapshot', number: 1, tick: 10, stands: 'runs', commands: [{ do: 'openGuard' }] });
    expect(tells.step(session, true)).toMatchObject({ number: 2, commands: [] });
  });
  it('is silent for 50 ms while nothing is filed and nothing stands otherwise', () => {
    let ms = 0;
    const tells = telling(() => ms);
    const session = begun();
    expect(tells.step(session, false)).not.toBeNull();
    ms = 49;
    expect(tells.step(session, false)).toBeNull();
    expect(tells.step({ ...session, running: false }, false)).toMatchObject({ stands: 'paused' });
    ms = 99;
    expect(tells.step({ ...session, running: false }, false)).not.toBeNull();
  });
});

describe('desks', () => {
  const act = (number: number): Ordered => ({ kind: 'act', from: 'desk', number, act: { do: 'freeze' } });
  it('come once, are missed when silent, and come back to their count', () => {
    let ms = 0;
    const counts: number[] = [];
    let came = 0;
    const desks = openDesks(() => ms, () => { came += 1; }, (count) => counts.push(count));
    desks.heard('desk');
    desks.heard('desk');
    expect([...desks.inOrder(act(1), () => ({ tick: 5, refused: null }))]).toEqual([{ number: 1, tick: 5, refused: null }]);
    ms = LOST_MS;
    desks.tidy();
    expect(desks.count()).toBe(1);
    ms = LOST_MS + 1;
    desks.tidy();
    desks.heard('desk');
    expect([came, counts, desks.knows('desk'), desks.knows('other')]).toEqual([2, [1, 0, 1], true, false]);
    // The first act is answered as it was, and not taken anew.
    expect([...desks.inOrder(act(1), () => ({ tick: 9, refused: null }))]).toEqual([{ number: 1, tick: 5, refused: null }]);
  });
  it('are taken in the order in which they sent', () => {
    const desks = openDesks(() => 0, () => undefined, () => undefined);
    const taken: number[] = [];
    const all = (number: number): number[] => [...desks.inOrder(act(number), (due) => { taken.push(due.number); return { tick: 1, refused: null }; })].map((one) => one.number);
    expect([all(3), all(2), all(1)]).toEqual([[], [], [1, 2, 3]]);
    expect(taken).toEqual([1, 2, 3]);
  });
});

describe('rooms', () => {
  it('of runs that say nothing for long are gone; one that leaves is gone at once', async () => {
    let ms = 0;
    let rooms: readonly Room[] = [];
    const open = memoryRooms();
    const [lobby, run] = [open('lobby'), open('lobby')];
    const desk = openRooms(lobby, openEar(), () => ms, (all) => { rooms = all; });
    const names = (): string[] => rooms.map(({ id }) => id);
    for (const from of ['a', 'b']) run.send({ kind: 'here', from, title: 'T', stage: 'flown', closed: null });
    await turn();
    expect(names()).toEqual(['a', 'b']);
    ms = LOST_MS;
    run.send({ kind: 'here', from: 'b', title: 'T', stage: 'over', closed: null });
    await turn();
    ms = LOST_MS + 1;
    desk.tidy();
    expect(rooms).toEqual([{ id: 'b', title: 'T', stage: 'over', closed: null }]);
    run.send({ kind: 'gone', from: 'b' });
    await turn();
    expect(names()).toEqual([]);
  });
});

describe('a seat', () => {
  it('passes on answers to its own desk, once, and nothing of another run', async () => {
    const open = memoryRooms();
    const [port, run] = [open('run a'), open('run a')];
    const said: RoomMessage[] = [];
    const heard: unknown[] = [];
    run.onMessage((message) => heard.push(message));
    const seat = openSeat({ run: 'a', id: 'desk-1', port, ear: openEar(), now: () => 0, onSaid: (message) => said.push(message) });
    expect([seat.put({ kind: 'act', act: { do: 'freeze' } }), seat.put({ kind: 'act', act: { do: 'goOn' } })]).toEqual([1, 2]);
    const answer = { kind: 'answer', from: 'a', to: 'desk-1', number: 1, tick: 3, refused: null };
    for (const message of [{ ...answer, to: 'desk-2' }, { ...answer, from: 'b' }, answer, answer]) run.send(message);
    await turn();
    expect(said).toEqual([answer]);
    seat.again();
    await turn();
    expect(heard.map((message) => (message as { number: number }).number)).toEqual([1, 2, 2]);
  });
});

describe('what a message changes', () => {
  const snapshot = openTelling({ id: 'a', title: 'T', setting: { seed: 3, airframe: AIRFRAME, scenario: made }, now: () => 0 }).whole(begun());
  const live: DeskView = { rooms: [], ...NOTHING, room: 'a', stage: 'live', mirror: mirrorOf(snapshot) };
  const step = (number: number): RoomMessage => ({ kind: 'step', from: 'a', number, tick: 20, stands: 'runs', commands: [] });
  it('one step on; none where one is missing, or was there before', () => {
    expect(changeBy(step(2), live)).toMatchObject({ stage: 'live', mirror: { number: 2, world: { state: { tick: 20 } } } });
    expect(changeBy(step(3), live)).toBe('missed');
    expect(changeBy(step(1), live)).toBe('nothing');
    expect(changeBy(step(1), { ...live, stage: 'gone' })).toMatchObject({ stage: 'live' });
  });
  it('all of it: not from another model, not what no run holds, not what is older', () => {
    expect(changeBy({ ...snapshot, model: 999 }, live)).toEqual({ stage: 'otherModel', mirror: null });
    expect(changeBy(snapshot, live)).toBe('nothing');
    const joining: DeskView = { ...live, stage: 'joining', mirror: null };
    expect(changeBy(snapshot, joining)).toMatchObject({ stage: 'live', mirror: { number: 1 } });
    expect(changeBy(snapshot, { ...joining, stage: 'over' })).toBe('nothing');
    const unheard = [{ do: 'clearFault', fault: 'none', tick: 5, rank: 1, seq: 0, by: 'desk' }] as unknown as typeof snapshot.commands;
    expect(changeBy({ ...snapshot, tick: 20, commands: unheard }, joining)).toBe('unfit');
  });
});
