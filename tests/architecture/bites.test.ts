// Each guard broken once on made-up sources: a guard that cannot bite would let everything through unseen.
import { describe, expect, test } from 'vitest';
import { banProblems } from './bans.js';
import { faceProblems } from './faces.js';
import { circles, importProblems } from './layers.js';
import { linesProblems } from './lines.js';
import { parseSource } from './source.js';
import { longestFile } from './table.js';

type Files = Record<string, string>;

/** A small house in order; each test adds one thing that is not. */
const house: Files = {
  'sim/portable.ts': 'export const exp = (x: number): number => x;',
  'sim/state.ts': 'export interface State { tick: number }',
  'sim/in-tick.ts': 'export interface InTick { qPa: number }',
  'sim/world.ts': "import { torque } from './drive/motor.js'; import type { State } from './state.js'; export const world: State = { tick: torque };",
  'sim/drive/motor.ts': "import { exp } from '../portable.js'; import type { State } from '../state.js'; export const torque = exp(1); export type S = State;",
  'sim/flight/roll.ts': 'export const roll = 1;',
  'sim/score/points.ts': "import { sha256 } from '@noble/hashes/sha2.js'; import { world } from '../world.js'; export const points = [sha256, world];",
  'sim/stats/fit.ts': 'export const fit = 1;',
  'sim/files/scenario.ts': "import * as z from 'zod/mini'; export const scenario = z.number(); export type Scenario = number;",
  'sim/index.ts': "export { world } from './world.js';",
  'src/text/place.ts': "import { parseTree } from 'jsonc-parser'; export const place = parseTree;",
  'src/cli/main.ts': "import { stdout } from 'node:process'; import { Command } from 'commander'; import { place } from '../text/place.js'; export const all = [stdout, Command, place];",
  'src/clock/clock.ts': 'export const clock = 1;',
  'src/input/hand.ts': "import { Subject } from 'rxjs'; export const hand = new Subject();",
  'src/run/drill.ts': "import { Subject } from 'rxjs'; import { clock } from '../clock/clock.js'; import { world } from '../../sim/index.js'; export const drill = [Subject, clock, world];",
  'src/view/gauge.ts': "import { Container } from 'pixi.js'; export const gauge = Container;",
  'src/pages/debrief.tsx': "import { signal } from '@preact/signals'; import drill from '../../scenarios/a.json?raw'; import './page.css'; export const debrief = <p>{signal(drill)}</p>;",
  'src/main.tsx': "import { debrief } from './pages/debrief.js'; import { drill } from './run/drill.js'; export const app = [debrief, drill];",
};

const sourcesOf = (files: Files) => Object.entries(files).map(([path, text]) => parseSource(path, text));
const withMore = (path: string, text: string) => sourcesOf({ ...house, [path]: `${house[path] ?? ''}\n${text}` });

test('the house in order passes', () => {
  expect(importProblems(sourcesOf(house))).toEqual([]);
  expect(circles(sourcesOf(house))).toEqual([]);
});

