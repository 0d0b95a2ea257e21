/** The command `evenhand`: the streams and the exit code of the process. */
import { isatty } from 'node:tty';
import { main } from './program.js';

// A reader that went away (`| head`) is no fault of the command.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (problem: NodeJS.ErrnoException) => {
    if (problem.code !== 'EPIPE') process.exitCode = 2;
    process.exit();
  });
}

try {
  // Set, not exited with: what was written to a pipe goes out first.
  process.exitCode = await main(process.argv.slice(2), {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    screen: isatty(process.stderr.fd),
  });
} catch (problem) {
  process.stderr.write(`evenhand: a fault in Evenhand itself: ${problem instanceof Error ? problem.message : String(problem)}\n`);
  process.exitCode = 2;
}
