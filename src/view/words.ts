/** Readings as words, for whoever hears the drill instead of seeing it, and the labels both share. */

/** What the eye takes from the fan at best: half of its finest division, deg. Nothing is spoken finer. */
export const SPOKEN_DEG = 0.5;

export const spokenDeg = (deg: number): string => {
  const rounded = Math.round(deg / SPOKEN_DEG) * SPOKEN_DEG;
  // Adding zero turns a minus zero into a plain one.
  return `${(rounded + 0).toFixed(1)} degrees`;
};

export const knots = (kt: number): string => `${Math.round(kt)} knots`;

/** Thousands apart, as on any printed page: 5,600. */
export const grouped = (value: number): string => String(Math.round(value)).replace(/\B(?=(\d{3})+(?!\d))/g, ',');

export const wholeDeg = (deg: number): string => `${Math.round(deg)}°`;