describe('imports that are refused', () => {
  test.each([
    ['sim/portable.ts', "import { world } from './world.js';", 'stands above'],
    ['sim/drive/motor.ts', "import { roll } from '../flight/roll.js';", 'numbers, not other parts'],
    ['sim/drive/motor.ts', "import type { roll } from '../flight/roll.js';", 'numbers, not other parts'],
    ['sim/drive/motor.ts', "import { world } from '../world.js';", 'numbers, not other parts'],
    ['sim/drive/motor.ts', "import { type InTick as T } from '../in-tick.js';", 'its type only'],
    ['sim/world.ts', "import { points } from './score/points.js';", 'stands above'],
    ['sim/world.ts', "export * from './score/points.js';", 'stands above'],
    ['sim/score/points.ts', "import { fit } from '../stats/fit.js';", 'stands above'],
    ['sim/index.ts', "import { scenario } from './files/scenario.js';", 'only its types'],
    ['sim/index.ts', "export { type Scenario } from './files/scenario.js';", 'only its types'],
    ['sim/world.ts', "import * as z from 'zod/mini';", 'package'],
    ['sim/files/scenario.ts', "import { z } from 'zod';", 'package'],
    ['sim/world.ts', "import { sha256 } from '@noble/hashes/sha2.js';", 'package'],
    ['sim/world.ts', "import { readFileSync } from 'node:fs';", 'package'],
    ['sim/world.ts', "import { clock } from '../src/clock/clock.js';", 'not for this one'],
    ['sim/world.ts', "import a from '../scenarios/a.json';", 'code of sim only'],
    ['sim/world.ts', "import { gone } from './gone.js';", 'no such file'],
    ['src/clock/clock.ts', "import { drill } from '../run/drill.js';", 'stands above'],
    ['src/run/drill.ts', "import { debrief } from '../pages/debrief.js';", 'stands above'],
    ['src/run/drill.ts', "const page = import('../pages/debrief.js');", 'stands above'],
    ['src/run/drill.ts', 'const page = (name: string) => import(name);', 'must name'],
    ['src/run/drill.ts', "import { signal } from '@preact/signals';", 'package'],
    ['src/pages/debrief.tsx', "import { Subject } from 'rxjs';", 'package'],
    ['src/pages/debrief.tsx', "import { hand } from '../input/hand.js';", 'do not read the hand'],
    ['src/pages/debrief.tsx', "import { Container } from 'pixi.js';", 'package'],
    ['src/pages/debrief.tsx', "import { all } from '../cli/main.js';", 'not for this one'],
    ['src/pages/debrief.tsx', "import '../../tests/a.json';", 'lies outside'],
    ['src/view/gauge.ts', "import type { drill } from '../run/drill.js';", 'does not know who asks'],
    ['src/cli/main.ts', "import { debrief } from '../pages/debrief.js';", 'not for this one'],
    ['src/text/place.ts', "import { all } from '../cli/main.js';", 'not for this one'],
    ['src/text/place.ts', "import { join } from 'node:path';", 'package'],
    ['src/elsewhere/new.ts', 'export const x = 1;', 'has no place'],
  ])('%s: %s', (path, text, why) => {
    const problems = importProblems(withMore(path, text));
    expect(problems.join('\n')).toContain(why);
    expect(problems.every((problem) => problem.startsWith(path))).toBe(true);
  });

  test('streams and signals in one file', () => {
    const problems = importProblems(withMore('src/run/drill.ts', "import { signal } from '@preact/signals';"));
    expect(problems).toContain('src/run/drill.ts: rxjs and @preact/signals in one file');
  });
});

test('a circle is found, whatever its length, unless only types go round', () => {
  const around = (last: string) => circles(sourcesOf({ 'sim/a.ts': "import './b.js';", 'sim/b.ts': "export * from './c.js';", 'sim/c.ts': last }));
  expect(around("import { a } from './a.js';")).toEqual(['sim/a.ts -> sim/b.ts -> sim/c.ts -> sim/a.ts']);
  expect(around("import { type a } from './a.js';")).toHaveLength(1);
  expect(around("import type { a } from './a.js';")).toEqual([]);
});

describe('what may not stand in sim', () => {
  test.each([
    'export const now = Date.now();',
    'export const at = new Date(0);',
    'export const now = performance.now();',
    'setTimeout(() => 0, 1);',
    'const later = setInterval; export { later };',
    'export const x = Math.random();',
    'export const x = Math.exp(1);',
    'export const x = Math.round(1.5);',
    'export const x = Math.PI;',
    "export const x = Math['sin'](1);",
    'export const { sin } = Math;',
    'const m = Math; export { m };',
    'export const x = (name: "sin") => Math[name](1);',
    'export const x = 2 ** 0.5;',
    'let x = 2; x **= 2; export { x };',
    'export const id = crypto.randomUUID();',
    "export const got = fetch('a');",
    'console.log(1);',
    'export const where = process.cwd();',
    'export const g = globalThis;',
    'export const w = window.innerWidth;',
    'export const d = document.title;',
    'export const shorthand = { document };',
    'export async function later() {}',
    'export const later = async () => 1;',
    'export const p = Promise.resolve(1);',
    'export const wait = await 1;',
    'export async function* many(a: number[]) { for await (const b of a) yield b; }',
    "export const f = new Intl.NumberFormat('en');",
    'export const t = (1).toLocaleString();',
    "export const t = (1)['toLocaleString']();",
    "export const o = 'a'.localeCompare('b');",
    "export const m = import('./a.js');",
    'export const u = import.meta.url;',
    "export const e = eval('1');",
    "export const f = new Function('return 1');",
    "export const f = [].constructor.constructor('return 1');",
  ])('%s', (text) => {
    expect(banProblems(parseSource('sim/world.ts', text))).not.toEqual([]);
    expect(banProblems(parseSource('src/pages/page.ts', text))).toEqual([]);
  });

  test.each([
    '// Date.now() and Math.random() in words, 2 ** 3',
    "export const words = 'Date.now(), fetch(), await, 2 ** 3';",
    'export const x = Math.sqrt(Math.abs(Math.min(1, Math.max(2, Math.floor(3), Math.imul(4, 5), Math.fround(6)))));',
    'export const plan = { performance: 1, document: 2 }; export const sum = plan.performance + plan.document;',
    'export interface Plan { performance: number; Date: string }',
    'export class Motor { constructor(readonly torqueNm: number) {} }',
  ])('fine: %s', (text) => {
    expect(banProblems(parseSource('sim/world.ts', text))).toEqual([]);
  });

  test('stats and wing may use Math and powers, but no dice and no clock', () => {
    expect(banProblems(parseSource('sim/stats/fit.ts', 'export const x = Math.log(2) ** 2 + Math.PI;'))).toEqual([]);
    expect(banProblems(parseSource('sim/wing/line.ts', 'export const x = Math.random();'))).toHaveLength(1);
    expect(banProblems(parseSource('sim/stats/fit.ts', 'export const x = Date.now();'))).toHaveLength(1);
  });

  test('a problem names file and line', () => {
    expect(banProblems(parseSource('sim/world.ts', '\n\nexport const x = Math.exp(1);'))).toEqual(['sim/world.ts:3: Math.exp is not for sim']);
  });
});

