// A Chromium that really starts: the one named, one already here, or one fetched. No sudo; nothing is fetched when one is found.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { createRequire } from 'node:module';
import { chromium } from 'playwright-core';

const root = process.getuid?.() === 0;

export const flags = [
  '--disable-dev-shm-usage', // containers give /dev/shm 64 MB, too little for a page
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  ...(root ? ['--no-sandbox'] : []), // Chromium refuses its sandbox to root
];

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

export async function findChromium(say = console.error) {
  const named = process.env.EVENHAND_CHROMIUM;
  if (named) {
    const trouble = await whyNot(named);
    if (trouble) throw new Error(`EVENHAND_CHROMIUM names ${named}, which does not start: ${trouble}`);
    return named;
  }
  const driversOwn = chromium.executablePath();
  for (const path of [...onPath(), driversOwn].filter((one) => existsSync(one))) {
    const trouble = await whyNot(path);
    if (!trouble) return path;
    say(`${path} does not start: ${trouble}`);
  }
  for (const fetch of [fromDebian, fromDriver]) {
    const path = fetch(say);
    if (path && !(await whyNot(path))) return path;
  }
  throw new Error(`No Chromium starts here. Type: ${root ? 'apt-get install -y chromium' : 'sudo apt-get install -y chromium'}`);
}

const onPath = () =>
  names.flatMap((name) => (process.env.PATH ?? '').split(delimiter).map((folder) => join(folder, name))).filter(isProgram);

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Null when a page in it can count; else what went wrong, in one line. */
async function whyNot(path) {
  try {
    const browser = await chromium.launch({ executablePath: path, args: flags, timeout: 60_000 });
    try {
      const page = await browser.newPage();
      return (await page.evaluate('6 * 7')) === 42 ? null : 'it miscounts';
    } finally {
      await browser.close();
    }
  } catch (problem) {
    return String(problem.message).split('\n')[0];
  }
}

function fromDebian(say) {
  if (!root || !existsSync('/etc/debian_version')) return null;
  say('No Chromium here: installing the one of Debian (apt-get), a minute or two ...');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const done = (...words) => spawnSync('apt-get', words, { env, stdio: ['ignore', 'ignore', 'inherit'] }).status === 0;
  return done('update') && done('install', '-y', 'chromium') ? (onPath()[0] ?? null) : null;
}

function fromDriver(say) {
  say("No Chromium yet: trying the browser driver's own download ...");
  const cli = join(dirname(createRequire(import.meta.url).resolve('playwright-core/package.json')), 'cli.js');
  const { status } = spawnSync(process.execPath, [cli, 'install', 'chromium'], { stdio: ['ignore', 'ignore', 'inherit'] });
  return status === 0 ? chromium.executablePath() : null;
}
