/** Watches devices for a page that shows them. */
import { frames } from '../clock/frames.js';
import { padEvents, readPads, type Moment, type PadNow, type ReadPads } from './pads.js';

/** A device as it stands in this frame. */
export interface Watched extends Pick<PadNow, 'index' | 'id' | 'buttons' | 'axes'> {
  /** Changes bear a time of the device's own; null until something has changed. */
  readonly ownTime: boolean | null;
}

/** Calls back in every frame. Returns its undo. */
export function watchPads(see: (pads: readonly Watched[]) => void, read: ReadPads = readPads): () => void {
  const own = new Map<string, boolean>();
  let before: readonly PadNow[] = [];
  let last: Moment = { readMs: 0 };
  const watching = frames().subscribe((frameMs) => {
    const pads = read();
    const at = { readMs: Math.max(performance.now(), frameMs) };
    for (const event of padEvents(before, pads, last, at)) own.set(`${event.index} ${event.id}`, event.clock === 'device');
    [before, last] = [pads, at];
    see(pads.map(({ index, id, buttons, axes }) => ({ index, id, buttons, axes, ownTime: own.get(`${index} ${id}`) ?? null })));
  });
  return () => watching.unsubscribe();
}
