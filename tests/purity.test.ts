// sim needs the plain language and seven members of Math, no more. tests/browser/built.test.ts asks the same of dist/sim.js.
import { runInContext } from 'node:vm';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { bareContext, bareModule } from './bare.js';

test.each(['Date', 'performance', 'setTimeout', 'console', 'fetch', 'crypto', 'Promise', 'Intl', 'process', 'require', 'WebAssembly', 'TextEncoder'])(
  'the bare world has no %s',
  (name) => expect(runInContext(`typeof ${name}`, bareContext())).toBe('undefined'),
);

test.each(['Math.random()', 'Math.exp(1)', 'Math.round(1)', "eval('1')", "new Function('return 1')()", "(1).toLocaleString('de')"])(
  'the bare world refuses %s',
  (code) => expect(() => runInContext(code, bareContext())).toThrow(),
);

test('sim loads there', async () => {
  const sim = await bareModule(fileURLToPath(new URL('../sim/index.ts', import.meta.url)));
  expect(sim.advance).toBeTypeOf('function');
});
