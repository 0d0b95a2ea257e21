/** The end of the link where the run is: tells desks what is filed, files what they do in the order in which they did it. */
import { lobbySchema, roomSchema, type FlownSetting, type Grades, type RoomMessage, type RunRecord } from '../../sim/files/index.js';
import { MODEL_VERSION } from '../../sim/index.js';
import type { RunningDrill } from '../run/drill.js';
import { isFrozen, type Session } from '../run/session.js';
import { BEAT_MS, LOBBY, LOST_MS, type OpenPort } from './port.js';

/** A step is told this often at the most while nothing is filed, ms. */
const STEP_MS = 50;
/** Most acts of one desk that wait for one before them. */
const MOST_WAITING = 200;

export interface HostRequest {
  /** Name of the run among those of this machine. */
  readonly id: string;
  readonly title: string;
  /** Why no desk may join; null: one may. */
  readonly closed: string | null;
  readonly running: Pick<RunningDrill, 'desk' | 'join' | 'onSession' | 'onEnd'> & { readonly setting: Pick<FlownSetting, 'seed' | 'airframe' | 'scenario'> };
  readonly open: OpenPort;
  /** Stamps of the page's clock, ms. */
  readonly now: () => number;
  /** How many desks are there. */
  readonly onDesks: (count: number) => void;
  /** An act was taken. */
  readonly onTaken: (act: ActMessage['act']) => void;
  /** Takes the grades, or says why not. */
  readonly onGrades: (grades: Grades) => string | null;
}

export interface Host {
  /** Messages that did not fit and were dropped. */
  dropped(): number;
  /** The record as it has become: what a desk that comes now is given. */
  again(record: RunRecord): void;
  close(): void;
}

type ActMessage = Extract<RoomMessage, { kind: 'act' }>;
type Ordered = ActMessage | Extract<RoomMessage, { kind: 'grades' }>;
type Answer = Extract<RoomMessage, { kind: 'answer' }>;

/** A desk that was ever there: one that comes back goes on counting where it was. */
interface Desk {
  here: boolean;
  seenMs: number;
  /** Number of the act that is next. */
  next: number;
  readonly waiting: Map<number, Ordered>;
  readonly answers: Map<number, Answer>;
}

