/** What the last timing check came to, and on which screen; records carry it until it is forgotten. */
import { effect, signal } from '@preact/signals';
import type { RunRecord } from '../../../sim/files/index.js';
import { read, write } from '../kept.js';
import { screenName } from '../size/screen.js';

export type Timing = NonNullable<RunRecord['device']['timing']>;
export type KeptTiming = Timing & { readonly screen: string };

const number = (value: unknown, most: number): value is number => typeof value === 'number' && value >= 0 && value <= most;

/** A store holds whatever an older page or a hand has put there: what is no check is none. */
export function timingOf(text: string | null): KeptTiming | null {
  try {
    const found = JSON.parse(text ?? 'null') as Partial<Record<keyof KeptTiming, unknown>> | null;
    if (typeof found !== 'object' || found === null) return null;
    const { medianS, sdS, releases, input, screen } = found;
    if (!number(medianS, 10) || !number(sdS, 10) || !number(releases, 100) || !Number.isInteger(releases) || releases < 2) return null;
    return typeof input === 'string' && input.length <= 80 && typeof screen === 'string' ? { medianS, sdS, releases, input, screen } : null;
  } catch {
    return null;
  }
}

export const timing = signal(timingOf(read('timing')));
effect(() => write('timing', JSON.stringify(timing.value)));

/** What a record says of it: nothing where the check was made on another screen. */
export function timingNow(): Timing | null {
  const kept = timing.peek();
  if (kept === null || kept.screen !== screenName.peek()) return null;
  const { screen: _screen, ...told } = kept;
  return told;
}
