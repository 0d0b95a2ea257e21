/** The runs of this machine, as the lobby hears of them. */
import { lobbySchema } from '../../sim/files/index.js';
import type { Ear } from './ear.js';
import { LOST_MS, type Port } from './port.js';

/** A run of this machine. */
export interface Room {
  readonly id: string;
  readonly title: string;
  readonly stage: 'flown' | 'over';
  /** Why no desk may join; null: one may. */
  readonly closed: string | null;
}

export interface Rooms {
  /** Asks which runs are there, in the name of a desk. */
  seek(from: string): void;
  /** Those that have said nothing for long are gone. */
  tidy(): void;
  close(): void;
}

/**
 * @param lobby closed with the rooms
 * @param now stamps of the page's clock, ms
 */
export function openRooms(lobby: Port, ear: Ear, now: () => number, onRooms: (rooms: readonly Room[]) => void): Rooms {
  const rooms = new Map<string, { readonly room: Room; readonly heardMs: number }>();
  const told = (): void => onRooms([...rooms.values()].map(({ room }) => room));
  ear.on(lobby, lobbySchema, (message) => {
    if (message.kind === 'seek') return;
    const { kind, from } = message;
    if (kind === 'here') rooms.set(from, { room: { id: from, title: message.title, stage: message.stage, closed: message.closed }, heardMs: now() });
    else rooms.delete(from);
    told();
  });
  return {
    seek: (from) => lobby.send({ kind: 'seek', from }),
    tidy() {
      for (const [id, { heardMs }] of rooms) if (now() - heardMs > LOST_MS) rooms.delete(id);
      told();
    },
    close: () => lobby.close(),
  };
}
