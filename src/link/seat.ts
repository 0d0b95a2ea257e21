/** A desk's place in the room of a run: what it does is counted from 1 there, and sent again until the run has answered. */
import { roomSchema, type RoomMessage } from '../../sim/files/index.js';
import type { Ordered } from './desks.js';
import type { Ear } from './ear.js';
import type { Port } from './port.js';

type Uncounted<K extends Ordered['kind']> = Omit<Extract<RoomMessage, { kind: K }>, 'from' | 'number'>;

export interface Seat {
  /** Asks to be told everything, or says that the desk is still there. */
  say(kind: 'join' | 'beat'): void;
  /** Sends again what waits for an answer. */
  again(): void;
  /** @returns its number */
  put(what: Uncounted<'act'> | Uncounted<'grades'>): number;
  /** How long the run has said nothing, ms. */
  quietMs(): number;
  leave(): void;
}

export interface SeatRequest {
  /** Name of the run, and of the desk in its room. */
  readonly run: string;
  readonly id: string;
  readonly port: Port;
  readonly ear: Ear;
  /** Stamps of the page's clock, ms. */
  readonly now: () => number;
  /** What the run says, answers to other desks left out. */
  readonly onSaid: (message: RoomMessage) => void;
}

export function openSeat({ run, id, port, ear, now, onSaid }: SeatRequest): Seat {
  const waiting = new Map<number, Ordered>();
  let number = 0;
  let heardMs = now();

  const send = (message: RoomMessage): void => port.send(message);
  ear.on(port, roomSchema, (message) => {
    if (message.from !== run) return; // another desk's
    heardMs = now();
    if (message.kind !== 'answer' || (message.to === id && waiting.delete(message.number))) onSaid(message);
  });
  return {
    say: (kind) => send({ kind, from: id }),
    again() {
      for (const message of waiting.values()) send(message);
    },
    put(what) {
      number += 1;
      const message = { ...what, from: id, number };
      waiting.set(number, message);
      send(message);
      return number;
    },
    quietMs: () => now() - heardMs,
    leave() {
      send({ kind: 'leave', from: id });
      port.close();
    },
  };
}
