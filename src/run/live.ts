/** A running drill as one value: the session, and what the page shows that is no part of it. */
import type { World } from '../../sim/index.js';
import { moveCover, type Cover } from './cover.js';
import { cuesOf, type Cue } from './cues.js';
import { enter, type Entry } from './entry.js';
import { startSession, type Session } from './session.js';

export interface Live {
  readonly session: Session;
  readonly cues: readonly Cue[];
  readonly cover: Cover;
  /** Stamp of the latest entry. */
  readonly stampMs: number;
}

/** The clock starts at the first frame; what comes before it is not for this run. */
export function enterLive(live: Live | null, entry: Entry, first: World): Live | null {
  if (live === null) return entry.what === 'frame' ? { session: startSession(first, entry.stampMs), cues: [], cover: null, stampMs: entry.stampMs } : null;
  const session = enter(live.session, entry);
  return {
    session,
    cues: session.world === live.session.world ? live.cues : cuesOf(live.cues, session.world),
    cover: entry.what === 'cover' ? moveCover(live.cover, entry.stampMs) : shutBehind(live.cover, entry),
    stampMs: Math.max(live.stampMs, entry.stampMs),
  };
}

/** Once the button has been pressed the cover shuts over it. */
const shutBehind = (cover: Cover, entry: Entry): Cover => (entry.what === 'act' && entry.act.do === 'silenceHorn' ? null : cover);
