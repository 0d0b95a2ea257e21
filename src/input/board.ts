/** The board before the trainee: what is printed on its keys, where the browser tells it. */
import type { Printed } from './card.js';

/** Not in every browser (WICG, Keyboard Map); hence not in the page's own types. */
interface Boards {
  readonly keyboard?: { getLayoutMap(): Promise<Printed> };
}

/** Null where the browser does not tell. */
export async function readBoard(from: Boards = navigator as Boards): Promise<Printed | null> {
  try {
    return (await from.keyboard?.getLayoutMap()) ?? null;
  } catch {
    return null;
  }
}
