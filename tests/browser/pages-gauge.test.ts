// Screen equals replay: both pointers are read back from the pixels of the canvas and compared with the record's replay.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { commandsOfRecord, requestOf, tickOfStamp, traceRows } from '../../sim/index.js';
import { flapDegOf } from '../../src/view/dial.js';
import { layout } from '../../src/view/layout.js';
import { NEEDLES, OUTLINE } from '../../src/view/needles.js';
import type { GaugePlace } from '../../src/view/place.js';
import { spokenDeg } from '../../src/view/words.js';
import { endAndSave, makeReady, middleOf, startRun } from './drilling.js';
import { openApp } from './harness.js';

/** How dark one point of the ring is: 0 paper to 1 ink. */
interface Sample { angle: number; r: number; dark: number }
interface Shot { stampMs: number; twins: (string | null)[]; samples: Sample[] }

/** Ring of radii, as parts of the radius, in which nothing but the two shafts is drawn. */
const RING = { from: 0.66, to: 0.78, step: 0.012 };

/** In the frame after this call: its stamp, and what the canvas shows along the ring, between device pixels too. */
function shoot(page: Page, place: GaugePlace): Promise<Shot> {
  return page.evaluate(({ hingeX, hingeY, radius, ring }) => new Promise<Shot>((done) => {
    // Behind the app's own callback of the same frame: what is read is what its stamp drew.
    requestAnimationFrame(() => requestAnimationFrame((stampMs) => queueMicrotask(() => {
      const canvas = document.querySelector('canvas')!;
      const ratio = canvas.width / canvas.clientWidth;
      const [left, top, wide] = [Math.floor((hingeX - 20) * ratio), Math.floor((hingeY - 20) * ratio), Math.ceil((radius + 20) * ratio)];
      const { data } = canvas.getContext('2d')!.getImageData(left, top, wide, wide);
      const sum = (at: number): number => data[at]! + data[at + 1]! + data[at + 2]!;
      const paper = sum(0);
      const ink = 0x1a + 0x22 + 0x30;
      const dark = (x: number, y: number): number => (paper - sum(4 * (y * wide + x))) / (paper - ink);
      const samples: Sample[] = [];
      for (let part = ring.from; part <= ring.to; part += ring.step) {
        for (let angle = -4; angle <= 60; angle += 0.1) {
          const x = (hingeX + radius * part * Math.cos((angle * Math.PI) / 180)) * ratio - left - 0.5;
          const y = (hingeY + radius * part * Math.sin((angle * Math.PI) / 180)) * ratio - top - 0.5;
          const [px, py] = [Math.floor(x), Math.floor(y)];
          const [fx, fy] = [x - px, y - py];
          if (py < 0) continue;
          const between = (row: number): number => dark(px, row) * (1 - fx) + dark(px + 1, row) * fx;
          samples.push({ angle, r: radius * part, dark: between(py) * (1 - fy) + between(py + 1) * fy });
        }
      }
      const twins = ['leftPointer', 'rightPointer'].map((id) => document.querySelector(`[data-reading=${id}]`)!.textContent);
      done({ stampMs, twins, samples });
    })));
  }), { ...place, ring: RING });
}

/** How dark the drawing is beside a line at a distance: 1 inside the stroke, falling over one pixel at its edge. */
const cover = (distance: number, half: number): number => Math.min(1, Math.max(0, half - distance + 0.5));

/** The two angles whose drawing is nearest to the pixels: a coarse search over the dial, then ever finer ones. */
function readPointers({ samples }: Shot): { left: number; right: number } {
  const near = samples.filter(({ dark }) => dark > 0.3).map(({ angle }) => angle);
  const [from, to] = [Math.min(...near) - 1.5, Math.max(...near) + 1.5];
  const useful = samples.filter(({ angle }) => angle > from && angle < to);
  const off = (angle: number, other: number, r: number): number => Math.abs(((angle - other) * Math.PI) / 180) * r;
  const misfit = (left: number, right: number): number => useful.reduce((sum, { angle, r, dark }) => {
    const solid = cover(off(angle, left, r), NEEDLES.left.shaft);
    const open = cover(Math.abs(off(angle, right, r) - NEEDLES.right.shaft), OUTLINE / 2);
    return sum + (Math.max(solid, open) - dark) ** 2;
  }, 0);
  let best = { left: (from + to) / 2, right: (from + to) / 2, misfit: Infinity };
  for (const [step, reach] of [[0.12, (to - from) / 2], [0.02, 0.2]] as const) {
    const { left, right } = best;
    for (let l = left - reach; l <= left + reach; l += step) {
      for (let r = right - reach; r <= right + reach; r += step) {
        const found = misfit(l, r);
        if (found < best.misfit) best = { left: l, right: r, misfit: found };
      }
    }
  }
  return best;
}

test.each([1, 2])('20 random frames, together and apart: pixels and twins say what the replay says (device pixel ratio %i)', async (deviceScaleFactor) => {
  const { page, close } = await openApp('#/drill/1?seed=3', { deviceScaleFactor, colorScheme: 'light', expected: [/willReadFrequently/] });
  await startRun(page);
  const place = layout(1280, 720).gauge;
  const shots: Shot[] = [await shoot(page, place)];
  await makeReady(page);
  const { x, y } = await middleOf(page, 'extend');
  await page.mouse.move(x, y);
  await page.mouse.down();
  // Waits drawn beforehand, between 0.4 and 1.6 s: the side is cut after 14 s of holding.
  let dice = 12345;
  while (shots.length < 20) {
    dice = (dice * 48271) % 2147483647;
    await page.waitForTimeout(400 + (dice / 2147483647) * 1200);
    shots.push(await shoot(page, place));
  }
  await page.mouse.up();
  const record = await endAndSave(page);
  await close();

  const { dial } = record.airframe.gauge;
  const rows = traceRows(requestOf(record), commandsOfRecord(record), record.end.tick, 1);
  let mostApart = 0;
  for (const shot of shots) {
    const row = rows[tickOfStamp(record.clock, shot.stampMs).tick]!;
    const seen = readPointers(shot);
    const [left, right] = [flapDegOf(dial, seen.left), flapDegOf(dial, seen.right)];
    expect(Math.abs(left - row.leftPointerDeg), `left at ${row.atS} s: ${left} of ${row.leftPointerDeg}`).toBeLessThan(0.1);
    expect(Math.abs(right - row.rightPointerDeg), `right at ${row.atS} s: ${right} of ${row.rightPointerDeg}`).toBeLessThan(0.1);
    // A twin may be half a second old; the drive moves less than 0.1 degree in that time.
    for (const [index, deg] of [row.leftPointerDeg, row.rightPointerDeg].entries()) {
      expect([spokenDeg(deg), spokenDeg(deg - 0.1)]).toContain(shot.twins[index]?.split(': ')[1]);
    }
    mostApart = Math.max(mostApart, Math.abs(row.leftPointerDeg - row.rightPointerDeg));
  }
  // Both pointers lay over each other for most of the run, and were apart at its end.
  expect(mostApart).toBeGreaterThan(0.4);
}, 120_000);
