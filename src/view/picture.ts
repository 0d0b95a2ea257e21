/**
 * What the drill shows at one moment, as plain numbers and words. The view draws it, the twins say it, and nothing else
 * of the world reaches the screen. A reading that is not here cannot be seen by the trainee.
 */
export interface Picture {
  /** Seconds of the run; the page shows no hold timer. */
  readonly timeS: number;
  /** Pause and assessment blank every instrument. */
  readonly blank: boolean;
  /** Pointer positions on the flap scale, deg. Never the true travel. */
  readonly leftPointerDeg: number;
  readonly rightPointerDeg: number;
  /** Calibrated airspeed, kt. */
  readonly speedKt: number;
  /** Speed selected for the speed hold, kt. */
  readonly selectedKt: number;
  readonly speedHold: boolean;
  /** Lowest of the limits that hold now, kt, and what it is the limit of. */
  readonly limitKt: number;
  readonly limitOf: string;
  /** Stall warning of the side least out, kt. */
  readonly lowestKt: number;
  /** Manoeuvre speed of the lever's setting, kt; hollow until both sides are there. */
  readonly manoeuvreKt: number;
  readonly manoeuvreHollow: boolean;
  /** Height above sea level, ft. */
  readonly altitudeFt: number;
  readonly leadingEdge: 'in' | 'moving' | 'out';
  readonly guardOpen: boolean;
  readonly armed: boolean;
  /** Where the drive switch stands. */
  readonly drive: 'extend' | 'off' | 'retract';
  /** Setting of the flap lever, deg. */
  readonly flapLeverDeg: number;
  readonly leftTlaDeg: number;
  readonly rightTlaDeg: number;
}

/** What does not change in a run: the scale, the settings, the switch. */
export interface Panel {
  readonly settings: readonly { readonly deg: number; readonly name: string }[];
  readonly stopDeg: number;
  /** Angle on the dial against flap position, straight between knots. */
  readonly dial: readonly { readonly flapDeg: number; readonly dialDeg: number }[];
  readonly extendSwitch: 'sprung' | 'latched';
  readonly retractSwitch: 'sprung' | 'latched';
  /** Lowest and highest speed on the strip, kt. */
  readonly stripKt: readonly [number, number];
  /** Greatest thrust-lever angle, deg. */
  readonly tlaMaxDeg: number;
}
