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
  Object.assign(globalThis, {
    /** Goes on in frames of so many ms to a time of the clock. */
    goTo(ms: number, frameMs: number) {
      while (now < ms) {
        now = Math.min(ms, now + frameMs);
        const callbacks = [...waiting.values()];
        waiting.clear();
        for (const callback of callbacks) callback(now);
      }
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

/** Presses Start and waits for the first picture: a page of which the clock stands draws nothing by itself. */
export async function startByHand(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start' }).waitFor();
  await page.evaluate(() => [...document.querySelectorAll('button')].find((one) => one.textContent === 'Start')!.click());
  await page.locator('canvas').waitFor({ state: 'attached' });
  for (let round = 0; round < 200; round += 1) {
    if ((await page.locator('[data-control=extend]').count()) > 0) return;
    await goTo(page, 1000 + 16.7 * (round + 1));
    await new Promise((done) => setTimeout(done, 20));
  }
  throw new Error('the run did not start');
}
