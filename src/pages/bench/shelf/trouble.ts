/** What keeps the shelf from keeping a file, in a sentence that says what can be done all the same. */
import type { Trouble } from '../../../records/logbook/index.js';
import { troubleIn } from '../../logbook/logged.js';

const SENTENCES: Readonly<Record<Trouble, string>> = {
  denied: 'This browser keeps nothing for this page (a private window, or storage is switched off). Save what you write as a file.',
  full: 'There is no room left in this browser. Save what you write as a file, and remove what is no longer needed.',
  newer: 'The shelf in this browser was written by a later Evenhand. It is left as it is; save what you write as a file.',
  closed: 'Another page of Evenhand has taken the shelf over. Reload this page to go on here; what is being written is kept.',
};

export const shelfTrouble = (problem: unknown): string => SENTENCES[troubleIn(problem)];
