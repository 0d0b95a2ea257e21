/** The normal tail from a table, for the many points of a grid: cubic steps, absolute error below 1e-10. */
import { normalDensity, normalTail } from './normal.js';

const FROM = -8.5;
const STEPS_PER_UNIT = 64;
const COUNT = 17 * STEPS_PER_UNIT;

/** Filled when it is first asked: whoever loads the library and never fits has no use for it. */
const value = new Float64Array(COUNT + 2);
const slope = new Float64Array(COUNT + 2);

function fill(): void {
  for (let at = 0; at < value.length; at += 1) {
    const z = FROM + at / STEPS_PER_UNIT;
    value[at] = normalTail(z);
    slope[at] = -normalDensity(z) / STEPS_PER_UNIT;
  }
}

/** Chance above `z`, any z; beyond 8.5 it is 1 or 0. */
export function tailTable(z: number): number {
  if (value[0] === 0) fill();
  const place = (z - FROM) * STEPS_PER_UNIT;
  if (!(place > 0)) return 1;
  if (place >= COUNT) return 0;
  const at = Math.floor(place);
  const t = place - at;
  const [a, b] = [value[at] as number, value[at + 1] as number];
  const [down, up] = [slope[at] as number, slope[at + 1] as number];
  const bend = b - a;
  return a + t * (down + t * (3 * bend - 2 * down - up + t * (down + up - 2 * bend)));
}
