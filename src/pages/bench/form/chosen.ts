/** Which fault or event is looked at: form, picture and text speak of the same one. */
import { signal } from '@preact/signals';

export const chosen = signal<{ readonly list: 'faults' | 'events'; readonly index: number } | null>(null);
