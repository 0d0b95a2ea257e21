/** Hears what fits on ports that anybody may speak on; what does not fit is counted and dropped. */
import type { Port } from './port.js';

/** What tells a message that fits from one that does not. */
interface Shape<T> {
  safeParse(message: unknown): { readonly success: true; readonly data: T } | { readonly success: false };
}

/** `dropped` counts from when the ear was opened, over all ports. */
export interface Ear {
  /** Calls back with what fits. Returns its undo. */
  on<T>(port: Port, shape: Shape<T>, hear: (message: T) => void): () => void;
  /** Counts a message that fitted and still could not be used. */
  drop(): void;
  dropped(): number;
}

export function openEar(): Ear {
  let dropped = 0;
  return {
    on: (port, shape, hear) => port.onMessage((message) => {
      const read = shape.safeParse(message);
      if (read.success) hear(read.data);
      else dropped += 1;
    }),
    drop: () => { dropped += 1; },
    dropped: () => dropped,
  };
}
