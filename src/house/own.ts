/** A person's own files, and the runs that were handed on from a bench or by a link. */
import type { Scenario } from '../../sim/files/index.js';
import type { HandedOn, OwnHouse } from '../pages/own/house.js';
import { newId } from '../records/logbook/id.js';
import type { OwnFlight, OwnShelf } from '../records/own/index.js';
import type { Shelved } from '../records/shelf.js';
import type { Read } from '../text/index.js';
import { PUT_BACK_MS } from './put-back.js';

/** A run that was handed on can be flown for so long, ms: four weeks. */
const FLOWN_MS = 28 * 86_400_000;

let opening: Promise<OwnShelf> | null = null;
/** Runs handed on by this page: where the browser keeps nothing they can be flown all the same. */
const handed = new Map<string, OwnFlight>();

async function open(): Promise<OwnShelf> {
  const { openOwnStore, ownShelfOn } = await import('../records/own/index.js');
  const shelf = ownShelfOn(await openOwnStore());
  await shelf.sweepAway(Date.now() - PUT_BACK_MS, Date.now() - FLOWN_MS);
  return shelf;
}

const shelf = (): Promise<OwnShelf> => (opening ??= open().catch((problem: unknown) => {
  opening = null; // asked again, it is tried again
  throw problem;
}));

async function sealedText(text: string): Promise<string> {
  const [{ parsedValue }, { sealed }] = await Promise.all([import('../text/index.js'), import('../../sim/files/index.js')]);
  return JSON.stringify(sealed(parsedValue(text) as unknown as Scenario));
}

async function keep(text: string, seed: number | null, from: OwnFlight['from']): Promise<string> {
  const flight: OwnFlight = { id: newId(), text, seed, from, atMs: Date.now() };
  handed.set(flight.id, flight);
  // Not kept: the run can be flown for as long as this page is open.
  await shelf().then((made) => made.keepFlight(flight)).catch(() => undefined);
  return flight.id;
}

async function read(text: string): Promise<{ readonly read: Read<Scenario>; readonly lookup: ReadonlyMap<string, Shelved['airframe']> }> {
  const [{ airframesOnShelf }, { readScenario }] = await Promise.all([import('../records/shelf.js'), import('../text/index.js')]);
  const lookup = airframesOnShelf();
  return { read: readScenario(text, 'link', (name) => lookup.get(name)), lookup };
}

/** The run of an id, checked anew: a store holds whatever has been put there. null where there is none. */
export async function flightOf(id: string): Promise<(Shelved & Pick<OwnFlight, 'seed' | 'from'>) | null> {
  const flight = handed.get(id) ?? await shelf().then((made) => made.flight(id)).catch(() => null);
  if (flight === null) return null;
  const [{ read: found, lookup }, { airframeOf }] = await Promise.all([read(flight.text), import('../../sim/files/index.js')]);
  const airframe = found.ok ? airframeOf(found.value, (name) => lookup.get(name)) : undefined;
  return found.ok && airframe !== undefined ? { scenario: found.value, airframe, seed: flight.seed, from: flight.from } : null;
}

async function handOnLink(code: string): Promise<HandedOn> {
  const opened = await (await import('../records/link.js')).textOfLink(code);
  if (!opened.ok) return { ok: false, why: opened.why, problems: [], more: 0 };
  const { read: found } = await read(opened.text);
  if (!found.ok) return { ok: false, why: 'This link holds no run that can be flown.', problems: found.problems, more: found.more };
  return { ok: true, id: await keep(await sealedText(opened.text), null, 'link') };
}

export const own: OwnHouse = {
  shelf, newId, sealedText, handOnLink,
  handOn: async (text, seed, from) => keep(await sealedText(text), seed, from),
  async flight(id) {
    const [found, { cardOf }] = await Promise.all([flightOf(id), import('../pages/drill/card.js')]);
    return found === null ? null : { card: cardOf(found, 0), from: found.from, seed: found.seed };
  },
  linkCode: async (text) => (await import('../records/link.js')).linkCode(text),
  textOfLink: async (code) => (await import('../records/link.js')).textOfLink(code),
};
