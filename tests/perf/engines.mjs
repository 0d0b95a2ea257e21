// One drill under three trainees in Node, in a bare world of node:vm and in Chromium: the same final hashes. tests/browser/engine.test.ts flies them all.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { build } from 'vite';
import { top } from '../../src/tools/fresh.mjs';
import { inFolder } from './bundle.mjs';
import { dist, inBrowser } from './built.mjs';
import { model } from './model.mjs';

const fly = (sim, { scenario, airframe }) => ['prompt', 'slow', 'never'].map((trainee) => sim.flyTrainee(scenario, airframe, 20261125, trainee).flight.hash);

/** The model as one script in a world with nothing but the language. */
const inBareWorld = (given) => inFolder(async (outDir) => {
  await build({
    configFile: false, root: top, publicDir: false, logLevel: 'error',
    build: { outDir, emptyOutDir: false, minify: false, lib: { entry: join(top, 'sim/index.ts'), formats: ['iife'], name: 'sim', fileName: () => 'sim.js' } },
  });
  return JSON.parse(runInNewContext(`${readFileSync(join(outDir, 'sim.js'), 'utf8')}; JSON.stringify((${fly})(sim, JSON.parse(given)))`, { given }));
});

export async function engines({ wrong }) {
  const { sim, airframe, drill } = await model();
  const scenario = drill('set-16-from-4');
  const given = JSON.stringify({ scenario, airframe });
  const node = fly(sim, { scenario, airframe });
  const vm = await inBareWorld(given);
  return inBrowser(dist, async (browser, url) => {
    const page = await browser.newPage();
    await page.goto(`${url}#/nowhere`);
    const inPage = await page.evaluate(`(async () => (${fly})(await import('${url}sim.js'), ${given}))()`);
    if (wrong) inPage[0] = `${inPage[0]}0`;
    const apart = node.filter((hash, at) => inPage[at] !== hash || vm[at] !== hash).length;
    return [{ id: 'engines', value: apart, notes: [`${node.length} runs in Node ${process.versions.node}, node:vm and Chromium ${browser.version()}`] }];
  });
}
