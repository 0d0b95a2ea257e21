/** A gauge laid out again: pointers as long as they were flown, wherever the window has the room, and said where it has not. */
import { describe, expect, it } from 'vitest';
import { scriptedRecord, type RunRecord } from '../../../sim/files/index.js';
import { flyTrainee, MODEL_VERSION } from '../../../sim/index.js';
import { layout } from '../../../src/view/layout.js';
import { laidAgain } from '../../../src/pages/size/again.js';
import { sightOf } from '../../../src/pages/size/sight.js';
import { AIRFRAME, drill } from '../../sim/bench.js';

const CHOICES = { screens: {}, distanceMm: null, isTrue: false, apartDeg: null };
const scenario = drill('set-16-from-4');
const { commands, flight: { end, hash, outcome, score } } = flyTrainee(scenario, AIRFRAME, 1, 'prompt');
const scripted = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed: 1, airframe: AIRFRAME, scenario, commands, end, hash, outcome, score });

/** As flown in a window, on a screen of so many px a mm; null: not measured. */
const flownIn = (width: number, height: number, pxPerMm: number | null): RunRecord =>
  ({ ...scripted, gauge: sightOf(layout(width, height), AIRFRAME.gauge, CHOICES, pxPerMm, 1) });
const flownRadius = (width: number, height: number): number => layout(width, height).gauge.radius;

describe('laid out again', () => {
  it('in the window it was flown in, less a bar at its foot: the same length', () => {
    for (const [width, height] of [[1280, 720], [1920, 1080], [1024, 768]] as const) {
      const { at, length } = laidAgain(flownIn(width, height, null), width, height - 53, null);
      expect(length).toBe('same');
      expect(at.gauge.radius).toBeCloseTo(flownRadius(width, height), 6);
      expect([at.width, at.height]).toEqual([width, height - 53]);
    }
  });
  it('in a larger window no longer than flown; in a smaller one as long as there is room, and it says so', () => {
    const run = flownIn(1920, 1080, null);
    expect(laidAgain(flownIn(1024, 768, null), 1920, 1080, null)).toMatchObject({ length: 'same', at: { gauge: { radius: flownRadius(1024, 768) } } });
    const small = laidAgain(run, 1024, 700, null);
    expect(small.length).toBe('shorter');
    expect(small.at.gauge.radius).toBeLessThan(flownRadius(1920, 1080));
  });
  it('on two measured screens by their mm: half the px a mm is half the px', () => {
    const run = flownIn(1920, 1080, 8);
    expect(laidAgain(run, 1920, 1000, 4).at.gauge.radius).toBeCloseTo(flownRadius(1920, 1080) / 2, 6);
    expect(laidAgain(run, 1920, 1000, 8).length).toBe('same');
    // One of the two screens is not measured: px are all there is.
    expect(laidAgain(run, 1920, 1000, null).at.gauge.radius).toBeCloseTo(flownRadius(1920, 1080), 6);
  });
  it('of a script, which looked at no window, as the window has it', () => {
    expect(laidAgain(scripted, 1280, 667, null)).toEqual({ at: layout(1280, 667), length: 'none' });
  });
});
