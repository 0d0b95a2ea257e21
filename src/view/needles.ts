/** Measures of the two pointers, shared by the instrument and by its figures on pages. */

/** Half widths in px, of the shaft and of the head's foot, and where the head's foot and the letter stand as parts of the radius. */
export const NEEDLES = {
  left: { shaft: 1.75, head: 6.5, foot: 0.84, letter: 0.47 },
  right: { shaft: 4.5, head: 11.5, foot: 0.8, letter: 0.6 },
} as const;

/** Width of the outline of the right pointer, px. */
export const OUTLINE = 1.6;
