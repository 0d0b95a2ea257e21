/** The contract's order rule, and what a page can do to a run, without a page. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Act } from '../../sim/files/index.js';
import { advance, expand, snapshot, tickOfStamp, type Command } from '../../sim/index.js';
import { file, frame, halt, lose, resume, startSession, stop, type Session } from '../../src/run/session.js';
import { AIRFRAME, drill, scenario } from '../sim/bench.js';

const START_MS = 1234.5;
const world = expand(scenario({ faults: [{ name: 'stop', kind: 'disconnect', side: 'right', when: { heldS: 2 } }] }), AIRFRAME, 7);

const ACTS: Act[] = [
  { do: 'openGuard' }, { do: 'closeGuard' }, { do: 'arm' }, { do: 'disarm' }, { do: 'holdDrive', way: 'extend' },
  { do: 'holdDrive', way: 'retract' }, { do: 'releaseDrive' }, { do: 'setDrive', to: 'off' }, { do: 'setFlapLever', settingDeg: 16 },
  { do: 'selectSpeed', speedKt: 160 }, { do: 'setGear', to: 'down' }, { do: 'callSplit' },
];
const acts = fc.array(fc.record({
  act: fc.constantFrom(...ACTS),
  // Tenths, not doubles: those of the library lie alike over all powers of two, nearly all of them at 0.
  atMs: fc.integer({ min: 0, max: 79990 }).map((n) => n / 10),
  lateMs: fc.integer({ min: 0, max: 240 }),
}), { maxLength: 40 });
/** Frame lengths of a quick, an ordinary and a poor screen, below the length of a stall. */
const lengths = fc.array(fc.constantFrom(4, 6.9, 16.7, 33.4, 120, 240), { minLength: 1, maxLength: 7 });

/** Delivers stamped acts late, between frames of given lengths, and steps to 8 s. */
function fly(inputs: { act: Act; atMs: number; lateMs: number }[], frameMs: number[]): Session {
  const queue = inputs.map(({ act, atMs, lateMs }) => ({ act, atMs, arrivesMs: atMs + lateMs }));
  let session = startSession(world, START_MS);
  let now = 0;
  for (let i = 0; now < 8500; i += 1) {
    const next = Math.min(8500, now + (frameMs[i % frameMs.length] as number));
    const arriving = queue.filter(({ arrivesMs }) => arrivesMs >= now && arrivesMs < next).sort((a, b) => a.arrivesMs - b.arrivesMs);
    for (const { act, atMs, arrivesMs } of arriving) {
      // A browser hands an event on at once or behind the frame it delayed; both sides of the frame occur here.
      session = frame(session, START_MS + arrivesMs);
      session = file(session, START_MS + atMs, act);
    }
    session = frame(session, START_MS + next);
    now = next;
  }
  return session;
}

describe('order', () => {
  it('gives the same world for the same commands in any order of delivery, up to 25 ticks late, in any frames', () => {
    fc.assert(fc.property(acts, lengths, (inputs, frameMs) => {
      const session = fly(inputs, frameMs);
      expect(session.marks.map(({ what }) => what)).not.toContain('late');
      const straight = advance(world, session.log, session.world.state.tick);
      expect(snapshot(session.world.state)).toEqual(snapshot(straight.state));
    }), { numRuns: 60 });
  });

  it('does not depend on how late acts came, as long as their order within a tick is the same', () => {
    const inputs = [500, 900, 1500, 4000.3, 4600.7].map((atMs, index) => ({ act: ACTS[[0, 2, 4, 6, 11][index] as number] as Act, atMs, lateMs: 0 }));
    const reference = fly(inputs, [16.7]).world.state;
    for (const lateMs of [3, 47, 180, 239]) {
      const late = fly(inputs.map((input) => ({ ...input, lateMs })), [33.4, 6.9]).world.state;
      expect(snapshot(late)).toEqual(snapshot(reference));
    }
  });

  it('advance takes a log in any order', () => {
    fc.assert(fc.property(fc.shuffledSubarray(ACTS, { minLength: 6 }), fc.infiniteStream(fc.integer({ min: 0, max: 300 })), (some, ticks) => {
      const log = some.map((act, seq) => ({ ...act, tick: ticks.next().value, rank: 2, seq }) as Command);
      expect(snapshot(advance(world, [...log].reverse(), 400).state)).toEqual(snapshot(advance(world, log, 400).state));
    }), { numRuns: 40 });
  });
});

/** A session stepped by 10 ms frames to a time, s. */
function to(session: Session, seconds: number): Session {
  let now = session;
  for (let ms = 10 * Math.ceil((now.world.state.tick + 1)); ms <= seconds * 1000; ms += 10) now = frame(now, START_MS + ms);
  return now;
}
const at = (session: Session, seconds: number, act: Act): Session => file(to(session, seconds), START_MS + seconds * 1000, act);
const held = (): Session => at(at(startSession(expand(drill('set-16-from-4'), AIRFRAME, 1), START_MS), 0.5, { do: 'openGuard' }), 0.7, { do: 'arm' });

