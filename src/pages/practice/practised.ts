/** The practice of whoever flies: kept on this machine by name, since it is a level and no measure. */
import { signal } from '@preact/signals';
import type { PracticeRun } from '../../../sim/index.js';
import { KEPT, ongoingOf, type Ongoing } from './ongoing.js';
import { person } from '../settings.js';

/** The run that is flown now, or was flown last. */
export const practiceRun = signal<PracticeRun | null>(null);
export const ongoing = signal<Ongoing | null>(null);

const keyOf = (): string => `evenhand.practice.${person.value}`;

export function readPractice(): void {
  try {
    ongoing.value = ongoingOf(localStorage.getItem(keyOf()));
  } catch {
    ongoing.value = null; // a closed store; the practice lasts as long as the page
  }
}

export function keepPractice(to: Ongoing | null): void {
  ongoing.value = to === null ? null : { ...to, runs: to.runs.slice(-KEPT) };
  try {
    if (to === null) localStorage.removeItem(keyOf());
    else localStorage.setItem(keyOf(), JSON.stringify(ongoing.value));
  } catch {
    // See readPractice.
  }
}
