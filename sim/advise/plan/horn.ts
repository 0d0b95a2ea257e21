/** When the gear horn sounds in an order of gear and landing setting, read off the flown approach. */
import type { Approach, Order, Place } from './approach.js';

/** A stretch in which the gear horn sounds without a break and by one rule, s from the beginning of the plan. */
export interface HornSpan {
  readonly fromS: number;
  readonly toS: number;
  /** It may be silenced. */
  readonly silenceable: boolean;
  /** Lowest lever angle meanwhile, and flap where it begins, deg. */
  readonly tlaDeg: number;
  readonly flapDeg: number;
  /** On the way down; else in level flight. */
  readonly goingDown: boolean;
}

/** What the horn does at the worst. */
export const HORN_WORST = ['silent', 'silenceable', 'sounds'] as const;
/** silenceable: it sounds, and each time it may be silenced. sounds: at least once it may not. */
export type HornWorst = (typeof HORN_WORST)[number];

/** The horn in one order at one place, with the moments that decide it: s from the beginning of the plan, null for what never came. */
export interface OrderHorn {
  readonly order: Order;
  readonly place: Place;
  /** All was done before the runway. */
  readonly whole: boolean;
  readonly spans: readonly HornSpan[];
  readonly worst: HornWorst;
  /** Seconds for which it sounds, and for which nothing may silence it. */
  readonly soundsS: number;
  readonly unsilenceableS: number;
  readonly thereS: number | null;
  readonly gearFromS: number | null;
  readonly gearDownS: number | null;
  readonly downS: number | null;
  readonly endS: number;
}

/** Spans in which the horn sounded, one for each change of whether it may be silenced. */
function hornSpansOf({ course, downS }: Approach): HornSpan[] {
  const spans: HornSpan[] = [];
  for (const [index, { horn, atS, tlaDeg, flapDeg }] of course.entries()) {
    if (horn === 0) continue;
    const silenceable = horn === 1;
    const before = course[index - 1]?.horn;
    const last = spans[spans.length - 1];
    // The horn stops at the point behind; a point is kept at each change.
    const toS = course[index + 1]?.atS ?? atS;
    if (before === horn && last !== undefined) spans[spans.length - 1] = { ...last, toS, tlaDeg: Math.min(last.tlaDeg, tlaDeg) };
    else spans.push({ fromS: atS, toS, silenceable, tlaDeg, flapDeg, goingDown: downS !== null && atS >= downS });
  }
  return spans;
}

export function hornOf(approach: Approach): OrderHorn {
  const spans = hornSpansOf(approach);
  const lasting = (of: readonly HornSpan[]): number => of.reduce((sum, { fromS, toS }) => sum + toS - fromS, 0);
  const { order, place, whole, thereS, gearFromS, gearDownS, downS, course } = approach;
  return {
    order, place, whole, spans, thereS, gearFromS, gearDownS, downS,
    worst: spans.length === 0 ? 'silent' : spans.some(({ silenceable }) => !silenceable) ? 'sounds' : 'silenceable',
    soundsS: lasting(spans), unsilenceableS: lasting(spans.filter(({ silenceable }) => !silenceable)),
    endS: course[course.length - 1]?.atS ?? 0,
  };
}