test('a long file is refused from one line too many', () => {
  const long = (lines: number) => linesProblems(parseSource('sim/world.ts', '// a line\n'.repeat(lines)));
  expect(long(longestFile)).toEqual([]);
  expect(long(longestFile + 1)).toHaveLength(1);
});

describe('a face of the package says what it exports', () => {
  const faceOf = (declaration: string, face = "export { speed, type Speed } from './speed.js';") =>
    faceProblems(sourcesOf({ 'sim/index.ts': face, 'sim/speed.ts': `/** Speeds of the house. */\n${declaration}` }), ['sim/index.ts']);
  const said = '/** Calibrated airspeed of a setting, kt. */\n';
  const speed = `${said}export const speed = 1;\n`;

  test.each([
    [`export const speed = 1;\n${said}export type Speed = number;`, 'sim/speed.ts:2: speed has no docstring'],
    [`/** The speed. */\nexport const speed = 1;\n${said}export type Speed = number;`, 'sim/speed.ts:3: speed has no docstring'],
    [`${said}const other = 1;\nexport const speed = other;\n${said}export type Speed = number;`, 'sim/speed.ts:4: speed has no docstring'],
    [`${speed}/* Calibrated airspeed of a setting. */\nexport type Speed = number;`, 'sim/speed.ts:5: Speed has no docstring'],
    [`${speed}${said}export interface Speed { readonly value: number }`, 'sim/speed.ts:5: Speed.value is a number of what?'],
    [`${speed}${said}export interface Speed { readonly value: readonly number[] | null }`, 'sim/speed.ts:5: Speed.value is a number of what?'],
    [`${speed}${said}export type Speed = { readonly of: { readonly value: number } }`, 'sim/speed.ts:5: Speed.value is a number of what?'],
    [`${said}export function speed({ value }: { value: number }): number { return value; }\n${said}export type Speed = number;`, 'sim/speed.ts:3: speed.value is a number of what?'],
    [`${said}export function speed(value: number): number { return value; }\n${said}export type Speed = number;`, 'sim/speed.ts:3: speed.value is a number of what?'],
    [`${said}export const speed = (value = 1): number => value;\n${said}export type Speed = number;`, 'sim/speed.ts:3: speed.value is a number of what?'],
    [`${said}export function speed(): never { throw new RangeError('slow'); }\n${said}export type Speed = number;`, 'sim/speed.ts:3: speed does not say that it throws'],
  ])('refused: %s', (declaration, problem) => {
    expect(faceOf(declaration)).toEqual([problem]);
  });

  test.each([
    'export interface Speed { readonly valueKt: number; readonly value: string }',
    'export interface Speed {\n/** kt */\nreadonly value: number;\nreadonly least: number }',
    'export interface Speed {\nreadonly value: number; // kt\n}',
    'export interface Speed {\n/** kt */\nreadonly of: { readonly value: number } }',
    'export interface Speed { readonly airspeed: number }',
  ])('fine: %s', (declaration) => {
    expect(faceOf(`${speed}${said}${declaration}`)).toEqual([]);
  });

  test('a name is followed through what hands it on, and one that leads nowhere is told', () => {
    const twice = (last: string) => faceProblems(sourcesOf({
      'sim/index.ts': "export { pace as speed } from './pace.js';",
      'sim/pace.ts': "import { speed as pace } from './speed.js';\nexport { pace };",
      'sim/speed.ts': last,
    }), ['sim/index.ts']);
    expect(twice('export const speed = 1;')).toEqual(['sim/speed.ts:1: speed has no docstring']);
    expect(twice(`// Speeds.\n${speed}`)).toEqual([]);
    expect(() => twice('export const slow = 1;')).toThrow('speed is not declared here');
    expect(() => faceOf(speed, "export * from './speed.js';")).toThrow('a face names what it exports');
  });
});
