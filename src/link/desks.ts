/** The desks of a run: which are there, and what each has sent, taken in the order in which it was sent. */
import type { RoomMessage } from '../../sim/files/index.js';
import { LOST_MS } from './port.js';

/** Most acts of one desk that wait for one before them. */
const MOST_WAITING = 200;

/** What is taken in order. */
export type Ordered = Extract<RoomMessage, { kind: 'act' | 'grades' }>;
type Answer = Extract<RoomMessage, { kind: 'answer' }>;
/** What became of it. */
export type Taken = Pick<Answer, 'tick' | 'refused'>;

/** A desk that was ever there: one that comes back goes on counting where it was. */
interface Desk {
  here: boolean;
  seenMs: number;
  /** Number of the act that is next. */
  next: number;
  readonly waiting: Map<number, Ordered>;
  readonly answers: Map<number, Taken>;
}

/** Desks by name. One that went and comes back goes on counting where it was. */
export interface Desks {
  /** How many are there. */
  count(): number;
  /** Whether it was ever there. */
  knows(name: string): boolean;
  /** It is there: it has just said something. */
  heard(name: string): void;
  left(name: string): void;
  /** Those that have said nothing for long have left. */
  tidy(): void;
  /** What is due with a message of a desk that is known, taken one by one, each with its number in the count of that desk. */
  inOrder(message: Ordered, take: (due: Ordered) => Taken): Iterable<Taken & { readonly number: number }>;
}

/**
 * @param now stamps of the page's clock, ms
 * @param onCome a desk has come, or come back
 * @param onCount how many are there, whenever it has changed
 */
export function openDesks(now: () => number, onCome: () => void, onCount: (count: number) => void): Desks {
  const desks = new Map<string, Desk>();
  const count = (): number => [...desks.values()].filter((desk) => desk.here).length;

  function heard(name: string): Desk {
    const desk: Desk = desks.get(name) ?? { here: false, seenMs: 0, next: 1, waiting: new Map(), answers: new Map() };
    desks.set(name, desk);
    desk.seenMs = now();
    if (!desk.here) {
      desk.here = true;
      onCome();
      onCount(count());
    }
    return desk;
  }
  function lost(desk: Desk | undefined): void {
    if (desk?.here !== true) return;
    desk.here = false;
    onCount(count());
  }
  return {
    count, heard,
    knows: (name) => desks.has(name),
    left: (name) => lost(desks.get(name)),
    tidy() {
      for (const desk of desks.values()) if (now() - desk.seenMs > LOST_MS) lost(desk);
    },
    inOrder: (message, take) => due(heard(message.from), message, take),
  };
}

/** What came twice is answered as before; what came too soon waits for what was sent before it. */
function* due(desk: Desk, message: Ordered, take: (due: Ordered) => Taken): Generator<Taken & { readonly number: number }> {
  const before = desk.answers.get(message.number);
  if (before !== undefined) {
    yield { number: message.number, ...before };
    return;
  }
  if (message.number < desk.next || desk.waiting.size >= MOST_WAITING) return;
  desk.waiting.set(message.number, message);
  for (let next = desk.waiting.get(desk.next); next !== undefined; next = desk.waiting.get(desk.next)) {
    const number = desk.next;
    desk.waiting.delete(number);
    const taken = take(next);
    desk.answers.set(number, taken);
    desk.next += 1;
    yield { number, ...taken };
  }
}
