/** The task of a set in words that give nothing away. */
import type { SetCard } from './card.js';

export const setTask = ({ from, to }: Pick<SetCard, 'from' | 'to'>): string => `Flaps from ${from} toward ${to}`;
