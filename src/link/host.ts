/** The end of the link where the run is: tells desks what is filed, files what they do in the order in which they did it. */
import { lobbySchema, roomSchema, type DeskAct, type FlownSetting, type Grades, type RoomMessage, type RunRecord } from '../../sim/files/index.js';
import type { RunningDrill } from '../run/drill.js';
import type { Session } from '../run/session.js';
import { openDesks, type Ordered, type Taken } from './desks.js';
import { openEar } from './ear.js';
import { BEAT_MS, LOBBY, type OpenPort } from './port.js';
import { openTelling } from './telling.js';

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
  readonly onTaken: (act: DeskAct) => void;
  /** Takes the grades, or says why not. */
  readonly onGrades: (grades: Grades) => string | null;
}

/** The run's end of the link; `close` tells desks that the run has left. */
export interface Host {
  /** Messages that did not fit and were dropped. */
  dropped(): number;
  /** The record as it has become: what a desk that comes now is given. */
  again(record: RunRecord): void;
  close(): void;
}

/** Speaks in the lobby from now on, and takes desks in the room of the run unless that is closed to them. */
export function hostRun(request: HostRequest): Host {
  const { id, title, closed, running, open, now, onDesks } = request;
  const lobby = open(LOBBY);
  const room = open(`run ${id}`);
  const ear = openEar();
  const telling = openTelling({ id, title, setting: running.setting, now });
  const desks = openDesks(now, () => { if (record === null) running.join(); }, onDesks);
  let session: Session | null = null;
  let record: RunRecord | null = null;

  const say = (message: RoomMessage): void => room.send(message);
  const here = (): void => lobby.send({ kind: 'here', from: id, title, stage: record === null ? 'flown' : 'over', closed });
  function whole(): void {
    if (record !== null) say({ kind: 'over', from: id, record });
    else if (session !== null) say(telling.whole(session));
  }
  function step(of: Session, anyhow: boolean): void {
    session = of;
    const told = desks.count() === 0 ? null : telling.step(of, anyhow);
    if (told !== null) say(told);
  }
  function hear(message: RoomMessage): void {
    switch (message.kind) {
      case 'join': desks.heard(message.from); return whole();
      // A run that was loaded anew knows no desk; the desk will join when it is told so.
      case 'beat': if (desks.knows(message.from)) desks.heard(message.from); return;
      case 'leave': return desks.left(message.from);
      case 'act': case 'grades':
        if (!desks.knows(message.from)) return;
        for (const answer of desks.inOrder(message, (due) => taken(request, due, session?.world.state.tick ?? 0))) say({ kind: 'answer', from: id, to: message.from, ...answer });
        return;
      case 'snapshot': case 'step': case 'answer': case 'over': case 'gone': return; // another run's, or forged
    }
  }

  const undo = [
    ear.on(lobby, lobbySchema, ({ kind }) => { if (kind === 'seek') here(); }),
    ...(closed === null ? [ear.on(room, roomSchema, hear), running.onSession((of) => step(of, false))] : []),
  ];
  function become(made: RunRecord): void {
    record = made;
    if (desks.count() > 0) whole();
  }
  running.onEnd((made) => {
    become(made);
    here();
  });
  const beating = setInterval(() => {
    here();
    desks.tidy();
    if (session !== null && record === null) step(session, true);
  }, BEAT_MS);
  here();
  return {
    dropped: ear.dropped,
    again: become,
    close() {
      clearInterval(beating);
      for (const one of undo) one();
      for (const port of [lobby, room]) {
        port.send({ kind: 'gone', from: id });
        port.close();
      }
    },
  };
}

/** @param tick where the run is */
function taken({ running, now, onTaken, onGrades }: HostRequest, message: Ordered, tick: number): Taken {
  if (message.kind === 'grades') {
    const refused = onGrades(message.grades);
    return { tick: refused === null ? tick : null, refused };
  }
  const answer = running.desk(now(), message.act, message.from);
  if (answer.refused === null) onTaken(message.act);
  return { tick: answer.tick, refused: answer.refused };
}
