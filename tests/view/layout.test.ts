// Places of the drill in every window: nothing over anything else, nothing outside, nothing too small for a finger.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layout } from '../../src/view/layout.js';
import { CONTROLS, READINGS } from '../../src/view/instruments.js';
import { apartPx, AREAS, FULL_RADIUS, GAP, INSIDE, isUp, LEAST_RADIUS, SMALLEST, TAB_OF, TABS, TARGET, TARGETS, type Area, type Layout, type Rect, type Tab, type Target } from '../../src/view/place.js';
import { leverRows, rowAt } from '../../src/view/rows.js';
import { anywhere } from '../draw.js';

const SIZES = [[1280, 720], [1920, 1080], [1024, 768], [844, 390], [390, 844], [640, 360], [320, 640], [2560, 1440], [1000, 600]] as const;

const anySize = fc.oneof(
  fc.record({ width: fc.integer({ min: SMALLEST.low.width, max: 3840 }), height: fc.integer({ min: SMALLEST.low.height, max: 2160 }) }).filter(({ width, height }) => width > height),
  fc.record({ width: fc.integer({ min: SMALLEST.tall.width, max: 1400 }), height: fc.integer({ min: SMALLEST.tall.height, max: 2400 }) }).filter(({ width, height }) => width <= height),
);

const inside = (at: Layout, { x, y, w, h }: Rect): boolean => x >= 0 && y >= 0 && x + w <= at.width + 1e-6 && y + h <= at.height + 1e-6;
const clash = (a: Rect, b: Rect): boolean => a.x < b.x + b.w - 1e-6 && b.x < a.x + a.w - 1e-6 && a.y < b.y + b.h - 1e-6 && b.y < a.y + a.h - 1e-6;

/** Parts of one control touch each other: the places of a switch, the levers of a pair, the cover and its button. */
const ONE = [['retract', 'off', 'extend'], ['leftThrust', 'bothThrust', 'rightThrust'], ['silenceCover', 'silence']] as const;
const together = (a: string, b: string): boolean => ONE.some((parts) => [a, b].every((one) => parts.some((part) => part === one)));
const isTarget = (name: string): name is Target => TARGETS.some((target) => target === name);

/** Everything that is there while a tab is up; words stand over the controls where they have no place of their own. */
function placesOn(at: Layout, tab: Tab): (Area | Target)[] {
  const all = [...AREAS, ...TARGETS].filter((name) => at[name].w > 0 && isUp(at, tab, name));
  return at.talkOver ? all.filter((name) => name !== 'talk') : all;
}

function problems(at: Layout): string[] {
  const found = new Set<string>();
  for (const tab of at.tabbed ? TABS : (['flaps'] as const)) {
    const places = placesOn(at, tab);
    for (const [index, name] of places.entries()) {
      if (!inside(at, at[name])) found.add(`${name} leaves the window`);
      for (const other of places.slice(index + 1)) {
        if (INSIDE[other as Target] === name || INSIDE[name as Target] === other) continue;
        if (clash(at[name], at[other])) found.add(`${name} lies over ${other}`);
        const near = isTarget(name) && isTarget(other) && !together(name, other);
        if (near && clash(grown(at[name], GAP), at[other])) found.add(`${name} is nearer than ${GAP} px to ${other}`);
      }
    }
  }
  for (const [part, whole] of Object.entries(INSIDE)) if (!within(at[part as Target], at[whole])) found.add(`${part} leaves ${whole}`);
  for (const name of TARGETS) if (at[name].w > 0 && (at[name].w < TARGET - 1e-6 || at[name].h < TARGET - 1e-6)) found.add(`${name} is ${at[name].w} x ${at[name].h}`);
  return [...found];
}

const grown = ({ x, y, w, h }: Rect, by: number): Rect => ({ x: x - by + 1e-3, y: y - by + 1e-3, w: w + 2 * by - 2e-3, h: h + 2 * by - 2e-3 });
const within = (part: Rect, whole: Rect): boolean =>
  part.x >= whole.x - 1e-6 && part.y >= whole.y - 1e-6 && part.x + part.w <= whole.x + whole.w + 1e-6 && part.y + part.h <= whole.y + whole.h + 1e-6;

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

