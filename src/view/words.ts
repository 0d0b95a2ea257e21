/** Readings as words, for whoever hears the drill instead of seeing it, and the labels both share. */

/** What the eye takes from the fan at best: half of its finest division, deg. Nothing is spoken finer. */
const SPOKEN_DEG = 0.5;

export const spokenDeg = (deg: number): string => {
  const rounded = Math.round(deg / SPOKEN_DEG) * SPOKEN_DEG;
  // Adding zero turns a minus zero into a plain one.
  return `${(rounded + 0).toFixed(1)} degrees`;
};

/** With a capital letter. */
export const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

export const knots = (kt: number): string => `${Math.round(kt)} knots`;

/** A height in whole feet, written everywhere as a clearance and a brief write it: 5600. Adding zero turns a minus zero into a plain one. */
export const feet = (value: number): string => String(Math.round(value) + 0);

const wholeDeg = (deg: number): string => `${Math.round(deg)}°`;

export const PATH_WORDS = { level: 'level', down: 'descending', up: 'climbing' } as const;
export const GEAR_WORDS = { up: 'up', moving: 'moving', down: 'down and locked' } as const;

export const anglesInWords = ({ leftTlaDeg, rightTlaDeg }: { leftTlaDeg: number; rightTlaDeg: number }): string =>
  `left ${Math.round(leftTlaDeg)}, right ${Math.round(rightTlaDeg)} degrees`;

/** Bank to the degree: a horizon of this size is read no finer. */
export function bankWords(deg: number): string {
  const whole = Math.round(Math.abs(deg));
  return whole === 0 ? 'level' : `${whole} ${whole === 1 ? 'degree' : 'degrees'} ${deg > 0 ? 'right' : 'left'}`;
}

/** A deflection without a figure, in the steps that an eye takes from the mark: near the middle, some, much. */
export function controlWords(part: number): string {
  const size = Math.abs(part);
  if (size < 0.05) return 'in the middle';
  return `${size < 0.2 ? 'a little' : size < 0.4 ? 'some' : 'much'} ${part > 0 ? 'right' : 'left'}`;
}

/** Both lever angles where there is little room: one figure while they are the same. */
export function anglesOf({ leftTlaDeg, rightTlaDeg }: { leftTlaDeg: number; rightTlaDeg: number }): string {
  const [left, right] = [wholeDeg(leftTlaDeg), wholeDeg(rightTlaDeg)];
  return left === right ? left : `L ${left} R ${right}`;
}

export const GEAR_SHORT = { up: 'up', moving: 'moving', down: 'locked' } as const;

/** A heading as it is said: three figures, 001 to 360. */
export const headingFigures = (deg: number): string => String(deg).padStart(3, '0');
