/** The logbook of this machine: runs kept in the browser, listed, opened, taken off, carried away in one file and back. */
export { isPause, nextPlace, withRun, type Attempt } from './attempt.js';
export { bookOn, type Book, type Cursor, type PageOf } from './book.js';
export { entryOf, taskIn, type About, type Entry } from './entry.js';
export { exportBook } from './export.js';
export { EVERY_RUN, type Filter } from './filter.js';
export { importBook, type Imported, type Refused } from './import.js';
export { LogbookTrouble, openStore, troubleOf, type Trouble, type Unfinished } from './store.js';
