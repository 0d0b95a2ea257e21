/** A hundred thousand hostile things, each brought to every door that might have to answer it. */
import fc from 'fast-check';
import type { Door } from './door.js';
import { countingDoors, DOORS } from './doors.js';
import { throwBatch, type Thrown } from './throw.js';

export const seen = new Map<string, number>();
countingDoors((what) => { seen.set(what, (seen.get(what) ?? 0) + 1); });

interface Brought { readonly door: string; readonly what: unknown }

const brought: fc.Arbitrary<Brought> = fc.oneof(...DOORS.map(({ name, weight, arbitrary }) => ({ weight, arbitrary: arbitrary.map((what): Brought => ({ door: name, what })) })));
const byName = new Map<string, Door>(DOORS.map((door) => [door.name, door]));

async function check({ door, what }: Brought): Promise<void> {
  const one = byName.get(door);
  if (one === undefined) throw new Error(`no door ${door}`);
  seen.set(door, (seen.get(door) ?? 0) + 1);
  await one.check(what);
}

const show = ({ door, what }: Brought): string => `${door}\n${typeof what === 'string' ? what : JSON.stringify(what)}`;
export const batch = (seed: number, size: number): Promise<Thrown> => throwBatch(brought, check, seed, show, size);
