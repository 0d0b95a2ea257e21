// What a page adds to a run: a freeze, the cover, what is told for a while; and a lever that moves nothing by itself.
import { Subject } from 'rxjs';
import { describe, expect, it, test } from 'vitest';
import { verify, type Act, type RunRecord } from '../../sim/files/index.js';
import { advance, expand, snapshot, withNumbers } from '../../sim/index.js';
import { holdHasLetGo } from '../../src/run/cautions.js';
import { COVER_MS, coverIsOpen, moveCover } from '../../src/run/cover.js';
import { frame, file, isFrozen, resume, startSession, type Filed, type Session } from '../../src/run/session.js';
import { startDrill } from '../../src/run/start.js';
import type { Picture } from '../../src/view/picture.js';
import { AIRFRAME, drill, scenario } from '../sim/bench.js';

const filed = (tick: number, act: Act): Filed => ({ ...act, tick, rank: 2, seq: tick, stampMs: tick * 10 });

describe('freeze', () => {
  const frozenAt = (events: object[], acts: [number, Act][] = [], frameMs = 16.7): Session => {
    let session = startSession(expand(scenario({ events }), AIRFRAME, 1), 0);
    const queue = [...acts];
    for (let ms = frameMs; ms < 4000 && session.running; ms += frameMs) {
      while (queue[0] !== undefined && queue[0][0] <= ms) session = file(session, queue[0][0], queue.shift()![1]);
      session = frame(session, ms);
    }
    return session;
  };

  it('stops the clock in the tick in which it acted, whatever the frames', () => {
    for (const frameMs of [4, 16.7, 120, 240]) {
      const session = frozenAt([{ when: { atS: 1.23 }, do: 'freeze' }], [], frameMs);
      expect(session.world.state.tick, `${frameMs}`).toBe(124);
      expect(session.marks.at(-1)).toEqual({ tick: 124, stampMs: 1240, what: 'freeze' });
      expect(isFrozen(session)).toBe(true);
    }
  });

  it('lets a sprung switch go, files nothing while it stands, and goes on where it stood', () => {
    const session = frozenAt([{ when: { heldS: 1 }, do: 'freeze' }], [[100, { do: 'arm' }], [200, { do: 'holdDrive', way: 'extend' }]]);
    expect(session.log.at(-1)).toMatchObject({ do: 'releaseDrive', tick: session.world.state.tick });
    expect(file(session, 3000, { do: 'disarm' })).toBe(session);
    const on = frame(resume(session, 9000), 9100);
    expect(on.world.state).toMatchObject({ tick: session.world.state.tick + 10, latched: { drive: 0 } });
    expect(isFrozen(on)).toBe(false);
    // The same freeze does not come twice.
    expect(frame(on, 9200).running).toBe(true);
  });

  it('is in a record that verifies, and the instruments stay', () => {
    const frame$ = new Subject<number>();
    const { recognition: _scored, ...free } = drill('set-16-from-4');
    const running = startDrill({
      scenario: { ...free, task: { ...free.task, limitS: 10 }, faults: [], events: [{ when: { atS: 2 }, do: 'freeze' }] }, airframe: AIRFRAME, seed: 1, app: 'test',
      device: { isolated: true, clockGrainMs: 0.005, renderer: 'none', input: '', assisted: ['latchedHold'] }, gauge: { pxPerDeg: 10, pixelRatio: 1, mmPerPx: null },
    }, frame$);
    let record: RunRecord | null = null;
    const frozen: Picture[] = [];
    running.onEnd((done) => { record = done; });
    running.onPicture((picture) => { if (picture.frozen) frozen.push(picture); });
    for (let ms = 100; record === null && ms < 30000; ms += 16.7) {
      frame$.next(ms);
      if (ms > 5000 && ms < 5020) running.resume(ms);
    }
    expect(record).not.toBeNull();
    const done = record as unknown as RunRecord;
    expect(verify(done).refused).toEqual([]);
    expect(done.marks.map(({ what }) => what)).toEqual(['start', 'freeze', 'resume', 'end']);
    expect(done.outcome).not.toBe('void');
    expect(done.device.assisted).toEqual(['latchedHold']);
    expect(frozen.length).toBeGreaterThan(0);
    for (const picture of frozen) expect(picture).toMatchObject({ blank: false, timeS: 2.01 });
  });
});

test('a cover that is lifted falls shut by itself, and shuts by a second hand', () => {
  const up = moveCover(null, 1000);
  expect(coverIsOpen(null, 1000)).toBe(false);
  expect(coverIsOpen(up, 1000)).toBe(true);
  expect(coverIsOpen(up, 1000 + COVER_MS - 1)).toBe(true);
  expect(coverIsOpen(up, 1000 + COVER_MS)).toBe(false);
  expect(moveCover(up, 1500)).toBeNull();
  expect(moveCover(up, 1000 + COVER_MS)).toBe(1000 + COVER_MS);
});

test('the letting go of the speed hold is told for ten seconds, and only a letting go', () => {
  const log = [filed(100, { do: 'setThrust', tlaDeg: 20 })];
  expect([100, 101, 1100, 1101].map((now) => holdHasLetGo(log, true, now))).toEqual([false, true, true, false]);
  expect(holdHasLetGo(log, false, 200)).toBe(false);
  expect(holdHasLetGo([...log, filed(150, { do: 'setSpeedHold', on: true })], true, 200)).toBe(false);
  expect(holdHasLetGo([filed(100, { do: 'setSpeedHold', on: false })], true, 200)).toBe(true);
  expect(holdHasLetGo([filed(100, { do: 'goAround' })], true, 200)).toBe(true);
});

test('a flap lever that is moved while the normal drive is lost moves nothing by itself', () => {
  const start = expand(scenario({}), AIRFRAME, 1);
  const moved = advance(start, [filed(10, { do: 'setFlapLever', settingDeg: 36 })], 3000);
  const still = advance(start, [], 3000);
  expect(moved.state.latched.flapLeverDeg).toBe(36);
  expect(snapshot(withNumbers(moved.state, { flapLeverDeg: still.state.latched.flapLeverDeg }))).toEqual(snapshot(still.state));
  expect(moved.state.leftDeg).toBe(4);
});

test('the threshold of the horn is shown at training level alone, never where recognition is scored', () => {
  const first = (training: boolean, scored: boolean): Picture => {
    const { recognition: _scored, ...free } = drill('set-16-from-4');
    const frame$ = new Subject<number>();
    const running = startDrill({
      scenario: { ...(scored ? drill('set-16-from-4') : free), training }, airframe: AIRFRAME, seed: 1, app: 'test',
      device: { isolated: true, clockGrainMs: 0.005, renderer: 'none', input: '' }, gauge: { pxPerDeg: 10, pixelRatio: 1, mmPerPx: null },
    }, frame$);
    let seen: Picture | null = null;
    running.onPicture((picture) => { seen = picture; });
    frame$.next(0);
    return seen as unknown as Picture;
  };
  expect([first(false, false), first(false, true), first(true, true), first(true, false)].map(({ hornTlaDeg }) => hornTlaDeg)).toEqual([null, null, null, 16]);
});
