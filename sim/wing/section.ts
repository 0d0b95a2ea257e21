/** Thin-aerofoil theory of a section with a plain flap (Glauert): effectiveness and hinge moments. Offline, Math used freely. */
import { gaussPoints } from './lifting-line.js';

/** Angle of the hinge on the section's circle, cos = 2 F - 1. @param fraction flap chord over chord, 0 to 1 */
const hingeAngle = (fraction: number): number => Math.acos(2 * fraction - 1);

/** Flap effectiveness: change of zero-lift angle for each unit of flap angle (Houghton and Carpenter, eq. 4.52). */
export function flapEffectiveness(fraction: number): number {
  const t = hingeAngle(fraction);
  return 1 - (t - Math.sin(t)) / Math.PI;
}

/** Hinge-moment coefficients for each degree: of flap angle (b2) and of incidence (b1); negative: they close the flap. */
export function hingeDerivatives(fraction: number): { perFlapDeg: number; perIncidenceDeg: number } {
  const hinge = hingeAngle(fraction);
  let flap = 0;
  let incidence = 0;
  // The pressure has a logarithm at the hinge; points are packed toward it by a squared step.
  for (const { t: s, w } of gaussPoints(0, 1, 200)) {
    const t = hinge + (Math.PI - hinge) * s * s;
    const dt = (Math.PI - hinge) * 2 * s * w;
    const arm = (Math.cos(hinge) - Math.cos(t)) / 2;
    const share = 4 / (fraction * fraction) * arm * Math.sin(t) / 2 * dt;
    const cotangent = Math.cos(t / 2) / Math.sin(t / 2);
    const logarithm = Math.log(Math.abs(Math.sin((t + hinge) / 2) / Math.sin((t - hinge) / 2)));
    incidence -= share * cotangent;
    flap -= share * ((Math.PI - hinge) / Math.PI * cotangent + logarithm / Math.PI);
  }
  return { perFlapDeg: flap * Math.PI / 180, perIncidenceDeg: incidence * Math.PI / 180 };
}
