/** Whatever a page does to a running drill, the record it writes verifies, and the screen was the replay of its log. */
import fc from 'fast-check';
import { Subject } from 'rxjs';
import { describe, expect, it } from 'vitest';
import { verify, type Act, type RunRecord } from '../../sim/files/index.js';
import { advance, commandsOfRecord, expand, leftPointer, rightPointer } from '../../sim/index.js';
import { startDrill } from '../../src/run/start.js';
import type { Picture } from '../../src/view/picture.js';
import { AIRFRAME, drill } from '../sim/bench.js';

// A short leg: most random hands never hold, and a run without a release lasts its whole time.
const shipped = drill('set-16-from-4');
const scenario = { ...shipped, task: { ...shipped.task, limitS: 44 } };
const ACTS: Act[] = [
  { do: 'openGuard' }, { do: 'arm' }, { do: 'holdDrive', way: 'extend' }, { do: 'releaseDrive' }, { do: 'holdDrive', way: 'extend' },
  { do: 'setFlapLever', settingDeg: 9 }, { do: 'callSplit' }, { do: 'closeGuard' }, { do: 'setDrive', to: 'retract' },
  { do: 'setThrust', tlaDeg: 12, lever: 'left' }, { do: 'selectSpeed', speedKt: 150 }, { do: 'setGear', to: 'down' }, { do: 'silenceHorn' }, { do: 'roll', control: -0.35 },
  { do: 'goAround' }, { do: 'callClear' }, { do: 'answer', text: 'yes' },
];
/** `busy`: no frame for so long, and the one behind it bears a stamp so far back: a browser stamps a frame when it was due. */
type Did = { ms: number } & ({ what: 'act'; act: Act; lateMs: number } | { what: 'busy'; forMs: number; backMs: number } | { what: 'focusLost' | 'hidden' | 'pause' | 'resume' | 'stop' });

const tenths = (most: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: most * 10 }).map((n) => n / 10);

const dids = fc.array(fc.record({
  // Tenths, not doubles: those of the library lie alike over all powers of two, nearly all of them at 0.
  ms: fc.oneof({ weight: 2, arbitrary: tenths(5000) }, tenths(30000)),
  pick: fc.oneof({ weight: 12, arbitrary: fc.constant('act' as const) }, { weight: 6, arbitrary: fc.constant('busy' as const) }, fc.constantFrom('focusLost' as const, 'hidden' as const, 'pause' as const, 'resume' as const, 'stop' as const)),
  act: fc.constantFrom(...ACTS), lateMs: fc.oneof(fc.constant(2), fc.integer({ min: 0, max: 400 })), forMs: fc.integer({ min: 20, max: 1500 }), backMs: fc.integer({ min: 0, max: 900 }),
}), { minLength: 8, maxLength: 40, size: 'max' }).map((list): Did[] => list.sort((a, b) => a.ms - b.ms).map(({ ms, pick, act, lateMs, forMs, backMs }) =>
  (pick === 'act' ? { ms, what: pick, act, lateMs } : pick === 'busy' ? { ms, what: pick, forMs, backMs: Math.min(forMs, backMs) } : { ms, what: pick })));

/** Flies by hand-made frames of about a sixtieth. */
function fly(inputs: Did[], seed: number): { record: RunRecord; pictures: Map<number, Picture> } {
  const frame$ = new Subject<number>();
  const running = startDrill({
    scenario, airframe: AIRFRAME, seed, app: 'test',
    device: { isolated: true, clockGrainMs: 0.005, renderer: 'none', input: '' }, gauge: { pxPerDeg: 10, pixelRatio: 1, mmPerPx: null },
  }, frame$);
  let record: RunRecord | null = null;
  const pictures = new Map<number, Picture>();
  running.onEnd((done) => { record = done; });
  running.onPicture((picture) => { pictures.set(Math.round(picture.timeS * 100), picture); });
  let busyTo = 0;
  let backMs = 0;
  let paused = false;
  const queue = [...inputs];
  for (let ms = 5000; record === null && ms < 400000; ms += 16.7) {
    while (queue[0] !== undefined && queue[0].ms + 5000 < ms) {
      const did = queue.shift() as Did;
      const stamp = did.ms + 5000;
      if (did.what === 'act') running.act(stamp - Math.min(did.lateMs, did.ms), did.act, 'key');
      else if (did.what === 'busy') [busyTo, backMs] = [ms + did.forMs, did.backMs];
      else if (did.what === 'resume') running.resume(stamp);
      else if (did.what === 'pause') running.pause(stamp);
      else if (did.what === 'stop') running.stop(stamp);
      else running.lose(stamp, did.what);
      if (record !== null) break;
      paused = did.what === 'resume' ? false : paused || ['pause', 'focusLost', 'hidden'].includes(did.what);
    }
    if (ms >= busyTo) {
      frame$.next(ms - backMs);
      backMs = 0;
    }
    if (queue.length === 0 && paused) { running.resume(ms); paused = false; }
  }
  if (record === null) throw new Error('the run did not end');
  return { record, pictures };
}

describe('a record from the page', () => {
  it('verifies, whatever hands, focus and frames did', () => {
    fc.assert(fc.property(dids, fc.integer({ min: 0, max: 4294967295 }), (inputs, seed) => {
      const { record } = fly(inputs, seed);
      expect(verify(record).refused).toEqual([]);
    }), { numRuns: 40 });
  }, 120_000);

  it('is what was on the screen: pointers of every picture are those of the replay at its tick', () => {
    const hands: Did[] = [
      { ms: 500, what: 'act', act: { do: 'openGuard' }, lateMs: 0 }, { ms: 900, what: 'act', act: { do: 'arm' }, lateMs: 0 },
      { ms: 1500, what: 'act', act: { do: 'holdDrive', way: 'extend' }, lateMs: 3 }, { ms: 22000, what: 'act', act: { do: 'releaseDrive' }, lateMs: 7 },
      { ms: 23000, what: 'act', act: { do: 'callSplit' }, lateMs: 0 },
    ];
    const { record, pictures } = fly(hands, 11);
    expect(record).toMatchObject({ outcome: 'caught', source: 'flown', end: { why: 'scored' } });
    const log = commandsOfRecord(record);
    let world = expand(scenario, AIRFRAME, 11);
    let compared = 0;
    while (world.state.tick < record.end.tick) {
      world = advance(world, log, 1);
      const picture = pictures.get(world.state.tick);
      if (picture === undefined) continue;
      compared += 1;
      expect(picture.leftPointerDeg).toBe(leftPointer(world.state, world.fixed.noise));
      expect(picture.rightPointerDeg).toBe(rightPointer(world.state, world.fixed.noise));
    }
    expect(compared).toBeGreaterThan(2000);
  });

  it('tells the time from the first frame behind onset to the stamp of the release, not to a frame', () => {
    const { record } = fly([
      { ms: 500, what: 'act', act: { do: 'openGuard' }, lateMs: 0 }, { ms: 900, what: 'act', act: { do: 'arm' }, lateMs: 0 },
      { ms: 1500, what: 'act', act: { do: 'holdDrive', way: 'extend' }, lateMs: 0 }, { ms: 20003.7, what: 'act', act: { do: 'releaseDrive' }, lateMs: 0 },
    ], 3);
    const frame = record.marks.find(({ what }) => what === 'firstFrame');
    const release = record.commands.find((command) => command.do === 'releaseDrive');
    expect(record.score.afterOnsetS).toBeCloseTo(((release?.stampMs ?? 0) - (frame?.stampMs ?? 0)) / 1000, 9);
  });
});
