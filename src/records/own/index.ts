/** A person's own files, kept in the browser. */
export { copyName, LONGEST_NAME, nameIn, ownShelfOn, type OwnShelf } from './shelf.js';
export { openOwnStore, type OwnEntry, type OwnFile, type OwnFlight } from './store.js';
