/** `speeds`, `horn`, `budget`: the trade's tables, with the sums shown. */
import { BUDGET_FAULTS, budgetOf, hornRule, speedsOf, type BudgetFault } from '../../sim/index.js';
import type { Airframe, BudgetOutput, HornOutput, SpeedsOutput } from '../../sim/files/index.js';
import { columns } from './columns.js';
import { type Io, printJson, printLines } from './io.js';
import { openAirframe } from './opened.js';
import { DONE, Trouble } from './trouble.js';

interface Common { airframe: string; json?: boolean }
export interface SpeedsOptions extends Common { mass: number; ice?: boolean }
export interface HornOptions extends Common {
  tla: number[]; liveEngines: number; flap: number[]; gear: 'up' | 'moving' | 'down'; height: number; silenced?: boolean;
}
export interface BudgetOptions extends Common { mass: number; speed: number; flap: number; fault: string; ratio: number; altitude: number }

const kt = (value: number): string => value.toFixed(1);

export function speeds(io: Io, { airframe: typed, mass, ice = false, json = false }: SpeedsOptions): number {
  const airframe = openAirframe(typed);
  const { settings, ...rest } = speedsOf(airframe, inRange('--mass', mass, airframe.mass.emptyT, airframe.mass.takeOffT, 't'), ice);
  const output: SpeedsOutput = { airframe: airframe.name, ...rest, settings: settings.map(({ name: _name, ...row }) => row) };
  if (json) printJson(io, output);
  else printLines(io, speedLines(airframe, output));
  return DONE;
}

function speedLines(airframe: Airframe, { massT, iceKt, referenceFactor, settings }: SpeedsOutput): string[] {
  const ice = iceKt === 0 ? '' : ` + ${iceKt} ice`;
  const last = settings[settings.length - 1];
  const rows = settings.map((row, at) => {
    const setting = airframe.settings[at];
    const manoeuvre = airframe.speedRule === 'factor'
      ? `${setting?.manoeuvreFactor} x ${kt(row.stallKt)}${ice}`
      : `${kt((last?.referenceKt ?? 0) - iceKt)} + ${setting?.manoeuvreIncrementKt}${ice}`;
    return [
      setting?.name ?? '', kt(row.stallKt), kt(row.warningKt), kt(row.manoeuvreKt), `= ${manoeuvre}`,
      kt(row.referenceKt), `= ${referenceFactor} x ${kt(row.stallKt)}${ice}`, row.limitKt === null ? 'none' : String(row.limitKt), row.bankToWarningDeg.toFixed(1),
    ];
  });
  const head = ['setting', 'stall', 'warning', 'manoeuvre', '', 'reference', '', 'limit', 'bank to warning, deg'];
  return [`${airframe.title}, ${massT} t; speeds in kt, calibrated`, '', ...columns([head, ...rows], [1, 2, 3, 5, 7, 8])];
}

export function horn(io: Io, options: HornOptions): number {
  const { horn: t } = openAirframe(options.airframe);
  const { tla, liveEngines, flap, gear, height, silenced = false } = options;
  if (tla.length !== 1 && tla.length !== liveEngines) throw new Trouble(`--tla stands ${tla.length} times; once for each of the ${liveEngines} live engines, or once for all.`);
  if (flap.length > 2) throw new Trouble('--flap takes one figure, or left and right with a comma between.');
  const [tlaDeg, flapDeg] = [Math.min(...tla), Math.max(...flap)];
  const now = hornRule(t, flapDeg, tlaDeg, liveEngines, gear === 'down' ? 1 : gear === 'moving' ? 0.5 : 0, height);
  const output: HornOutput = {
    sounds: now === 2 || (now === 1 && !silenced), silenceable: now === 1,
    why: whyHorn(t, { tlaDeg, flapDeg, liveEngines, gear, height, silenced: silenced && now === 1 }),
  };
  if (options.json === true) printJson(io, output);
  else printLines(io, [output.sounds ? 'The horn sounds.' : 'The horn is silent.', output.why]);
  return DONE;
}

interface HornCase { tlaDeg: number; flapDeg: number; liveEngines: number; gear: string; height: number; silenced: boolean }

