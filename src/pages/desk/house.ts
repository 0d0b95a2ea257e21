/** What the page of a desk needs of the rest of the house: the runs of this machine, one of them mirrored, and a way to act in it. */
import type { DeskAct, Grades, RunRecord } from '../../../sim/files/index.js';
import type { DueRow } from '../../../sim/index.js';
import type { Sent } from '../../link/known.js';
import type { Room } from '../../link/rooms.js';
import type { Panel, Picture } from '../../view/picture.js';

/** Something that happened in the run, by a hand, a desk or the agenda. */
export interface Happened {
  readonly key: string;
  readonly tick: number;
  readonly by: 'hand' | 'desk' | 'run';
  /** Name of the desk; null for none, and for one's own. */
  readonly other: string | null;
  readonly words: string;
}

/** The run as it is now. */
export interface DeskLive {
  readonly title: string;
  readonly panel: Panel;
  readonly picture: Picture;
  readonly tick: number;
  readonly stands: 'runs' | 'frozen' | 'paused';
  readonly leftDeg: number;
  readonly rightDeg: number;
  readonly heldS: number;
  readonly rollAuthorityPct: number;
  readonly due: readonly DueRow[];
  readonly happened: readonly Happened[];
  /** Moments that were saved and still stand. */
  readonly moments: readonly { readonly label: string; readonly tick: number }[];
  readonly prompted: boolean;
  /** Names that a fault may not take. */
  readonly names: readonly string[];
}

type DeskStage = 'seeking' | 'joining' | 'live' | 'over' | 'gone' | 'otherModel';

export interface DeskNow {
  readonly rooms: readonly Room[];
  /** The run that is followed; null for none. */
  readonly room: string | null;
  readonly stage: DeskStage;
  readonly live: DeskLive | null;
  readonly sent: readonly Sent[];
  readonly record: RunRecord | null;
}

export interface DeskLink {
  enter(room: string): void;
  leave(): void;
  act(act: DeskAct): void;
  grade(grades: Grades): void;
  close(): void;
}

export interface DeskHouse {
  /** Opens a desk. @param see told of every change */
  open(see: (now: DeskNow) => void): Promise<DeskLink>;
}
