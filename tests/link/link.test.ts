/** A run and its desks over a link: late, twice, out of order, lost, hostile, reloaded; two of them; clocks that differ. */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { digestOf, verify, type DeskAct } from '../../sim/files/index.js';
import { dice as diceOf, snapshot } from '../../sim/index.js';
import { memoryRooms, type OpenPort } from '../../src/link/port.js';
import { flown, guest, type Flown } from './bench.js';

beforeEach(() => { vi.useFakeTimers({ now: 5000 }); });
afterEach(() => { vi.useRealTimers(); });
const settle = async (ms = 0): Promise<void> => { await vi.advanceTimersByTimeAsync(ms); };
const same = async (run: Flown, desk: ReturnType<typeof guest>): Promise<void> => {
  await settle(1000); // a step is told twenty times a second, and once a second anyhow
  const { mirror } = desk.view();
  expect(mirror?.world.state.tick).toBe(run.session().world.state.tick);
  expect([...snapshot(mirror!.world.state)]).toEqual([...snapshot(run.session().world.state)]);
};
const hold = (run: Flown): void => { for (const act of [{ do: 'openGuard' }, { do: 'arm' }, { do: 'holdDrive', way: 'extend' }] as const) run.act(act); };
const DEAD: DeskAct = { do: 'injectFault', fault: { name: 'x', kind: 'dead' } };

async function together(options: Parameters<typeof flown>[1] = {}, open: OpenPort = memoryRooms()) {
  const run = flown(open, options);
  const desk = guest(open);
  await settle();
  desk.enter(desk.view().rooms[0]!.id);
  await settle();
  return { run, desk, open };
}

describe('a run and a desk', () => {
  it('find each other, whoever came first', async () => {
    const open = memoryRooms();
    const early = guest(open);
    await settle();
    expect(early.view().rooms).toEqual([]);
    const run = flown(open);
    await settle();
    expect(early.view().rooms).toMatchObject([{ title: 'Drill 1', stage: 'flown', closed: null }]);
    const late = guest(open, 'late');
    await settle();
    expect(late.view().rooms).toHaveLength(1);
    run.host.close();
    await settle();
    expect(early.view().rooms).toEqual([]);
  });

  it('the desk sees every number of the state, through holds, faults, a reposition and a freeze', async () => {
    const { run, desk } = await together();
    hold(run);
    run.to(2000);
    await settle();
    await same(run, desk);
    desk.act({ do: 'injectFault', fault: { name: 'stop', kind: 'disconnect', side: 'right', when: { heldS: 3 } } });
    await settle();
    run.to(6000);
    await settle();
    await same(run, desk);
    expect(run.session().world.state.latched.rightCut).toBe(1);
    desk.act({ do: 'reposition', toTick: 250 });
    await settle();
    run.to(7000);
    desk.act({ do: 'freeze' });
    await settle();
    expect(desk.view().mirror?.stands).toBe('frozen');
    await same(run, desk);
    expect(desk.view().sent.map(({ state }) => state)).toEqual(['taken', 'taken', 'taken']);
    expect(desk.view().sent.map(({ tick }) => tick)).toEqual(run.session().log.filter(({ rank }) => rank === 1).map(({ tick }) => tick));
  });

  it('acts of a hand that came late change the mirror too', async () => {
    const { run, desk } = await together();
    run.to(3000);
    await settle();
    await same(run, desk);
    run.act({ do: 'setGear', to: 'down' }, 200);
    expect(run.session().log.at(-1)?.tick).toBe(280);
    run.to(3500);
    await settle();
    await same(run, desk);
  });

  it('the desk is told why an act was refused', async () => {
    const { desk } = await together();
    desk.act({ do: 'clearFault', name: 'nobody' });
    await settle();
    expect(desk.view().sent).toMatchObject([{ state: 'refused', refused: 'No fault is called nobody.', tick: null }]);
  });

  it('a run that is closed to desks says why, and hears none', async () => {
    const open = memoryRooms();
    const run = flown(open, { closed: 'A set is flown alone.' });
    const desk = guest(open);
    await settle();
    expect(desk.view().rooms).toMatchObject([{ closed: 'A set is flown alone.' }]);
    desk.enter(desk.view().rooms[0]!.id);
    desk.act(DEAD);
    run.to(1000);
    await settle(3000);
    expect(run.session().log).toEqual([]);
    expect(run.counts).toEqual([]);
    expect(desk.view().stage).toBe('joining');
    expect(run.end().source).toBe('flown');
  });
});

