// The end of `npm test`: unit tests, then browser tests whatever became of the first, then one line that counts both.
import { runBrowserTests } from './browser/run.mjs';
import { runProject } from './count.mjs';

const unit = runProject('unit');
const browser = await runBrowserTests();
const failed = unit.failed + browser.failed;
if (unit.skipped > 0) console.log(`${unit.skipped} unit tests skipped`);
console.log(`${unit.passed + browser.passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
