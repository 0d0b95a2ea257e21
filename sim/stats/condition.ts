/** What must be alike for two runs to be compared, read off their records. */
import type { RunRecord } from '../files/record.js';
import { visualMin } from './visual.js';

/** What must be alike for splits to be compared: an eye and a hand at one gauge. */
export interface Condition {
  /** Number of the set among the shipped ones, from 1. */
  readonly set: number;
  readonly airframe: string;
  readonly limitDeg: number;
  /** Size of the gauge on a screen of unknown size, px per degree of flap, to a hundredth; null where the eye's own measure is known. */
  readonly pxPerDeg: number | null;
  /** Size of the gauge for the eye, minutes of arc per degree of flap, to a tenth; null where screen or distance is unknown. */
  readonly minPerDeg: number | null;
  /** How far the eye goes between speed and gauge, whole deg of visual angle; null where unknown. */
  readonly apartDeg: number | null;
  /** Kinds of input, as the record names them. */
  readonly input: string;
  /** Helps in use, sorted; empty for none. */
  readonly assisted: readonly string[];
}

/** Under which condition a run of the shipped set number `set` was flown. A card laid on the screen anew is a hair off the last time, so true sizes are rounded coarser. */
export const conditionOf = (set: number, { airframe, scenario, gauge, device }: RunRecord): Condition => {
  const minPerDeg = minutesOf(gauge);
  return {
    set, airframe: airframe.name, limitDeg: scenario.recognition?.limitDeg ?? 0,
    pxPerDeg: minPerDeg === null ? Math.round(gauge.pxPerDeg * 100) / 100 : null,
    minPerDeg: minPerDeg === null ? null : Math.round(minPerDeg * 10) / 10,
    apartDeg: gauge.apartDeg === undefined ? null : Math.round(gauge.apartDeg),
    input: device.input, assisted: [...device.assisted ?? []].sort(),
  };
};

/** One degree of flap at the pointer's tip as the eye meets it, minutes of arc; null where screen or distance is unknown. */
const minutesOf = ({ pxPerDeg, mmPerPx, distanceMm }: RunRecord['gauge']): number | null =>
  (mmPerPx === null || distanceMm === undefined ? null : visualMin(pxPerDeg * mmPerPx, distanceMm));
/** Alike are those of one key. */
export const keyOf = (condition: Condition): string => JSON.stringify(Object.values(condition));

/** The gauge alone, as an eye meets it. */
export const gaugeKeyOf = ({ pxPerDeg, minPerDeg, apartDeg }: Condition): string => JSON.stringify([pxPerDeg, minPerDeg, apartDeg]);
