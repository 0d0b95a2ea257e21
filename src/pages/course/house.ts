/** What pages need of courses, as `house.course`. Courses and their steps are numbered from 1. */
import type { GateFile, RunRecord } from '../../../sim/files/index.js';
import type { ReadyStep } from '../../../sim/index.js';
import type { CourseProgress } from '../../records/progress.js';
import type { Problem } from '../../text/index.js';
import type { DrillCard } from '../house.js';

/** A step as its syllabus may tell of it. */
export interface StepCard {
  readonly number: number;
  readonly teaches: string;
  readonly kind: 'drill' | 'set';
  readonly task: string;
  readonly done: ReadyStep['done'];
  /** Numbers of the steps that it needs. */
  readonly needs: readonly number[];
  readonly gate: GateFile | null;
  /** Number of the shipped drill; null for a set, or a drill that stands in the course. */
  readonly drill: number | null;
  /** Number of the set; null for a drill. */
  readonly set: number | null;
  /** Limit of a set, deg. */
  readonly limitDeg: number | null;
  readonly minutes: number;
  readonly loaded: boolean;
}

export interface CourseCard {
  readonly number: number;
  readonly title: string;
  readonly brief: string;
  /** Opened on this machine: id under which it is kept. */
  readonly own: string | null;
  readonly steps: readonly StepCard[];
}

type OpenedCourse =
  | { readonly ok: true; readonly number: number }
  | { readonly ok: false; readonly name: string; readonly problems: readonly Problem[]; readonly more: number };

export interface CourseHouse {
  /** The shipped ones, then those that were opened here. */
  courses(): Promise<readonly CourseCard[]>;
  /** Own courses that are kept but no longer pass their door. */
  broken(): Promise<readonly { readonly id: string; readonly name: string; readonly problems: readonly Problem[] }[]>;
  /** How far a person has come. @throws LogbookTrouble */
  progress(course: number, person: string): Promise<CourseProgress>;
  /** What the brief of a step tells; null where it is no drill. Never the first look. */
  brief(course: number, step: number): Promise<DrillCard | null>;
  /** Opens a course file and keeps it on the shelf of own files. @throws LogbookTrouble */
  open(file: File): Promise<OpenedCourse>;
  /** Takes an own course off the shelf; `putBack` undoes it. @throws LogbookTrouble */
  remove(id: string): Promise<void>;
  putBack(id: string): Promise<void>;
  /** Whether a run was the first look of a course. */
  isFirstLook(run: RunRecord): Promise<boolean>;
}
