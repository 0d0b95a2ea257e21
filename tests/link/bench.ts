/** A run with desks beside it, without a page: real sessions and a real link, time and transport in the hand of the test. */
import { flownRecord, type Act, type DeskAct, type Grades, type RunRecord } from '../../sim/files/index.js';
import { expand } from '../../sim/index.js';
import { openGuest, type Guest } from '../../src/link/guest.js';
import { hostRun, type Host } from '../../src/link/host.js';
import type { OpenPort } from '../../src/link/port.js';
import { desked } from '../../src/run/desked.js';
import { draftOf } from '../../src/run/record.js';
import { file, frame, startSession, stop, type Session } from '../../src/run/session.js';
import { AIRFRAME, scenario } from '../sim/bench.js';

const DEVICE = { isolated: true, clockGrainMs: 0.005, renderer: 'none', input: '' };

export interface Flown {
  session(): Session;
  readonly host: Host;
  readonly counts: number[];
  readonly taken: DeskAct[];
  readonly grades: Grades[];
  /** @param lateMs how long ago it was done */
  act(act: Act, lateMs?: number): void;
  /** Frames of 20 ms to a time of the run, ms. */
  to(ms: number): void;
  end(): RunRecord;
}

let runs = 0;

/** @param skewMs how far the clock of the run's window is off */
export function flown(open: OpenPort, { closed = null, skewMs = 0, refuse = null, id = `run-${(runs += 1)}` }: { closed?: string | null; skewMs?: number; refuse?: string | null; id?: string } = {}): Flown {
  const made = scenario({ task: { settings: [16], limitS: 120 } });
  const startMs = 1000 + skewMs;
  let session = startSession(expand(made, AIRFRAME, 3), startMs);
  let joined = false;
  let nowMs = startMs;
  const see = new Set<(session: Session) => void>();
  const ends = new Set<(record: RunRecord) => void>();
  const set = (next: Session): void => {
    session = next;
    for (const one of see) one(session);
  };
  const [counts, taken, grades]: [number[], DeskAct[], Grades[]] = [[], [], []];
  const host = hostRun({
    id, title: 'Drill 1', closed, open, now: () => nowMs,
    running: {
      setting: { seed: 3, airframe: AIRFRAME, scenario: made },
      join: () => { joined = true; },
      desk(stampMs, act, by) {
        const answer = desked(session, stampMs, act, by);
        set(answer.session);
        return { tick: answer.tick, refused: answer.refused };
      },
      onSession(one) {
        see.add(one);
        one(session);
        return () => { see.delete(one); };
      },
      onEnd: (one) => { ends.add(one); },
    },
    onDesks: (count) => counts.push(count), onTaken: (act) => taken.push(act),
    onGrades: (one) => {
      if (refuse === null) grades.push(one);
      return refuse;
    },
  });
  return {
    session: () => session, host, counts, taken, grades,
    act: (act, lateMs = 0) => set(file(session, nowMs - lateMs, act)),
    to(ms) {
      for (; nowMs < startMs + ms; nowMs += 20) set(frame(session, nowMs));
      nowMs = startMs + ms;
      set(frame(session, nowMs));
    },
    end() {
      set(stop(session, nowMs));
      const record = flownRecord(
        { app: 'test', seed: 3, airframe: AIRFRAME, scenario: made, device: DEVICE, gauge: { pxPerDeg: 5, pixelRatio: 1, mmPerPx: null } },
        draftOf(session, new Set(['key']), false, joined), { tick: session.endTick, why: session.over ?? 'stopped' },
      );
      for (const one of ends) one(record);
      return record;
    },
  };
}

/** A desk whose clock has nothing to do with that of the run. */
export const guest = (open: OpenPort, id = 'desk', now = () => Date.now() + 1e9): Guest => openGuest({ id, open, now, onView: () => undefined });
