import { expect, test } from 'vitest';
import { ready, type Scenario } from '../../sim/files/index.js';
import { airframeA, airframeFor, changed, drill, drillNames } from './shipped.js';

const plain: Scenario = { ...changed(drill(drillNames[0]!), ['start', 'flapLeverDeg'], undefined) };
const bare = (flapDeg: number): Scenario => {
  const { leadingEdge: _, ...start } = plain.start;
  const { recognition: __, pointerNoise: ___, ...rest } = plain;
  return { ...rest, start: { ...start, flapDeg } };
};

// Settings of the airframe: 0 4 9 16 26 36 (model.md, section 0).
test.each([[0, 0], [3.99, 0], [4, 4], [8, 4], [16, 16], [37, 36]])('flap %f: lever %f', (flapDeg, leverDeg) =>
  expect(ready(bare(flapDeg), airframeA).start.flapLeverDeg).toBe(leverDeg));

test('the leading edge is out with any flap', () => {
  expect(ready(bare(0), airframeA).start.leadingEdge).toBe('in');
  expect(ready(bare(0.01), airframeA).start.leadingEdge).toBe('out');
});

test('with recognition: the limit of the airframe and noisy pointers', () => {
  const full = ready({ ...bare(4), recognition: { seenDeg: 0.1, measuring: false } }, airframeA);
  expect(full.recognition?.limitDeg).toBe(airframeA.recognition.limitDeg);
  expect(full.pointerNoise).toBe(true);
});

test('without it: quiet pointers, and no key recognition appears', () => {
  const full = ready(bare(4), airframeA);
  expect(full.pointerNoise).toBe(false);
  expect('recognition' in full).toBe(false);
});

test('what the file says stays', () => {
  const said: Scenario = {
    ...bare(4), pointerNoise: false, recognition: { limitDeg: 3.5, seenDeg: 0.1, measuring: false },
    start: { ...bare(4).start, flapLeverDeg: 26, leadingEdge: 'in' },
  };
  expect(ready(said, airframeA)).toEqual(said);
});

test.each(drillNames)('%s: filling in twice changes nothing', (name) => {
  const airframe = airframeFor(drill(name));
  const once = ready(drill(name), airframe);
  expect(ready(once, airframe)).toEqual(once);
});
