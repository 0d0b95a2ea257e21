/** What the pages remember while the app is open. Nothing here outlives the tab but the choices in settings.ts. */
import { effect, signal } from '@preact/signals';
import type { RunRecord } from '../../sim/files/index.js';
import type { Opened } from '../records/file.js';
import type { Trouble } from '../records/logbook/index.js';
import { fragmentOf, routeOf, type Route } from './route.js';

export const route = signal<Route>(routeOf(location.hash));
/** The run that is asked about or debriefed. */
export const record = signal<RunRecord | null>(null);
/** Whether it came out of a file. */
export const fromFile = signal(false);
/** A file that was refused. */
export const refused = signal<Extract<Opened, { ok: false }> | null>(null);
/** What kept the logbook from keeping the run; null: it is kept, or about to be. */
export const unkept = signal<Trouble | null>(null);
/** A run that was left by going back, told on the page where that leads. */
export const left = signal<RunRecord | null>(null);
/** Start was pressed, and the run it began is not over. */
export const started = signal(false);
/** The page was loaded anew before the run was judged; told on the brief. */
export const gone = signal(false);

const LAST = 'evenhand.last';

/** The drill flown last in this tab, for flying it again. Its number outlives a reload; the run itself does not. */
export const lastDrill = signal<number | null>(lastKept());

/** The run from a bench that was flown last on this page, for flying it again and for the way back; null where the last run was none. */
export const lastOwn = signal<{ readonly id: string; readonly from: 'bench' | 'link' } | null>(null);

/** The step of a course that was flown last on this page, for the way back; null where the last run was none. */
export const lastStep = signal<{ readonly course: number; readonly step: number } | null>(null);

function lastKept(): number | null {
  try {
    const kept = Number(sessionStorage.getItem(LAST));
    return Number.isInteger(kept) && kept > 0 ? kept : null;
  } catch {
    return null;
  }
}

effect(() => {
  if (lastDrill.value === null) return;
  try {
    sessionStorage.setItem(LAST, String(lastDrill.value));
  } catch {
    // Not kept: the store is closed to us.
  }
});

/** Where set-up was opened from, for the way back. */
export const cameFrom = signal<Exclude<Route, { page: 'nowhere' }> | null>(null);

addEventListener('hashchange', () => {
  const [before, now] = [route.value, routeOf(location.hash)];
  // Set-up lies beside the way: a run is never gone back into.
  if (now.page === 'settings' && before.page !== 'settings') cameFrom.value = before.page === 'nowhere' || before.page === 'run' ? null : before;
  route.value = now;
});

/** A new page, which Back leaves again. */
export function go(to: Exclude<Route, { page: 'nowhere' }>): void {
  location.hash = fragmentOf(to);
}

/** A page in place of this one: Back does not lead into the middle of a run. */
export function goInstead(to: Exclude<Route, { page: 'nowhere' }>): void {
  history.replaceState(null, '', fragmentOf(to));
  route.value = to;
}
