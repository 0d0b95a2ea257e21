/** What pages need of a person's own files and of runs that were handed on, as `house.own`. */
import type { OwnFlight, OwnShelf } from '../../records/own/index.js';
import type { Unlinked } from '../../records/link.js';
import type { Problem } from '../../text/index.js';
import type { DrillCard } from '../house.js';

/** A run that was handed on, as its brief may tell of it. */
export interface OwnCard {
  readonly card: DrillCard;
  readonly from: OwnFlight['from'];
  /** null: new dice for each run. */
  readonly seed: number | null;
}

export type HandedOn =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly why: string; readonly problems: readonly Problem[]; readonly more: number };

export interface OwnHouse {
  /** The shelf of own files. @throws LogbookTrouble where the browser keeps nothing */
  shelf(): Promise<OwnShelf>;
  /** An opaque id. */
  newId(): string;
  /** Hands the text of a sound scenario on to be flown, without what its instructor wrote about it. @returns its opaque id */
  handOn(text: string, seed: number | null, from: OwnFlight['from']): Promise<string>;
  /** The same from the code of a link, read as any hostile file. */
  handOnLink(code: string): Promise<HandedOn>;
  /** null where there is no such run, or none any more. */
  flight(id: string): Promise<OwnCard | null>;
  /** A text as the code of a link. */
  linkCode(text: string): Promise<string>;
  /** The text of a code, or what is wrong with it. */
  textOfLink(code: string): Promise<Unlinked>;
  /** The text of a sound scenario as a trainee's link holds it: sealed, and without comments. */
  sealedText(text: string): Promise<string>;
}
