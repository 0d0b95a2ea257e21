// How true a reaction time is: as the app takes it, and as a page takes it that knows neither its first frame nor the stamp of a key.
import { join } from 'node:path';
import { build } from 'vite';
import { top } from '../../src/tools/fresh.mjs';
import { inFolder } from './bundle.mjs';
import { inBrowser } from './built.mjs';
import { model } from './model.mjs';

const TRIALS = 80;
const mean = (all) => all.reduce((sum, one) => sum + one, 0) / all.length;
const deviation = (all) => Math.sqrt(mean(all.map((one) => (one - mean(all)) ** 2)));

export async function reaction({ spoil }) {
  const { airframe, own } = await model();
  const scenario = own({
    pointerNoise: false, task: { settings: [16], limitS: 60 }, start: { flapLeverDeg: 16, leadingEdge: 'out' },
    faults: [{ name: 'a', kind: 'disconnect', side: 'right', when: { heldS: 0.3 } }],
  });
  return inFolder(async (outDir) => {
    await build({
      configFile: false, root: join(top, 'tests/perf/reaction'), publicDir: false, logLevel: 'error', base: './',
      build: { outDir, emptyOutDir: false, target: 'es2022', modulePreload: { polyfill: false } },
    });
    return inBrowser(outDir, async (browser, url) => {
      const page = await browser.newPage();
      await page.goto(url);
      const found = await page.evaluate(([count, ...given]) => globalThis.trials(count, ...given), [spoil ? 12 : TRIALS, scenario, airframe, spoil ? 60 : 0]);
      const ours = found.map((one) => one.ours - one.took);
      const polled = found.map((one) => one.polled - one.took);
      const words = (all) => `${mean(all).toFixed(1)} +- ${deviation(all).toFixed(1)}`;
      return [
        { id: 'bias', value: Math.abs(mean(ours)) / Math.abs(mean(polled)), notes: [`${found.length} trials by the app's own stream in a bare page; ms off the true time, mean +- sd: ours ${words(ours)}, tick to frame poll ${words(polled)}`] },
        { id: 'spread', value: deviation(ours) / deviation(polled) },
      ];
    });
  });
}
