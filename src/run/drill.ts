/** The face of a running drill toward the page: acts and losses in, pictures and a record out. */
import type { Act, Airframe, DeskAct, FlownDraft, FlownSetting, RunRecord, Scenario } from '../../sim/files/index.js';
import type { Panel, Picture } from '../view/picture.js';
import type { Session } from './session.js';

/** The kinds of input a hand can use. A device that does not say when it was moved is stamped by the frame that saw it: another kind. */
export type Hand = 'mouse' | 'touch' | 'pen' | 'key' | 'gamepad' | 'gamepad by frames' | 'script';

/** Ways of losing the hand that are not the hand's own doing. */
export type Loss = 'focusLost' | 'hidden';

/** What a run begins with; the record keeps all of it. */
export interface DrillOptions {
  readonly scenario: Scenario;
  readonly airframe: Airframe;
  /** Seed of the dice, unsigned 32 bit. */
  readonly seed: number;
  readonly device: RunRecord['device'];
  readonly gauge: RunRecord['gauge'];
  /** Version of the app, written in the record. */
  readonly app: string;
  /** What the trainee planned before the run. */
  readonly plan?: RunRecord['plan'];
}

/** A drill that runs. Stamps are milliseconds of the page's clock: event.timeStamp and the animation frame's argument. */
export interface RunningDrill {
  readonly panel: Panel;
  /** What does not change in the run, for whoever notes it. */
  readonly setting: FlownSetting;
  /** How far the run has come; null before its first frame and behind its end. */
  draft(): FlownDraft | null;
  /** Calls back once a frame with the picture to draw. Returns its undo. */
  onPicture(draw: (picture: Picture) => void): () => void;
  /** Calls back once, when the run is over and its record is written. */
  onEnd(done: (record: RunRecord) => void): void;
  /** Files what a hand did, stamped with the event's own time. */
  act(stampMs: number, act: Act, hand: Hand): void;
  /** Lifts the cover over the silence button, or shuts it; it falls shut by itself. */
  cover(stampMs: number): void;
  /** Focus or page lost: lets a sprung switch go, stops the clock, and voids a scored run. */
  lose(stampMs: number, loss: Loss): void;
  /** Pause stops the clock and blanks the instruments; voids a scored run. */
  pause(stampMs: number): void;
  /** Goes on from a pause or a freeze. */
  resume(stampMs: number): void;
  /** From now on the run is a live one. */
  join(): void;
  /** Files what a desk did, stamped when it arrived. @param by name of the desk */
  desk(stampMs: number, act: DeskAct, by: string): { readonly tick: number | null; readonly refused: string | null };
  /** The hand left the switch for the window of a desk: it springs back, and the run goes on. */
  letGo(stampMs: number): void;
  /** Calls back with every session, and at once with the one that stands. Returns its undo. */
  onSession(see: (session: Session) => void): () => void;
  /** The gauge is drawn in another size from now on; the record says so. */
  resized(): void;
  /** Ends the run now. */
  stop(stampMs: number): void;
}
