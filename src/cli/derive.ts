/** `derive`: what an airframe's geometry comes to, beside what its file carries, and lines to paste into it. */
import type { Airframe, DeriveOutput } from '../../sim/files/index.js';
import { deriveOf, type Derived } from '../../sim/index.js';
import { columns } from './columns.js';
import { type Io, printJson, printLines } from './io.js';
import { openAirframe } from './opened.js';
import { DONE } from './trouble.js';

export interface DeriveOptions { json?: boolean }

export function derive(io: Io, typed: string, { json = false }: DeriveOptions): number {
  const airframe = openAirframe(typed);
  const { constants, checks } = deriveOf(airframe);
  const output: DeriveOutput = { airframe: airframe.name, constants: constants.map((one) => ({ ...one, key: one.key ?? '', inFile: one.inFile ?? 0 })), checks: checks.map((one) => ({ ...one })) };
  if (json) printJson(io, output);
  else printLines(io, deriveLines(airframe, output));
  return DONE;
}

/** Enough digits to paste; the file needs no more than the table shows. */
const shown = (value: number): string => (Math.abs(value) >= 100 ? value.toFixed(2) : value.toPrecision(7));

function apart(value: number, inFile: number): string {
  const part = inFile === 0 ? 0 : 100 * (value / inFile - 1);
  return Math.abs(part) < 0.005 ? 'alike' : `${part > 0 ? '+' : ''}${part.toFixed(2)} %`;
}

function deriveLines({ title, wing }: Airframe, { constants, checks }: DeriveOutput): string[] {
  const row = ({ key, name, value, unit, inFile }: Derived): string[] =>
    [name, shown(value), unit === '1' ? '' : unit, inFile === null ? '' : String(inFile), '', key ?? ''];
  const constant = (one: DeriveOutput['constants'][number]): string[] => row(one).map((cell, at) => (at === 4 ? apart(one.value, one.inFile) : cell));
  const meanings = [...constants, ...checks].map(({ name, meaning }) => `  ${name}: ${meaning}`);
  return [
    `${title}: from its wing of ${wing.areaM2} m2, ${wing.spanM} m, taper ${wing.taper}, flap ${wing.flapFromSemispan} to ${wing.flapToSemispan}`, '',
    ...columns([['constant', 'worked out', 'unit', 'in the file', 'apart', 'key'], ...constants.map(constant), ['', '', '', '', '', ''], ['to judge the rest by', '', '', '', '', ''], ...checks.map(row)], [1, 3, 4]),
    '', 'To paste:', ...constants.map(({ key, value }) => `  "${key.replace(/^.*\./, '')}": ${shown(value)},`), '', 'Meaning:', ...meanings,
  ];
}
