// The plain language and nothing else: no clock, no dice, no page, no machine, no waiting, and of Math only what is the same everywhere.
import { createContext, runInContext, type Context } from 'node:vm';
import { build, type Rolldown } from 'vite';
import { allowedMath } from './architecture/bans.js';

const language = `
  Object Array String Number Boolean Symbol BigInt RegExp JSON Reflect Proxy Function undefined NaN Infinity Math
  Map Set WeakMap WeakSet ArrayBuffer DataView Iterator globalThis isFinite isNaN parseFloat parseInt
  Error RangeError TypeError SyntaxError ReferenceError EvalError URIError AggregateError
  Int8Array Uint8Array Uint8ClampedArray Int16Array Uint16Array Int32Array Uint32Array BigInt64Array BigUint64Array
  Float32Array Float64Array
`.trim().split(/\s+/);

/** An empty world with the plain language in it. Text cannot become code there. */
export function bareContext(): Context {
  const context = createContext({}, { codeGeneration: { strings: false, wasm: false } });
  runInContext(
    `{
      const language = ${JSON.stringify(language)}, members = ${JSON.stringify(allowedMath)}, full = Math;
      for (const name of Reflect.ownKeys(globalThis)) if (!language.includes(name)) delete globalThis[name];
      globalThis.Math = Object.freeze(Object.fromEntries(members.map((name) => [name, full[name]])));
      for (const { prototype } of [Object, Array, String, Number, BigInt]) delete prototype.toLocaleString;
      delete String.prototype.localeCompare;
    }`,
    context,
  );
  return context;
}

/** Runs a module with all that it imports in an empty world and gives what it exports. */
export async function bareModule(entry: string): Promise<Record<string, unknown>> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: { write: false, minify: false, target: 'es2022', lib: { entry, formats: ['iife'], name: 'exported', fileName: 'bare' } },
  });
  const [{ output }] = built as Rolldown.RolldownOutput[] as [Rolldown.RolldownOutput];
  return runInContext(`${output[0].code}\nexported`, bareContext(), { filename: 'bare.js' }) as Record<string, unknown>;
}
