/** What the dice of some seeds give: sides, hazards, parameters. So that an instructor chooses a variant knowing it. */
import { readyFor, type Airframe, type OpenParameter, type Scenario } from '../../../../sim/files/index.js';
import { expand, hazardStrikes, ticksOf } from '../../../../sim/index.js';

export interface Draws {
  /** What is drawn at all, as heads of columns; empty where every seed gives the same. */
  readonly heads: readonly string[];
  readonly rows: readonly { readonly seed: number; readonly values: readonly string[] }[];
}

/** @param seeds unsigned 32-bit whole numbers */
export function drawsOf(scenario: Scenario, airframe: Airframe, seeds: readonly number[]): Draws {
  const things = [...scenario.faults, ...scenario.events];
  const sided = things.flatMap((thing, place) => ('side' in thing && thing.side === 'drawn' ? [place] : []));
  const chances = things.flatMap(({ when }, place) => (when.hazardPerS === undefined ? [] : [place]));
  const parameters = (scenario.parameters ?? []) as readonly OpenParameter[];
  const nameOf = (place: number): string => things[place]?.name ?? ('do' in (things[place] as object) ? (things[place] as { do: string }).do : '');
  const heads = [...parameters.map(({ name }) => name), ...sided.map((place) => `${nameOf(place)}: side`), ...chances.map((place) => `${nameOf(place)}: held`)];
  if (heads.length === 0) return { heads, rows: [] };
  const rows = seeds.map((seed) => {
    const flown = readyFor(scenario, airframe, seed);
    const { entries } = expand(flown, airframe, seed).fixed.agenda;
    const sides = sided.map((place) => {
      const thing = entries[place]?.fault ?? entries[place]?.event;
      return thing !== null && thing !== undefined && 'side' in thing ? thing.side : '';
    });
    const strikes = chances.map((place) => {
      const when = [...flown.faults, ...flown.events][place]?.when ?? {};
      const ticks = hazardStrikes(when, seed, place, ticksOf(flown.task.limitS));
      return ticks === Infinity ? 'never' : `${(ticks / 100).toFixed(1)} s`;
    });
    return { seed, values: [...parameters.map((one) => String(numberOf(flown, one))), ...sides, ...strikes] };
  });
  return { heads, rows };
}

/** The number a parameter got, read where it stands. */
function numberOf(flown: Scenario, { at }: OpenParameter): number {
  let value: unknown = flown;
  for (const part of at?.[0] ?? []) value = (value as Record<string | number, unknown>)[part];
  return Number(value);
}
