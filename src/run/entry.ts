/** What reaches a running drill, in one stream: frames, acts, losses, and the page's own stops. */
import type { Act, DeskAct } from '../../sim/files/index.js';
import { desked, letGo } from './desked.js';
import type { Hand, Loss } from './drill.js';
import { file, frame, halt, lose, resume, stop, type Session } from './session.js';

/** Stamps are ms of the page's clock, each event's own. `by` names the desk. */
export type Entry = { readonly stampMs: number } & (
  | { readonly what: 'frame' }
  | { readonly what: 'act'; readonly act: Act; readonly hand: Hand }
  | { readonly what: Loss }
  | { readonly what: 'pause' | 'resume' | 'stop' }
  | { readonly what: 'cover' }
  | { readonly what: 'desk'; readonly act: DeskAct; readonly by: string }
  | { readonly what: 'letGo' }
);

/** The session behind one entry. */
export function enter(session: Session, entry: Entry): Session {
  switch (entry.what) {
    case 'frame': return frame(session, entry.stampMs);
    case 'act': return file(session, entry.stampMs, entry.act);
    case 'focusLost': case 'hidden': return lose(session, entry.stampMs, entry.what);
    case 'pause': return halt(session, entry.stampMs, 'pause');
    case 'resume': return resume(session, entry.stampMs);
    case 'stop': return stop(session, entry.stampMs);
    case 'desk': return desked(session, entry.stampMs, entry.act, entry.by).session;
    case 'letGo': return letGo(session, entry.stampMs);
    case 'cover': return session;
  }
}
