/** What the timing check needs of the house: one hold, felt as a run feels it. */
import type { KeyChanges } from '../settings.js';
import type { PadChanges } from '../switches/house.js';

export interface TimingHouse {
  /** @returns stops watching */
  watch(root: HTMLElement, choices: { readonly bindings: KeyChanges; readonly pads: PadChanges }, told: { press(hand: string): void; lift(stampMs: number): void; lost(): void }): () => void;
}
