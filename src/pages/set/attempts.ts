/** Flights of sets for the pages: the one that is being flown, and what to do next in it. */
import { signal } from '@preact/signals';
import type { Forecast } from '../../../sim/index.js';
import { nextPlace, type Attempt } from '../../records/logbook/attempt.js';
import { newId } from '../../records/logbook/id.js';
import type { House } from '../house.js';
import { withBook } from '../logbook/logged.js';
import { person } from '../settings.js';
import { lock } from '../size/lock.js';

/** The flight of a set that the pages work on; undefined: not looked up yet; null: there is none. */
export const attempt = signal<Attempt | null | undefined>(undefined);

/** This person has flown no set yet. */
export const first = signal(false);

/** Looks the latest flight of a set by this person up. */
export const lookUp = (house: House, number: number): Promise<void | undefined> => withBook(house, async (book) => {
  const name = await house.setName(number);
  const own = (await book.attempts()).filter((one) => one.person === person.value);
  first.value = own.length === 0;
  const latest = own.find((one) => one.set === name) ?? null;
  lock.value = latest === null || nextPlace(latest) === null ? null : await house.lockOf(number, latest);
  attempt.value = latest;
});

/** Begins a new flight: the whole set is drawn now, by a seed that nobody has seen. */
export const begin = (house: House, number: number, name: string, { runs, blocks }: { readonly runs: number; readonly blocks: number }, forecast: Forecast | null): Promise<void | undefined> => withBook(house, async (book) => {
  const made: Attempt = {
    id: newId(), set: await house.setName(number), seed: crypto.getRandomValues(new Uint32Array(1))[0] as number,
    person: person.value, name, startedMs: Date.now(), runs, blocks, done: [], leftMs: null, ...(forecast === null ? {} : { forecast }),
  };
  await book.keepAttempt(made);
  lock.value = null;
  attempt.value = made;
});

/** Leaves a flight off: it is over, and counts as left off. */
export const leaveOff = (house: House, one: Attempt): Promise<void | undefined> => withBook(house, async (book) => {
  const left = { ...one, leftMs: Date.now() };
  await book.keepAttempt(left);
  attempt.value = left;
});
