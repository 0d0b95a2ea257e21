import type { Act } from '../../sim/files/index.js';

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
  /** Below this lever angle the gear horn sounds at small flap settings, deg; null but in training. */
  readonly hornTlaDeg: number | null;
  /** Where the gear lever stands. */
  readonly gearLever: 'up' | 'down';
  /** Down is told only when it is locked (14 CFR 25.729(e)(1)). */
  readonly gear: 'up' | 'moving' | 'down';
  /** The horn sounds, and whether it can be silenced. */
  readonly horn: 'silent' | 'sounds' | 'insists';
  readonly hornSilenced: boolean;
  /** The cover over the silence button is lifted. */
  readonly coverOpen: boolean;
  /** Which way the path goes. */
  readonly path: 'level' | 'down' | 'up';
  /** Bank, right positive, deg. */
  readonly bankDeg: number;
  /** Control deflection, part of full control, right positive; drawn without figures. */
  readonly control: number;
  /** Where the hand has put the control. */
  readonly handControl: number;
  readonly autopilot: boolean;
  /** The speed hold let go a short while ago. */
  readonly holdLetGo: boolean;
  /** Another pilot flies: speed, thrust and gear are not the trainee's. */
  readonly otherFlies: boolean;
  /** Heading, deg, above 0 to 360. */
  readonly headingDeg: number;
  /** A teaching freeze: the clock stands, the instruments stay. */
  readonly frozen: boolean;
  /** What is said to the trainee; null for nothing. */
  readonly talk: Talk | null;
}

/** A message, or a callout that wants an answer. */
export interface Talk {
  /** The same for as long as the same thing is said. */
  readonly id: number;
  readonly text: string;
  /** Empty for a message. */
  readonly answers: readonly string[];
  /** What each answer files. */
  readonly acts: readonly Act[];
  /** The words of a caution that waits to be noted; null for anything else. */
  readonly caution: string | null;
  /** Part of its time that is left, 1 to 0. */
  readonly part: number;
  /** How many more wait behind it. */
  readonly waiting: number;
}

/** What does not change in a run: the scale, the settings, the switch. */
export interface Panel {
  readonly settings: readonly { readonly deg: number; readonly name: string }[];
  readonly stopDeg: number;
  /** Angle on the dial against flap position, straight between knots. */
  readonly dial: readonly { readonly flapDeg: number; readonly dialDeg: number }[];
  readonly extendSwitch: 'sprung' | 'latched';
  readonly retractSwitch: 'sprung' | 'latched';
  /** Lowest and highest speed on the strip, and of those that can be selected, kt. */
  readonly stripKt: readonly [number, number];
  /** Greatest thrust-lever angle, deg. */
  readonly tlaMaxDeg: number;
}
