/** The end of the link where a desk is: finds runs, mirrors one, and sees each act through until it is answered. */
import { lobbySchema, roomSchema, type DeskAct, type Grades, type RoomMessage, type RunRecord } from '../../sim/files/index.js';
import { MODEL_VERSION } from '../../sim/index.js';
import { mirrorOf, stepped, type Mirror } from './mirror.js';
import { BEAT_MS, LOBBY, LOST_MS, type OpenPort, type Port } from './port.js';

/** A run of this machine. */
export interface Room {
  readonly id: string;
  readonly title: string;
  readonly stage: 'flown' | 'over';
  /** Why no desk may join; null: one may. */
  readonly closed: string | null;
}

/** An act on its way: sent until the run has answered. */
export interface Sent {
  readonly number: number;
  readonly what: DeskAct | { readonly do: 'grade' };
  readonly state: 'sent' | 'taken' | 'refused';
  /** Tick in which it stands. */
  readonly tick: number | null;
  readonly refused: string | null;
}

type Stage = 'seeking' | 'joining' | 'live' | 'over' | 'gone' | 'otherModel';

/** All that a desk knows. A new value whenever something of it has changed. */
export interface DeskView {
  readonly rooms: readonly Room[];
  /** The run that is followed; null for none. */
  readonly room: string | null;
  readonly stage: Stage;
  readonly mirror: Mirror | null;
  readonly sent: readonly Sent[];
  readonly record: RunRecord | null;
}

export interface Guest {
  /** As the record will name it. */
  id(): string;
  view(): DeskView;
  enter(room: string): void;
  /** Back to the runs of this machine. */
  leave(): void;
  act(act: DeskAct): void;
  grade(grades: Grades): void;
  dropped(): number;
  close(): void;
}

type Ordered = Extract<RoomMessage, { kind: 'act' | 'grades' }>;
const NOTHING = { room: null, stage: 'seeking', mirror: null, sent: [], record: null } as const;

export function openGuest({ id: base, open, now, onView }: { readonly id: string; readonly open: OpenPort; readonly now: () => number; readonly onView: (view: DeskView) => void }): Guest {
  const lobby = open(LOBBY);
  /** Another one in each room: acts are counted from 1 there. */
  let id = base;
  let entered = 0;
  const rooms = new Map<string, Room & { readonly seenMs: number }>();
  let port: Port | null = null;
  let view: DeskView = { rooms: [], ...NOTHING };
  let outbox: readonly Ordered[] = [];
  let number = 0;
  let heardMs = 0;
  let dropped = 0;

  const set = (change: Partial<DeskView>): void => {
    view = { ...view, ...change };
    onView(view);
  };
  const say = (message: RoomMessage): void => port?.send(message);
  const told = (): void => set({ rooms: [...rooms.values()].map(({ seenMs: _seen, ...room }) => room) });

  function hear(message: RoomMessage): void {
    if (message.from !== view.room) return; // another desk's
    heardMs = now();
    switch (message.kind) {
      case 'snapshot': {
        if (view.stage === 'over') return;
        if (message.model !== MODEL_VERSION) return set({ stage: 'otherModel', mirror: null });
        const mirror = quietly(() => mirrorOf(message));
        return mirror === null || (view.mirror !== null && view.mirror.number >= message.number) ? undefined : set({ stage: 'live', mirror });
      }
      case 'step': {
        if (view.mirror === null || view.stage === 'over') return;
        const before = view.mirror;
        const mirror = quietly(() => stepped(before, message));
        if (mirror === null) return say({ kind: 'join', from: id });
        return mirror === before && view.stage === 'live' ? undefined : set({ stage: 'live', mirror });
      }
      case 'answer': {
        if (message.to !== id || !outbox.some((one) => one.number === message.number)) return;
        outbox = outbox.filter((one) => one.number !== message.number);
        return set({ sent: view.sent.map((one) => (one.number === message.number ? { ...one, state: message.refused === null ? 'taken' : 'refused', tick: message.tick, refused: message.refused } : one)) });
      }
      case 'over': return set({ stage: 'over', record: message.record });
      case 'gone': return set({ stage: view.stage === 'over' ? 'over' : 'gone' });
      case 'join': case 'beat': case 'leave': case 'act': case 'grades': return;
    }
  }
  /** What cannot be mirrored is asked for anew. */
  function quietly<T>(make: () => T | null): T | null {
    try {
      return make();
    } catch {
      dropped += 1;
      return null;
    }
  }
  function send(message: Ordered, what: Sent['what']): void {
    outbox = [...outbox, message];
    set({ sent: [...view.sent, { number: message.number, what, state: 'sent', tick: null, refused: null }] });
    say(message);
  }
  function lookRound(): void {
    lobby.send({ kind: 'seek', from: id });
    for (const [name, { seenMs }] of rooms) if (now() - seenMs > LOST_MS) rooms.delete(name);
    told();
    if (view.room === null) return;
    if (view.stage === 'joining' || view.stage === 'gone') say({ kind: 'join', from: id });
    else say({ kind: 'beat', from: id });
    for (const message of outbox) say(message);
    if (view.stage === 'live' && now() - heardMs > LOST_MS) set({ stage: 'gone' });
  }
  function enter(room: string): void {
    leave();
    entered += 1;
    id = `${base}-${entered}`;
    port = open(`run ${room}`);
    port.onMessage((message) => {
      const read = roomSchema.safeParse(message);
      if (read.success) hear(read.data);
      else dropped += 1;
    });
    heardMs = now();
    set({ ...NOTHING, room, stage: 'joining' });
    say({ kind: 'join', from: id });
  }
  function leave(): void {
    say({ kind: 'leave', from: id });
    port?.close();
    port = null;
    outbox = [];
    number = 0;
    set({ ...NOTHING });
  }

  const unhear = lobby.onMessage((message) => {
    const read = lobbySchema.safeParse(message);
    if (!read.success) {
      dropped += 1;
      return;
    }
    const said = read.data;
    if (said.kind === 'here') rooms.set(said.from, { id: said.from, title: said.title, stage: said.stage, closed: said.closed, seenMs: now() });
    else if (said.kind === 'gone') rooms.delete(said.from);
    else return;
    told();
  });
  const beating = setInterval(lookRound, BEAT_MS);
  lobby.send({ kind: 'seek', from: id });
  return {
    id: () => id, enter, leave,
    view: () => view,
    act: (act) => send({ kind: 'act', from: id, number: (number += 1), act }, act),
    grade: (grades) => send({ kind: 'grades', from: id, number: (number += 1), grades }, { do: 'grade' }),
    dropped: () => dropped,
    close() {
      clearInterval(beating);
      unhear();
      leave();
      lobby.close();
    },
  };
}
