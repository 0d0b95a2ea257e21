// Runs one vitest project and counts. A run that breaks without a failing test (a file that does not load, say) counts as one failure.
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
  const { numPassedTests: passed, numFailedTests, numPendingTests, numTodoTests } = readReport(report);
  const failed = numFailedTests === 0 && status !== 0 ? 1 : numFailedTests;
  return { passed, failed, skipped: numPendingTests + numTodoTests };
}

function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0 };
  }
}
