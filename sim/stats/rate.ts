/** A rate of events: a count over a time. */
import { bisect } from './bisect.js';
import type { Interval } from './proportion.js';

/** Chance of `count` or more events where `mean` are expected. */
function poissonTail(count: number, mean: number): number {
  // The shorter side is summed: below the mean from 0 up to count, above it from count on.
  let term = Math.exp(-mean + count * Math.log(mean) - lnFactorial(count));
  let sum = 0;
  if (count > mean) {
    for (let i = count; term > 1e-18 * sum; ) {
      sum += term;
      i += 1;
      term *= mean / i;
    }
    return sum;
  }
  for (let i = count; i > 0; i -= 1) sum += term *= i / mean;
  return 1 - sum;
}

function lnFactorial(n: number): number {
  let sum = 0;
  for (let i = 2; i <= n; i += 1) sum += Math.log(i);
  return sum;
}

/**
 * Exact interval of a rate.
 * @param count events, whole, 0 to 1e6 @param time any unit, above 0 @param level two-sided confidence
 * @returns limits of count / time, each in events for one unit of that time
 * @throws RangeError for a count that is none or a time that is not above 0
 * Source: Garwood, Biometrika 28 (1936) 437.
 */
export function garwood(count: number, time: number, level = 0.95): Interval {
  if (!(Number.isInteger(count) && count >= 0 && count <= 1e6 && time > 0)) throw new RangeError(`${count} events in a time of ${time}`);
  const tail = (1 - level) / 2;
  const most = count + 40 + 10 * Math.sqrt(count + 1);
  return {
    lo: count === 0 ? 0 : bisect((mean) => poissonTail(count, mean) - tail, 1e-12, count) / time,
    hi: bisect((mean) => poissonTail(count + 1, mean) - 1 + tail, Math.max(count, 1e-12), most) / time,
  };
}
