/**
 * Where stamps and ticks meet. A clock is a list of segments; after every pause, freeze or stall a new one starts.
 * Inside a segment tick = its tick + whole tens of milliseconds since its stamp, computed in one way everywhere,
 * so that `verify` can demand equality.
 */
/** The tick at which a stretch of running begins, and the page's stamp of that moment. */
export interface ClockSegment {
  readonly tick: number;
  readonly stampMs: number;
}

const TICK_MS = 10;

/** The tick that contains a stamp, and how far into it the stamp lies (`fraction`, 0 to below 1), by one segment. */
export function tickInSegment(segment: ClockSegment, stampMs: number): { tick: number; fraction: number } {
  const ticks = (stampMs - segment.stampMs) / TICK_MS;
  const whole = Math.floor(ticks);
  return { tick: segment.tick + whole, fraction: ticks - whole };
}

/** The segment a stamp belongs to: the last that starts at or before it, or the first. @throws RangeError for no segment */
export function segmentOf(clock: readonly ClockSegment[], stampMs: number): ClockSegment {
  let found = clock[0];
  if (found === undefined) throw new RangeError('a clock has at least one segment');
  for (const segment of clock) if (segment.stampMs <= stampMs) found = segment;
  return found;
}

/** The same over all segments. A stamp in a gap between two belongs to the tick where the clock stood, at `fraction` 0. @throws RangeError for no segment */
export function tickOfStamp(clock: readonly ClockSegment[], stampMs: number): { tick: number; fraction: number } {
  const segment = segmentOf(clock, stampMs);
  const found = tickInSegment(segment, stampMs);
  const next = clock[clock.indexOf(segment) + 1];
  if (next !== undefined && found.tick >= next.tick) return { tick: next.tick, fraction: 0 };
  return found.tick < segment.tick ? { tick: segment.tick, fraction: 0 } : found;
}

/** The stamp at which a tick begins, by the last segment that starts at or before it. @throws RangeError for no segment */
export function stampOfTick(clock: readonly ClockSegment[], tick: number): number {
  const segment = [...clock].reverse().find((one) => one.tick <= tick) ?? clock[0];
  if (segment === undefined) throw new RangeError('a clock has at least one segment');
  return segment.stampMs + (tick - segment.tick) * TICK_MS;
}
