/** When each fault and event of the document acted in the run that was previewed last: the picture sets its marks by it. */
import { signal } from '@preact/signals';
import type { Acted } from '../../../../sim/index.js';

/** By place in the file; null where nothing has been previewed. */
export const acted = signal<Acted | null>(null);
