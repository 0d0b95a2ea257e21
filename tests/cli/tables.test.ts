// The trade's tables as they are typed. Figures: an independent prototype's tables for Airframe A at 48 t.
import { describe, expect, test } from 'vitest';
import { budgetOutput, deriveOutput, hornOutput, speedsOutput } from '../../sim/files/index.js';
import { json, type } from './typed.js';

const words = (line: string): string[] => line.split(' ');
const A = '--airframe airframe-a';

describe('speeds', () => {
  test('reference is 1.23 x the stall speed of the setting', async () => {
    const { code, value } = await json(speedsOutput, ...words(`speeds ${A} --mass 48`));
    expect(code).toBe(0);
    for (const { referenceKt, stallKt } of value.settings) expect(referenceKt).toBe(1.23 * stallKt);
    const found = value.settings.map(({ settingDeg, manoeuvreKt, referenceKt, limitKt }) => [settingDeg, manoeuvreKt.toFixed(0), referenceKt.toFixed(0), limitKt]);
    expect(found).toEqual([[0, '191', '164', null], [4, '166', '144', 230], [9, '154', '139', 218], [16, '143', '133', 210], [26, '134', '128', 203], [36, '125', '125', 195]]);
  });
  test('ice adds 6 kt, and the sum says so', async () => {
    const dry = await json(speedsOutput, ...words(`speeds ${A} --mass 48`));
    const { value } = await json(speedsOutput, ...words(`speeds ${A} --mass 48 --ice`));
    value.settings.forEach((row, at) => expect(row.manoeuvreKt - (dry.value.settings[at]?.manoeuvreKt ?? 0)).toBeCloseTo(6, 9));
    expect((await type(...words(`speeds ${A} --mass 48 --ice`))).out).toContain('= 1.32 x 108.5 + 6 ice');
  });
  test.each([
    [`speeds ${A} --mass 61`, /33.5 to 60 t/], [`speeds ${A} --mass heavy`, /a number/], ['speeds --airframe airframe-x --mass 48', /airframe-a, airframe-b/],
    [`speeds ${A}`, /--mass/],
  ])('wrong: %s', async (line, says) => {
    const { code, out, err } = await type(...words(line));
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(says);
  });
});

describe('horn', () => {
  const ask = (line: string) => json(hornOutput, ...words(`horn ${A} ${line}`));
  test.each([
    ['--tla 15.9 --live-engines 2 --flap 16 --gear up --height 2000', true, false],
    ['--tla 16 --live-engines 2 --flap 16 --gear up --height 2000', false, false],
    ['--tla 27.9 --live-engines 1 --flap 16 --gear up --height 2000', true, false],
    ['--tla 5 --live-engines 2 --flap 9 --gear up --height 999', true, true],
    ['--tla 5 --live-engines 2 --flap 9 --gear up --height 999 --silenced', false, true],
    ['--tla 5 --live-engines 2 --flap 16 --gear up --height 999 --silenced', true, false],
    ['--tla 50 --live-engines 2 --flap 9,31 --gear up --height 9000', true, false],
    ['--tla 5 --live-engines 2 --flap 36 --gear down --height 100', false, false],
    ['--tla 5 --live-engines 2 --flap 36 --gear moving --height 100', true, false],
    ['--tla 40 --tla 10 --live-engines 2 --flap 16 --gear up --height 2000', true, false],
  ])('%s', async (line, sounds, silenceable) => {
    const { code, value } = await ask(line);
    expect(code).toBe(0);
    expect(value).toMatchObject({ sounds, silenceable });
    expect(value.why.length).toBeGreaterThan(10);
  });
  test.each([
    ['--tla 5 --tla 6 --tla 7 --live-engines 2 --flap 9 --gear up --height 1', /once for each/],
    ['--tla 5 --live-engines 3 --flap 9 --gear up --height 1', /1 or 2/],
    ['--tla 5 --live-engines 2 --flap 1,2,3 --gear up --height 1', /left and right/],
    ['--tla 5 --live-engines 2 --flap 9 --gear sideways --height 1', /up, moving, down/],
  ])('wrong: %s', async (line, says) => {
    const { code, err } = await type(...words(`horn ${A} ${line}`));
    expect(code).toBe(2);
    expect(err).toMatch(says);
  });
});

describe('budget', () => {
  test('disconnect at 154 kt from 6.43: the exact growth of load (25 % of authority at 3.498 deg, 21.93 s; 50 % at 45.06 s)', async () => {
    const { code, value } = await json(budgetOutput, ...words(`budget ${A} --mass 48 --speed 154 --flap 6.43 --fault disconnect`));
    expect(code).toBe(0);
    const [quarter, , half] = value.levels;
    expect(Math.abs((quarter?.splitDeg ?? 0) - 3.498)).toBeLessThan(0.01);
    expect(Math.abs((quarter?.afterS ?? 0) - 21.93)).toBeLessThan(0.1);
    expect(Math.abs((half?.afterS ?? 0) - 45.06)).toBeLessThan(0.15);
    // t = -(1/B) ln(1 - s B / k0) with B = r0 Gq q c1 / Ts and one side driving: worked by hand from the airframe's figures.
    expect(value.releases.find(({ latencyS }) => latencyS === 10)?.splitDeg).toBeCloseTo(2.61, 1);
  });
  test('a blow-back does not stop on release', async () => {
    const { value } = await json(budgetOutput, ...words(`budget ${A} --mass 48 --speed 154 --flap 6.4 --fault blowback`));
    expect(value.settleS).toBe(15);
    expect(value.releases[0]?.splitDeg ?? 0).toBeGreaterThan(3);
  });
  test('a faster aeroplane has its one degree later: the loaded drive is slower', async () => {
    const at = async (kt: number) => (await json(budgetOutput, ...words(`budget ${A} --mass 48 --speed ${kt} --flap 9 --fault disconnect`))).value.oneDegreeS ?? 0;
    expect(await at(200)).toBeGreaterThan(await at(140));
  });
  test('wrong: an unknown fault names the known ones', async () => {
    const { code, err } = await type(...words(`budget ${A} --mass 48 --speed 154 --flap 6.4 --fault gremlin`));
    expect(code).toBe(2);
    expect(err).toMatch(/disconnect, lag, jam, slip, blowback/);
  });
});

describe('derive', () => {
  test('the constants of A beside those of its file, with their keys', async () => {
    const { code, value } = await json(deriveOutput, 'derive', 'airframe-a');
    expect(code).toBe(0);
    const found = value.constants.map(({ key, value: got, inFile }) => [key, got.toPrecision(4), inFile]);
    expect(found).toEqual([
      ['roll.clFlap', '0.5024', 0.5024386823], ['roll.clDamping', '-0.4788', -0.4788464797], ['roll.flapEffect', '0.6305', 0.630483],
      ['roll.liftingSurface', '0.9029', 0.9], ['roll.control', '0.03322', 0.0332], ['drive.flapAreaM2', '10.27', 10.2704], ['drive.flapChordM', '1.089', 1.0892],
    ]);
  });
  test('in words: lines to paste, and the meaning of each', async () => {
    const { out } = await type('derive', 'airframe-a');
    expect(out).toContain('  "clFlap": 0.5024387,');
    expect(out).toMatch(/roll control +0\.03321811 +0\.0332 +\+0\.05 % +roll\.control/);
    expect(out).toContain('roll damping: Rolling moment coefficient for each unit of p b / 2V');
  });
  test('wrong: an airframe that is not there', async () => expect((await type('derive', 'airframe-x')).code).toBe(2));
});
