/**
 * What the wing's own wake costs when the flaps stand at twists eL and eR (rad of section zero-lift change, the mean
 * e = (eL + eR) / 2 and half the difference g = (eR - eL) / 2): induced drag and the yaw of a split. Offline.
 *
 * CDi = pi AR sum n A_n^2 and Cn = (pi AR / 4) sum (2n + 1) A_n A_(n+1) of lifting-line theory (Glauert), written out in
 * CL, e and g, since A_n is linear in them.
 */
import { aspectRatio, flapSide, loading, sineProduct, type Planform } from './lifting-line.js';

export interface Induced {
  /** CDi = perCl2 CL^2 + perClE CL e + perE2 e^2 + perG2 g^2. */
  readonly perCl2: number;
  readonly perClE: number;
  readonly perE2: number;
  readonly perG2: number;
  /** Cn = yawPerClG CL g + yawPerEG e g; positive as both products are. */
  readonly yawPerClG: number;
  readonly yawPerEG: number;
}

/** @param from inner end of the flap, part of the semispan @param to outer end @param count terms of each parity */
export function inducedOf(wing: Planform, from: number, to: number, count = 60): Induced {
  const whole = loading(wing, 'symmetric', (k) => sineProduct(k, 0, Math.PI), count);
  const both = loading(wing, 'symmetric', (k) => flapSide(k, from, to, 'symmetric'), count);
  const one = loading(wing, 'antisymmetric', (k) => flapSide(k, from, to, 'antisymmetric'), count);
  const scale = Math.PI * aspectRatio(wing);
  const first = whole.terms[0] ?? 1;
  // A_n (odd) = perCl CL + perE e: the incidence is eliminated by CL = pi AR A_1.
  const perCl = whole.terms.map((term) => term / (first * scale));
  const perE = both.terms.map((term, at) => term - (both.terms[0] ?? 0) * (whole.terms[at] ?? 0) / first);
  const sum = (orders: readonly number[], a: readonly number[], b: readonly number[]): number =>
    orders.reduce((all, n, at) => all + n * (a[at] ?? 0) * (b[at] ?? 0), 0);
  // Neighbours: odd term n at place i has the even ones n - 1 (place i - 1) and n + 1 (place i).
  const beside = (odd: readonly number[]): number => odd.reduce((all, term, at) => {
    const n = 2 * at + 1;
    return all + (2 * n + 1) * term * (one.terms[at] ?? 0) + (at === 0 ? 0 : (2 * n - 1) * term * (one.terms[at - 1] ?? 0));
  }, 0);
  return {
    perCl2: scale * sum(whole.orders, perCl, perCl),
    perClE: 2 * scale * sum(whole.orders, perCl, perE),
    perE2: scale * sum(whole.orders, perE, perE),
    perG2: scale * sum(one.orders, one.terms, one.terms),
    yawPerClG: scale / 4 * beside(perCl),
    yawPerEG: scale / 4 * beside(perE),
  };
}
