/** Every reading at one moment. */
import type { Signal } from '@preact/signals';
import type { DebriefRow } from '../../../sim/index.js';
import { feet } from '../../view/words.js';
import { rowAt, shownApart, trulyApart, type Facts } from '../debrief/facts.js';
import type { Replayed } from '../house.js';
import { tickAt } from './player.js';
import { degrees, knots, percent, seconds } from '../words.js';

interface Props {
  readonly facts: Facts;
  /** Knows every tick; until it is at hand the rows of the charts are read. */
  readonly replayed: Signal<Replayed | null>;
  readonly cursor: Signal<number>;
  readonly truth: Signal<boolean>;
}

export function Readings({ facts, replayed, cursor, truth: { value: truth } }: Props) {
  const row = replayed.value?.rowAt(tickAt(cursor.value)) ?? rowAt(facts, cursor.value);
  if (row === undefined) return null;
  return (
    <section class="readings-at" aria-labelledby="readings-title">
      <h2 id="readings-title" class="ruled">At {seconds(row.atS)}</h2>
      <dl class="facts">{readingsOf(row, truth).map(([what, value]) => <div key={what}><dt>{what}</dt><dd>{value}</dd></div>)}</dl>
    </section>
  );
}

/** What stands at a moment, in pairs: name and value. */
export function readingsOf(row: DebriefRow, truth: boolean): (readonly [what: string, value: string])[] {
  return [
    ...(truth ? [['Left side', degrees(row.leftDeg)], ['Right side', degrees(row.rightDeg)], ['Truly apart', degrees(trulyApart(row))]] as const
      : [['Left pointer', degrees(row.leftPointerDeg)], ['Right pointer', degrees(row.rightPointerDeg)], ['Shown apart', degrees(shownApart(row))]] as const),
    ['Roll authority', percent(row.rollAuthorityPct)],
    ['Speed', knots(row.speedKt)], ['Limit', row.limitKt === null ? 'none' : knots(row.limitKt)],
    ['Selected', knots(row.selectedKt)], ['Manoeuvre', knots(row.manoeuvreKt)],
    ['Stall warning', knots(row.lowestKt)], ['Drive', row.rateDegPerS === 0 ? 'at rest' : `${row.rateDegPerS.toFixed(2)}°/s`],
    ['Lever angle', `${Math.round(row.tlaDeg)}°`], ['Horn below', row.hornTlaDeg === null ? 'no angle' : `${Math.round(row.hornTlaDeg)}°`],
    ['Horn', row.horn ? 'sounds' : 'silent'], ['Gear', row.gear],
    ['Leading edge', row.leadingEdge], ['Bank', `${Math.round(Math.abs(row.bankDeg))}°`],
    ['Height', `${feet(row.altitudeFt)} ft`], ['Motor heat', percent(row.motorHeat * 100)],
  ];
}

/** The same for the ear, short. */
export const spokenRow = (row: DebriefRow): string =>
  `${row.atS.toFixed(1)} seconds: left ${row.leftPointerDeg.toFixed(1)}, right ${row.rightPointerDeg.toFixed(1)} degrees, ${Math.round(row.speedKt)} knots, lever ${Math.round(row.tlaDeg)} degrees, horn ${row.horn ? 'sounds' : 'silent'}, roll authority ${Math.round(row.rollAuthorityPct)} percent`;
