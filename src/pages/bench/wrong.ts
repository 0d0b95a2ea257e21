/** A problem in words, without its place. */
import type { Problem } from '../../text/index.js';
import { upper } from '../../view/words.js';

export const wrongWords = ({ found, allowed }: Pick<Problem, 'found' | 'allowed'>): string => (found === 'nothing' ? `is missing; needs ${allowed}` : `is ${found}; allowed: ${allowed}`);

/** The same as a sentence of its own, under a field. */
export const wrongSentence = (problem: Pick<Problem, 'found' | 'allowed'>): string => {
  const words = wrongWords(problem);
  return `${upper(words)}.`;
};
