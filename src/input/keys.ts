/** The keys of the drill, by their place on the board and not by what is printed on them, and what each one means. */

export type Intent = 'guard' | 'arm' | 'extend' | 'retract' | 'off' | 'leverAft' | 'leverForward' | 'call' | 'pause';

export interface KeyLine {
  /** As shown on the card. */
  readonly keys: readonly string[];
  readonly does: string;
  readonly held: boolean;
}

/** The card of keys that the brief shows. */
export const KEY_CARD: readonly KeyLine[] = [
  { keys: ['G'], does: 'guard open, closed', held: false },
  { keys: ['A'], does: 'arm, disarm', held: false },
  { keys: ['E'], does: 'extend', held: true },
  { keys: ['R'], does: 'retract', held: false },
  { keys: ['O'], does: 'switch to off', held: false },
  { keys: ['F'], does: 'flap lever aft: more flap', held: false },
  { keys: ['Shift', 'F'], does: 'flap lever forward', held: false },
  { keys: ['S'], does: 'call split', held: false },
  { keys: ['Esc'], does: 'pause', held: false },
];

/** Letters can be switched off (WCAG 2.2, 2.1.4); arrows and Esc stay. */
export function intentOf(key: { code: string; shiftKey: boolean }, letters: boolean): Intent | null {
  switch (key.code) {
    case 'ArrowDown': return 'leverAft';
    case 'ArrowUp': return 'leverForward';
    case 'Escape': return 'pause';
    default: return letters ? letterIntent(key) : null;
  }
}

function letterIntent({ code, shiftKey }: { code: string; shiftKey: boolean }): Intent | null {
  switch (code) {
    case 'KeyG': return 'guard';
    case 'KeyA': return 'arm';
    case 'KeyE': return 'extend';
    case 'KeyR': return 'retract';
    case 'KeyO': return 'off';
    case 'KeyF': return shiftKey ? 'leverForward' : 'leverAft';
    case 'KeyS': return 'call';
    default: return null;
  }
}
