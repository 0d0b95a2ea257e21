/** The end of the link where a desk is: finds runs, mirrors one, and sees each act through until it is answered. */
import type { DeskAct, Grades, RoomMessage } from '../../sim/files/index.js';
import { openEar } from './ear.js';
import { changeBy, NOTHING, type DeskView, type Sent } from './known.js';
import { BEAT_MS, LOBBY, LOST_MS, type OpenPort } from './port.js';
import { openRooms } from './rooms.js';
import { openSeat, type Seat } from './seat.js';

/** A desk of one page, following one run at a time. */
export interface Guest {
  /** As the record will name it. */
  id(): string;
  view(): DeskView;
  enter(room: string): void;
  /** Back to the runs of this machine. */
  leave(): void;
  /** Nothing where no run is followed, as with grades. */
  act(act: DeskAct): void;
  grade(grades: Grades): void;
  dropped(): number;
  close(): void;
}

export interface GuestRequest {
  /** Name of the desk among those of this machine. */
  readonly id: string;
  readonly open: OpenPort;
  /** Stamps of the page's clock, ms. */
  readonly now: () => number;
  readonly onView: (view: DeskView) => void;
}

/** Asks at once which runs are there. What it knows comes by `onView`, each time as a new value. */
export function openGuest({ id: base, open, now, onView }: GuestRequest): Guest {
  /** Another one in each room: acts are counted from 1 there. */
  let id = base;
  let entered = 0;
  let seat: Seat | null = null;
  let view: DeskView = { rooms: [], ...NOTHING };

  const set = (change: Partial<DeskView>): void => {
    view = { ...view, ...change };
    onView(view);
  };
  const ear = openEar();
  const rooms = openRooms(open(LOBBY), ear, now, (all) => set({ rooms: all }));

  function hear(message: RoomMessage): void {
    const change = changeBy(message, view);
    if (change === 'unfit') ear.drop();
    // What cannot be mirrored is asked for anew.
    if (change === 'missed' || (change === 'unfit' && message.kind === 'step')) seat?.say('join');
    if (typeof change === 'object') set(change);
  }
  function put(message: Parameters<Seat['put']>[0], what: Sent['what']): void {
    if (seat === null) return;
    const number = seat.put(message);
    set({ sent: [...view.sent, { number, what, state: 'sent', tick: null, refused: null }] });
  }
  function lookRound(): void {
    rooms.seek(id);
    rooms.tidy();
    if (seat === null) return;
    seat.say(view.stage === 'joining' || view.stage === 'gone' ? 'join' : 'beat');
    seat.again();
    if (view.stage === 'live' && seat.quietMs() > LOST_MS) set({ stage: 'gone' });
  }
  function enter(room: string): void {
    leave();
    entered += 1;
    id = `${base}-${entered}`;
    seat = openSeat({ run: room, id, port: open(`run ${room}`), ear, now, onSaid: hear });
    set({ ...NOTHING, room, stage: 'joining' });
    seat.say('join');
  }
  function leave(): void {
    seat?.leave();
    seat = null;
    set({ ...NOTHING });
  }

  const beating = setInterval(lookRound, BEAT_MS);
  rooms.seek(id);
  return {
    id: () => id, enter, leave,
    view: () => view,
    act: (act) => put({ kind: 'act', act }, act),
    grade: (grades) => put({ kind: 'grades', grades }, { do: 'grade' }),
    dropped: ear.dropped,
    close() {
      clearInterval(beating);
      rooms.close();
      leave();
    },
  };
}
