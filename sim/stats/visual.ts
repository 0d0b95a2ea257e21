/** Lengths as an eye at a distance meets them. */

const DEG = 180 / Math.PI;

/** The visual angle of a length at a distance, both in mm and above 0, deg: 2 atan(s / 2D). */
export const visualDeg = (mm: number, distanceMm: number): number => 2 * Math.atan(mm / (2 * distanceMm)) * DEG;
/** The same in minutes of arc; `mm` is the length. */
export const visualMin = (mm: number, distanceMm: number): number => visualDeg(mm, distanceMm) * 60;
/** The length that has a visual angle at a distance, mm. */
export const mmOf = (deg: number, distanceMm: number): number => 2 * distanceMm * Math.tan(deg / 2 / DEG);
