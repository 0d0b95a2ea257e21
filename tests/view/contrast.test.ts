// Contrast of every pair of colours that is used, by the formula of WCAG 2.2, read from the style sheet itself.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync(new URL('../../src/pages/look/tokens.css', import.meta.url), 'utf8');

/** Relative luminance, WCAG 2.2: https://www.w3.org/TR/WCAG22/#dfn-relative-luminance */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio, WCAG 2.2: https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio. Never rounded: 4.499 fails. */
function contrast(one: string, other: string): number {
  const [high, low] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

test('the formula gives the well-known ratios', () => {
  // The greys at the two limits on white, computed from the definition to 40 digits; #767676 is W3C's own example.
  const known: [string, string, number][] = [
    ['#000000', '#ffffff', 21], ['#767676', '#ffffff', 4.5422], ['#777777', '#ffffff', 4.4781], ['#949494', '#ffffff', 3.0335],
    ['#959595', '#ffffff', 2.9953], ['#ff0000', '#ffffff', 3.9985], ['#ff0000', '#202020', 4.0749],
  ];
  for (const [one, other, ratio] of known) expect(contrast(one, other)).toBeCloseTo(ratio, 3);
});

/** The colours of a block as [day, night]. */
function palettes(block: string): Record<string, [string, string]> {
  const found = [...block.matchAll(/--(\w+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)];
  return Object.fromEntries(found.map(([, name, day, night]) => [name, [day, night]])) as Record<string, [string, string]>;
}

const plain = palettes(css.slice(0, css.indexOf('@media')));
const strong = { ...plain, ...palettes(css.slice(css.indexOf('prefers-contrast'), css.indexOf('forced-colors'))) };

/** What stands on what. Text wants 4.5:1 (1.4.3), a mark 3:1 (1.4.11); `hair` only rules the page and carries nothing. */
const TEXT = [
  ['ink', 'paper'], ['ink', 'sheet'], ['ink', 'wash'], ['soft', 'paper'], ['soft', 'sheet'], ['soft', 'wash'],
  ['accent', 'paper'], ['accent', 'sheet'], ['accent', 'wash'], ['paper', 'accent'], ['paper', 'ink'],
  ['warning', 'paper'], ['warning', 'sheet'], ['caution', 'paper'], ['caution', 'sheet'],
] as const;
const MARKS = [['mark', 'paper'], ['mark', 'sheet'], ['ink', 'paper'], ['accent', 'paper'], ['accent', 'sheet'], ['soft', 'paper']] as const;

describe.each([['plain', plain], ['more contrast', strong]] as const)('%s', (_, palette) => {
  test('every colour is there by day and by night', () => {
    for (const name of new Set([...TEXT, ...MARKS].flat())) expect(palette[name], name).toHaveLength(2);
  });
  test.each(TEXT)('%s as text on %s', (one, other) => {
    for (const time of [0, 1] as const) expect(contrast(palette[one]![time], palette[other]![time])).toBeGreaterThanOrEqual(4.5);
  });
  test.each(MARKS)('%s as a mark on %s', (one, other) => {
    for (const time of [0, 1] as const) expect(contrast(palette[one]![time], palette[other]![time])).toBeGreaterThanOrEqual(3);
  });
});

test('no ordinary colour is red, amber or green: those are for alerts (14 CFR 25.1322)', () => {
  for (const name of ['accent', 'wash']) {
    for (const hex of plain[name]!) {
      const [r, g, b] = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16)) as [number, number, number];
      expect(b, `${name} ${hex} is a blue`).toBeGreaterThan(Math.max(r, g));
    }
  }
});
