/**
 * Lifting line in Galerkin form: derives an airframe's roll constants from its planform, offline. Uses Math freely:
 * nothing it computes is stored in a record; results are pasted into an airframe file as decimals.
 *
 * y = (b/2) cos t, circulation = 2 b V sum A_n sin n t, mu = a0 c / (4 b). The monoplane equation times sin k t, integrated:
 *   sum_n [ int (sin t / mu) sin k t sin n t dt + n (pi / 2) d_kn ] A_n = int alpha(t) sin t sin k t dt.
 * Right sides for steps of twist are exact, so convergence is fast. CL = pi AR A_1, rolling moment Cl = pi AR A_2 / 4.
 */
export interface Planform {
  readonly areaM2: number;
  readonly spanM: number;
  /** Chord, m, at a fraction of the semispan, 0 to 1; symmetric. */
  readonly chordAt: (eta: number) => number;
  /** Lift slope of the section, 1/rad. */
  readonly sectionSlopePerRad: number;
}

/** Which loads: odd terms are symmetric about the middle, even ones antisymmetric. */
export type Parity = 'symmetric' | 'antisymmetric';

/** Chord of a straight-tapered wing. @param taper tip chord over root chord, 0 to 1 */
export function taperedChord(areaM2: number, spanM: number, taper: number): (eta: number) => number {
  const root = 2 * areaM2 / (spanM * (1 + taper));
  return (eta) => root * (1 - (1 - taper) * eta);
}

/** Chord of an elliptic wing. */
export const ellipticChord = (areaM2: number, spanM: number): ((eta: number) => number) =>
  (eta) => 4 * areaM2 / (Math.PI * spanM) * Math.sqrt(Math.max(0, 1 - eta * eta));

export const aspectRatio = ({ areaM2, spanM }: Planform): number => spanM * spanM / areaM2;

/** Nodes and weights of Gauss and Legendre on 16 points, half of the symmetric rule (Abramowitz and Stegun, table 25.4). */
const NODES = [0.0950125098376374, 0.2816035507792589, 0.4580167776572274, 0.6178762444026438, 0.755404408355003, 0.8656312023878318, 0.9445750230732326, 0.9894009349916499] as const;
const WEIGHTS = [0.1894506104550685, 0.1826034150449236, 0.1691565193950025, 0.1495959888165767, 0.1246289712555339, 0.0951585116824928, 0.0622535239386479, 0.0271524594117541] as const;

/** Points and weights of a composite rule on [from, to]. */
export function gaussPoints(from: number, to: number, panels: number): { t: number; w: number }[] {
  const width = (to - from) / panels;
  return Array.from({ length: panels }, (_, panel) => from + (panel + 0.5) * width).flatMap((middle) =>
    NODES.flatMap((node, at) => [-1, 1].map((sign) => ({ t: middle + sign * node * width / 2, w: (WEIGHTS[at] ?? 0) * width / 2 }))));
}

/** int sin t sin k t dt from `from` to `to`. */
export function sineProduct(k: number, from: number, to: number): number {
  const at = (t: number): number => 0.5 * ((k === 1 ? t : Math.sin((k - 1) * t) / (k - 1)) - Math.sin((k + 1) * t) / (k + 1));
  return at(to) - at(from);
}

/** Solves a symmetric positive definite system by Cholesky. @throws RangeError when it is not positive definite */
function solve(matrix: number[][], right: number[]): number[] {
  const n = right.length;
  const low: number[][] = matrix.map(() => Array.from({ length: n }, () => 0));
  const cell = (of: number[][], i: number, j: number): number => of[i]?.[j] ?? 0;
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = cell(matrix, i, j);
      for (let m = 0; m < j; m += 1) sum -= cell(low, i, m) * cell(low, j, m);
      if (i === j && !(sum > 0)) throw new RangeError('the wing gives no positive system');
      (low[i] as number[])[j] = i === j ? Math.sqrt(sum) : sum / cell(low, j, j);
    }
  }
  const x = [...right];
  for (let i = 0; i < n; i += 1) {
    for (let m = 0; m < i; m += 1) x[i] = (x[i] ?? 0) - cell(low, i, m) * (x[m] ?? 0);
    x[i] = (x[i] ?? 0) / cell(low, i, i);
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    for (let m = i + 1; m < n; m += 1) x[i] = (x[i] ?? 0) - cell(low, m, i) * (x[m] ?? 0);
    x[i] = (x[i] ?? 0) / cell(low, i, i);
  }
  return x;
}

