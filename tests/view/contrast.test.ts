// Contrast of every pair of colours that is used, by the formula of WCAG 2.2, read from the style sheet itself.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { contrast, MARKS, palettes, TEXT } from './colours.js';

const css = readFileSync(new URL('../../src/pages/look/tokens.css', import.meta.url), 'utf8');

test('the formula gives the well-known ratios', () => {
  // The greys at the two limits on white, computed from the definition to 40 digits; #767676 is W3C's own example.
  const known: [string, string, number][] = [
    ['#000000', '#ffffff', 21], ['#767676', '#ffffff', 4.5422], ['#777777', '#ffffff', 4.4781], ['#949494', '#ffffff', 3.0335],
    ['#959595', '#ffffff', 2.9953], ['#ff0000', '#ffffff', 3.9985], ['#ff0000', '#202020', 4.0749],
    ['#ff0000', '#000000', 5.252], ['#ffbf00', '#000000', 12.7043], ['#ffbf00', '#ffffff', 1.653], ['#00ffff', '#000000', 16.748],
  ];
  for (const [one, other, ratio] of known) expect(contrast(one, other)).toBeCloseTo(ratio, 3);
});

const plain = palettes(css.slice(0, css.indexOf('@media')));
const strong = { ...plain, ...palettes(css.slice(css.indexOf('prefers-contrast'), css.indexOf('forced-colors'))) };

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
