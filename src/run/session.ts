/**
 * A run in the making: pure, from stamped inputs and frames to worlds, log and marks.
 *
 * Nothing acts on an event. An act is filed in the tick that contains its stamp; a frame steps the world to its own
 * stamp. An act older than the current tick goes back to a kept world and steps again. Everything final (marks, the end)
 * is written only once no act can still come before it.
 */
import type { Act, DeskAct, RunRecord } from '../../sim/files/index.js';
import { advance, byOrder, hasActed, stampOfTick, tickInSegment, tickOfStamp, withDesk, type ClockSegment, type Command, type EndWhy, END_WHYS, type World } from '../../sim/index.js';

/** `by` names the desk of an act that is no hand's. */
export type Filed = Command & { readonly stampMs: number; readonly by?: string };
export type Mark = RunRecord['marks'][number];

/** How far behind an act may come and still be filed exactly, ticks. */
const WINDOW = 25;
/** A frame that comes this much later than the one before is a stall: the clock stops, nothing is caught up. */
const STALL_TICKS = 25;

interface Kept {
  readonly world: World;
  /** Stamp of the frame that drew it. */
  readonly stampMs: number;
}

/** A value: a frame or an act makes another. `seq` is the sequence of the next act; `endTick` is -1 until the run is over. */
export interface Session {
  /** The world at tick 0, without anything that a desk did. */
  readonly start: World;
  readonly world: World;
  /** Worlds of the latest frames, oldest first; the first is at least WINDOW ticks old once the run is. */
  readonly kept: readonly Kept[];
  readonly clock: readonly ClockSegment[];
  readonly running: boolean;
  /** Commands in order. */
  readonly log: readonly Filed[];
  readonly marks: readonly Mark[];
  readonly seq: number;
  /** Why the run is over, once nothing can change that. */
  readonly over: EndWhy | null;
  readonly endTick: number;
}

/** A session whose clock starts at `stampMs`. */
export function startSession(world: World, stampMs: number): Session {
  return {
    start: world, world, kept: [{ world, stampMs }], clock: [{ tick: 0, stampMs }], running: true, log: [],
    marks: [{ tick: 0, stampMs, what: 'start' }], seq: 0, over: null, endTick: -1,
  };
}

/** Marks where the clock stands. What came late is stamped with the tick that was already stepped: the clock stopped there. */
export function mark(session: Session, stampMs: number, what: Mark['what']): Session {
  const { tick } = session.world.state;
  const stoodMs = Math.max(stampMs, stampOfTick(session.clock, tick));
  return { ...session, marks: [...session.marks, { tick, stampMs: stoodMs, what }] };
}

/** The clock with a new segment. Where it stood since the last one without a tick, that one never counted. */
const startedAgain = ({ clock }: Session, tick: number, stampMs: number): ClockSegment[] =>
  [...clock.filter((segment) => segment.tick < tick), { tick, stampMs }];

const lastSegment = (session: Session): ClockSegment => session.clock[session.clock.length - 1] as ClockSegment;

/** Steps to the tick of a frame's stamp. */
export function frame(session: Session, stampMs: number): Session {
  if (!session.running || session.over !== null) return session;
  const { tick } = session.world.state;
  const due = tickInSegment(lastSegment(session), stampMs).tick - tick;
  if (due > STALL_TICKS) return stall(session, stampMs);
  if (due <= 0) return session;
  const world = advance(session.world, session.log, due);
  return freezes(session.world, world) ? freeze(session, due, stampMs) : stepped(session, world, stampMs);
}

/** The session a frame later. Every key is written out, since this is made in every frame: a spread makes a shape of its own. */
function stepped({ start, kept, clock, running, log, marks, seq, over, endTick }: Session, world: World, stampMs: number): Session {
  return settle({ start, world, kept: keep(kept, { world, stampMs }), clock, running, log, marks, seq, over, endTick });
}