export interface Loading {
  /** n of each term: 1, 3, 5 ... or 2, 4, 6 ... */
  readonly orders: readonly number[];
  /** A_n for the unit angle. */
  readonly terms: readonly number[];
}

/**
 * Loading for a right side given term by term.
 * @param rightSide int alpha(t) sin t sin k t dt over the whole span, for a unit angle of 1 rad
 * @param count terms of the given parity
 */
export function loading(wing: Planform, parity: Parity, rightSide: (k: number) => number, count = 60): Loading {
  const orders = Array.from({ length: count }, (_, at) => (parity === 'symmetric' ? 2 * at + 1 : 2 * at + 2));
  const points = gaussPoints(0, Math.PI / 2, Math.max(20, count)).map(({ t, w }) => {
    const mu = wing.sectionSlopePerRad * wing.chordAt(Math.cos(t)) / (4 * wing.spanM);
    return { weight: 2 * w * Math.sin(t) / mu, sines: orders.map((n) => Math.sin(n * t)) };
  });
  const matrix = orders.map((n, i) => orders.map((_, j) => {
    if (j > i) return 0; // Cholesky reads the lower half
    let sum = i === j ? n * Math.PI / 2 : 0;
    for (const { weight, sines } of points) sum += weight * (sines[i] ?? 0) * (sines[j] ?? 0);
    return sum;
  }));
  return { orders, terms: solve(matrix, orders.map(rightSide)) };
}

/** Lift slope of the whole wing, 1/rad. */
export const liftSlope = (wing: Planform, count?: number): number =>
  Math.PI * aspectRatio(wing) * (loading(wing, 'symmetric', (k) => sineProduct(k, 0, Math.PI), count).terms[0] ?? 0);

/** Span efficiency loss of the untwisted wing: CDi = CL^2 / (pi AR) (1 + delta). */
export function inducedDelta(wing: Planform, count?: number): number {
  const { orders, terms } = loading(wing, 'symmetric', (k) => sineProduct(k, 0, Math.PI), count);
  const first = terms[0] ?? 1;
  return orders.reduce((sum, n, at) => (n === 1 ? sum : sum + n * ((terms[at] ?? 0) / first) ** 2), 0);
}

/** The steps of twist on both flaps between two fractions of the semispan; the left one turned over for antisymmetric. */
export function flapSide(k: number, from: number, to: number, parity: Parity): number {
  const [inner, outer] = [Math.acos(from), Math.acos(to)];
  const right = sineProduct(k, outer, inner);
  const left = sineProduct(k, Math.PI - inner, Math.PI - outer);
  return parity === 'symmetric' ? right + left : right - left;
}

/** Lift of both flaps at unit section twist, 1/rad. */
export const flapLift = (wing: Planform, from: number, to: number, count?: number): number =>
  Math.PI * aspectRatio(wing) * (loading(wing, 'symmetric', (k) => flapSide(k, from, to, 'symmetric'), count).terms[0] ?? 0);

/** Rolling moment of +1 and -1 rad of twist on the two flaps (or ailerons), positive, 1/rad. */
export const flapRoll = (wing: Planform, from: number, to: number, count?: number): number =>
  Math.PI * aspectRatio(wing) / 4 * (loading(wing, 'antisymmetric', (k) => flapSide(k, from, to, 'antisymmetric'), count).terms[0] ?? 0);

/** Roll damping: rolling moment for each p b / 2V, negative. */
export const rollDamping = (wing: Planform, count?: number): number =>
  Math.PI * aspectRatio(wing) / 4 * (loading(wing, 'antisymmetric', (k) => (k === 2 ? -Math.PI / 4 : 0), count).terms[0] ?? 0);
