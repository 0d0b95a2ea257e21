// Places of the drill in every window: nothing over anything else, nothing outside, nothing too small for a finger.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layout } from '../../src/view/layout.js';
import { CONTROLS, READINGS } from '../../src/view/instruments.js';
import { FULL_RADIUS, PLACES, SMALLEST, TARGET, TARGETS, type Layout, type Rect } from '../../src/view/place.js';
import { leverRows, rowAt } from '../../src/view/rows.js';

const SIZES = [[1280, 720], [1920, 1080], [1024, 768], [844, 390], [390, 844], [640, 360], [320, 640], [2560, 1440], [1000, 600]] as const;

const anySize = fc.oneof(
  fc.record({ width: fc.integer({ min: SMALLEST.low.width, max: 3840 }), height: fc.integer({ min: SMALLEST.low.height, max: 2160 }) }).filter(({ width, height }) => width > height),
  fc.record({ width: fc.integer({ min: SMALLEST.tall.width, max: 1400 }), height: fc.integer({ min: SMALLEST.tall.height, max: 2400 }) }).filter(({ width, height }) => width <= height),
);

const inside = (at: Layout, { x, y, w, h }: Rect): boolean => x >= 0 && y >= 0 && x + w <= at.width + 1e-6 && y + h <= at.height + 1e-6;
const clash = (a: Rect, b: Rect): boolean => a.x < b.x + b.w - 1e-6 && b.x < a.x + a.w - 1e-6 && a.y < b.y + b.h - 1e-6 && b.y < a.y + a.h - 1e-6;

function problems(at: Layout): string[] {
  const found: string[] = [];
  for (const [index, name] of PLACES.entries()) {
    if (!inside(at, at[name])) found.push(`${name} leaves the window`);
    for (const other of PLACES.slice(index + 1)) if (clash(at[name], at[other])) found.push(`${name} lies over ${other}`);
  }
  for (const name of TARGETS) if (at[name].w < TARGET || at[name].h < TARGET) found.push(`${name} is ${at[name].w} x ${at[name].h}`);
  return found;
}

describe.each(SIZES)('%i x %i', (width, height) => {
  const at = layout(width, height);
  test('has room for everything', () => expect(problems(at)).toEqual([]));
  test('the fan lies in its place', () => {
    const { hingeX, hingeY, radius } = at.gauge;
    expect(hingeX - 5).toBeGreaterThanOrEqual(at.flaps.x);
    expect(hingeX + radius + 30).toBeLessThanOrEqual(at.flaps.x + at.flaps.w);
    expect(hingeY + radius + 30).toBeLessThanOrEqual(at.flaps.y + at.flaps.h);
  });
});

test('has room for everything in any window down to the smallest', () => {
  fc.assert(fc.property(anySize, ({ width, height }) => {
    expect(problems(layout(width, height))).toEqual([]);
  }), { numRuns: 500 });
});

test('a smaller window scrolls: the layout keeps its smallest size', () => {
  expect(layout(300, 200)).toMatchObject(SMALLEST.low);
  expect(layout(200, 300)).toMatchObject(SMALLEST.tall);
});

test.each([[1280, 720], [1920, 1080], [1024, 768], [844, 390], [390, 844]])('pointers are 60 mm or more at 96 px an inch in %i x %i', (width, height) => {
  // 60 mm is 60 / 25.4 * 96 = 226.77 px.
  expect(FULL_RADIUS).toBeCloseTo(226.772, 3);
  expect(layout(width, height).gauge.radius).toBeGreaterThanOrEqual(FULL_RADIUS);
});

test('controls stand as the rules order them: thrust ahead of the flap lever, retract above extend (14 CFR 25.777, 25.779)', () => {
  const at = layout(1280, 720);
  expect(at.thrust.y + at.thrust.h).toBeLessThan(at.lever.y);
  for (const [width, height] of SIZES) {
    const { retract, off, extend } = layout(width, height);
    expect(retract.y).toBeLessThan(off.y);
    expect(off.y).toBeLessThan(extend.y);
  }
});

test('speed and flaps are apart, so that they must be scanned', () => {
  for (const [width, height] of SIZES.filter(([w]) => w >= 1000)) {
    const at = layout(width, height);
    expect(at.flaps.x - (at.speed.x + at.speed.w)).toBeGreaterThan(width * 0.3);
  }
});

test('each setting of the lever has a row of its own, tall enough for a finger in every named window', () => {
  const settings = 6;
  for (const [width, height] of SIZES.filter(([, h]) => h >= 390)) {
    const { lever } = layout(width, height);
    const { top, pitch } = leverRows(lever, settings);
    expect(pitch, `${width} x ${height}`).toBeGreaterThanOrEqual(TARGET);
    for (let row = 0; row < settings; row += 1) {
      expect(rowAt(lever, settings, top + pitch * row + 0.01)).toBe(row);
      expect(rowAt(lever, settings, top + pitch * (row + 1) - 0.01)).toBe(row);
    }
    expect(rowAt(lever, settings, -1e4)).toBe(0);
    expect(rowAt(lever, settings, 1e4)).toBe(settings - 1);
  }
});

test('every instrument of the list has a place, a name and an identity of its own', () => {
  const at = layout(1280, 720);
  const all = [...READINGS, ...CONTROLS];
  for (const one of all) expect(inside(at, one.place(at)), one.id).toBe(true);
  expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
  expect(CONTROLS.map(({ id }) => id).sort()).toEqual([...TARGETS].sort());
});