/** Whether an event that freezes acted on the way from one world to a later one: nothing acts without a latch. */
const freezes = ({ fixed, state }: World, later: World): boolean =>
  state.latched !== later.state.latched && fixed.agenda.entries.some((entry) => entry.event?.do === 'freeze' && hasActed(later.state, fixed, entry) && !hasActed(state, fixed, entry));

/** Steps to the tick in which a freeze acted, lets a sprung switch go and stops the clock there, not at the frame. */
function freeze(session: Session, due: number, stampMs: number): Session {
  let { world } = session;
  for (let tick = 0; tick < due && !freezes(session.world, world); tick += 1) world = advance(world, session.log, 1);
  const there = stepped(session, world, stampMs);
  const stoodMs = stampOfTick(there.clock, world.state.tick);
  const released = world.state.latched.drive === 0 ? there : file(there, stoodMs, { do: 'releaseDrive' });
  return { ...mark(released, stoodMs, 'freeze'), running: false };
}

/** The clock stands by a freeze: the instruments stay. */
export const isFrozen = ({ running, over, marks }: Session): boolean => !running && over === null && marks[marks.length - 1]?.what === 'freeze';

/** Kept worlds with the latest, back to the youngest that is at least WINDOW ticks old, one before it for frames that carry marks. */
function keep(kept: readonly Kept[], latest: Kept): readonly Kept[] {
  const now = latest.world.state.tick;
  let from = 0;
  while (from + 1 < kept.length && (kept[from + 1] as Kept).world.state.tick <= now - 2 * WINDOW) from += 1;
  const all = kept.slice(from);
  all.push(latest);
  return all;
}

/**
 * The log by a clock that starts again where it stands: what was filed for ticks that did not come acts there. What bears a stamp behind the
 * new start acts where its stamp is: a browser stamps a frame when it was due, and hands on what hands did meanwhile before it draws.
 */
const heldBack = ({ log }: Session, clock: readonly ClockSegment[]): Filed[] => {
  const { tick } = clock[clock.length - 1] as ClockSegment;
  return log.map((filed) => (filed.tick < tick ? filed : { ...filed, tick: Math.max(tick, tickOfStamp(clock, filed.stampMs).tick) })).sort(byOrder);
};

/**
 * The clock stops over the gap. Before the first tick there is
 * nothing to disturb: a page that is slow to its second frame starts its clock there.
 */
function stall(session: Session, stampMs: number): Session {
  const { tick } = session.world.state;
  if (tick === 0) {
    const begun = startSession(session.start, stampMs);
    return logged({ ...begun, seq: session.seq }, heldBack(session, begun.clock));
  }
  const clock = startedAgain(session, tick, stampMs);
  return mark(logged({ ...session, clock }, heldBack(session, clock)), stampMs, 'stall');
}

/** Writes what is now too old to change: the first frame behind onset, and the end. */
function settle(session: Session): Session {
  const { state } = session.world;
  let next = session;
  if (state.latched.onsetTick >= 0 && state.tick >= state.latched.onsetTick + WINDOW && !session.marks.some(({ what, tick }) => what === 'firstFrame' && tick > state.latched.onsetTick)) {
    const drawn = session.kept.find(({ world }) => world.state.tick > state.latched.onsetTick);
    if (drawn !== undefined) {
      next = { ...next, marks: [...next.marks, { tick: drawn.world.state.tick, stampMs: drawn.stampMs, what: 'firstFrame' }] };
    }
  }
  if (state.latched.endTick >= 0 && state.tick >= state.latched.endTick + WINDOW) {
    next = { ...next, over: END_WHYS[state.latched.endWhy] ?? 'stopped', endTick: state.latched.endTick, running: false };
  }
  return next;
}

/**
 * Files what a hand did. A stamp in a tick that was stepped already steps again from the world before it; one older than
 * the window takes the oldest tick that is still open and is marked. While the clock stands nothing is filed.
 */
export function file(session: Session, stampMs: number, act: Act): Session {
  if (session.over !== null || !session.running) return session;
  return put(session, stampMs, { ...act, rank: 2 });
}

