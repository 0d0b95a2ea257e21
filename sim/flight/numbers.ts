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
}

/** Prepares the constants for one mass, t. */
export function flightNumbers(flight: FlightData, roll: RollData, massT: number): FlightNumbers {
  const massKg = massT * 1000;
  const arm = flight.spanM / 2 * roll.gyrationFactor;
  const reversal = roll.reversalKt * KT;
  return {
    ...flight, ...roll, massKg,
    weightN: massKg * G0,
    inversePiAspect: flight.areaM2 / (PI * flight.spanM * flight.spanM),
    staticThrustN: flight.staticThrustKN * 1000,
    inverseRollInertia: 1 / (massKg * arm * arm),
    reversalPa: 0.5 * RHO0 * reversal * reversal,
    autopilotOffTicks: Math.floor(roll.autopilotOffS * 100 + 0.5),
  };
}
