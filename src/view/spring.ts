/** The way of the drawn knob: a hand moves it at once, the spring brings it back with one small overshoot. */
import type { Picture } from './picture.js';

/** Natural frequency and damping of the drawn spring, for the eye alone. */
const RATE_PER_S = 34;
const DAMPING = 0.62;
/** Longest step of the sums, s: after a pause the knob is simply where it belongs. */
const LONGEST_S = 0.1;

/** `still` leaves out the movement, for those who ask for less of it. */
export function knobSpring(places: Readonly<Record<Picture['drive'], number>>, still = false): (timeS: number, way: Picture['drive']) => number {
  let place: number | null = null;
  let speed = 0;
  let last = 0;
  return (timeS, way) => {
    const goal = places[way];
    const stepS = timeS - last;
    last = timeS;
    if (place === null || still || stepS < 0 || stepS > LONGEST_S || way !== 'off') {
      // A held knob follows the hand without delay: what the hand does must show at once.
      place = goal;
      speed = 0;
      return place;
    }
    for (let part = 0; part < 8; part += 1) {
      const s = stepS / 8;
      speed += (RATE_PER_S * RATE_PER_S * (goal - place) - 2 * DAMPING * RATE_PER_S * speed) * s;
      place += speed * s;
    }
    if (Math.abs(goal - place) < 0.05 && Math.abs(speed) < 1) {
      place = goal;
      speed = 0;
    }
    return place;
  };
}