export function hostRun({ id, title, closed, running, open, now, onDesks, onTaken, onGrades }: HostRequest): Host {
  const lobby = open(LOBBY);
  const room = open(`run ${id}`);
  const desks = new Map<string, Desk>();
  /** Tick under which an act was told last, by its sequence. */
  const told = new Map<number, number>();
  let session: Session | null = null;
  let log: Session['log'] | null = null;
  let stood = '';
  let record: RunRecord | null = null;
  let number = 0;
  let steppedMs = -Infinity;
  let dropped = 0;

  const say = (message: RoomMessage): void => room.send(message);
  const count = (): number => [...desks.values()].filter((desk) => desk.here).length;
  const here = (): void => lobby.send({ kind: 'here', from: id, title, stage: record === null ? 'flown' : 'over', closed });
  const stands = (of: Session): 'runs' | 'frozen' | 'paused' => (of.running ? 'runs' : isFrozen(of) ? 'frozen' : 'paused');
  const filed = (of: Session['log']): Extract<RoomMessage, { kind: 'step' }>['commands'] => of as unknown as Extract<RoomMessage, { kind: 'step' }>['commands'];

  function snapshot(): void {
    if (record !== null) return say({ kind: 'over', from: id, record });
    if (session === null) return;
    const { seed, airframe, scenario } = running.setting;
    remember(session.log);
    say({ kind: 'snapshot', from: id, number: (number += 1), model: MODEL_VERSION, title, seed, airframe, scenario, tick: session.world.state.tick, stands: stands(session), commands: filed(session.log) });
  }
  function remember(all: Session['log']): void {
    log = all;
    for (const { seq, tick } of all) told.set(seq, tick);
  }
  function step(of: Session, anyhow = false): void {
    session = of;
    if (count() === 0) return;
    const changed = of.log === log ? [] : of.log.filter(({ seq, tick }) => told.get(seq) !== tick);
    const standing = stands(of);
    if (changed.length === 0 && standing === stood && !anyhow && now() - steppedMs < STEP_MS) return;
    remember(of.log);
    stood = standing;
    steppedMs = now();
    say({ kind: 'step', from: id, number: (number += 1), tick: of.world.state.tick, stands: standing, commands: filed(changed) });
  }
  function deskOf(name: string): Desk {
    const desk: Desk = desks.get(name) ?? { here: false, seenMs: 0, next: 1, waiting: new Map(), answers: new Map() };
    desks.set(name, desk);
    desk.seenMs = now();
    if (!desk.here) {
      desk.here = true;
      if (record === null) running.join();
      onDesks(count());
    }
    return desk;
  }
  function hear(message: RoomMessage): void {
    switch (message.kind) {
      case 'join': deskOf(message.from); return snapshot();
      // A run that was loaded anew knows no desk; the desk will join when it is told so.
      case 'beat': if (desks.has(message.from)) deskOf(message.from); return;
      case 'leave': return lost(desks.get(message.from));
      case 'act': case 'grades': return inOrder(message);
      case 'snapshot': case 'step': case 'answer': case 'over': case 'gone': return; // another run's, or forged
    }
  }
  function lost(desk: Desk | undefined): void {
    if (desk?.here !== true) return;
    desk.here = false;
    onDesks(count());
  }
  /** What came twice is answered as before; what came too soon waits for what was sent before it. */
  function inOrder(message: Ordered): void {
    if (!desks.has(message.from)) return;
    const desk = deskOf(message.from);
    const before = desk.answers.get(message.number);
    if (before !== undefined) return say(before);
    if (message.number < desk.next || desk.waiting.size >= MOST_WAITING) return;
    desk.waiting.set(message.number, message);
    for (let due = desk.waiting.get(desk.next); due !== undefined; due = desk.waiting.get(desk.next)) {
      desk.waiting.delete(desk.next);
      const answer: Answer = { kind: 'answer', from: id, to: due.from, number: desk.next, ...taken(due) };
      desk.answers.set(desk.next, answer);
      desk.next += 1;
      say(answer);
    }
  }
  function taken(message: Ordered): Pick<Answer, 'tick' | 'refused'> {
    if (message.kind === 'grades') {
      const refused = onGrades(message.grades);
      return { tick: refused === null ? session?.world.state.tick ?? 0 : null, refused };
    }
    const answer = running.desk(now(), message.act, message.from);
    if (answer.refused === null) onTaken(message.act);
    return { tick: answer.tick, refused: answer.refused };
  }
  function lookRound(): void {
    here();
    for (const desk of desks.values()) if (now() - desk.seenMs > LOST_MS) lost(desk);
    if (session !== null && record === null) step(session, true);
  }

  const undo = [
    lobby.onMessage((message) => {
      const read = lobbySchema.safeParse(message);
      if (!read.success) dropped += 1;
      else if (read.data.kind === 'seek') here();
    }),
    ...(closed === null ? [
      room.onMessage((message) => {
        const read = roomSchema.safeParse(message);
        if (read.success) hear(read.data);
        else dropped += 1;
      }),
      running.onSession(step),
    ] : []),
  ];
  running.onEnd((made) => {
    record = made;
    if (closed === null && count() > 0) snapshot();
    here();
  });
  const beating = setInterval(lookRound, BEAT_MS);
  here();
  return {
    dropped: () => dropped,
    again(made) {
      record = made;
      if (count() > 0) snapshot();
    },
    close() {
      clearInterval(beating);
      for (const one of undo) one();
      lobby.send({ kind: 'gone', from: id });
      say({ kind: 'gone', from: id });
      lobby.close();
      room.close();
    },
  };
}
