/** What the bench needs of the rest of the house, as `house.bench`. */
import type { Budget, BudgetRequest } from '../../../sim/index.js';
import type { BenchKind, Known } from './kinds.js';

/** A shipped file to begin from. */
export interface ShippedText {
  readonly kind: BenchKind;
  /** Name of the file, without folder and ending. */
  readonly name: string;
  /** The instructor's title. */
  readonly title: string;
  readonly text: string;
}

/** What is fetched once, so that checking a text is then done at once. */
export interface BenchKit extends Known {
  /** Scenarios first, each kind in its shipped order. */
  readonly shipped: readonly ShippedText[];
}

export interface BenchHouse {
  kit(): Promise<BenchKit>;
  /** A release budget, worked out apart from the page. */
  budget(request: BudgetRequest): Promise<Budget>;
}
