/**
 * A way to say something to everyone else in a room. Whoever brings another transport writes another `Port`; the contract
 * in tests/link/port.test.ts holds them all. Messages may be lost, doubled or out of order: those who speak over a port
 * are made for that.
 */
export interface Port {
  readonly room: string;
  /** To everyone else in the room; what is sent is plain data. Nothing once it is closed. */
  send(message: unknown): void;
  /** Calls back with what others send. Returns its undo. */
  onMessage(see: (message: unknown) => void): () => void;
  close(): void;
}

/** Makes the port of a room. */
export type OpenPort = (room: string) => Port;

/** Among the windows of one browser. */
export function windowsPort(room: string): Port {
  const channel = new BroadcastChannel(`evenhand ${room}`);
  const seen = new Set<(message: unknown) => void>();
  let open = true;
  channel.addEventListener('message', ({ data }: MessageEvent) => { for (const see of seen) see(data); });
  return {
    room,
    send(message) { if (open) channel.postMessage(message); },
    onMessage(see) {
      seen.add(see);
      return () => { seen.delete(see); };
    },
    close() {
      open = false;
      seen.clear();
      channel.close();
    },
  };
}

/** Among the parts of one program. Every member gets a copy of its own, as from another window. */
export function memoryRooms(): OpenPort {
  const rooms = new Map<string, Set<(message: unknown) => void>>();
  return (room) => {
    const members = rooms.get(room) ?? new Set();
    rooms.set(room, members);
    const seen = new Set<(message: unknown) => void>();
    const hear = (message: unknown): void => { for (const see of seen) see(message); };
    members.add(hear);
    return {
      room,
      send(message) {
        if (!members.has(hear)) return;
        for (const one of members) {
          if (one === hear) continue;
          const copy: unknown = structuredClone(message);
          queueMicrotask(() => { if (members.has(one)) one(copy); });
        }
      },
      onMessage(see) {
        seen.add(see);
        return () => { seen.delete(see); };
      },
      close() {
        members.delete(hear);
        seen.clear();
      },
    };
  };
}

/** Name of the one port on which all runs and desks of a machine meet. */
export const LOBBY = 'lobby';
/** How often those in a room say that they are still there, ms. */
export const BEAT_MS = 1000;
/** Who has said nothing for so long has gone, ms: hidden windows speak once a second at best, at worst once a minute. */
export const LOST_MS = 5000;
