/**
 * The scripted trainees as numbers. All of them are one watcher: an eye that needs so many degrees, a hand that needs so
 * many seconds, a spread from run to run, lapses, and releases without cause. No human data exist; the figures of
 * `steady` and `loaded` are assumed ones, near published times for expected and for divided watching.
 */
/** What makes a watcher; a person is drawn from it by `watcherOf`. */
export interface TraineeNumbers {
  /** What the eye compares: the pointers with each other, or with how they stood when the switch was first pressed. */
  readonly sees: 'split' | 'change';
  /** Degrees that the eye needs: median over people, and the log-sd between them. */
  readonly thresholdDeg: number;
  readonly thresholdLogSd: number;
  /** Seconds from there until the hand is off: median over people, and the log-sd between them. */
  readonly reactionS: number;
  readonly reactionLogSd: number;
  /** Log-sd of both from run to run. */
  readonly spread: number;
  /** Chance a run that nothing is noticed at all, 0 to 1. */
  readonly lapse: number;
  /** Releases without cause, a minute of holding. */
  readonly falsePerMin: number;
  /** Goes through the work without waiting: for no speed, no lever, no leading edge, no height, and reads no list. */
  readonly hurries?: boolean | undefined;
}

const SURE = { sees: 'split', thresholdDeg: 1, thresholdLogSd: 0, reactionLogSd: 0, spread: 0, lapse: 0, falsePerMin: 0 } as const;

/**
 * `prompt`, `slow` and `hasty` always react alike; `never` sees nothing; `early` lets go for nothing, too; `steady` and `loaded` vary as
 * people do.
 */
export const TRAINEE_NUMBERS = {
  prompt: { ...SURE, reactionS: 1 },
  slow: { ...SURE, reactionS: 6 },
  never: { ...SURE, reactionS: 1, lapse: 1 },
  early: { ...SURE, reactionS: 1, falsePerMin: 6 },
  steady: { sees: 'change', thresholdDeg: 1, thresholdLogSd: 0.2, reactionS: 0.6, reactionLogSd: 0.3, spread: 0.35, lapse: 0.03, falsePerMin: 0.18 },
  loaded: { sees: 'change', thresholdDeg: 1, thresholdLogSd: 0.2, reactionS: 5, reactionLogSd: 0.3, spread: 0.4, lapse: 0.05, falsePerMin: 0.24 },
  hasty: { ...SURE, reactionS: 1, hurries: true },
} as const satisfies Readonly<Record<string, TraineeNumbers>>;

/** What `passes` and `fails` of a drill, and --trainee, may name. */
export type TraineeName = keyof typeof TRAINEE_NUMBERS;
/** Names of the scripted trainees. */
export const TRAINEES = Object.keys(TRAINEE_NUMBERS) as readonly TraineeName[];
