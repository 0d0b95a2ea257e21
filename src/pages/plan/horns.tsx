/** The gear horn in each order, on one time axis: when the setting is there, when the gear is locked, and when it sounds. */
import { useRef } from 'preact/hooks';
import { at, ticks, type Scale } from '../../charts/plot.js';
import type { OrderHorn, Plan } from '../../../sim/index.js';
import { useWidth } from './width.js';

const WHERE = { level: 'level, then down', path: 'on the way down' } as const;
const FIRST = { gearFirst: 'Gear first', settingFirst: 'Setting first' } as const;
const ROW = 66;

export function Horns({ plan: { horn, landing } }: { plan: Plan }) {
  const place = useRef<HTMLElement>(null);
  const W = useWidth(place, 320);
  // The descent behind the last act is the same for all: the axis ends where the last of them has done all.
  const doneS = (one: OrderHorn): number => Math.max(one.thereS ?? 0, one.gearDownS ?? 0, one.downS ?? 0, ...one.spans.map(({ toS }) => toS));
  const time: Scale = { from: 0, to: Math.max(1, ...horn.map(doneS)) * 1.03, start: 8, end: W - 8 };
  const x = (s: number): number => at(time, Math.min(s, time.to));
  return (
    <figure ref={place} class="figure plan-figure">
      <svg viewBox={`0 0 ${W} ${horn.length * ROW + 34}`} role="img" aria-label={horn.map(wordsOf).join(' ')}>
        <defs><pattern id="plan-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="hatch" x1="0" x2="0" y1="0" y2="6" /></pattern></defs>
        {horn.map((one, index) => {
          const top = index * ROW;
          return (
            <g key={`${one.order} ${one.place}`}>
              <text class="axis-title" x="8" y={top + 18}>{FIRST[one.order]}, {WHERE[one.place]}</text>
              <text x={W - 8} y={top + 18} text-anchor="end" class="over">{soundWords(one)}</text>
              <line class="plan-axis" x1={x(0)} x2={x(doneS(one))} y1={top + 44} y2={top + 44} />
              {one.gearFromS !== null && <rect class="plan-bar open" x={x(one.gearFromS)} y={top + 38} width={Math.max(2, x(one.gearDownS ?? one.gearFromS) - x(one.gearFromS))} height="12" />}
              {one.spans.map(({ fromS, toS, silenceable }) => <rect key={fromS} class={silenceable ? 'plan-horn soft' : 'plan-horn'} x={x(fromS)} y={top + 26} width={Math.max(2, x(toS) - x(fromS))} height="9" />)}
              {one.thereS !== null && <path class="moment-sign" d={`M${x(one.thereS)} ${top + 37}l7 7l-7 7l-7 -7Z`} />}
              {one.downS !== null && <path class="plan-down" d={`M${x(one.downS)} ${top + 36}v16`} />}
            </g>
          );
        })}
        {ticks(time, W / 110).map((s) => <text key={s} x={x(s)} y={horn.length * ROW + 22} text-anchor={s === 0 ? 'start' : 'middle'}>{s} s</text>)}
      </svg>
      <figcaption>Hatched above the line: the horn sounds and may not be silenced; open: it may. Box: the gear moves. Diamond: flaps at {landing.name}. Stroke: start down.</figcaption>
    </figure>
  );
}

function soundWords({ worst, soundsS, unsilenceableS, whole }: OrderHorn): string {
  const short = whole ? '' : '; not done before the runway';
  if (worst === 'silent') return `silent${short}`;
  const all = unsilenceableS > soundsS - 0.5;
  return `${soundsS.toFixed(0)} s, ${unsilenceableS === 0 ? 'may be silenced' : all ? 'not to be silenced' : `${unsilenceableS.toFixed(0)} s of it not to be silenced`}${short}`;
}

const wordsOf = (one: OrderHorn): string => `${FIRST[one.order]}, ${WHERE[one.place]}: ${soundWords(one)}${one.spans.map(({ fromS, toS }) => `, from ${fromS.toFixed(0)} to ${toS.toFixed(0)} seconds`).join('')}.`;