describe('a desk that comes late, closes or comes back', () => {
  it('late: sees all that was', async () => {
    const { run, open } = await together();
    hold(run);
    run.to(4000);
    const late = guest(open, 'late');
    await settle();
    late.enter(late.view().rooms[0]!.id);
    await settle();
    await same(run, late);
  });

  it('closed: the run goes on and says that it has gone', async () => {
    const { run, desk } = await together();
    desk.close();
    await settle();
    expect(run.counts).toEqual([1, 0]);
    run.to(500);
    expect(run.session().world.state.tick).toBe(50);
  });

  it('that dies without a word is missed after a while, and heard again when it comes back', async () => {
    let dead = false;
    const { run, desk } = await together({}, ((rooms) => (room) => {
      const port = rooms(room);
      return { ...port, send: (message) => { if (!dead || !(message as { from: string }).from.startsWith('desk')) port.send(message); } };
    })(memoryRooms()));
    dead = true;
    desk.act(DEAD);
    for (let ms = 1000; ms <= 7000; ms += 1000) {
      run.to(ms);
      await settle(1000);
    }
    expect(run.counts).toEqual([1, 0]);
    expect(desk.view().sent).toMatchObject([{ state: 'sent' }]);
    dead = false;
    await settle(1000);
    expect(run.counts).toEqual([1, 0, 1]);
    expect(desk.view().sent).toMatchObject([{ state: 'taken' }]);
  });

  it('loaded anew: another desk, the same run, nothing lost and nothing twice', async () => {
    const { run, desk, open } = await together();
    desk.act(DEAD);
    await settle();
    desk.close();
    const again = guest(open, 'desk2');
    await settle();
    again.enter(again.view().rooms[0]!.id);
    again.act({ do: 'clearFault', name: 'x' });
    await settle();
    run.to(500);
    await settle();
    await same(run, again);
    expect(run.session().log.map((one) => [one.do, one.by])).toEqual([['injectFault', 'desk-1'], ['clearFault', 'desk2-1']]);
  });

  it('that leaves a room and enters it again counts from 1 and is heard', async () => {
    const { run, desk } = await together();
    desk.act(DEAD);
    await settle();
    const { room } = desk.view();
    desk.leave();
    await settle();
    desk.enter(room!);
    await settle();
    desk.act({ do: 'prompted' });
    await settle();
    expect(run.session().log.map((one) => one.do)).toEqual(['injectFault', 'prompted']);
  });
});

describe('two desks', () => {
  it('see all acts of both, each under its own name', async () => {
    const { run, desk, open } = await together();
    const other = guest(open, 'second');
    await settle();
    other.enter(desk.view().room!);
    await settle();
    desk.act({ do: 'remark', label: 'scan' });
    other.act({ do: 'remark', label: 'late' });
    await settle();
    run.to(200);
    await settle();
    for (const one of [desk, other]) expect(one.view().mirror?.log.map(({ by }) => by)).toEqual(['desk-1', 'second-1']);
    expect(run.counts).toEqual([1, 2]);
    expect(desk.view().sent).toHaveLength(1);
    expect(other.view().sent).toMatchObject([{ state: 'taken' }]);
  });
});

