/** Measures of the two pointers, shared by the instrument and by its figures on pages. */

/** Half widths in px, of the shaft and of the head's foot, and where the head's foot and the letter stand as parts of the radius. */
export const NEEDLES = {
  left: { shaft: 1.75, head: 6.5, foot: 0.84, letter: 0.47 },
  right: { shaft: 4.5, head: 11.5, foot: 0.8, letter: 0.6 },
} as const;

/** Width of the outline of the right pointer, px. */
export const OUTLINE = 1.6;

/** Where the letters stand from the hinge, px: on a short pointer the left one gives way, so that neither covers the other. */
export function lettersAt(radius: number, bead: number): { readonly left: number; readonly right: number } {
  const right = radius * NEEDLES.right.letter;
  return { left: Math.max(bead + 7, Math.min(radius * NEEDLES.left.letter, right - 2 * bead - 3)), right };
}