test('controls stand as the rules order them: gear ahead of thrust, thrust ahead of the flap lever, retract above extend (14 CFR 25.777, 25.779)', () => {
  for (const [width, height] of SIZES) {
    const at = layout(width, height);
    if (at.tabbed) continue;
    expect(at.gear.y + at.gear.h).toBeLessThan(at.bothThrust.y);
    expect(at.bothThrust.y + at.bothThrust.h).toBeLessThan(at.lever.y);
  }
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
    // Short desk windows and the smallest phones: 24 px and more (WCAG 2.2, 2.5.8), the lever as a whole is far larger.
    expect(pitch, `${width} x ${height}`).toBeGreaterThanOrEqual(height < 700 ? 34 : TARGET - 1e-6);
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
  for (const one of READINGS) expect(inside(at, at[one.place]), one.id).toBe(true);
  for (const one of CONTROLS) expect(inside(at, at[one.id]), one.id).toBe(true);
  expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
  expect(CONTROLS.map(({ id }) => id).sort()).toEqual([...TARGETS].sort());
});

test('where controls take turns, the drive, the gauge, the speed, the alerts and the calls never do', () => {
  for (const name of ['guard', 'arm', 'retract', 'off', 'extend', 'call', 'callClear', 'callFailed', 'callMoving', 'flaps', 'speed', 'bank', 'alerts'] as const) {
    expect(TAB_OF[name], name).toBeUndefined();
  }
});

test('the silence is apart from the call and from the hold: a hand that slips by half a finger does not find it', () => {
  const apart = (a: Rect, b: Rect): number => Math.max(a.x - b.x - b.w, b.x - a.x - a.w, a.y - b.y - b.h, b.y - a.y - a.h);
  for (const [width, height] of SIZES) {
    const { call, silence, extend, retract } = layout(width, height);
    expect(apart(call, silence), `${width} x ${height}`).toBeGreaterThanOrEqual(TARGET / 2);
    for (const way of [extend, retract]) expect(apart(way, silence), `${width} x ${height}`).toBeGreaterThanOrEqual(GAP);
  }
});

describe('what is wished of the gauge', () => {
  const anyWish = fc.record({
    radius: fc.option(anywhere(15, 3600)), apart: fc.option(anywhere(0, 6000)),
  });

  test('nothing overlaps, nothing is too small for a finger, the fan stays in its place, whatever is wished', () => {
    fc.assert(fc.property(anySize, anyWish, ({ width, height }, wish) => {
      const at = layout(width, height, wish);
      expect(problems(at)).toEqual([]);
      const { hingeX, hingeY, radius } = at.gauge;
      expect(hingeX - 5).toBeGreaterThanOrEqual(at.flaps.x);
      expect(hingeX + radius + 30).toBeLessThanOrEqual(at.flaps.x + at.flaps.w + 1e-6);
      expect(hingeY + radius + 30).toBeLessThanOrEqual(at.flaps.y + at.flaps.h + 1e-6);
    }), { numRuns: 400 });
  });

  test('a pointer is as long as wished, or the longest that there is room for, and never longer', () => {
    fc.assert(fc.property(anySize, anywhere(LEAST_RADIUS, 3000), ({ width, height }, radius) => {
      const given = layout(width, height, { radius, apart: null }).gauge.radius;
      expect(given).toBeLessThanOrEqual(radius + 1e-9);
      const most = layout(width, height, { radius: 1e6, apart: null }).gauge.radius;
      expect(given).toBeCloseTo(Math.min(radius, most), 6);
    }), { numRuns: 200 });
  });

  test('speed and flaps stand as far apart as wished wherever that is between the nearest and the farthest', () => {
    fc.assert(fc.property(anySize, anywhere(0, 5000), fc.option(fc.constant(200)), ({ width, height }, apart, radius) => {
      const given = apartPx(layout(width, height, { radius, apart }));
      const [nearest, farthest] = [0, 1e6].map((one) => apartPx(layout(width, height, { radius, apart: one })));
      expect(given).toBeCloseTo(Math.min(Math.max(apart, nearest!), farthest!), 3);
    }), { numRuns: 200 });
  });

  test('what a window gave of its own is given again when it is wished', () => {
    for (const [width, height] of SIZES) {
      const own = layout(width, height);
      const again = layout(width, height, { radius: own.gauge.radius, apart: apartPx(own) });
      expect(again.gauge.radius).toBeCloseTo(own.gauge.radius, 6);
      expect(apartPx(again), `${width} x ${height}`).toBeCloseTo(apartPx(own), 3);
    }
  });

  test('60 mm at 3.78 px a millimetre (a screen of 96 px an inch) fits each named window; 10 mm is drawn as the least that can be read', () => {
    for (const [width, height] of [[1280, 720], [1920, 1080], [1024, 768]] as const) expect(layout(width, height, { radius: 60 * 3.78, apart: null }).gauge.radius).toBeCloseTo(226.8, 6);
    expect(layout(1280, 720, { radius: 37.8, apart: null }).gauge.radius).toBe(LEAST_RADIUS);
  });
});