/** With another log: what a desk did in it stands in every world of the run. @throws RangeError for what cannot be done */
function logged(session: Session, log: readonly Filed[]): Session {
  if (!log.some(({ rank }) => rank === 1)) return { ...session, log };
  const { fixed } = withDesk(session.start, log);
  return {
    ...session, log, world: { fixed, state: session.world.state },
    kept: session.kept.map(({ world, ...frame }) => ({ ...frame, world: { fixed, state: world.state } })),
  };
}

/** Files an act in the tick that holds its stamp; while the clock stands, where it stands. @throws RangeError for what a desk cannot do */
export function put(session: Session, stampMs: number, act: (Act & { rank: 2 }) | (DeskAct & { rank: 1; by: string })): Session {
  const now = session.world.state.tick;
  const open = Math.max((session.kept[0] as Kept).world.state.tick, now - WINDOW);
  const wanted = session.running ? tickOfStamp(session.clock, stampMs).tick : now;
  const tick = Math.max(open, wanted);
  const filed = { ...act, tick, seq: session.seq, stampMs } as Filed;
  const next = logged({ ...session, seq: session.seq + 1 }, [...session.log, filed].sort(byOrder));
  const stepped = tick < now ? rewind(next, tick) : next;
  return wanted < open ? { ...stepped, marks: [...stepped.marks, { tick, stampMs, what: 'late' }] } : stepped;
}

/** Steps the kept worlds behind `tick` again. */
function rewind(session: Session, tick: number): Session {
  const from = session.kept.findLastIndex(({ world }) => world.state.tick <= tick);
  const kept = session.kept.slice(0, from + 1);
  let { world } = kept[from] as Kept;
  for (const { world: old, stampMs } of session.kept.slice(from + 1)) {
    world = advance(world, session.log, old.state.tick - world.state.tick);
    kept.push({ world, stampMs });
  }
  return { ...session, world, kept };
}

/** Focus or page lost: a sprung switch springs back, the clock stops. */
export function lose(session: Session, stampMs: number, what: 'focusLost' | 'hidden'): Session {
  if (session.over !== null || !session.running) return session;
  const released = file(frame(session, stampMs), stampMs, { do: 'releaseDrive' });
  return halt(released, stampMs, what);
}

/** Steps to the stamp, stops the clock there, and marks why. */
export function halt(session: Session, stampMs: number, what: Mark['what']): Session {
  const now = frame(session, stampMs);
  return now.over !== null || !now.running ? now : { ...mark(now, stampMs, what), running: false };
}

/** The clock goes on: a new segment at the tick where it stood. */
export function resume(session: Session, stampMs: number): Session {
  if (session.over !== null || session.running) return session;
  const { tick } = session.world.state;
  const clock = startedAgain(session, tick, stampMs);
  return mark(logged({ ...session, clock, running: true }, heldBack(session, clock)), stampMs, 'resume');
}

/** What a desk did last acts as well before the run ends: a tick more, where it stands in the one that would have been the end. */
function withDeskIn(session: Session, stampMs: number): Session {
  const { tick, latched: { endTick } } = session.world.state;
  const last = session.log.findLast(({ rank }) => rank === 1)?.tick ?? -1;
  if (session.over !== null || endTick >= 0 || last < tick) return session;
  const clock = session.running ? session.clock : startedAgain(session, tick, stampMs);
  return { ...session, clock, world: advance(session.world, session.log, last + 1 - tick) };
}

/** Ends the run where it stands. A run that its own rule has ended already keeps that end. */
export function stop(session: Session, stampMs: number): Session {
  const now = withDeskIn(frame(session, stampMs), stampMs);
  if (now.over !== null) return now;
  const { state } = now.world;
  const why = state.latched.endTick >= 0 ? END_WHYS[state.latched.endWhy] : 'stopped';
  return { ...now, over: why ?? 'stopped', endTick: state.latched.endTick >= 0 ? state.latched.endTick : state.tick, running: false };
}
