/**
 * exp, ln, sin and the normal quantile from + - * / and sqrt alone, so that every engine gives the same bits.
 * The language leaves Math.exp and its kin to the engine, and engines differ in the last place.
 * Each is checked against Math and published values to 1e-14 in tests/sim/portable.test.ts.
 */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const INV_LN2 = 1.4426950408889634;

/** 1/13!, 1/12!, ... 1/1!, 1: Taylor's series of exp; on |r| <= ln2 / 2 the next term is below 1e-17. */
const EXP = [
  1.605904383682161e-10, 2.08767569878681e-9, 2.505210838544172e-8, 2.755731922398589e-7, 2.7557319223985893e-6,
  2.48015873015873e-5, 1.984126984126984e-4, 1.388888888888889e-3, 8.333333333333333e-3, 4.1666666666666664e-2,
  0.16666666666666666, 0.5, 1, 1,
];

const horner = (terms: readonly number[], x: number): number => {
  let sum = 0;
  for (const term of terms) sum = sum * x + term;
  return sum;
};

/** `x` times 2 to the power `n`, exact as long as the result is a normal number. */
function scale(x: number, n: number): number {
  let result = x;
  for (let left = Math.abs(n); left > 0; left -= 1) result = n > 0 ? result * 2 : result * 0.5;
  return result;
}

/** e to the power `x`, at most 700. Below -700 it is 0, which is nearer than any figure of the trade can tell. */
export function exp(x: number): number {
  if (!(x <= 700)) throw new RangeError(`exp of ${x}: at most 700`);
  if (x < -700) return 0;
  const n = Math.floor(x * INV_LN2 + 0.5);
  const r = x - n * LN2_HIGH - n * LN2_LOW;
  return scale(horner(EXP, r), n);
}

/** 2/21, 2/19, ... 2/1: ln m = 2 (s + s^3/3 + ...) with s = (m - 1)/(m + 1), |s| <= 0.1716. */
const LN = [2 / 21, 2 / 19, 2 / 17, 2 / 15, 2 / 13, 2 / 11, 2 / 9, 2 / 7, 2 / 5, 2 / 3, 2];
const SQRT2 = 1.4142135623730951;

/** Natural logarithm of a positive number. */
export function ln(x: number): number {
  if (!(x > 0 && x < Infinity)) throw new RangeError(`ln of ${x}`);
  let m = x;
  let e = 0;
  while (m > SQRT2) { m *= 0.5; e += 1; }
  while (m < SQRT2 / 2) { m *= 2; e -= 1; }
  const s = (m - 1) / (m + 1);
  return e * LN2_HIGH + (s * horner(LN, s * s) + e * LN2_LOW);
}

/**
 * (sin r) / r and cos r in x = r^2, highest term first; on |r| <= pi / 4 the next is below 1e-17. Written out: the tick takes a
 * sine, and a walk of a table would make a number a term.
 */
const sinOverR = (x: number): number => ((((((((-8.22063524662433e-18 * x + 2.8114572543455206e-15) * x - 7.647163731819816e-13) * x
  + 1.6059043836821613e-10) * x - 2.505210838544172e-8) * x + 2.7557319223985893e-6) * x - 1.984126984126984e-4) * x
  + 8.333333333333333e-3) * x - 0.16666666666666666) * x + 1;
const cosOf = (x: number): number => (((((((((4.110317623312165e-19 * x - 1.5619206968586225e-16) * x + 4.779477332387385e-14) * x
  - 1.1470745597729725e-11) * x + 2.08767569878681e-9) * x - 2.755731922398589e-7) * x + 2.48015873015873e-5) * x
  - 1.388888888888889e-3) * x + 4.1666666666666664e-2) * x - 0.5) * x + 1;
/** pi / 2 in three parts (Cody and Waite), so that whole quarter turns come off without loss. */
const HALF_PI = [1.5707963267341256, 6.077100506303966e-11, 2.0222662487959506e-21] as const;

/** Sine of an angle in rad. Range: -10,000 to 10,000. */
export function sin(x: number): number {
  if (!(x >= -1e4 && x <= 1e4)) throw new RangeError(`sin of ${x} is outside -10,000 to 10,000`);
  const n = Math.floor(x * 0.6366197723675814 + 0.5);
  const r = x - n * HALF_PI[0] - n * HALF_PI[1] - n * HALF_PI[2];
  const quarter = n - 4 * Math.floor(n / 4);
  const value = quarter === 0 || quarter === 2 ? r * sinOverR(r * r) : cosOf(r * r);
  return quarter >= 2 ? -value : value;
}

/** Coefficients of algorithm AS 241, PPND16: M. J. Wichura, Applied Statistics 37 (1988) 477-484; highest power first. */
const CENTRE = [
  [2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457,
    13731.693765509461125, 1971.5909503065514427, 133.14166789178437745, 3.387132872796366608],
  [5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867,
    5394.1960214247511077, 687.1870074920579083, 42.313330701600911252, 1],
] as const;
const NEAR = [
  [7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
    3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734],
  [1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
    0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1],
] as const;
const FAR = [
  [2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
    0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772],
  [2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
    0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1],
] as const;

/** Standard normal quantile of a probability strictly between 0 and 1. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`normal quantile of ${p} is outside 0 to 1`);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return q * horner(CENTRE[0], r) / horner(CENTRE[1], r);
  }
  const r = Math.sqrt(-ln(q < 0 ? p : 1 - p));
  const [over, under, shift] = r <= 5 ? [...NEAR, 1.6] as const : [...FAR, 5] as const;
  const z = horner(over, r - shift) / horner(under, r - shift);
  return q < 0 ? -z : z;
}
