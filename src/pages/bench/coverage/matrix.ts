/** Which faults are practised on which legs: kind of fault against leg, direction and part, over any scenarios. */
import type { Airframe, Fault, Scenario } from '../../../../sim/files/index.js';

export type Row = Fault['kind'] | 'none';

/** A leg by where it ends: flaps out to a setting, or in to it. */
export interface Leg {
  readonly toDeg: number;
  readonly way: 'out' | 'in';
  /** Setting from which a new draft of the leg starts. */
  readonly fromDeg: number;
}

export type Role = Scenario['role'];

/** A scenario as the matrix needs it: what it is opened by is the caller's. */
export interface Covered<T> {
  readonly scenario: Pick<Scenario, 'faults' | 'task' | 'start' | 'role' | 'airframe'>;
  readonly of: T;
}

export interface Cell<T> {
  readonly of: T;
  readonly role: Role;
  /** false: by time, hold or chance, it may come on this leg or on another. */
  readonly sure: boolean;
}

/** The legs of an airframe: out to each setting but the first, in to each but the last. */
export function legsOf({ settings }: Pick<Airframe, 'settings'>): Leg[] {
  const degs = settings.map(({ deg }) => deg);
  const out = degs.slice(1).map((toDeg, at): Leg => ({ toDeg, way: 'out', fromDeg: degs[at] as number }));
  const back = degs.slice(0, -1).map((toDeg, at): Leg => ({ toDeg, way: 'in', fromDeg: degs[at + 1] as number })).reverse();
  return [...out, ...back];
}

interface Flown { readonly fromDeg: number; readonly toDeg: number }

const legs = ({ start, task }: Covered<unknown>['scenario']): Flown[] =>
  task.settings.map((toDeg, at) => ({ fromDeg: at === 0 ? start.flapDeg : task.settings[at - 1] as number, toDeg }));

/** Places that a trigger names by position, wherever in it they stand. */
function positions(when: Fault['when']): number[] {
  const inner = [...(when.all ?? []), ...(when.any ?? [])].flatMap(positions);
  return when.flapDeg === undefined ? inner : [when.flapDeg, ...inner];
}

const holds = ({ fromDeg, toDeg }: Flown, deg: number): boolean => deg >= Math.min(fromDeg, toDeg) && deg <= Math.max(fromDeg, toDeg);

/** Where a fault can come: on the legs that hold its position, else on any. */
function reached(when: Fault['when'], all: readonly Flown[]): { readonly legs: readonly Flown[]; readonly sure: boolean } {
  const degs = positions(when);
  if (degs.length === 0) return { legs: all, sure: all.length === 1 };
  const on = all.filter((leg) => degs.some((deg) => holds(leg, deg)));
  return { legs: on, sure: on.length === 1 };
}

export const keyOf = (row: Row, { toDeg, way }: Pick<Leg, 'toDeg' | 'way'>): string => `${row} ${way} ${toDeg}`;

/** All cells that hold anything, by `keyOf`. Scenarios of another airframe are left out. */
export function coverageOf<T>(all: readonly Covered<T>[], airframe: string): ReadonlyMap<string, readonly Cell<T>[]> {
  const cells = new Map<string, Cell<T>[]>();
  const put = (row: Row, { fromDeg, toDeg }: Flown, cell: Cell<T>): void => {
    const key = keyOf(row, { toDeg, way: toDeg > fromDeg ? 'out' : 'in' });
    const before = cells.get(key) ?? [];
    if (!before.some(({ of }) => of === cell.of)) cells.set(key, [...before, cell]);
  };
  for (const { scenario, of } of all) {
    const named = typeof scenario.airframe === 'string' ? scenario.airframe : scenario.airframe.name;
    if (named !== airframe) continue;
    const flown = legs(scenario);
    const { role } = scenario;
    if (scenario.faults.length === 0) for (const leg of flown) put('none', leg, { of, role, sure: true });
    for (const { kind, when } of scenario.faults) {
      const { legs: on, sure } = reached(when, flown);
      for (const leg of on) put(kind, leg, { of, role, sure });
    }
  }
  return cells;
}
