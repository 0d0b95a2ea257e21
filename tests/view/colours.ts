// Contrast by the formula of WCAG 2.2, and the pairs of colours that the house puts together.

/** Relative luminance, WCAG 2.2: https://www.w3.org/TR/WCAG22/#dfn-relative-luminance */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio, WCAG 2.2: https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio. Never rounded: 4.499 fails. */
export function contrast(one: string, other: string): number {
  const [high, low] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/** The colours of a block of the style sheet as [day, night]. */
export function palettes(block: string): Record<string, [string, string]> {
  const found = [...block.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)];
  return Object.fromEntries(found.map(([, name, day, night]) => [name, [day, night]])) as Record<string, [string, string]>;
}

/** What stands on what. Text wants 4.5:1 (1.4.3), a mark 3:1 (1.4.11); `hair` only rules the page and carries nothing. */
export const TEXT = [
  ['ink', 'paper'], ['ink', 'sheet'], ['ink', 'wash'], ['soft', 'paper'], ['soft', 'sheet'], ['soft', 'wash'],
  ['accent', 'paper'], ['accent', 'sheet'], ['accent', 'wash'], ['paper', 'accent'], ['paper', 'ink'],
  ['warning', 'paper'], ['warning', 'sheet'], ['caution', 'paper'], ['caution', 'sheet'],
] as const;
export const MARKS = [['mark', 'paper'], ['mark', 'sheet'], ['ink', 'paper'], ['accent', 'paper'], ['accent', 'sheet'], ['soft', 'paper']] as const;
