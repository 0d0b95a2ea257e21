/** What the page of switches and levers needs of the house: pages know no input. */

/** What devices were given to do, by the name of each. What fits is known to the hand alone. */
export type PadChanges = Readonly<Record<string, readonly unknown[]>>;

/** A device as the browser shows it now. */
export interface PadSeen {
  readonly index: number;
  readonly id: string;
  readonly buttons: readonly boolean[];
  /** -1 to 1. */
  readonly axes: readonly number[];
  /** Its changes carry a time of their own; null: none has been seen yet. */
  readonly ownTime: boolean | null;
}

/** Something that a device can do, and what of it does it. */
export interface PadLine {
  readonly does: string;
  readonly words: string;
  readonly held: boolean;
  readonly is: 'switch' | 'lever';
  /** Number of its button or axis; null: it has none. */
  readonly source: number | null;
  /** A switch with two places can stand for it; null: it cannot. */
  readonly stays: boolean | null;
  /** Part of the travel that counts as an end (or as the middle); null for a switch. */
  readonly dead: number | null;
  /** Where it begins: idle, flap up, full left. */
  readonly begins: string;
}

export type PadPut =
  | { readonly what: 'put'; readonly changes: PadChanges }
  /** That switch or lever does something else; `instead` takes it from there. */
  | { readonly what: 'taken'; readonly by: string; readonly instead: PadChanges }
  | { readonly what: 'refused'; readonly why: string };

export interface SwitchHouse {
  /** Whether this browser, at this address, gives devices at all. */
  readonly has: boolean;
  /** Calls back once a frame for as long as it is not undone. */
  watch(see: (pads: readonly PadSeen[]) => void): () => void;
  groups(changes: PadChanges, id: string): readonly { readonly name: string; readonly lines: readonly PadLine[] }[];
  putSwitch(changes: PadChanges, id: string, does: string, button: number): PadPut;
  /** @param from reading at the end where it begins @param to reading at the other end */
  putLever(changes: PadChanges, id: string, does: string, axis: number, from: number, to: number): PadPut;
  setStays(changes: PadChanges, id: string, does: string, stays: boolean): PadChanges;
  setDead(changes: PadChanges, id: string, does: string, dead: number): PadChanges;
  turnRound(changes: PadChanges, id: string, does: string): PadChanges;
  clear(changes: PadChanges, id: string, does: string): PadChanges;
  /** Where a lever stands on its way, 0 to 1; null where it has none. */
  partOf(changes: PadChanges, id: string, does: string, axes: readonly number[]): number | null;
}
