/** A deck to press on: where its controls stand, with what was pressed and does not show yet. */
import type { Act } from '../../sim/files/index.js';
import { afterAct, type Now } from './acts.js';
import { shown, type Deck } from './deck.js';

/** How long an act may take to show in a picture, ms: a frame, and a late one. */
const SHOWN_MS = 250;

export interface Foreseen extends Deck {
  /** Where the controls stand for a hand at this stamp; null while the clock stands. */
  standing(stampMs: number): Now | null;
}

export function foreseen(deck: Deck): Foreseen {
  let pressed: { act: Act; stampMs: number }[] = [];
  return {
    ...deck,
    standing(stampMs) {
      const now = deck.now();
      if (now === null || !shown(deck)) return null;
      pressed = pressed.filter((one) => one.stampMs > stampMs - SHOWN_MS);
      // Acts say where a control goes and not how far: one that shows already changes nothing.
      return pressed.reduce<Now>((standing, { act }) => afterAct(standing, act), now);
    },
    act(stampMs, act, hand) {
      pressed.push({ act, stampMs });
      deck.act(stampMs, act, hand);
    },
  };
}
