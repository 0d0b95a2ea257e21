/** Keys of files as labels, and how far an arrow key moves a figure. */
import { upper } from '../../../view/words.js';

const NAMES: Readonly<Record<string, string>> = {
  title: 'Title', brief: 'Brief', notes: 'Notes', skill: 'Skill',
  massT: 'Mass', altitudeFt: 'Height', groundFt: 'Ground', flapDeg: 'Flaps', flapLeverDeg: 'Flap lever', fuelKg: 'Fuel', distanceNm: 'Distance to go',
  windKt: 'Head wind', icing: 'Ice', liveEngines: 'Engines that run', guard: 'Guard of the switch',
  settings: 'Settings to reach', limitS: 'Ends at the latest', afterS: 'Goes on behind the call', legS: 'Drive held in all',
  mainDrive: 'Normal flap drive', training: 'Horn angle drawn', pointerNoise: 'Pointer noise', role: 'The trainee',
  limitDeg: 'Late from', seenDeg: 'Seen from', measuring: 'Measuring run',
  leverFirst: 'Lever before drive', leaveAlone: 'No press after a split', call: 'The call', list: 'The list read', safeFt: 'Safe height',
  ratio: 'Rate, part of the drive’s', periodS: 'Period', onS: 'Slips for', mode: 'How it lies', biasDeg: 'Jump', factor: 'Speed, part of healthy', stopsAt: 'Stops at',
  times: 'Times at most', everyS: 'Again every', from: 'Who speaks', fault: 'Fault that ends',
  sees: 'What the eye compares', thresholdLogSd: 'Threshold, log sd', reactionLogSd: 'Reaction, log sd', spread: 'Run to run, log sd', lapse: 'Chance of a lapse', falsePerMin: 'False releases',
  toFt: 'To', pathDeg: 'Path', withinS: 'Time to answer', to: 'To', order: 'Place among the shipped',
  onsetFromS: 'Onset from', onsetForS: 'Onset for', quiet: 'Quiet share', load: 'Workload', gaugeLocked: 'Gauge size locked', perRate: 'Of them at each rate',
  // An airframe's, where the words of the key alone would not do.
  landingDeg: 'Landing setting', deg: 'Position', tlaDeg: 'Lever angle', clMax: 'Greatest lift', clMaxAtStop: 'Greatest lift at the stop', clMaxFlapUpLeadingEdgeOut: 'Greatest lift, flap up, edge out',
  takeOffT: 'Take-off mass', landingT: 'Landing mass', emptyT: 'Empty mass', areaM2: 'Area', spanM: 'Span', sectionSlopePerRad: 'Section lift slope',
  staticThrustKN: 'Static thrust', fuelKgPerNs: 'Fuel for thrust', fuelBaseKgPerS: 'Fuel at idle', flapSine2: 'Flap, sine squared', oswald: 'Span efficiency', oswaldPerDeg: 'Change a degree',
  stopDeg: 'Mechanical stop', noLoadRateDegPerS: 'Rate without load', windUpNmPerDeg: 'Wind-up', shearNm: 'Shear link', blowBackHoldKNm: 'Blow-back, held', blowBackDampingKNmSPerDeg: 'Blow-back, damping',
  flapAreaM2: 'Flap area, one side', flapChordM: 'Flap chord', hinge: 'Hinge moment', hingePerDeg: 'Hinge moment a degree', clFlap: 'Roll of the flaps', clDamping: 'Roll damping',
  flapEffectPerDeg2: 'Effect, change', controlRatePerS: 'Control rate', gyrationFactor: 'Radius of gyration', disturbanceSd: 'Disturbance', iceKt: 'Added in ice', radiusMm: 'Pointer length',
  bothLiveTlaDeg: 'Lever, both engines', oneLiveTlaDeg: 'Lever, one engine', heightFt: 'Below height', wanderSdDeg: 'Wander', wanderStepDeg: 'Wander step',
};

/** Units that end a key's name, as keys write them. */
const UNITS = /(?<=[a-z])(?:DegPerS|PerMin|PerS|Deg|Kt|Ft|Kg|Nm|S|T)$/;

/** A key without a name of its own is told by its words: `lapseShare` is "Lapse share". */
export function labelOf(key: string): string {
  const known = NAMES[key];
  if (known !== undefined) return known;
  const words = key.replace(UNITS, '').replace(/([a-z])([A-Z])/g, (_, end: string, start: string) => `${end} ${start.toLowerCase()}`);
  return upper(words);
}

const WORDS: Readonly<Record<string, string>> = {
  otherPilot: 'other pilot', drawn: 'drawn by the seed', flying: 'flies and drives', driving: 'drives; another flies', lost: 'lost', returns: 'comes back by an event',
};

/** A word of a file, as it is chosen. */
export const wordLabel = (word: string | number): string => WORDS[word] ?? String(word);

const STEPS: Readonly<Record<string, number>> = { kt: 1, ft: 100, deg: 0.5, s: 1, t: 0.5, kg: 100, NM: 1, 'deg/s': 0.01, '1/s': 0.01, '1/min': 0.1 };

/** How far an arrow key moves a figure; with Shift ten times as far. */
export function stepOf({ unit, whole, max }: { readonly unit: string; readonly whole: boolean; readonly max: number }): number {
  if (whole) return 1;
  return STEPS[unit] ?? (max <= 4 ? 0.05 : 1);
}

/** A figure moved by a step, onto the grid of steps, inside its range. */
export function stepped(value: number, by: number, { min, max }: { readonly min: number; readonly max: number }): number {
  const grid = Math.abs(by);
  const onGrid = (Math.round(value / grid) + Math.sign(by)) * grid;
  // A figure between two steps goes to the nearer one on its way.
  const next = Math.abs(value / grid - Math.round(value / grid)) > 1e-9 ? (by > 0 ? Math.ceil(value / grid) : Math.floor(value / grid)) * grid : onGrid;
  return Number(Math.min(max, Math.max(min, next)).toFixed(6));
}

/** A number as it is typed, with a point or a comma; null where it is none. */
export function numberOf(typed: string): number | null {
  const text = typed.trim().replace('\u2212', '-').replace(/^(-?\d*),(\d+)$/, '$1.$2');
  return /^-?(?:\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) + 0 : null;
}
