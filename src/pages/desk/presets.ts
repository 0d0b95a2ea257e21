/** The faults that a desk puts in by a press or two, each with the figures that make it what it is. */
import type { DeskAct, Trigger } from '../../../sim/files/index.js';

type Injected = Extract<DeskAct, { do: 'injectFault' }>['fault'];
export type Side = 'left' | 'right' | 'drawn';

export interface Preset {
  readonly id: string;
  readonly words: string;
  readonly sided: boolean;
  readonly make: (side: Side) => Record<string, unknown>;
}

export const PRESETS: readonly Preset[] = [
  { id: 'stop', words: 'side stops', sided: true, make: (side) => ({ kind: 'disconnect', side }) },
  { id: 'lag', words: 'side lags', sided: true, make: (side) => ({ kind: 'lag', side, ratio: 0.6 }) },
  { id: 'back', words: 'side is driven back', sided: true, make: (side) => ({ kind: 'lag', side, ratio: -0.5 }) },
  { id: 'jam', words: 'side jams', sided: true, make: (side) => ({ kind: 'jam', side }) },
  { id: 'slip', words: 'side slips', sided: true, make: (side) => ({ kind: 'slip', side, ratio: 0.2, periodS: 2, onS: 0.8 }) },
  { id: 'blow', words: 'side is blown back', sided: true, make: (side) => ({ kind: 'blowback', side }) },
  { id: 'stick', words: 'pointer sticks', sided: true, make: (side) => ({ kind: 'pointer', side, mode: 'stuck' }) },
  { id: 'dead', words: 'drive dead', sided: false, make: () => ({ kind: 'dead' }) },
  { id: 'quit', words: 'drive quits', sided: false, make: () => ({ kind: 'quits' }) },
  { id: 'slow', words: 'drive slow', sided: false, make: () => ({ kind: 'slow', factor: 0.4 }) },
  { id: 'run', words: 'drive runs on', sided: false, make: () => ({ kind: 'runsOn' }) },
  { id: 'edge', words: 'leading edge short', sided: false, make: () => ({ kind: 'leadingEdge', stopsAt: 0.5 }) },
];

/** When it acts. `heldS` is counted from now; a file counts all holding, so what was held is added. */
export type When = { readonly of: 'now' } | { readonly of: 'flapDeg' | 'heldS'; readonly value: number };

const onGrid = (s: number): number => Math.round(s * 100) / 100;

function triggerOf(when: When, heldS: number): Trigger | undefined {
  switch (when.of) {
    case 'now': return undefined;
    case 'flapDeg': return { flapDeg: when.value };
    case 'heldS': return { heldS: onGrid(heldS + when.value) };
  }
}

/** The act of putting a preset in, under a name that nothing else has. */
export function injection(preset: Preset, side: Side, when: When, heldS: number, names: readonly string[]): DeskAct {
  let number = 1;
  while (names.includes(`desk-${preset.id}-${number}`)) number += 1;
  const trigger = triggerOf(when, heldS);
  const fault = { name: `desk-${preset.id}-${number}`, ...preset.make(side), ...(trigger === undefined ? {} : { when: trigger }) };
  return { do: 'injectFault', fault: fault as Injected };
}
