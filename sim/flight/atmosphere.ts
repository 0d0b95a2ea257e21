/**
 * Standard atmosphere below 11 km and subsonic airspeeds, without pow: p/p0 as a polynomial of degree 7 in height / 8000 m
 * (greatest relative error 4.2e-13 between 0 and 8 km), powers by products, roots by Newton.
 * Constants: ISO 2533 / ICAO Doc 7488. Heights are geopotential.
 */
import { KT } from '../units.js';

export const P0 = 101325;
export const RHO0 = 1.225;
const T0 = 288.15;
const LAPSE = 0.0065;
const A0 = 340.293988026089;
const GAS = 287.05287;

/** Pressure over sea-level pressure at `heightM`, -500 to 8000 m. */
export function pressureRatio(heightM: number): number {
  const x = heightM / 8000;
  return 1 + x * (-0.9484842972706813 + x * (0.36422875048888176 + x * (-0.07133555502614719
    + x * (0.007260163042612788 + x * (-0.0003290731860801088 + x * (2.5177422458000365e-6 + x * 5.737365427194163e-8))))));
}

/** Temperature over sea-level temperature. */
export const temperatureRatio = (heightM: number): number => 1 - LAPSE * heightM / T0;

/** Air density, kg/m3, of a pressure and a temperature over those at sea level. */
const densityOf = (delta: number, theta: number): number => RHO0 * delta / theta;


/** Air density, kg/m3. */
export const density = (heightM: number): number => densityOf(pressureRatio(heightM), temperatureRatio(heightM));

/** Speed of sound, m/s, of a temperature over that at sea level. */
const soundSpeedOf = (theta: number): number => Math.sqrt(1.4 * GAS * T0 * theta);

/** Places in what `airAt` gives: p/p0, speed of sound in m/s, density in kg/m3. */
export const DELTA = 1;
export const SOUND = 2;
export const RHO = 3;

const lastAir = new Float64Array([NaN, 0, 0, 0]);

/**
 * The air at a height, good until the next height is asked. The last one is remembered, since in level flight all the
 * ticks of a run ask the same; a row of doubles, since numbers handed back from a call would be made anew in every tick.
 */
export function airAt(heightM: number): Float64Array {
  if (lastAir[0] === heightM) return lastAir;
  const delta = pressureRatio(heightM);
  const theta = temperatureRatio(heightM);
  lastAir[0] = heightM;
  lastAir[DELTA] = delta;
  lastAir[SOUND] = soundSpeedOf(theta);
  lastAir[RHO] = densityOf(delta, theta);
  return lastAir;
}

/** Speed of sound, m/s. */
export const soundSpeed = (heightM: number): number => soundSpeedOf(temperatureRatio(heightM));

/** z to the power 2/7 for z near 1 to 3, by Newton on y^7 = z^2. */
function twoSevenths(z: number): number {
  const square = z * z;
  let y = 1 + (z - 1) * (2 / 7);
  for (let i = 0; i < 6; i += 1) {
    const y3 = y * y * y;
    const y6 = y3 * y3;
    const next = y - (y6 * y - square) / (7 * y6);
    if (next === y) break; // every further round gives the same
    y = next;
  }
  return y;
}

/** (1 + x)^3.5 - 1 for the impact pressure. */
function impact(x: number): number {
  const u = 1 + x;
  return u * u * u * Math.sqrt(u) - 1;
}

/** Calibrated airspeed, kt, of a true airspeed in m/s. */
export const casOfTas = (tasMps: number, heightM: number): number =>
  casOfMach(tasMps / soundSpeed(heightM), pressureRatio(heightM));

/** Calibrated airspeed, kt, of a Mach number at a pressure over that at sea level. */
export function casOfMach(mach: number, delta: number): number {
  const overP0 = delta * impact(0.2 * mach * mach);
  return A0 * Math.sqrt(5 * (twoSevenths(overP0 + 1) - 1)) / KT;
}

/** True airspeed, m/s, of a calibrated airspeed in kt. */
export function tasOfCas(casKt: number, heightM: number): number {
  const x = casKt * KT / A0;
  const overP = impact(0.2 * x * x) / pressureRatio(heightM);
  return Math.sqrt(5 * (twoSevenths(overP + 1) - 1)) * soundSpeed(heightM);
}
