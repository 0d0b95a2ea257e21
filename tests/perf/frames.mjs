// What a frame costs in the page: how soon the first one stands, how much script each one runs, and what stays in the heap.
import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inFolder } from './bundle.mjs';
import { dist, inBrowser, LONG, started, withDrill } from './built.mjs';
import { best, median } from './timing.mjs';

const ROUNDS = 7;
const SLOWED = 4;

/** Runs in the page, before anything else: notes when the frame ended in which a canvas of the page was first filled, and what was drawn until then. */
function watchFirst() {
  const proto = CanvasRenderingContext2D.prototype;
  const ops = [];
  globalThis.firstFrame = { at: null, ops };
  let asked = false;
  for (const name of ['fill', 'stroke', 'fillText', 'fillRect']) {
    const real = proto[name];
    proto[name] = function drawn(...words) {
      if (globalThis.firstFrame.at === null) ops.push(name === 'fillText' ? ['fillText', words[0], this.font] : [name]);
      if (!asked && this.canvas.isConnected) {
        asked = true;
        requestAnimationFrame(() => { const { port1, port2 } = new MessageChannel(); port1.addEventListener('message', () => { globalThis.firstFrame.at = performance.now(); }); port1.start(); port2.postMessage(0); });
      }
      return real.apply(this, words);
    };
  }
}
function delayed() {
  for (const until = performance.now() + 1500; performance.now() < until;);
}

const found = (page) => page.waitForFunction(() => globalThis.firstFrame.at !== null).then(() => page.evaluate(() => globalThis.firstFrame));

async function slowed(page) {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
}

export async function first({ spoil }) {
  return inFolder((folder) => inBrowser(dist, (browser, url) => {
    // The plain page lies in a folder beside the app's and is served in the same way, by a server of its own.
    const plain = (name) => fileURLToPath(new URL(`plain/${name}`, import.meta.url));
    copyFileSync(plain('canvas.html'), join(folder, 'index.html'));
    copyFileSync(plain('canvas.js'), join(folder, 'canvas.js'));
    return inBrowser(folder, async (_, plainUrl) => {
      const ours = [];
      const theirs = [];
      let drawn = [];
      for (let round = 0; round < (spoil ? 2 : ROUNDS); round += 1) {
        const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
        await page.addInitScript(watchFirst);
        if (spoil) await page.addInitScript(delayed);
        await slowed(page);
        await page.goto(`${url}#/drill/1?seed=3`);
        const start = page.getByRole('button', { name: 'Start' });
        await start.waitFor();
        const [shown, clicked] = await page.evaluate(() => {
          const button = [...document.querySelectorAll('button')].find((one) => one.textContent === 'Start');
          const shownAt = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? performance.now();
          const at = performance.now();
          button.click();
          return [shownAt, at];
        });
        const { at, ops } = await found(page);
        ours.push(shown + at - clicked);
        drawn = ops;
        await page.close();

        const other = await browser.newPage({ viewport: { width: 1280, height: 720 } });
        await other.addInitScript(watchFirst);
        await other.addInitScript((list) => { globalThis.drawn = list; }, drawn);
        await slowed(other);
        await other.goto(plainUrl);
        theirs.push((await found(other)).at);
        await other.close();
      }
      return [{ id: 'first', value: median(ours) / median(theirs), notes: [`from address to brief, and from Start to the first frame, against address to frame; medians of ${ours.length}, best ${(best(ours) / best(theirs)).toFixed(2)}; ms: ${median(ours).toFixed(0)} and ${median(theirs).toFixed(0)}; ${drawn.length} fills, strokes and texts`] }];
    });
  }));
}

const SCRIPT_S = 20;

export async function script({ spoil }) {
  return inBrowser(dist, async (browser, url) => {
    const page = await withDrill(browser, LONG);
    if (spoil) await page.addInitScript(() => { const wait = () => { for (const until = performance.now() + 3; performance.now() < until;); requestAnimationFrame(wait); }; requestAnimationFrame(wait); });
    await started(page, url);
    await page.locator('[data-control="guard"]').click();
    await page.locator('[data-control="arm"]').click();
    await page.keyboard.down('KeyE');
    await page.evaluate(() => { globalThis.frames60 = 0; const count = () => { globalThis.frames60 += 1; requestAnimationFrame(count); }; requestAnimationFrame(count); });
    await page.waitForTimeout(3000);
    const session = await page.context().newCDPSession(page);
    // Time of the page's thread, not of the wall: another's work on the machine is none of ours.
    await session.send('Performance.enable', { timeDomain: 'threadTicks' });
    const now = async () => {
      const { metrics } = await session.send('Performance.getMetrics');
      const of = (name) => metrics.find((one) => one.name === name).value;
      return { script: of('ScriptDuration'), frames: await page.evaluate(() => globalThis.frames60) };
    };
    const before = await now();
    await page.waitForTimeout((spoil ? 5 : SCRIPT_S) * 1000);
    const after = await now();
    await page.keyboard.up('KeyE');
    const ms = 1000 * (after.script - before.script) / (after.frames - before.frames);
    return [{ id: 'script', value: ms / (1000 / 60), notes: [`${ms.toFixed(2)} ms of thread time a frame over ${after.frames - before.frames} frames with the drive held`] }];
  });
}

export async function heap({ spoil }) {
  const [early, late] = spoil ? [5, 15] : [60, 300];
  return inBrowser(dist, async (browser, url) => {
    const page = await withDrill(browser, LONG);
    if (spoil) await page.addInitScript(() => { globalThis.kept = []; const keep = () => { globalThis.kept.push(new Array(2000).fill(1.5)); requestAnimationFrame(keep); }; requestAnimationFrame(keep); });
    await started(page, url);
    const from = Date.now();
    const session = await page.context().newCDPSession(page);
    const usedAt = async (second) => {
      await page.waitForTimeout(Math.max(0, from + second * 1000 - Date.now()));
      for (let k = 0; k < 3; k += 1) await session.send('HeapProfiler.collectGarbage');
      return (await session.send('Runtime.getHeapUsage')).usedSize;
    };
    const before = await usedAt(early);
    const after = await usedAt(late);
    return [{ id: 'heap', value: after / before, notes: [`MB: ${(before / 1e6).toFixed(2)} after ${early} s, ${(after / 1e6).toFixed(2)} after ${late} s`] }];
  });
}
