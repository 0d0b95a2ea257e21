// A clock that the test turns by hand: frames come when they are asked for, and events are stamped by it. So two runs
// can be compared frame by frame, on a machine of any speed.
import type { Page } from 'playwright-core';

/** Runs in the page before the app. The clock starts at 1000 ms. */
export function clockByHand(): void {
  let now = 1000;
  let asked = 0;
  const waiting = new Map<number, FrameRequestCallback>();
  globalThis.requestAnimationFrame = (callback) => {
    asked += 1;
    waiting.set(asked, callback);
    return asked;
  };
  globalThis.cancelAnimationFrame = (handle) => { waiting.delete(handle); };
  performance.now = () => now;
  Object.defineProperty(Event.prototype, 'timeStamp', { get: () => now });
  // What is done every few seconds (notes for the logbook) would come by the machine's own pace: it stands too.
  const every = globalThis.setInterval;
  globalThis.setInterval = ((act: TimerHandler, ms?: number) => ((ms ?? 0) >= 1000 ? 0 : every(act, ms))) as typeof setInterval;
  Object.assign(globalThis, {
    /** Goes on in frames of so many ms to a time of the clock; one frame at least, even if the clock stands. */
    goTo(ms: number, frameMs: number) {
      do {
        now = Math.min(ms, now + frameMs);
        const callbacks = [...waiting.values()];
        waiting.clear();
        for (const callback of callbacks) callback(now);
      } while (now < ms);
    },
  });
}

/** Lets the clock run to `ms` in frames, then waits until the page has said what it shows. */
export async function goTo(page: Page, ms: number, frameMs = 16.7): Promise<void> {
  await page.evaluate(async ([to, step]) => {
    (globalThis as unknown as { goTo(ms: number, frameMs: number): void }).goTo(to!, step!);
    await new Promise((done) => setTimeout(done, 0));
    await new Promise((done) => setTimeout(done, 0));
  }, [ms, frameMs]);
}

/**
 * Presses Start and gives frames until the first picture is there, while the clock stands: however long the page takes to
 * get ready, the run starts at 1000 ms.
 */
export async function startByHand(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start' }).waitFor();
  // What the brief fetches by the way is there before the run begins.
  await page.waitForLoadState('networkidle');
  await page.evaluate(() => [...document.querySelectorAll('button')].find((one) => one.textContent === 'Start')!.click());
  await page.locator('canvas').waitFor({ state: 'attached' });
  for (let round = 0; round < 200; round += 1) {
    if ((await page.locator('[data-control=extend]').count()) > 0) return;
    await goTo(page, 1000);
    await new Promise((done) => setTimeout(done, 20));
  }
  throw new Error('the run did not start');
}