/** The rule that decides, in the order in which the rules are asked. */
function whyHorn(t: Airframe['horn'], { tlaDeg, flapDeg, liveEngines, gear, height, silenced }: HornCase): string {
  if (gear === 'down') return 'The gear is locked down.';
  if (flapDeg > t.landingBandDeg) return `Flap ${flapDeg} is above the landing band (${t.landingBandDeg}) and the gear is not locked down: at any lever angle, and it cannot be silenced.`;
  const threshold = liveEngines >= 2 ? t.bothLiveTlaDeg : t.oneLiveTlaDeg;
  const engines = liveEngines >= 2 ? 'both engines live' : 'one engine live';
  if (tlaDeg >= threshold) return `The lower live lever (${tlaDeg}) is not below ${threshold} (${engines}).`;
  const levers = `The lower live lever (${tlaDeg}) is below ${threshold} (${engines}), the gear is not locked down`;
  if (flapDeg > t.takeOffBandDeg) return `${levers}, and flap ${flapDeg} is above the take-off band (${t.takeOffBandDeg}): it cannot be silenced.`;
  if (height >= t.heightFt) return `${levers}, but flap ${flapDeg} is within the take-off band (${t.takeOffBandDeg}) and the height (${height}) is not below ${t.heightFt} ft.`;
  return `${levers}, flap ${flapDeg} is within the take-off band (${t.takeOffBandDeg}) and the height (${height}) is below ${t.heightFt} ft: ${silenced ? 'silenced' : 'it may be silenced'}.`;
}

export function budget(io: Io, options: BudgetOptions): number {
  const airframe = openAirframe(options.airframe);
  const fault = BUDGET_FAULTS.find((one) => one === options.fault) as BudgetFault; // commander has refused all else
  const massT = inRange('--mass', options.mass, airframe.mass.emptyT, airframe.mass.takeOffT, 't');
  const flapDeg = inRange('--flap', options.flap, 0.1, airframe.drive.stopDeg - 1, 'deg');
  const speedKt = inRange('--speed', options.speed, 60, airframe.limits.standbyDriveKt, 'kt');
  const made = budgetOf({ airframe, massT, speedKt, flapDeg, fault, ratio: options.ratio, altitudeFt: options.altitude });
  const output: BudgetOutput = { airframe: airframe.name, fault, ...made, levels: [...made.levels], releases: [...made.releases] };
  if (options.json === true) printJson(io, output);
  else printLines(io, budgetLines(airframe, options, output));
  return DONE;
}

function budgetLines(airframe: Airframe, { mass, speed, flap }: BudgetOptions, { fault, oneDegreeS, splitRateDegPerS, levels, releases, settleS }: BudgetOutput): string[] {
  const head = `${airframe.title}, ${mass} t, ${speed} kt, ${fault} at flap ${flap}, level, driving on`;
  if (oneDegreeS === null || splitRateDegPerS === null) return [head, 'The sides never come one degree apart.'];
  return [
    head, '',
    `One degree apart after ${oneDegreeS.toFixed(1)} s (1 deg / ${splitRateDegPerS.toFixed(3)} deg/s).`, '',
    ...columns([['held on: roll authority', 'after', 'split'], ...levels.map((level) => [
      `${level.rollAuthorityPct} %`, level.afterS === null ? 'not reached' : `${level.afterS.toFixed(1)} s`, level.splitDeg === null ? '' : `${level.splitDeg.toFixed(2)} deg`,
    ])], [1, 2]), '',
    ...columns([['let go behind 1 deg', 'final split', 'roll authority'], ...releases.map((one) => [
      `${one.latencyS} s`, `${one.splitDeg.toFixed(2)} deg`, `${one.rollAuthorityPct.toFixed(1)} %`,
    ])], [1, 2]), '',
    `Final is read ${settleS} s behind the release; the drive itself drops out and brakes first.`,
  ];
}

function inRange(option: string, value: number, low: number, high: number, unit: string): number {
  if (value >= low && value <= high) return value;
  throw new Trouble(`${option} ${value}: allowed is ${low} to ${high} ${unit}.`);
}
