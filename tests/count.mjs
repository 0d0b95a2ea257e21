// Runs one vitest project and counts. A file that does not load counts as one failure, and so does a run that breaks otherwise.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { top } from '../src/tools/fresh.mjs';

export function runProject(project, words = []) {
  const report = join(top, `.cache/tests/${project}.json`);
  mkdirSync(join(top, '.cache/tests'), { recursive: true });
  rmSync(report, { force: true });
  const vitest = join(top, 'node_modules/vitest/vitest.mjs');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const { status } = spawnSync(process.execPath, [vitest, 'run', '--project', project, ...reporters, ...words], { cwd: top, stdio: 'inherit' });
  const { numPassedTests: passed, numFailedTests, numPendingTests, numTodoTests, testResults } = readReport(report);
  const notLoaded = testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length;
  const counted = numFailedTests + notLoaded;
  return { passed, failed: counted === 0 && status !== 0 ? 1 : counted, skipped: numPendingTests + numTodoTests };
}

function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0, testResults: [] };
  }
}
