/** A course with everything at hand: what each step flies, and which steps it waits for. */
import type { Airframe } from '../files/airframe.js';
import type { CourseFile, CourseStep, GateFile } from '../files/course.js';
import type { Fault } from '../files/fault.js';
import type { Scenario } from '../files/scenario.js';
import type { ReadySet } from '../set/ready.js';

/** `shipped` is its name among the shipped files; null for one written out in the course. */
export type StepFlies =
  | { readonly kind: 'drill'; readonly scenario: Scenario; readonly airframe: Airframe; readonly shipped: string | null }
  | { readonly kind: 'set'; readonly of: ReadySet; readonly shipped: string | null };

/** One step as its file has it, with what it flies at hand. `gate` is null where its figures are not asked for. */
export interface ReadyStep {
  readonly name: string;
  readonly teaches: string;
  /** Places of the steps that must be done before. */
  readonly needs: readonly number[];
  readonly done: CourseStep['done'];
  readonly gate: GateFile | null;
  readonly flies: StepFlies;
}

/** Made by `readyCourse`. Places count from 0 in `steps`; `firstLook` is null where the course has none. */
export interface ReadyCourse {
  readonly course: CourseFile;
  readonly steps: readonly ReadyStep[];
  /** Places of the steps in one of which the fault comes. */
  readonly firstLook: { readonly fault: Fault; readonly among: readonly number[] } | null;
}