describe('a page', () => {
  it('that stamps an act older than the window takes the oldest open tick and marks it', () => {
    const session = file(to(held(), 3), START_MS + 100, { do: 'closeGuard' });
    expect(session.marks.at(-1)).toMatchObject({ what: 'late', tick: 300 - 25 });
    expect(session.log.at(-1)).toMatchObject({ do: 'closeGuard', tick: 300 - 25 });
  });

  it('that is lost lets a sprung switch go and stops the clock', () => {
    const driving = to(at(held(), 1, { do: 'holdDrive', way: 'extend' }), 4);
    const lost = lose(driving, START_MS + 4000, 'focusLost');
    expect(lost.running).toBe(false);
    expect(lost.log.at(-1)).toMatchObject({ do: 'releaseDrive', tick: 400 });
    const later = frame(lost, START_MS + 9000);
    expect(later.world.state.tick).toBe(400);
    const again = frame(resume(later, START_MS + 9000), START_MS + 9200);
    expect(again.world.state).toMatchObject({ tick: 420, latched: { drive: 0, contactor: 0 } });
    expect(again.clock).toEqual([{ tick: 0, stampMs: START_MS }, { tick: 400, stampMs: START_MS + 9000 }]);
  });

  it('that stalls catches nothing up', () => {
    const stalled = frame(to(held(), 2), START_MS + 2600);
    expect(stalled.world.state.tick).toBe(200);
    expect(stalled.marks.at(-1)).toMatchObject({ what: 'stall', tick: 200 });
    expect(frame(stalled, START_MS + 2610).world.state.tick).toBe(201);
  });

  it('that is slow to its second frame starts its clock there, undisturbed', () => {
    const first = startSession(expand(drill('set-16-from-4'), AIRFRAME, 1), START_MS);
    const slow = frame(file(first, START_MS + 300, { do: 'openGuard' }), START_MS + 700);
    expect(slow.clock).toEqual([{ tick: 0, stampMs: START_MS + 700 }]);
    expect(slow.marks).toEqual([{ tick: 0, stampMs: START_MS + 700, what: 'start' }]);
    expect(frame(slow, START_MS + 720).world.state).toMatchObject({ tick: 2, latched: { guardOpen: 1 } });
  });

  it('that stalls twice in a tick has one segment for it: a clock rises in tick and stamp', () => {
    const once = frame(to(held(), 2), START_MS + 2600);
    const twice = file(frame(file(once, START_MS + 2605, { do: 'disarm' }), START_MS + 3300), START_MS + 2700, { do: 'arm' });
    expect(twice.clock).toEqual([{ tick: 0, stampMs: START_MS }, { tick: 200, stampMs: START_MS + 3300 }]);
    for (const filed of twice.log) expect(tickOfStamp(twice.clock, filed.stampMs).tick, filed.do).toBe(filed.tick);
  });

  it('that stamps the frame of a stall before an act it had already handed on keeps that act where its stamp is', () => {
    // A browser stamps a frame when it was due, and hands on what hands did meanwhile before it draws.
    const pressed = file(file(to(held(), 2), START_MS + 2100, { do: 'holdDrive', way: 'extend' }), START_MS + 2760, { do: 'releaseDrive' });
    const stalled = frame(pressed, START_MS + 2600);
    expect(stalled.clock.at(-1)).toEqual({ tick: 200, stampMs: START_MS + 2600 });
    expect(stalled.log.slice(-2)).toMatchObject([{ do: 'holdDrive', tick: 200 }, { do: 'releaseDrive', tick: 216 }]);
    for (const filed of stalled.log) expect(tickOfStamp(stalled.clock, filed.stampMs).tick, filed.do).toBe(filed.tick);
    const first = file(startSession(expand(drill('set-16-from-4'), AIRFRAME, 1), START_MS), START_MS + 760, { do: 'openGuard' });
    expect(frame(first, START_MS + 700).log).toMatchObject([{ do: 'openGuard', tick: 6 }]);
  });

  it('that pauses files nothing until it goes on', () => {
    const paused = halt(to(held(), 2), START_MS + 2000, 'pause');
    expect(file(paused, START_MS + 2500, { do: 'holdDrive', way: 'extend' })).toBe(paused);
  });

  it.each(['pause', 'focusLost'] as const)('marks a %s in the tick that holds its stamp, when frames were late and when it was itself', (what) => {
    const stopped = (session: Session, ms: number) => (what === 'pause' ? halt(session, START_MS + ms, what) : lose(session, START_MS + ms, what));
    for (const ms of [1900, 1995, 2000, 2055, 2240, 2900]) {
      const session = stopped(to(held(), 2), ms);
      const { tick, stampMs } = session.marks.at(-1)!;
      expect(session.running).toBe(false);
      expect(tick).toBe(session.world.state.tick);
      expect(tickOfStamp(session.clock, stampMs).tick, `${ms} ms`).toBe(tick);
    }
  });

  it('that leaves early has a stopped run where it stood', () => {
    expect(stop(to(held(), 2), START_MS + 2005)).toMatchObject({ over: 'stopped', endTick: 200 });
  });

  it('writes the first frame behind onset, and the end, only once they can no longer change', () => {
    let session = at(held(), 1, { do: 'holdDrive', way: 'extend' });
    session = to(session, 15.01);
    const onset = session.world.state.latched.onsetTick;
    expect(onset).toBe(100 + 1400);
    expect(session.marks.some(({ what }) => what === 'firstFrame')).toBe(false);
    session = to(session, 15.4);
    expect(session.marks.find(({ what }) => what === 'firstFrame')).toMatchObject({ tick: onset + 1, stampMs: START_MS + 15010 });
    session = at(session, 20, { do: 'releaseDrive' });
    session = to(session, 40.2);
    expect(session.world.state.latched.endTick).toBe(4000);
    expect(session.over).toBe(null);
    session = to(session, 40.3);
    expect(session).toMatchObject({ over: 'scored', endTick: 4000 });
  });
});
