/**
 * The tick against an adaptive solver of high order (odex 2, Gragg-Bulirsch-Stoer after Hairer and Wanner), on the same
 * equations written out again here: 40 s of driving with a side that lags, a 3 degree descent, engines running down from approach thrust,
 * and roll left to itself. Tolerances are ten times the errors of the prototype's own comparison at the same tick.
 */
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { advance, expand, withNumbers, type State } from '../../sim/index.js';
import { AIRFRAME, scenario } from '../sim/bench.js';

interface Solver { absoluteTolerance: number; relativeTolerance: number; maxSteps: number; solve(f: (x: number, y: number[]) => number[], x0: number, y0: number[], x1: number): { y: number[] } }
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => Solver };

const KEYS = ['rateDegPerS', 'leftDeg', 'rightDeg', 'motorHeat', 'leftThrust', 'speedMps', 'heightM', 'rollRate', 'bankRad'] as const;
const RATIO = 0.5;
const PATH = -0.0523359562429438;

const world = expand(scenario({ start: { speedKt: 170, flapDeg: 5, altitudeFt: 6000 }, speedHold: false }), AIRFRAME, 1);
const start: State = withNumbers(world.state, {
  armed: 1, drive: 1, contactor: 1, leftRatio: RATIO, pathSin: PATH, levelAtM: 0,
  autopilot: 0, leftTlaDeg: 0, rightTlaDeg: 0, leftThrust: 0.2, rightThrust: 0.2,
});

/** Right sides, from the model's own page: SI, deg and deg/s for flaps, lift = weight x cos(path). */
function rhs(_: number, y: number[]): number[] {
  const [w, dL, dR, heat, f, v, h, p, phi] = y as [number, number, number, number, number, number, number, number, number];
  void phi;
  const x = h / 8000;
  const delta = [5.737365427194163e-8, 2.5177422458000365e-6, -0.0003290731860801088, 0.007260163042612788, -0.07133555502614719,
    0.36422875048888176, -0.9484842972706813, 1].reduce((sum, c) => sum * x + c, 0);
  const theta = 1 - 0.0065 * h / 288.15;
  const rho = 1.225 * delta / theta;
  const mach = v / Math.sqrt(1.4 * 287.05287 * 288.15 * theta);
  const q = 0.5 * rho * v * v;
  const [m, s, b] = [48000, 116, 33];
  const weight = m * 9.80665;
  const gq = 10.2704 * 1.0892 / (2160 * 0.62);
  const load = 10 + gq * q * (0.05 + 0.0108 * dL) + gq * q * (0.05 + 0.0108 * dR);
  const inertia = 0.12 * 90 / 0.19;
  const torque = 90 * (1 - w / 0.19);
  const current = 0.1 + torque / 90;
  const gain = 1 / (1 - Math.exp(-0.5)) / (0.1 + 27.3 / 90) ** 2;
  const spool = (0.07 - f) / (1.2 + 2.5 * (1 - f));
  const a = -0.4327 * delta ** 2 + 1.3855 * delta + 0.0472;
  const z = 0.9106 * delta ** 3 - 1.7736 * delta ** 2 + 1.8697 * delta;
  const xx = 0.1377 * delta ** 3 - 0.4374 * delta ** 2 + 1.3003 * delta;
  const thrust = 2 * f * 105000 * (a - 1.0616 * z * mach + 0.6756 * xx * mach ** 2);
  const cl = weight * Math.sqrt(1 - PATH ** 2) / (q * s);
  const sine2 = (deg: number): number => { const r2 = (deg * Math.PI / 180) ** 2; return r2 * (1 - r2 / 3 + 2 * r2 * r2 / 45); };
  const aspect = b * b / s;
  const cd = 0.019 + 0.0045 + 0.1615 * (sine2(dL) + sine2(dR)) / 2 + cl * cl / (Math.PI * aspect * (0.81 - 0.0021 * (dL + dR) / 2));
  const effect = (deg: number): number => 0.630483 * deg * (0.86 - 0.00014 * deg * deg) * Math.PI / 180;
  const split = 0.5 * 0.9 * 0.5024386823 * (effect(dL) - effect(dR));
  const inertiaX = m * (b / 2 * 0.246) ** 2;
  return [
    (torque - load) / inertia, RATIO * w, w, (gain * current ** 2 - heat) / 480, spool,
    (thrust - cd * q * s) / m - 9.80665 * PATH, v * PATH, q * s * b * (split + 0.9 * -0.4788464797 * p * b / (2 * v)) / inertiaX, p,
  ];
}

describe('40 s against odex', () => {
  const solver = new Solver(KEYS.length);
  solver.absoluteTolerance = solver.relativeTolerance = 1e-13;
  solver.maxSteps = 100000;
  const exact = solver.solve(rhs, 0, KEYS.map((key) => start[key]), 40).y;
  const got = advance({ fixed: world.fixed, state: start }, [], 4000).state;
  const within: Record<(typeof KEYS)[number], number> = {
    rateDegPerS: 5.3e-10, leftDeg: 1.2e-8, rightDeg: 2.1e-8, motorHeat: 3.5e-9, leftThrust: 1.8e-10,
    speedMps: 3.1e-7, heightM: 3.8e-6, rollRate: 2e-9, bankRad: 4e-8,
  };
  it.each(KEYS.map((key, index) => [key, index] as const))('%s', (key, index) => {
    expect(Math.abs(got[key] - (exact[index] as number))).toBeLessThan(within[key]);
  });
  it('went somewhere', () => {
    expect(got.rightDeg).toBeGreaterThan(9);
    expect(got.leftThrust).toBeLessThan(0.1);
    expect(Math.abs(got.bankRad)).toBeGreaterThan(0.1);
  });
});
