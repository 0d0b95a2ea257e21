/** A run as a desk sees it: stepped again from what was filed in it, so that a message holds acts and no pictures. */
import { ready, type RoomMessage } from '../../sim/files/index.js';
import { advance, byOrder, expand, withDesk, type Command, type World } from '../../sim/index.js';

type Snapshot = Extract<RoomMessage, { kind: 'snapshot' }>;
type Step = Extract<RoomMessage, { kind: 'step' }>;
type Mirrored = Command & { readonly by?: string };

/** A value: a step makes another. `start` is the world at tick 0 without anything that a desk did, `world` where the run was last heard of. */
export interface Mirror {
  readonly title: string;
  readonly airframe: Snapshot['airframe'];
  readonly scenario: ReturnType<typeof ready>;
  readonly seed: number;
  readonly start: World;
  readonly world: World;
  /** Commands in order. */
  readonly log: readonly Mirrored[];
  readonly stands: Step['stands'];
  /** Number of the last message that is in it. */
  readonly number: number;
  /** Worlds on the way, oldest first, for what comes late. */
  readonly kept: readonly World[];
}

/** So many worlds are kept: half a second and more of steps. */
const KEPT = 40;

/** @throws RangeError for acts that no run holds */
export function mirrorOf({ title, airframe, scenario: file, seed, tick, stands, commands, number }: Snapshot): Mirror {
  const scenario = ready(file, airframe);
  const start = expand(scenario, airframe, seed);
  const log = (commands as unknown as Mirrored[]).toSorted(byOrder);
  const planned = withDesk(start, log);
  const world = advance(planned, log, tick);
  return { title, airframe, scenario, seed, start, world, log, stands, number, kept: [planned, world] };
}

/** The mirror a step later; the same for one that is in it already, null where one is missing. */
export function stepped(mirror: Mirror, { number, tick, stands, commands }: Step): Mirror | null {
  if (number <= mirror.number) return mirror;
  if (number !== mirror.number + 1) return null;
  const changed = commands as unknown as Mirrored[];
  if (changed.length === 0) return { ...mirror, number, stands, ...goneOn(mirror.kept, mirror.world, mirror.log, tick) };
  const fresh = new Map(changed.map((one) => [one.seq, one]));
  const old = mirror.log.filter(({ seq }) => fresh.has(seq));
  const log = [...mirror.log.filter(({ seq }) => !fresh.has(seq)), ...changed].sort(byOrder);
  const { fixed } = withDesk(mirror.start, log);
  const from = Math.min(...[...changed, ...old].map((one) => one.tick));
  const kept = mirror.kept.filter(({ state }, index) => index === 0 || state.tick <= from).map(({ state }) => ({ fixed, state }));
  return { ...mirror, number, stands, log, ...goneOn(kept, kept[kept.length - 1] as World, log, tick) };
}

function goneOn(kept: readonly World[], world: World, log: readonly Mirrored[], tick: number): Pick<Mirror, 'world' | 'kept'> {
  const next = advance(world, log, Math.max(0, tick - world.state.tick));
  const all = [...kept, next];
  return { world: next, kept: all.length > KEPT ? [all[0] as World, ...all.slice(-KEPT + 1)] : all };
}
