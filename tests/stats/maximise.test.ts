import { describe, expect, it } from 'vitest';
import { maximise } from '../../sim/stats/maximise.js';
import { fitRamp } from '../../sim/stats/ramp.js';

describe('the climber', () => {
  it('finds the top of a round hill, from far away', () => {
    const { x, value, flat } = maximise(([a = 0, b = 0], slope) => {
      slope[0] = -2 * (a - 3);
      slope[1] = -20 * (b + 4);
      return 7 - (a - 3) ** 2 - 10 * (b + 4) ** 2;
    }, [50, 50]);
    expect([...x, value]).toEqual([expect.closeTo(3, 9), expect.closeTo(-4, 9), expect.closeTo(7, 12)]);
    expect(flat).toBe(true);
  });
  it("follows the bent ridge of Rosenbrock's function to (1, 1)", () => {
    const { x, flat } = maximise(([a = 0, b = 0], slope) => {
      slope[0] = 2 * (1 - a) + 400 * a * (b - a * a);
      slope[1] = -200 * (b - a * a);
      return -((1 - a) ** 2) - 100 * (b - a * a) ** 2;
    }, [-1.2, 1]);
    expect(x).toEqual([expect.closeTo(1, 8), expect.closeTo(1, 8)]);
    expect(flat).toBe(true);
  });
  it('says so where there is no top', () => {
    expect(maximise(([a = 0], slope) => { slope[0] = 1; return a; }, [0]).flat).toBe(false);
    expect(maximise((_, slope) => { slope[0] = NaN; return NaN; }, [0]).flat).toBe(false);
  });
});

describe('the plain fit', () => {
  const run = (rateDegPerS: number, splitDeg: number, event = true) => ({ rateDegPerS, splitDeg, event });
  it('no time at all, where splits do not grow with the rate; no threshold, where they grow with it', () => {
    const flat = fitRamp([run(0.1, 1), run(0.1, 1.2), run(1, 0.8), run(1, 1), run(1, 0.9)])!;
    expect(flat.t0S).toBe(0);
    expect(Math.log(flat.thetaDeg)).toBeCloseTo(Math.log(1 * 1.2 * 0.8 * 1 * 0.9) / 5, 6);
    const steep = fitRamp([run(0.1, 0.1), run(0.1, 0.13), run(1, 1.6), run(1, 1.3)])!;
    expect(steep.thetaDeg).toBe(0);
  });
  it('three numbers cannot be told from one rate, or from two releases', () => {
    expect(fitRamp([run(1, 1), run(1, 1.1), run(1, 1.2)])).toBeNull();
    expect(fitRamp([run(1, 1), run(0.1, 1.1), run(0.1, 2, false)])).toBeNull();
    expect(fitRamp([])).toBeNull();
  });
});
