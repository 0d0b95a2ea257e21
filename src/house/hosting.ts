/** The trainee's end of a live run: opens it to desks, where the trainee lets them, and keeps what they grade in its record. */
import type { RunRecord } from '../../sim/files/index.js';
import { composeRecord } from '../../sim/files/index.js';
import { hostRun, type Host } from '../link/host.js';
import { windowsPort } from '../link/port.js';
import type { Flown } from '../pages/house.js';
import { record } from '../pages/session.js';
import { deskMayJoin, loudness } from '../pages/settings.js';
import { newId } from '../records/logbook/id.js';
import type { RunningDrill } from '../run/drill.js';
import type { Keeper } from './keeper.js';

/** Why no desk may join a run; null: one may. */
function closedTo(of: Flown): string | null {
  if ('set' in of) return 'A run of a set is measured: it is flown alone.';
  if ('practice' in of) return 'A practice keeps its level by what is flown alone.';
  return deskMayJoin.peek() ? null : 'The trainee has closed this window to desks, in set-up.';
}

function titleOf(of: Flown): string {
  if ('set' in of) return `Run ${of.place + 1} of a set`;
  if ('practice' in of) return 'Practice';
  if ('course' in of) return `Course ${of.course}, step ${of.step}`;
  return 'drill' in of ? `Drill ${of.drill}` : 'Run from a bench';
}

/** The run that this page flew last: its room stays open for the grades. */
let last: Host | null = null;

interface HostedBy {
  readonly keeping: Keeper;
  /** How many desks are there. */
  readonly onDesks: (count: number) => void;
  /** A hand that holds must take hold anew: the state of the run has become another. */
  readonly letGo: () => void;
}

/** Opens a run to desks. */
export function openToDesks(of: Flown, running: RunningDrill, { keeping, onDesks, letGo }: HostedBy): void {
  last?.close();
  let kept: RunRecord | null = null;
  let pending: RunRecord['desk'];
  const host = hostRun({
    id: newId(), title: titleOf(of), closed: closedTo(of),
    running, open: windowsPort, now: () => performance.now(), onDesks,
    onTaken(act) {
      if (act.do === 'reposition') letGo();
      // Words of a voice are heard, where somebody is named; the caption always stands.
      if ('from' in act && act.from !== undefined) speak(act.text);
    },
    onGrades(grades) {
      if (kept === null) {
        pending = grades;
        return null;
      }
      if (kept.source !== 'live') return 'No desk was there while it was flown.';
      host.again(graded(grades));
      return null;
    },
  });
  function graded(grades: RunRecord['desk']): RunRecord {
    // What the trainee has said meanwhile is in the record that the pages hold.
    const shown = record.peek();
    const before = shown !== null && shown.hash === kept?.hash && shown.seed === kept.seed && shown.end.tick === kept.end.tick ? shown : kept as RunRecord;
    const { format: _format, digest: _digest, ...parts } = before;
    const whole = composeRecord({ ...parts, desk: grades });
    keeping.again(before, whole);
    if (record.peek() === before) record.value = whole;
    kept = whole;
    return whole;
  }
  running.onEnd((made) => {
    kept = made;
    // The pages take the record up first.
    if (pending !== undefined) queueMicrotask(() => host.again(graded(pending)));
  });
  last = host;
}

// A page that is left or loaded anew says so; one that died is missed.
addEventListener('pagehide', () => {
  last?.close();
  last = null;
});

/** Beside the words on the screen, which are always there. */
function speak(text: string): void {
  const speech = (globalThis as { speechSynthesis?: SpeechSynthesis }).speechSynthesis;
  const volume = loudness();
  if (speech === undefined || volume === 0) return;
  const said = new SpeechSynthesisUtterance(text);
  said.volume = volume;
  speech.speak(said);
}
