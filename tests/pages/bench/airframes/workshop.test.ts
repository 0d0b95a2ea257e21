// The first scenario on an airframe, and the words of its relations.
import { describe, expect, it } from 'vitest';
import { airframeFigures } from '../../../../sim/index.js';
import { boundOf, foundIn, RELATION_WORDS } from '../../../../src/pages/bench/airframes/relationwords.js';
import { holdOn } from '../../../../src/pages/bench/airframes/hold.js';
import { threeOf } from '../../../../src/pages/bench/airframes/ratefigure.js';
import { readScenario } from '../../../../src/text/index.js';
import { AIRFRAME, AIRFRAME_B } from '../../../sim/bench.js';

describe('a hold on an airframe', () => {
  it.each([AIRFRAME, AIRFRAME_B])('$name: can be flown as it stands', (airframe) => {
    const read = readScenario(holdOn(airframe), 'hold.json', () => undefined);
    expect(read).toMatchObject({ ok: true, value: { task: { settings: [airframe.landingDeg] }, airframe: { name: airframe.name } } });
  });
  it('A at 48.15 t starts from 4 at the manoeuvre speed of 4, rounded up', () => {
    const { start } = JSON.parse(holdOn(AIRFRAME)) as { start: { massT: number; speedKt: number; flapDeg: number } };
    expect(start).toMatchObject({ massT: 48.2, flapDeg: 4, speedKt: 167 });
  });
});

it('every relation has its words, and a figure with its bound', () => {
  for (const one of airframeFigures(AIRFRAME, 48, 3500).relations) {
    expect(RELATION_WORDS[one.name].asks).not.toBe('');
    expect(`${foundIn(one)} ${boundOf(one)}`).toMatch(/\d.* (at least|at most|below) \d/);
  }
});

it('three of a table: both ends and the middle, and no more than there are', () => {
  expect(threeOf([1, 2, 3, 4, 5])).toEqual([1, 3, 5]);
  expect(threeOf([1])).toEqual([1]);
  expect(threeOf([1, 2])).toEqual([1, 2]);
});
