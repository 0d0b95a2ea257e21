// One short drill after the other in a real page, by the app's own stream, frames and stamps, with two needles on a canvas. The
// subject is a script: it sees the needles part when the frame has been painted, waits a time that it knows, and lets a key go.
import type { Airframe, RunRecord, Scenario } from '../../../sim/files/index.js';
import { stampOfTick } from '../../../sim/index.js';
import type { RunningDrill } from '../../../src/run/drill.js';
import { startDrill } from '../../../src/run/start.js';

interface Trial {
  /** How long the subject really took, ms. */
  readonly took: number;
  /** As the app has it: the stamp of the release behind the first frame drawn past onset. */
  readonly ours: number;
  /** As a page without stamps would have it: the frame that finds the key up, behind the tick of onset. */
  readonly polled: number;
}

const context = document.querySelector('canvas')?.getContext('2d');
const device = { hand: 'key', kinds: ['key'] } as unknown as RunRecord['device'];

function draw(leftDeg: number, rightDeg: number): void {
  if (context == null) return;
  context.clearRect(0, 0, 640, 360);
  for (const [x, deg] of [[160, leftDeg], [480, rightDeg]] as const) {
    context.beginPath();
    context.moveTo(x, 180);
    context.lineTo(x + 120 * Math.cos(deg / 57.3), 180 + 120 * Math.sin(deg / 57.3));
    context.stroke();
  }
}

const wait = (ms: number): Promise<void> => new Promise((done) => { setTimeout(done, ms); });
/** When what a frame draws has been painted. */
const painted = (): Promise<number> => new Promise((done) => {
  const { port1, port2 } = new MessageChannel();
  port1.addEventListener('message', () => { done(performance.now()); }, { once: true });
  port1.start();
  port2.postMessage(0);
});
const key = (type: 'keydown' | 'keyup'): void => { dispatchEvent(new KeyboardEvent(type, { code: 'KeyE' })); };

async function trial(scenario: Scenario, airframe: Airframe, seed: number, reactMs: number, lateMs: number): Promise<Trial | null> {
  const drill: RunningDrill = startDrill({ scenario, airframe, seed, device, gauge: {} as RunRecord['gauge'], app: 'bench' });
  const stamps = new AbortController();
  let up = false;
  addEventListener('keydown', (event) => { drill.act(event.timeStamp, { do: 'holdDrive', way: 'extend' }, 'key'); }, stamps);
  addEventListener('keyup', (event) => { up = true; drill.act(event.timeStamp + lateMs, { do: 'releaseDrive' }, 'key'); }, stamps);
  const seen = new Promise<number>((done) => {
    drill.onPicture(({ leftPointerDeg, rightPointerDeg }) => {
      draw(leftPointerDeg, rightPointerDeg);
      if (leftPointerDeg !== rightPointerDeg) void painted().then(done);
    });
  });
  const polled = new Promise<number>((done) => {
    const look = (stampMs: number): void => { if (up) done(stampMs); else requestAnimationFrame(look); };
    requestAnimationFrame(look);
  });
  await wait(60);
  drill.act(performance.now(), { do: 'openGuard' }, 'key');
  drill.act(performance.now(), { do: 'arm' }, 'key');
  await wait(40);
  key('keydown');
  const sawMs = await seen;
  await wait(reactMs);
  const letGoMs = performance.now();
  key('keyup');
  const polledMs = await polled;
  await wait(400);
  const ended = new Promise<RunRecord>((done) => { drill.onEnd(done); });
  drill.stop(performance.now());
  const record = await ended;
  stamps.abort();
  const first = record.marks.find(({ what }) => what === 'firstFrame');
  const release = record.commands.find((command) => command.do === 'releaseDrive');
  const { onsetS } = record.score;
  if (first === undefined || release === undefined || onsetS === null || record.marks.some(({ what }) => what === 'stall')) return null;
  return { took: letGoMs - sawMs, ours: release.stampMs - first.stampMs, polled: polledMs - stampOfTick(record.clock, Math.round(onsetS * 100)) };
}

Object.assign(globalThis, {
  async trials(count: number, scenario: Scenario, airframe: Airframe, lateMs: number): Promise<Trial[]> {
    const all: Trial[] = [];
    let dice = 7;
    for (let seed = 1; seed <= count; seed += 1) {
      dice = (dice * 48271) % 2147483647;
      const one = await trial(scenario, airframe, seed, 180 + (dice % 140), lateMs === 0 ? 0 : (dice % (2 * lateMs)));
      if (one !== null) all.push(one);
    }
    return all;
  },
});
