/** From a flap position to a place on the fan, and back. */
import type { Panel } from './picture.js';

type Dial = Panel['dial'];

/**
 * Angle on the dial, degrees clockwise from the mark of flap 0. Beyond the ends the last piece goes on, so that a
 * pointer that lies past the stop is shown where it says it is.
 */
export function dialDegOf(dial: Dial, flapDeg: number): number {
  const last = dial.length - 1;
  let piece = 1;
  while (piece < last && flapDeg > dial[piece]!.flapDeg) piece += 1;
  const from = dial[piece - 1]!;
  const to = dial[piece]!;
  return from.dialDeg + ((flapDeg - from.flapDeg) / (to.flapDeg - from.flapDeg)) * (to.dialDeg - from.dialDeg);
}

/** The flap position that the fan shows at an angle: the inverse of dialDegOf. */
export function flapDegOf(dial: Dial, dialDeg: number): number {
  const turned = dial.map(({ flapDeg, dialDeg: angle }) => ({ flapDeg: angle, dialDeg: flapDeg }));
  return dialDegOf(turned, dialDeg);
}

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** A point of the fan in px: flap 0 points to the right, and the pointer falls as the flaps fall. */
export function onFan(hinge: { hingeX: number; hingeY: number }, dialDeg: number, radius: number): { x: number; y: number } {
  const angle = radians(dialDeg);
  return { x: hinge.hingeX + radius * Math.cos(angle), y: hinge.hingeY + radius * Math.sin(angle) };
}

/** Length on the screen of one degree of flap at the tip of a pointer, px; the record keeps it. */
export function pxPerDeg(dial: Dial, radius: number): number {
  const from = dial[0]!;
  const to = dial[dial.length - 1]!;
  return (radians(to.dialDeg - from.dialDeg) / (to.flapDeg - from.flapDeg)) * radius;
}
