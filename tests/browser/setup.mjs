// Before the first browser test: a fresh build, a server for it, one browser for all test files. After the last: all closed.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { dist, isFresh, top } from '../../src/tools/fresh.mjs';
import { findChromium, flags } from './chromium.mjs';

export default async function setup({ provide }) {
  if (!isFresh()) {
    const { status } = spawnSync(process.execPath, [join(top, 'src/tools/build.mjs'), '--no-types'], { stdio: 'inherit' });
    if (status !== 0) throw new Error('The app does not build (above).');
  }
  const path = await findChromium();
  const { serve } = await import(join(dist, 'serve.js'));
  const served = await serve({ root: dist, port: 0 });
  const browser = await chromium.launchServer({ executablePath: path, args: flags });
  provide('appUrl', served.url);
  provide('browserEndpoint', browser.wsEndpoint());
  provide('chromium', { path, flags });
  return async () => {
    await browser.close();
    await served.close();
  };
}
