/** How the document is looked at: by form or by text, and the place in the text that is to be shown. */
import { signal } from '@preact/signals';

export const by = signal<'form' | 'text'>('form');

/** A place in the text to lead the eye and the caret to; a new object each time it is asked for. */
export const place = signal<{ readonly line: number; readonly column: number } | null>(null);
