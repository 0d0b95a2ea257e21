/** What the pages need of the rest of the house. main.tsx hands it over: pages know no input and start no engine. */
import type { Airframe, RunRecord } from '../../sim/files/index.js';
import type { Debrief, DebriefRow, FlownSet, JudgedTrial, MarginPlace, Practice, PracticeRun, Speeds } from '../../sim/index.js';
import type { Opened } from '../records/file.js';
import type { PersonHistory } from '../records/history.js';
import type { Attempt, Book, Imported, Refused } from '../records/logbook/index.js';
import type { Layout, Tab } from '../view/place.js';
import type { Panel, Picture } from '../view/picture.js';
import type { Group } from './front/asks.js';
import type { BenchHouse } from './bench/house.js';
import type { DeskHouse } from './desk/house.js';
import type { PlanHouse } from './plan/house.js';
import type { ClassHouse } from './class/house.js';
import type { CourseHouse } from './course/house.js';
import type { Ongoing } from './practice/ongoing.js';
import type { Margin } from './person/marginplace.js';
import type { OwnHouse } from './own/house.js';
import type { SetCard } from './set/card.js';
import type { KeyChanges } from './settings.js';
import type { SetLock } from './size/lock.js';
import type { PadChanges, SwitchHouse } from './switches/house.js';
import type { TimingHouse } from './timing/house.js';

/** A drill as its brief may tell of it. */
export interface DrillCard {
  readonly number: number;
  readonly brief: string;
  readonly group: Group;
  /** Names of the settings: where the flaps stand, and what is to be reached, in order. */
  readonly from: string;
  readonly to: readonly string[];
  /** The same in deg, from the start on. */
  readonly way: readonly number[];
  /** The first release is scored; else a release is a pause. */
  readonly scored: boolean;
  readonly measuring: boolean;
  /** Callouts will come. */
  readonly workload: boolean;
  readonly facts: readonly (readonly [what: string, value: string])[];
  /** What is asked of the hand, and how the run ends. */
  readonly rules: readonly string[];
  /** Speeds of every setting at the mass of the start. */
  readonly speeds: Speeds;
  readonly startKt: number;
  readonly airframe: Airframe;
}

/** A run with its canvas and its hands in place. */
export interface Flying {
  readonly panel: Panel;
  onPicture(see: (now: Picture) => void): () => void;
  /** The window or the colours have changed. */
  place(at: Layout): void;
  /** The gauge has another size than at the start; the record says so. */
  resized(): void;
  /** Which of the controls that take turns are up; null for none. */
  turn(tab: Tab | null): void;
  pause(stampMs: number): void;
  resume(stampMs: number): void;
  stop(stampMs: number): void;
  /** Lets everything go: canvas, hands, streams. */
  close(): void;
}

/** What is flown: a drill, with its dice where they are chosen, a step of a course (`shipped`: the number of its drill, where it is a shipped one), a run that was handed on from a bench, a run of a set, or one of a practice. */
export type Flown = { readonly course: number; readonly step: number; readonly shipped: number | null } | { readonly own: string } | { readonly practice: PracticeRun } | { readonly drill: number; readonly seed: number | null } | { readonly set: number; readonly attempt: Attempt; readonly place: number };

export interface Cabin {
  /** Where the canvas goes, and what the hands touch. */
  readonly host: HTMLElement;
  /** Where everything stands for the gauge of the airframe that is flown, and what the record says of that. */
  readonly place: (gauge: Airframe['gauge']) => { readonly at: Layout; readonly sight: RunRecord['gauge'] };
  readonly of: Flown;
  readonly letters: () => boolean;
  readonly bindings: () => KeyChanges;
  /** What switches and levers of devices do. */
  readonly pads: () => PadChanges;
  /** Press to run, press to stop. */
  readonly latched: () => boolean;
  /** Helps that are in use and mark the record; none if left out. */
  readonly assisted: NonNullable<RunRecord['device']['assisted']>;
  /** The last timing check on this screen; null: none was made. */
  readonly timing: NonNullable<RunRecord['device']['timing']> | null;
  /** What the trainee planned before the run, for its record. */
  readonly plan?: RunRecord['plan'];
  /** The sound of the page off or on. */
  readonly mute: () => void;
  /** Loudness of the page, 0 to 1. */
  readonly loudness: () => number;
  /** The hand was lost, or asked for a pause. */
  readonly onPause: (why: 'pause' | 'focusLost' | 'hidden') => void;
  readonly onEnd: (record: RunRecord) => void;
  /** How many desks follow the run. */
  readonly onDesks?: (count: number) => void;
}

export interface KeyLine {
  readonly intent: string;
  readonly keys: readonly string[];
  readonly does: string;
  readonly held: boolean;
}

