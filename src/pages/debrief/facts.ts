/** What a run holds: what acted and when it showed, and what the hand did, read off the debrief for the sentences. */
import type { RunRecord, Scenario } from '../../../sim/files/index.js';
import type { Debrief, DebriefRow, RunEvent } from '../../../sim/index.js';

export type Facts = Debrief;
type Fault = Scenario['faults'][number];

export const lastRow = ({ rows }: Facts): DebriefRow | undefined => rows[rows.length - 1];
/** The last row at or before a time. */
export const rowAt = ({ rows }: Facts, atS: number): DebriefRow | undefined => {
  const index = indexAt(rows, atS);
  return rows[index];
};

/** The first row at or behind a time: what stands when something has just happened. */
export const rowAfter = ({ rows }: Facts, atS: number): DebriefRow | undefined => rows.find((row) => row.atS >= atS + 1e-6) ?? rows[rows.length - 1];

/** Place of the last row at or before a time; rows stand in rising order. */
export function indexAt(rows: readonly { readonly atS: number }[], atS: number): number {
  let low = 0;
  let high = rows.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((rows[middle] as { atS: number }).atS <= atS + 1e-6) low = middle;
    else high = middle - 1;
  }
  return low;
}

export const shownApart = (row: DebriefRow): number => Math.abs(row.leftPointerDeg - row.rightPointerDeg);
export const trulyApart = (row: DebriefRow): number => Math.abs(row.leftDeg - row.rightDeg);

/** Times from when to when the switch was away from off, s. */
export function holds({ flight, rows }: Facts): (readonly [fromS: number, toS: number])[] {
  const spans: [number, number][] = [];
  let since: number | null = null;
  for (const { what, atS } of flight.events) {
    if ((what === 'extend' || what === 'retract') && since === null) since = atS;
    else if (what === 'release' && since !== null) {
      spans.push([since, atS]);
      since = null;
    }
  }
  if (since !== null) spans.push([since, rows[rows.length - 1]?.atS ?? since]);
  return spans;
}

export const eventsOf = ({ flight }: Facts, what: RunEvent['what']): readonly RunEvent[] => flight.events.filter((event) => event.what === what);
export const firstOf = (facts: Facts, what: RunEvent['what'], fromS = 0): RunEvent | undefined =>
  facts.flight.events.find((event) => event.what === what && event.atS >= fromS - 1e-6);

/** The scored release, or the pause kept as one, was at the last setting of the task. */
export function isArrival(facts: Facts, scenario: Scenario): boolean {
  const { releaseS } = facts.flight.score;
  const last = scenario.task.settings[scenario.task.settings.length - 1];
  return releaseS !== null && eventsOf(facts, 'setting').some(({ deg, atS }) => deg === last && Math.abs(atS - releaseS) < 0.02);
}

/** A fault of the drive or the leading edge, and of no side. */
type Failing = Exclude<Fault, { readonly side: string }>;

/** One that acted, with the time from which it could be noticed. */
export interface Failure {
  readonly kind: Failing['kind'];
  readonly fault: Fault;
  readonly actedS: number;
  /** First time it made a difference, s; null for never. */
  readonly showedS: number | null;
}

const isFailing = (fault: Fault): fault is Failing => !('side' in fault);

/** Failures of the drive and the leading edge, in the order in which they acted. */
export function failures(facts: Facts, { faults }: Pick<RunRecord['scenario'], 'faults'>): Failure[] {
  return eventsOf(facts, 'fault').flatMap(({ name, atS }) => {
    const fault = faults.find((one) => one.name === name);
    return fault === undefined || !isFailing(fault) ? [] : [{ kind: fault.kind, fault, actedS: atS, showedS: showed(facts, fault.kind, atS) }];
  });
}

/** Drop-out and braking together take less than this, s. */
const COAST_S = 0.5;

function showed(facts: Facts, kind: Failure['kind'], actedS: number): number | null {
  const held = holds(facts).find(([, toS]) => toS > actedS + 1e-6);
  switch (kind) {
    case 'dead': case 'quits': return held === undefined ? null : Math.max(held[0], actedS);
    case 'slow': return facts.rows.find(({ atS, rateDegPerS }) => atS >= actedS && rateDegPerS !== 0)?.atS ?? null;
    case 'runsOn': return ranOnFrom(facts, actedS);
    case 'leadingEdge': return standsFrom(facts);
  }
}

/** First release behind which the drive still ran with the switch at off. */
function ranOnFrom(facts: Facts, actedS: number): number | null {
  const spans = holds(facts);
  for (const [, toS] of spans) {
    if (toS + COAST_S < actedS) continue;
    const next = spans.find(([fromS]) => fromS > toS)?.[0] ?? Infinity;
    const after = facts.rows.find(({ atS }) => atS >= Math.max(toS, actedS) + COAST_S && atS < next);
    if (after !== undefined && after.rateDegPerS !== 0) return toS;
  }
  return null;
}

/** When a leading edge that never came out began to stand: it takes its own time to get there, and rows do not say how far it is. */
const standsFrom = (facts: Facts): number | null => {
  const end = lastRow(facts);
  return end !== undefined && end.leadingEdge === 'moving' ? firstOf(facts, 'leadingEdgeMoves')?.atS ?? null : null;
};

/** Whether the sides still parted when the record ended. */
export function stillMoving(facts: Facts): boolean {
  const end = lastRow(facts);
  const before = end === undefined ? undefined : rowAt(facts, end.atS - 1);
  return end !== undefined && before !== undefined && Math.abs(trulyApart(end) - trulyApart(before)) > 0.02;
}

/** The side that went ahead in the way of the drive, on the pointers, between onset and a time; null where none did. */
export function sideAhead(facts: Facts, untilS: number): 'left' | 'right' | null {
  const { onsetS } = facts.flight.score;
  if (onsetS === null) return null;
  const from = rowAt(facts, onsetS);
  const to = rowAt(facts, untilS);
  if (from === undefined || to === undefined) return null;
  const grown = to.leftPointerDeg - to.rightPointerDeg - (from.leftPointerDeg - from.rightPointerDeg);
  if (Math.abs(grown) < 0.05) return null;
  const way = facts.rows.slice(indexAt(facts.rows, onsetS)).find(({ rateDegPerS }) => rateDegPerS !== 0)?.rateDegPerS ?? from.rateDegPerS;
  return (grown > 0) === (way >= 0) ? 'left' : 'right';
}
