/**
 * 14 CFR 25.1322(e), (f): red for warnings, amber or yellow for cautions, and neither for anything else where it could be
 * taken for an alert. Two names of the style sheet are alerts, and they alone may be red or amber; nothing is green. Alerts are
 * drawn in one place, and no other file may ask for their colours.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../src/pages/look/tokens.css', import.meta.url), 'utf8');
const of = (line: string): string[] => [...line.matchAll(/#[0-9a-f]{6}/g)].map(([hex]) => hex);
const lines = css.split('\n');
const isAlert = (line: string, name: string): boolean => line.trimStart().startsWith(`--${name}:`);
const colours = [...new Set(lines.filter((line) => !isAlert(line, 'warning') && !isAlert(line, 'caution')).flatMap(of))];
const alerts = (['warning', 'caution'] as const).flatMap((name) => lines.filter((line) => isAlert(line, name)).flatMap(of).map((hex) => [name, hex] as const));

/** Every file of the page that could draw, but the style sheet that gives the colours their names. */
const files = readdirSync(new URL('../../src/', import.meta.url), { recursive: true, encoding: 'utf8' }).filter((file) => /\.(tsx?|css)$/.test(file) && !file.endsWith('tokens.css'));

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
  it.each(alerts)('%s is what it says: %s', (name_, hex) => {
    expect(name(hueOf(hex))).toBe(name_ === 'warning' ? 'red' : 'amber');
  });
  it('both alerts by day and night, and for more contrast', () => expect(alerts).toHaveLength(8));
  it('only the alerts are drawn in them', () => {
    const asking = files.filter((file) => /ink\.(warning|caution)\b|var\(--(warning|caution)\)/.test(readFileSync(new URL(`../../src/${file}`, import.meta.url), 'utf8')));
    expect(asking).toEqual(['view/alerts.ts']);
  });
  it('there are some', () => expect(colours.length).toBeGreaterThan(10));
});
