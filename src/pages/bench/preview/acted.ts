/** When each fault and event of the document acted in the run that was previewed last: the picture sets its marks by it. */
import { signal } from '@preact/signals';
import type { Acted } from '../../../../sim/index.js';

interface Flown {
  /** By place in the file. */
  readonly acted: Acted;
  /** The text that was flown. */
  readonly text: string;
}

/** null where nothing has been previewed. */
export const flown = signal<Flown | null>(null);

/** Whether a preview follows the text now. */
export const follows = signal(false);

/** What is known of this text. With no preview beside it, only what was flown of the same text is. */
export const actedIn = (text: string): Acted | null => (flown.value !== null && (follows.value || flown.value.text === text) ? flown.value.acted : null);
