/** The aeroplane's constants as the tick needs them. */
import { G0, KT, PI } from '../units.js';
import { RHO0 } from './atmosphere.js';

export interface FlightData {
  readonly areaM2: number;
  readonly spanM: number;
  readonly clMax: readonly { readonly flapDeg: number; readonly cl: number }[];
  readonly clMaxFlapUpLeadingEdgeOut: number;
  readonly staticThrustKN: number;
  readonly machLoss: number;
  readonly machGain: number;
  readonly leverMap: readonly { readonly tlaDeg: number; readonly fraction: number }[];
  readonly spoolBaseS: number;
  readonly spoolSlopeS: number;
  readonly fuelKgPerNs: number;
  readonly fuelBaseKgPerS: number;
  readonly clean: number;
  readonly leadingEdge: number;
  readonly flapSine2: number;
  readonly gear: number;
  readonly engineOut: number;
  readonly oswald: number;
  readonly oswaldPerDeg: number;
}

export interface RollData {
  readonly liftingSurface: number;
  readonly clFlap: number;
  readonly clDamping: number;
  readonly flapEffect: number;
  readonly flapEffectBase: number;
  readonly flapEffectPerDeg2: number;
  readonly control: number;
  readonly reversalKt: number;
  readonly stallKnee: number;
  readonly stallControl: number;
  readonly gyrationFactor: number;
  readonly controlRatePerS: number;
  readonly autopilotLimit: number;
  readonly autopilotOffS: number;
}

export interface FlightNumbers extends FlightData, RollData {
  readonly massKg: number;
  readonly weightN: number;
  readonly inversePiAspect: number;
  readonly staticThrustN: number;
  readonly inverseRollInertia: number;
  readonly reversalPa: number;
  readonly autopilotOffTicks: number;
  /** The knots of lever map and greatest lift as rows of doubles: the tick walks them several times. */
  readonly leverTlaDeg: Float64Array;
  readonly leverFraction: Float64Array;
  readonly clMaxFlapDeg: Float64Array;
  readonly clMaxCl: Float64Array;
}

/** Prepares the constants for one mass, t. Every key is written out, as in the drive: one literal, one shape. */
export function flightNumbers(flight: FlightData, roll: RollData, massT: number): FlightNumbers {
  const massKg = massT * 1000;
  const arm = flight.spanM / 2 * roll.gyrationFactor;
  const reversal = roll.reversalKt * KT;
  return {
    areaM2: flight.areaM2,
    spanM: flight.spanM,
    clMax: flight.clMax,
    clMaxFlapUpLeadingEdgeOut: flight.clMaxFlapUpLeadingEdgeOut,
    staticThrustKN: flight.staticThrustKN,
    machLoss: flight.machLoss,
    machGain: flight.machGain,
    leverMap: flight.leverMap,
    spoolBaseS: flight.spoolBaseS,
    spoolSlopeS: flight.spoolSlopeS,
    fuelKgPerNs: flight.fuelKgPerNs,
    fuelBaseKgPerS: flight.fuelBaseKgPerS,
    clean: flight.clean,
    leadingEdge: flight.leadingEdge,
    flapSine2: flight.flapSine2,
    gear: flight.gear,
    engineOut: flight.engineOut,
    oswald: flight.oswald,
    oswaldPerDeg: flight.oswaldPerDeg,
    liftingSurface: roll.liftingSurface,
    clFlap: roll.clFlap,
    clDamping: roll.clDamping,
    flapEffect: roll.flapEffect,
    flapEffectBase: roll.flapEffectBase,
    flapEffectPerDeg2: roll.flapEffectPerDeg2,
    control: roll.control,
    reversalKt: roll.reversalKt,
    stallKnee: roll.stallKnee,
    stallControl: roll.stallControl,
    gyrationFactor: roll.gyrationFactor,
    controlRatePerS: roll.controlRatePerS,
    autopilotLimit: roll.autopilotLimit,
    autopilotOffS: roll.autopilotOffS,
    massKg,
    weightN: massKg * G0,
    inversePiAspect: flight.areaM2 / (PI * flight.spanM * flight.spanM),
    staticThrustN: flight.staticThrustKN * 1000,
    inverseRollInertia: 1 / (massKg * arm * arm),
    reversalPa: 0.5 * RHO0 * reversal * reversal,
    autopilotOffTicks: Math.floor(roll.autopilotOffS * 100 + 0.5),
    leverTlaDeg: Float64Array.from(flight.leverMap, ({ tlaDeg }) => tlaDeg),
    leverFraction: Float64Array.from(flight.leverMap, ({ fraction }) => fraction),
    clMaxFlapDeg: Float64Array.from(flight.clMax, ({ flapDeg }) => flapDeg),
    clMaxCl: Float64Array.from(flight.clMax, ({ cl }) => cl),
  };
}
