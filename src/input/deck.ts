/** What the hands work on, and how an event of the page is told apart. */
import type { Act } from '../../sim/files/index.js';
import type { Hand, Loss } from '../run/drill.js';
import type { Panel, Picture } from '../view/picture.js';
import type { Way } from './hold.js';
import type { Bindings } from './keys.js';
import type { PadBindings } from './padBindings.js';

/** What the hands work on. */
export interface Deck {
  readonly panel: Panel;
  now(): Picture | null;
  /** Which key means what. */
  bindings(): Bindings;
  /** What the switches and levers of devices do. */
  pads(): PadBindings;
  /** Whether keys that print a character act, or only arrows and Esc. */
  letters(): boolean;
  /** Press to run, press to stop, for hands that cannot hold. */
  latched(): boolean;
  act(stampMs: number, act: Act, hand: Hand): void;
  lose(stampMs: number, loss: Loss): void;
  pause(stampMs: number): void;
  /** A hand on the cover over the silence button. */
  cover(stampMs: number): void;
  /** The sound of the page off or on. */
  mute(): void;
}

/** Name of the control that an event met; null beside all of them. */
export const controlOf = (event: Event): string | null =>
  event.target instanceof Element ? (event.target.closest<HTMLElement>('[data-control]')?.dataset['control'] ?? null) : null;

/** While the clock stands no hand goes on the switch. */
export const shown = (deck: Deck): boolean => {
  const now = deck.now();
  return now !== null && !now.blank && !now.frozen;
};

export const isWay = (control: string | null): control is Way => control === 'extend' || control === 'retract';

/** Not with a modifier of the browser, not while something is typed, not in a dialog of its own. */
export function isOurs(key: KeyboardEvent): boolean {
  if (key.ctrlKey || key.altKey || key.metaKey) return false;
  return !(key.target instanceof Element && key.target.closest('input, select, textarea, dialog, [data-own-keys]'));
}

/** Kind of input of a pointer; one that does not say it counts as a mouse. */
export const handOf = (pointer: { pointerType?: string }): Hand =>
  pointer.pointerType === 'touch' || pointer.pointerType === 'pen' ? pointer.pointerType : 'mouse';
