/** The parts of an approach as the nominal pilot does them: each is a script, and notes what it has done. */
import type { Airframe } from '../../files/airframe.js';
import type { Fixed } from '../../fixed.js';
import type { State } from '../../state.js';
import { driveTo, firstTouch, pause, type Held } from './drive.js';
import { PATH_DEG } from './path.js';
import type { Do, Script } from './script.js';
import type { Track } from './track.js';

export interface DriveStep {
  readonly settingDeg: number;
  /** Manoeuvre speed of what is out, kt, as it is selected. */
  readonly speedKt: number;
  readonly leverS: number;
  /** Switch away from off, and back. */
  readonly fromS: number;
  readonly toS: number;
  /** Rest for heat on the way, s. */
  readonly restS: number;
  /** Seconds for which the motor was fed. */
  readonly motorOnS: number;
  /** Speed when the switch is pressed and when it is let go, and the lowest limit between, kt. */
  readonly fromKt: number;
  readonly toKt: number;
  readonly limitKt: number | null;
  /** Part of the cut-out. */
  readonly heatFrom: number;
  readonly heatTo: number;
}

export interface Touch { readonly speedKt: number; readonly atS: number; readonly outS: number }

/** What was done, and when. */
export interface Noted {
  touch: Touch | null;
  steps: readonly DriveStep[];
  /** Both there at the landing setting, and all that comes before the path done; null where that never was. */
  thereS: number | null;
  readyS: number | null;
  /** Flown over the ground until then, NM. */
  readyNm: number | null;
  gearFromS: number | null;
  gearDownS: number | null;
  downS: number | null;
}

/** An approach on its way. */
export interface Flight {
  readonly act: Do;
  readonly airframe: Airframe;
  readonly fixed: Fixed;
  readonly track: Track;
  readonly noted: Noted;
}

export const nothingNoted = (): Noted => ({ touch: null, steps: [], thereS: null, readyS: null, readyNm: null, gearFromS: null, gearDownS: null, downS: null });

export const atS = ({ track }: Flight): number => track.state.tick / 100;

/** @param withinKt slow enough, above the speed asked for */
export function* slowTo({ act }: Flight, speedKt: number, withinKt: number): Script {
  act({ do: 'selectSpeed', speedKt });
  yield (s) => s.casKt <= speedKt + withinKt;
}

/** Puts the gear lever down as soon as the speed allows it. */
export function* gearDown(flight: Flight): Script {
  const { act, airframe, track, noted } = flight;
  if (track.state.latched.gearLever === 1) return;
  yield (s) => s.casKt <= airframe.gear.operateKt;
  act({ do: 'setGear', to: 'down' });
  noted.gearFromS = atS(flight);
  yield pause();
}

/** Waits for the gear. */
export function* gearLocked(flight: Flight): Script {
  yield (s) => s.gear >= 1;
  flight.noted.gearDownS ??= atS(flight);
}

/** Leaves the level, once. */
export function* goDown(flight: Flight, screenFt: number): Script {
  const { act, noted } = flight;
  if (noted.downS !== null) return;
  act({ do: 'descend', toFt: screenFt, pathDeg: PATH_DEG });
  noted.downS = atS(flight);
  yield pause();
}

/** The first touch of the switch, behind the lever where the procedure says so, for the leading edge. */
export function* touchFirst({ act, airframe, fixed, track, noted }: Flight, settingDeg: number, speedKt: number): Script {
  if (airframe.procedure.firstTouch === 'afterLever') act({ do: 'setFlapLever', settingDeg });
  yield* firstTouch(act, fixed, () => track.state, (at, outS) => { noted.touch = { speedKt, atS: at, outS }; });
}

/** Lever, then drive. @param speedKt manoeuvre speed of what is out */
export function* extend(flight: Flight, settingDeg: number, speedKt: number): Script {
  const { act, fixed, track, noted } = flight;
  const now = (): State => track.state;
  if (now().latched.flapLeverDeg < settingDeg) act({ do: 'setFlapLever', settingDeg });
  const leverS = atS(flight);
  yield pause();
  const [heatFrom, fromKt, fedFrom] = [now().motorHeat, now().casKt, track.fedTicks];
  track.limitKt = Infinity;
  let held: Held | null = null;
  yield* driveTo(act, fixed, now, settingDeg, (h) => { held = h; });
  const { fromS, toS, restS } = held ?? { fromS: leverS, toS: leverS, restS: 0 };
  noted.steps = [...noted.steps, {
    settingDeg, speedKt, leverS, fromS, toS, restS, motorOnS: (track.fedTicks - fedFrom) / 100, fromKt, toKt: now().casKt,
    limitKt: track.limitKt < Infinity ? track.limitKt : null, heatFrom: heatFrom / fixed.drive.cutOut, heatTo: now().motorHeat / fixed.drive.cutOut,
  }];
}
