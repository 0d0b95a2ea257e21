/** Changes of the choices: each is said in words, and the last one can be taken back. */
import { signal } from '@preact/signals';
import { choicesNow, setChoices, type Choices } from './settings.js';

interface Change {
  readonly words: string;
  /** How everything stood before it; null while there is nothing to take back. */
  readonly before: Choices | null;
  /** What it is a step of. */
  readonly slide: string | null;
}

const NONE: Change = { words: '', before: null, slide: null };

/** What was changed last. */
export const lastChange = signal<Change>(NONE);

/**
 * @param make makes the change and says what it came to
 * @param slide steps with the same name, one after another, are one change
 */
export function change(make: () => string, slide: string | null = null): void {
  const { before, slide: was } = lastChange.value;
  const from = slide !== null && slide === was ? before : choicesNow();
  lastChange.value = { words: make(), before: from, slide };
}

/** Says something that changes nothing. */
export const say = (words: string): void => { lastChange.value = { ...lastChange.value, words, slide: null }; };

export function undo(): void {
  const { before } = lastChange.value;
  if (before === null) return;
  const undone = choicesNow();
  setChoices(before);
  lastChange.value = { words: 'Taken back', before: undone, slide: null };
}

export const forget = (): void => { lastChange.value = NONE; };