describe('what the way does to messages', () => {
  /** Loses, doubles and shuffles what passes, as dice say. */
  const bad = (inner: OpenPort, dice: () => number): OpenPort => (room) => {
    const port = inner(room);
    const held: unknown[] = [];
    return {
      ...port,
      send(message) {
        const roll = dice();
        if (roll < 0.2) return;
        if (roll < 0.4) { held.push(message); return; }
        port.send(message);
        if (roll < 0.6) port.send(message);
        for (const old of held.splice(0)) port.send(old);
      },
    };
  };

  it('lost, doubled, out of order: each act stands once, in the order in which it was done, and the mirror comes right', async () => {
    await fc.assert(fc.asyncProperty(fc.nat(), async (seed) => {
      const way = diceOf(seed, 'way');
      const dice = (): number => way.uniform();
      const inner = memoryRooms();
      const run = flown(bad(inner, dice));
      const desk = guest(bad(inner, dice));
      await settle(20_000);
      const room = desk.view().rooms[0];
      expect(room).toBeDefined();
      desk.enter(room!.id);
      const acts: DeskAct[] = ['a', 'b', 'c', 'd', 'e'].map((label) => ({ do: 'remark', label }));
      for (const act of acts) desk.act(act);
      for (let ms = 200; ms <= 1000; ms += 200) {
        run.to(ms);
        await settle(300);
      }
      await settle(15_000);
      expect(run.session().log.map((one) => ('label' in one ? one.label : ''))).toEqual(['a', 'b', 'c', 'd', 'e']);
      expect(desk.view().sent.map(({ state }) => state)).toEqual(acts.map(() => 'taken'));
      expect(desk.view().mirror).not.toBeNull();
      run.host.close();
      desk.close();
    }), { numRuns: 8 });
  });

  it.each<[string, unknown]>([
    ['nothing', null], ['a text', 'join'], ['an unknown kind', { kind: 'format', from: 'desk-1' }], ['an unknown key', { kind: 'join', from: 'desk-1', admin: true }],
    ['a hand on the switch', { kind: 'act', from: 'desk-1', number: 1, act: { do: 'holdDrive', way: 'extend' } }], ['a fault out of range', { kind: 'act', from: 'desk-1', number: 1, act: { do: 'injectFault', fault: { name: 'x', kind: 'slow', factor: 7 } } }],
    ['a name with markup', { kind: 'join', from: '<b>' }], ['a giant', { kind: 'act', from: 'desk-1', number: 1, act: { do: 'message', text: 'x'.repeat(401) } }],
    ['a prototype', JSON.parse('{"kind":"join","from":"desk-1","__proto__":{"a":1}}')],
  ])('hostile: %s is dropped and counted', async (_, message) => {
    const { run, desk, open } = await together();
    const port = open(`run ${desk.view().room}`);
    const before = run.host.dropped();
    port.send(message);
    await settle();
    expect(run.host.dropped()).toBe(before + 1);
    expect(run.session().log).toEqual([]);
  });

  it('an act of one that never joined is not heard', async () => {
    const { run, desk, open } = await together();
    open(`run ${desk.view().room}`).send({ kind: 'act', from: 'stranger', number: 1, act: DEAD });
    await settle();
    expect(run.session().log).toEqual([]);
  });

  it('a run that was forged is not shown', async () => {
    const { run, desk, open } = await together();
    open(`run ${desk.view().room}`).send({ kind: 'step', from: 'other', number: 99, tick: 5, stands: 'runs', commands: [] });
    open(`run ${desk.view().room}`).send({ kind: 'gone', from: 'other' });
    run.to(300);
    await settle();
    expect(desk.view().stage).toBe('live');
    await same(run, desk);
  });
});

it.each([-3_600_000, -1, 0, 12_345.678, 86_400_000])('clocks that differ by %d ms: acts stand where the run was when they came', async (skewMs) => {
  const { run, desk } = await together({ skewMs: skewMs + 4e6 });
  run.to(1500);
  desk.act(DEAD);
  await settle();
  expect(run.session().log).toMatchObject([{ do: 'injectFault', tick: 150 }]);
});

describe('the end', () => {
  it('the desk has the record, which verifies; grades change nothing but its digest', async () => {
    const { run, desk } = await together();
    desk.act(DEAD);
    await settle();
    run.to(2000);
    const record = run.end();
    await settle();
    expect(desk.view().stage).toBe('over');
    expect(desk.view().record?.digest).toBe(record.digest);
    expect(record.source).toBe('live');
    expect(verify(record).refused).toEqual([]);
    desk.grade({ grades: [{ item: 'Letting go', anchor: 4 }] });
    await settle();
    expect(run.grades).toEqual([{ grades: [{ item: 'Letting go', anchor: 4 }] }]);
    const graded = { ...record, desk: run.grades[0]! };
    expect(verify({ ...graded, digest: digestOf(graded) }).refused).toEqual([]);
    desk.act(DEAD);
    await settle();
    expect(desk.view().sent.at(-1)).toMatchObject({ state: 'refused', refused: 'The run is over.' });
  });

  it('a trainee who is loaded anew: the desk is told, and the run is over for it', async () => {
    const { run, desk } = await together();
    run.host.close();
    await settle();
    expect(desk.view().stage).toBe('gone');
  });

  it('a trainee whose window dies without a word is missed', async () => {
    const open = memoryRooms();
    let dead = false;
    const { desk } = await together({}, (room) => {
      const port = open(room);
      return { ...port, send: (message) => { if (!dead || (message as { from: string }).from.startsWith('desk')) port.send(message); } };
    });
    dead = true;
    await settle(4000);
    expect(desk.view().stage).toBe('live');
    await settle(4000);
    expect(desk.view().stage).toBe('gone');
  });
});
