/** How fast the drive runs along its travel: a line a speed, the other airframe's in dashes on the same axes. */
import type { Airframe } from '../../../../sim/files/index.js';
import type { DriveAtSpeed } from '../../../../sim/index.js';
import { at, line, ticks, type Point, type Scale } from '../../../charts/plot.js';
import { spread } from '../../../view/strip.js';

const W = 640;
const H = 300;
const LEFT = 52;
const RIGHT = W - 78;
const TOP = 34;
const FOOT = H - 44;
const NAMES_APART = 15;

export interface Rated {
  readonly airframe: Airframe;
  readonly drive: readonly DriveAtSpeed[];
}

/** The slowest, the middle and the fastest of the table: three lines can be told apart. */
export const threeOf = <T,>(all: readonly T[]): T[] => [...new Set([all[0], all[Math.floor((all.length - 1) / 2)], all.at(-1)])].filter((one) => one !== undefined);

export function RateFigure({ main, other }: { main: Rated; other: Rated | null }) {
  const both = other === null ? [main] : [main, other];
  const x: Scale = { from: 0, to: Math.max(...both.map(({ airframe }) => airframe.drive.stopDeg)), start: LEFT, end: RIGHT };
  // Two drives may differ fivefold: side by side each is drawn against its own rate without load.
  const whole = (of: Rated): number => (other === null ? 1 : of.airframe.drive.noLoadRateDegPerS);
  const fastest = main.airframe.drive.noLoadRateDegPerS / whole(main);
  const top = ticks({ from: 0, to: fastest * 1.3 }, 4).find((tick) => tick >= fastest) ?? fastest;
  const y: Scale = { from: 0, to: top, start: FOOT, end: TOP };
  const lines = threeOf(main.drive).map((row) => ({ row, end: (row.ratesDegPerS.findLast((rate) => rate > 0) ?? 0) / whole(main) }));
  const places = spread(lines.map(({ end }) => at(y, end)), NAMES_APART, TOP, FOOT);
  return (
    <figure class="rate-figure">
      <svg viewBox={`0 0 ${W} ${H}`} role="img" aria-label={`Rate of the drive along its travel: ${threeOf(main.drive).map(({ speedKt, ratesDegPerS }) => `at ${speedKt} kt ${ratesDegPerS[0]?.toFixed(3)} falling to ${ratesDegPerS.at(-1)?.toFixed(3)} degrees a second`).join('; ')}.`}>
        <text class="axis-title" x={0} y={TOP - 18}>{other === null ? 'Rate, deg/s' : 'Rate, part of the rate without load'}</text>
        {ticks(y, 4).map((value) => (
          <g key={value}><line class="grid" x1={LEFT} x2={RIGHT} y1={at(y, value)} y2={at(y, value)} /><text class="axis" x={LEFT - 8} y={at(y, value) + 4} text-anchor="end">{value}</text></g>
        ))}
        {main.airframe.settings.map(({ deg, name }) => (
          <g key={deg}><line class="grid" x1={at(x, deg)} x2={at(x, deg)} y1={FOOT} y2={FOOT + 6} /><text class="axis" x={at(x, deg)} y={FOOT + 22} text-anchor="middle">{name}</text></g>
        ))}
        <text class="axis" x={RIGHT} y={H - 4} text-anchor="end">flap travel, settings of {main.airframe.title}</text>
        {other !== null && threeOf(other.drive).map((row) => <path key={`other ${row.speedKt}`} class="rate-line other" d={course(other, row, whole(other), x, y)} />)}
        {lines.map(({ row }) => <path key={row.speedKt} class="rate-line" d={course(main, row, whole(main), x, y)} />)}
        {lines.map(({ row }, index) => <text key={row.speedKt} class="end" x={RIGHT + 8} y={(places[index] ?? 0) + 4}>{row.speedKt} kt</text>)}
      </svg>
      <figcaption class="small">Both sides whole, extending, calibrated airspeed{other === null ? '' : `; dashed: ${other.airframe.title} at ${threeOf(other.drive).map(({ speedKt }) => speedKt).join(', ')} kt`}. A line that ends early has tripped the limiter.</figcaption>
    </figure>
  );
}

/** Up to where the limiter trips. The rate is a straight line in the travel. */
function course({ airframe }: Rated, { ratesDegPerS }: DriveAtSpeed, whole: number, x: Scale, y: Scale): string {
  const points = airframe.settings.flatMap(({ deg }, index): Point[] => {
    const rate = (ratesDegPerS[index] ?? 0) / whole;
    return rate > 0 ? [[at(x, deg), at(y, rate)]] : [];
  });
  return line(points);
}



