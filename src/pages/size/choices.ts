/** What was chosen of the gauge's size, and which screens have been measured. Kept on this machine. */
import { effect, signal } from '@preact/signals';
import { ASSUMED_DISTANCE_MM, DISTANCE_MM, PX_PER_MM } from '../../view/size.js';
import { read, write } from '../kept.js';

export interface SizeChoices {
  /** Measured px a millimetre, by screen and zoom (see screen.ts). */
  readonly screens: Readonly<Record<string, number>>;
  /** From the eye to the screen, mm; null: not stated, so assumed. */
  readonly distanceMm: number | null;
  /** Pointers as long as the airframe's own; else as long as the window has room for. */
  readonly isTrue: boolean;
  /** Wished between speed and gauge, deg of visual angle; null: as the window has it. */
  readonly apartDeg: number | null;
}

export const AS_IT_COMES: SizeChoices = { screens: {}, distanceMm: null, isTrue: false, apartDeg: null };

/** Between speed and gauge a wish may be, deg. */
export const APART_DEG = { least: 5, most: 60 } as const;

const inside = (value: unknown, { least, most }: { least: number; most: number }): value is number => typeof value === 'number' && value >= least && value <= most;

/** A store holds whatever an older page or a hand has put there: what does not fit is left out. */
export function sizeChoicesOf(text: string | null): SizeChoices {
  try {
    const found = JSON.parse(text ?? 'null') as Partial<Record<keyof SizeChoices, unknown>> | null;
    if (typeof found !== 'object' || found === null) return AS_IT_COMES;
    const screens = typeof found.screens === 'object' && found.screens !== null ? Object.entries(found.screens) : [];
    return {
      screens: Object.fromEntries(screens.filter((one): one is [string, number] => inside(one[1], PX_PER_MM))),
      distanceMm: inside(found.distanceMm, DISTANCE_MM) ? found.distanceMm : null,
      isTrue: found.isTrue === true,
      apartDeg: inside(found.apartDeg, APART_DEG) ? found.apartDeg : null,
    };
  } catch {
    return AS_IT_COMES;
  }
}

export const size = signal(sizeChoicesOf(read('size')));
effect(() => write('size', JSON.stringify(size.value)));

/** The distance that sums are done with, mm. */
export const distanceMm = ({ distanceMm: stated }: SizeChoices): number => stated ?? ASSUMED_DISTANCE_MM;
