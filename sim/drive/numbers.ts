/** The drive's constants as the tick needs them: reciprocals taken, exponentials worked out once before the run. */
import { exp } from '../portable.js';
import { DT } from '../units.js';

/** What an airframe states about its standby drive; units in the key names. */
export interface DriveData {
  readonly stopDeg: number;
  readonly noLoadRateDegPerS: number;
  readonly stallTorqueNm: number;
  readonly timeConstantS: number;
  readonly frictionNm: number;
  readonly brakeNm: number;
  readonly limiterNm: number;
  readonly noBackFactor: number;
  readonly gearing: number;
  readonly efficiency: number;
  readonly flapAreaM2: number;
  readonly flapChordM: number;
  readonly hinge: number;
  readonly hingePerDeg: number;
  readonly pickUpS: number;
  readonly dropOutS: number;
  readonly windUpNmPerDeg: number;
  readonly shearNm: number;
  readonly blowBackHoldKNm: number;
  readonly blowBackDampingKNmSPerDeg: number;
  readonly leadingEdgeS: number;
  readonly normalRateDegPerS: number;
  readonly extendSwitch: 'sprung' | 'latched';
  readonly retractSwitch: 'sprung' | 'latched';
}

/** What an airframe states about the heat of its motor. */
export interface HeatData {
  readonly onS: number;
  readonly offS: number;
  readonly ratedTorqueNm: number;
  readonly ratedS: number;
  readonly noLoadCurrent: number;
  readonly cutOut: number;
  readonly reset: number;
}

export interface DriveNumbers extends DriveData {
  /** Inertia at the tube, N m per deg/s2: stall torque lifts the rate to no-load with the time constant. */
  readonly inertia: number;
  /** Half a tick over the time constant, for the Crank-Nicolson step of the rate. */
  readonly rateStep: number;
  readonly inverseNoLoadRate: number;
  /** Torque of one side for each pascal and unit of hinge moment, N m / Pa. */
  readonly loadPerPa: number;
  readonly pickUpTicks: number;
  readonly dropOutTicks: number;
  readonly leadingEdgePerTick: number;
  readonly heatKeptOn: number;
  readonly heatKeptOff: number;
  /** Final heat for each squared unit of current. */
  readonly heatGain: number;
  readonly noLoadCurrent: number;
  readonly inverseStall: number;
  readonly cutOut: number;
  readonly reset: number;
}

/**
 * Prepares the constants of drive and heat. Every key is written out: engines give all objects of one literal one shape,
 * and a spread makes a new shape each time, which the tick would pay for in every run.
 */
export function driveNumbers(drive: DriveData, heat: HeatData): DriveNumbers {
  const current = heat.noLoadCurrent + heat.ratedTorqueNm / drive.stallTorqueNm;
  const ratedEnd = heat.cutOut / (1 - exp(-heat.ratedS / heat.onS));
  return {
    stopDeg: drive.stopDeg,
    noLoadRateDegPerS: drive.noLoadRateDegPerS,
    stallTorqueNm: drive.stallTorqueNm,
    timeConstantS: drive.timeConstantS,
    frictionNm: drive.frictionNm,
    brakeNm: drive.brakeNm,
    limiterNm: drive.limiterNm,
    noBackFactor: drive.noBackFactor,
    gearing: drive.gearing,
    efficiency: drive.efficiency,
    flapAreaM2: drive.flapAreaM2,
    flapChordM: drive.flapChordM,
    hinge: drive.hinge,
    hingePerDeg: drive.hingePerDeg,
    pickUpS: drive.pickUpS,
    dropOutS: drive.dropOutS,
    windUpNmPerDeg: drive.windUpNmPerDeg,
    shearNm: drive.shearNm,
    blowBackHoldKNm: drive.blowBackHoldKNm,
    blowBackDampingKNmSPerDeg: drive.blowBackDampingKNmSPerDeg,
    leadingEdgeS: drive.leadingEdgeS,
    normalRateDegPerS: drive.normalRateDegPerS,
    extendSwitch: drive.extendSwitch,
    retractSwitch: drive.retractSwitch,
    inertia: drive.timeConstantS * drive.stallTorqueNm / drive.noLoadRateDegPerS,
    rateStep: DT / (2 * drive.timeConstantS),
    inverseNoLoadRate: 1 / drive.noLoadRateDegPerS,
    loadPerPa: drive.flapAreaM2 * drive.flapChordM / (drive.gearing * drive.efficiency),
    // Rounded, not asked of the grid: soundness looks at numbers that the door has yet to refuse, and must not throw.
    pickUpTicks: Math.floor(drive.pickUpS * 100 + 0.5),
    dropOutTicks: Math.floor(drive.dropOutS * 100 + 0.5),
    leadingEdgePerTick: DT / drive.leadingEdgeS,
    heatKeptOn: exp(-DT / heat.onS),
    heatKeptOff: exp(-DT / heat.offS),
    heatGain: ratedEnd / (current * current),
    noLoadCurrent: heat.noLoadCurrent,
    inverseStall: 1 / drive.stallTorqueNm,
    cutOut: heat.cutOut,
    reset: heat.reset,
  };
}
