// The browser tests: finds a Chromium or fetches one, then runs them. No test run, or one skipped, is a failure.
// Words after the command go to vitest: `node tests/browser/run.mjs focus`.
import { pathToFileURL } from 'node:url';
import { runProject } from '../count.mjs';
import { findChromium } from './chromium.mjs';

export async function runBrowserTests(words = []) {
  try {
    process.env.EVENHAND_CHROMIUM = await findChromium();
  } catch (problem) {
    console.error(problem.message);
    return { passed: 0, failed: 1 };
  }
  console.error(`Browser tests in ${process.env.EVENHAND_CHROMIUM}`);
  const { passed, failed, skipped } = runProject('browser', words);
  if (skipped > 0 && words.length === 0) console.error(`${skipped} browser tests were skipped: each counts as failed.`);
  if (passed + failed === 0) console.error('No browser test ran: that counts as one failed.');
  const missed = words.length === 0 ? skipped : 0;
  return { passed, failed: passed + failed === 0 ? 1 : failed + missed };
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { passed, failed } = await runBrowserTests(process.argv.slice(2));
  console.log(`${passed} passed, ${failed} failed`);
  process.exit(failed > 0 ? 1 : 0);
}
