// How true the stamps are on which the score rests. Releases are made at moments that the test knows by the page's own clock; the
// record must hold those moments, whatever frames and other work do. And a real key, pressed while the page is busy, must
// carry the time at which it was pressed and not the time at which the page found it.
import { expect, test } from 'vitest';
import { stampOfTick, tickOfStamp } from '../../sim/index.js';
import { endAndSave, makeReady } from './drilling.js';
import { flyScenario, plain } from './flying.js';
import { cdp } from './harness.js';

const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;
const spread = (all: readonly number[]): number => Math.sqrt(mean(all.map((one) => (one - mean(all)) ** 2)));
const figures = (what: string, all: readonly number[]): string =>
  `${what}: n ${all.length}, bias ${mean(all).toFixed(3)} ms, sd ${spread(all).toFixed(3)} ms, most ${Math.max(...all.map(Math.abs)).toFixed(3)} ms`;

interface Truth { releases: number[]; frames: number[]; handled: number[] }

test('releases made at known moments, some of them while the page works: each within a millisecond in the record', async () => {
  const { page, close } = await flyScenario(plain({ faults: [{ name: 'a', kind: 'disconnect', side: 'right', when: { heldS: 1.5 } }] }));
  await makeReady(page);
  const truth = await page.evaluate(async () => {
    const found: Truth = { releases: [], frames: [], handled: [] };
    const log = (stamp: number): void => {
      found.frames.push(stamp);
      requestAnimationFrame(log);
    };
    requestAnimationFrame(log);
    const send = (type: string): number => {
      const at = performance.now();
      document.querySelector('[data-control=extend]')!.dispatchEvent(new KeyboardEvent(type, { code: 'KeyE', key: 'e', bubbles: true }));
      return at;
    };
    const wait = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
    let dice = 7;
    for (let round = 0; round < 40; round += 1) {
      dice = (dice * 48271) % 2147483647;
      send('keydown');
      await wait(60 + (dice % 97));
      found.releases.push(send('keyup'));
      // Every third time the page is busy for longer than two frames right behind it.
      if (round % 3 === 0) for (const until = performance.now() + 45; performance.now() < until;);
      await wait(30 + (dice % 41));
    }
    await wait(500);
    return found;
  });
  const record = await endAndSave(page);
  await close();
  const stamps = record.commands.flatMap((command) => (command.do === 'releaseDrive' ? [command.stampMs] : []));
  expect(stamps.length).toBeGreaterThanOrEqual(40);
  const errors = truth.releases.map((at) => stamps.reduce((best, stamp) => (Math.abs(stamp - at) < Math.abs(best) ? stamp - at : best), Infinity));
  console.info(figures('release in the record behind the moment it was made', errors));
  expect(Math.abs(mean(errors))).toBeLessThan(0.5);
  expect(spread(errors)).toBeLessThan(0.5);
  expect(Math.max(...errors.map(Math.abs))).toBeLessThan(2);

  // The first frame behind onset is the first that was drawn with onset's tick done, by a log of frames of the test's own.
  const mark = record.marks.find(({ what }) => what === 'firstFrame')!;
  expect(mark).toBeDefined();
  const onsetTick = Math.round(record.score.onsetS! * 100);
  const first = truth.frames.find((stamp) => tickOfStamp(record.clock, stamp).tick > onsetTick)!;
  console.info(`first frame behind onset: mark ${(mark.stampMs - first).toFixed(3)} ms behind the test's own log; ${(mark.stampMs - stampOfTick(record.clock, onsetTick)).toFixed(1)} ms behind onset`);
  expect(Math.abs(mark.stampMs - first)).toBeLessThan(0.5);
}, 90_000);

test('a real key that goes up while the page is busy is stamped when it went up, not when the page got round to it', async () => {
  const { page, close } = await flyScenario(plain());
  await makeReady(page);
  const session = await cdp(page);
  const key = (type: 'keyDown' | 'keyUp') => session.send('Input.dispatchKeyEvent', { type, code: 'KeyE', key: 'e', windowsVirtualKeyCode: 69 });
  await page.evaluate(() => {
    const handled: number[] = [];
    Object.assign(globalThis, { handled });
    addEventListener('keyup', (event) => { handled.push(performance.now() - event.timeStamp); }, { capture: true });
  });
  for (let round = 0; round < 10; round += 1) {
    await key('keyDown');
    await page.waitForTimeout(120);
    // The page is at work for 90 ms; the key goes up about a third of the way into it.
    const busy = page.evaluate(() => { for (const until = performance.now() + 90; performance.now() < until;); });
    await new Promise((done) => setTimeout(done, 30));
    await key('keyUp');
    await busy;
    await page.waitForTimeout(60);
  }
  const handled = await page.evaluate(() => (globalThis as unknown as { handled: number[] }).handled);
  const record = await endAndSave(page);
  await close();
  console.info(figures('the page found the key behind its stamp', handled));
  // Most of the waiting is in front of the handler and behind the stamp: that is the error that is not made.
  expect(Math.max(...handled)).toBeGreaterThan(20);
  expect(record.commands.filter((command) => command.do === 'releaseDrive')).toHaveLength(10);
  expect(record.marks.filter(({ what }) => what === 'late')).toEqual([]);
}, 60_000);