/** What putting a key to an intent comes to. */
export type Rebound =
  | { readonly what: 'put'; readonly changes: KeyChanges }
  /** Another intent has it; `exchanged` gives that one the old key, null where that cannot be. */
  | { readonly what: 'taken'; readonly by: string; readonly exchanged: KeyChanges | null }
  | { readonly what: 'refused'; readonly why: string };

/** The keys, for the page where they are changed. */
export interface Keys {
  groups(changes: KeyChanges): readonly { readonly name: string; readonly lines: readonly KeyLine[] }[];
  rebind(changes: KeyChanges, intent: string, stroke: KeyChanges[string]): Rebound;
  /** Back to the key it came with. */
  rebindToDefault(changes: KeyChanges, intent: string): Rebound;
}

/** A run played again, to be looked about in. */
export interface Replayed {
  /** Last tick of the run. */
  readonly endTick: number;
  readonly panel: Panel;
  /** What the instruments showed at a tick. @param truth the pointers stand at the true sides instead */
  pictureAt(tick: number, truth: boolean): Picture;
  rowAt(tick: number): DebriefRow;
}

/** A canvas with instruments: told where they stand, and what to draw. */
export interface Instruments {
  set(at: Layout, panel: Panel): void;
  draw(now: Picture): void;
  close(): void;
}

type SoundName = 'horn' | 'autopilotOff';

/** Called while long work goes on: how much is done, and of how much. */
type Progress = (done: number, all: number) => void;

export interface House {
  /** The keys as they stand. */
  keyCard(changes: KeyChanges): readonly KeyLine[];
  readonly keys: Keys;
  readonly switches: SwitchHouse;
  readonly timing: TimingHouse;
  /** In the very press that starts a run: a browser gives no sound to a page that nobody has touched. */
  unlock(): void;
  /** Plays a sound of a run for a moment. @param loudness 0 to 1, asked again as it plays */
  trySound(name: SoundName, loudness: () => number): void;
  /** Whether the page is isolated, so that its clock is fine-grained. */
  readonly isolated: boolean;
  drills(): Promise<DrillCard[]>;
  readonly own: OwnHouse;
  sets(): Promise<readonly SetCard[]>;
  /** Name of a set in the logbook; no page shows it. */
  setName(number: number): Promise<string>;
  /** What a flight of a set came to; null where none of its runs is in the logbook. @throws LogbookTrouble */
  flownSet(number: number, attempt: Attempt): Promise<FlownSet | null>;
  /** At which size of its gauge a flight of a set is flown: that of its first run; null while none of its runs is kept. @throws LogbookTrouble */
  lockOf(number: number, attempt: Attempt): Promise<SetLock | null>;
  /** The next run of a practice, and the practice it belongs to: a new one where there is none. */
  nextPractice(now: Ongoing | null): Promise<{ readonly run: PracticeRun; readonly at: Ongoing }>;
  /** The practice behind a run. */
  practised(practice: Practice, run: PracticeRun, outcome: RunRecord['outcome']): Promise<Practice>;
  /** Flights of sets of one person, judged. @throws LogbookTrouble */
  history(person: string): Promise<PersonHistory>;
  /** The margin at a place, its speed brought inside what may be flown there. */
  margin(trials: readonly JudgedTrial[], seenDeg: number, flownOn: string, wish: MarginPlace): Promise<Margin>;
  /** The shipped airframes. */
  airframes(): Promise<readonly Airframe[]>;
  /** Fetches what the drill needs, so that Start need not wait. */
  warm(): void;
  fly(cabin: Cabin): Promise<Flying>;
  /** The record with what the trainee said before any feedback. */
  assess(record: RunRecord, said: RunRecord['assessment']): Promise<RunRecord>;
  /** null: of another model version, and not replayable here. */
  debrief(record: RunRecord): Promise<Debrief | null>;
  /** A run of this model version, to be looked about in. */
  replay(record: RunRecord): Promise<Replayed>;
  /** The drill's instruments in a place of a page. */
  instruments(host: HTMLElement): Promise<Instruments>;
  /** The logbook of this machine. @throws LogbookTrouble where the browser keeps nothing */
  logbook(): Promise<Book>;
  /** Hands the whole logbook to the browser as a download. @returns false when it was stopped @throws LogbookTrouble */
  exportLogbook(progress: Progress, stop: () => boolean): Promise<boolean>;
  /** Takes in the runs of a logbook's file. @throws LogbookTrouble */
  importLogbook(file: File, progress: Progress, stop: () => boolean): Promise<({ readonly ok: true } & Imported) | Refused>;
  save(record: RunRecord): Promise<void>;
  /** Hands any other file to the browser as a download. */
  saveFile(file: Blob, name: string): Promise<void>;
  open(file: File): Promise<Opened>;
  readonly course: CourseHouse;
  readonly class: ClassHouse;
  /** Where scenarios are written. */
  readonly bench: BenchHouse;
  readonly desk: DeskHouse;
  /** The approach plan. */
  readonly plan: PlanHouse;
}
