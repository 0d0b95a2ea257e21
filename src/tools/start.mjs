// `npm start`: builds what is stale, then serves it. `npm start -- --port 8080 --lan` as in `evenhand serve`.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { dist, isFresh } from './fresh.mjs';

const usage = 'npm start [-- --port N] [-- --lan]';

function wanted() {
  try {
    const { values } = parseArgs({ options: { port: { type: 'string' }, lan: { type: 'boolean' } } });
    return { port: values.port === undefined ? undefined : Number(values.port), lan: values.lan };
  } catch (problem) {
    console.error(`${problem.message}\nUsage: ${usage}`);
    process.exit(2);
  }
}

const { port, lan } = wanted();
if (!isFresh()) {
  console.error('Building ...');
  const { status } = spawnSync(process.execPath, [join(import.meta.dirname, 'build.mjs'), '--no-types'], { stdio: 'inherit' });
  if (status !== 0) process.exit(1);
}

const { serve, announcement } = await import(join(dist, 'serve.js'));
try {
  const served = await serve({ root: dist, port, lan });
  for (const line of announcement(served)) console.log(line);
  const stop = () => served.close().then(() => process.exit(0));
  process.on('SIGINT', stop).on('SIGTERM', stop);
} catch (problem) {
  console.error(problem.message);
  process.exit(1);
}
