/**
 * 14 CFR 25.1322(e), (f): red for warnings, amber or yellow for cautions, and neither for anything else where it could be
 * taken for an alert. The page has no alert yet that has a colour, so no colour of the house may be red, amber or green.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../src/pages/look/tokens.css', import.meta.url), 'utf8');
const colours = [...new Set([...css.matchAll(/#[0-9a-f]{6}/g)].map(([hex]) => hex))];

/** Hue in degrees, and chroma from 0 to 1, of an sRGB colour. */
function hueOf(hex: string): { hue: number; chroma: number } {
  const [r, g, b] = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255) as [number, number, number];
  const [most, least] = [Math.max(r, g, b), Math.min(r, g, b)];
  const chroma = most - least;
  if (chroma === 0) return { hue: 0, chroma };
  const sixth = most === r ? (g - b) / chroma : most === g ? 2 + (b - r) / chroma : 4 + (r - g) / chroma;
  return { hue: (sixth * 60 + 360) % 360, chroma };
}

const name = ({ hue, chroma }: { hue: number; chroma: number }): string => {
  if (chroma < 0.2) return 'none';
  if (hue < 20 || hue > 340) return 'red';
  if (hue < 70) return 'amber';
  return hue > 80 && hue < 165 ? 'green' : 'other';
};

describe('colours', () => {
  it('are told apart by this test: red, amber, green, blue, grey', () => {
    expect(['#d21f1f', '#ffbf00', '#2e8b3d', '#2a45a8', '#808080'].map((hex) => name(hueOf(hex)))).toEqual(['red', 'amber', 'green', 'other', 'none']);
  });
  it.each(colours)('%s is no alert', (hex) => {
    expect(['none', 'other']).toContain(name(hueOf(hex)));
  });
  it('there are some', () => expect(colours.length).toBeGreaterThan(10));
});
