/** What a scripted trainee knows of the run beforehand. */
export interface Sheet {
  /** The first release is scored, and the hand stays off behind it. */
  readonly scored: boolean;
  /** Manoeuvre speed of a setting, kt. */
  manoeuvreKt(settingDeg: number): number;
  /** Settings of the flap lever, deg, in rising order. */
  readonly settingsDeg: readonly number[];
  /** The normal drive is said to work: the lever is tried first. */
  readonly normalFirst: boolean;
  /** The list is read behind a split. */
  readonly list: boolean;
  /** Height above the ground from which the flaps are thought of in a go-around, ft. */
  readonly safeFt: number;
  /** Longest hold at a time, and the rest behind it, ticks; Infinity and 0 where the brief asks for none. */
  readonly holdMostTicks: number;
  readonly restTicks: number;
}
