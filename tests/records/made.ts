/** Records and books for tests of the logbook: real runs by a scripted trainee, in a store that lives in memory. */
import 'fake-indexeddb/auto';
import { scriptedRecord, type RunRecord } from '../../sim/files/index.js';
import { flyTrainee, MODEL_VERSION } from '../../sim/index.js';
import { bookOn, openStore, type About, type Book } from '../../src/records/logbook/index.js';
import { AIRFRAME, drill } from '../sim/bench.js';

let stores = 0;

/** An empty book in a store of its own. */
export async function emptyBook(name = `book ${stores += 1}`): Promise<Book> {
  return bookOn(await openStore(name));
}

const scenario = drill('set-16-from-4');

/** A run of a drill as a record. */
export function flown(seed: number): RunRecord {
  const { commands, flight } = flyTrainee(scenario, AIRFRAME, seed, 'prompt');
  const { end, hash, outcome, score } = flight;
  return scriptedRecord({ model: MODEL_VERSION, app: 'test', seed, airframe: AIRFRAME, scenario, commands, end, hash, outcome, score });
}

export const about = (id: string, more: Partial<About> = {}): About => ({ id, person: 'ada', atMs: 1000, attempt: null, drill: 1, imported: false, abandoned: false, ...more });
