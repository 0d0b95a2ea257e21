/** A class of nobody, where reading begins: apart from the reading, which is fetched when there are files. */
import type { ClassBook } from './class.js';

export const NOBODY: ClassBook = { people: new Map(), files: [], runs: 0, twice: 0, unproved: 0, refused: [], more: 0, stopped: false, record: () => Promise.resolve(null) };
