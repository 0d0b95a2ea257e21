/**
 * The plan as a whole. From outside: the model's nominal run (motor-on about 108 s; 14 CFR 25.125(b)(2) reference 1.23 VSR = 133.4 kt at
 * flap 16, 48 t); horn orders by hand from the rule's own thresholds (structure 14 CFR 25.729(e), 125.187(a)).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flyApproach } from '../../../sim/advise/plan/approach.js';
import { planItems, planOf, planRequestOf, worstOf, type Plan, type PlanRequest } from '../../../sim/index.js';
import { AIRFRAME, AIRFRAME_B, drill, scenario } from '../bench.js';
import { anywhere } from '../../draw.js';

const CLEAN = { start: { massT: 48, altitudeFt: 5600, groundFt: 700, speedKt: 212, flapDeg: 0, leadingEdge: 'in', guard: 'closed' }, task: { settings: [4, 9, 16] } };
const request = (change: Partial<PlanRequest> = {}): PlanRequest => ({ ...planRequestOf(scenario(CLEAN), AIRFRAME), ...change });
/** Near the ground and the landing setting, so that one plan costs little. */
const short = (change: Partial<PlanRequest> = {}): PlanRequest => request({ fromDeg: 9, settings: [16], leadingEdge: 'out', speedKt: 160, altitudeFt: 2500, ...change });

describe('from clean to 16, 48 t', () => {
  const plan = planOf(request());
  it('slow to the manoeuvre speed of what is out, then the lever, then the drive: 191, 166, 154 (model table)', () => {
    expect(plan.steps.map(({ beforeDeg, settingDeg, speedKt }) => [beforeDeg, settingDeg, speedKt])).toEqual([[0, 4, 191], [4, 9, 166], [9, 16, 154]]);
    for (const { leverS, fromS, toS, fromKt, speedKt, limitKt } of plan.steps) {
      expect(leverS).toBeLessThan(fromS);
      expect(fromS).toBeLessThan(toS);
      expect(fromKt - speedKt).toBeLessThanOrEqual(8);
      expect(fromKt).toBeLessThan(limitKt!);
    }
    expect(plan.steps.map(({ limitKt }) => limitKt)).toEqual([230, 218, 210]);
  });
  it('motor on about 108 s in all, each step as in closed form', () => {
    expect(Math.abs(plan.motorOnS - 108)).toBeLessThan(1);
    for (const { motorOnS, closedS } of plan.steps) expect(Math.abs(motorOnS - closedS)).toBeLessThan(0.5);
  });
  it('the leading edge is out 8 s behind the first touch, before anything is driven', () => {
    expect(plan.touch!.outS - plan.touch!.atS).toBeCloseTo(8.07, 1);
    expect(plan.steps[0]!.fromS).toBeGreaterThan(plan.touch!.outS);
  });
  it('heat rises to about 0.33 (the nominal run comes to 0.343 with less time between), no rest', () => {
    expect(Math.abs(plan.mostHeat - 0.33)).toBeLessThan(0.02);
    expect(plan.restS).toBe(0);
  });
  it('speeds: reference 133.4, approach 133, 14.1 % longer than with the last', () => {
    expect(plan.landing.referenceKt).toBeCloseTo(133.4, 0);
    expect(plan.approachKt).toBe(133);
    expect(plan.distance.longerPct).toBeCloseTo(100 * ((133.4 / 124.9) ** 2 - 1), 0);
  });
  it('start by = until all is ready and the path: 4850 ft / tan 3 deg = 15.23 NM', () => {
    expect(plan.pathNm).toBeCloseTo(15.23, 2);
    expect(plan.startByNm).toBe(plan.readyNm! + plan.pathNm);
    // 215 s at 143 to 212 kt calibrated, some 4 kt per 50 more true at 5600 ft.
    expect(plan.readyNm).toBeGreaterThan(215 * 160 / 3600);
    expect(plan.readyNm).toBeLessThan(215 * 212 / 3600);
  });
  it('back in: faster first, and the leading edge stays out', () => {
    expect(plan.retraction.steps.map(({ settingDeg, speedKt }) => [settingDeg, speedKt])).toEqual([[9, 154], [4, 166], [0, 191]]);
    for (const { limitKt, speedKt } of plan.retraction.steps) expect(speedKt).toBeLessThan(limitKt!);
    // Retracting the air helps: less load, so quicker than out (model section 1).
    expect(plan.retraction.steps[0]!.motorOnS).toBeLessThan(plan.steps[2]!.motorOnS);
  });
  it('the horn: silent with the gear first; with the setting first it sounds, and may not be silenced', () => {
    expect([worstOf(plan.horn, 'gearFirst'), worstOf(plan.horn, 'settingFirst')]).toEqual(['silent', 'sounds']);
    const path = plan.horn.find(({ order, place }) => order === 'settingFirst' && place === 'path')!;
    // From where the flap leaves the take-off band (12.5) to where the gear is locked, 15 s behind its lever.
    expect(path.spans).toHaveLength(1);
    expect(path.spans[0]!.flapDeg).toBeCloseTo(12.5, 1);
    expect(path.spans[0]!.tlaDeg).toBeLessThan(16);
    expect(path.spans[0]!.toS).toBeCloseTo(path.gearFromS! + 15, 0);
    const level = plan.horn.find(({ order, place }) => order === 'settingFirst' && place === 'level')!;
    expect(level.spans.map(({ goingDown }) => goingDown)).toEqual([false, true]); // the levers come back to slow down, and again on the way down
  });
});

describe('the horn at its limits, in the flown plan', () => {
  const worst = (airframe: PlanRequest['airframe'], order: 'gearFirst' | 'settingFirst', change: Partial<PlanRequest> = {}): Plan['horn'] =>
    planOf(short({ airframe, ...change })).horn.filter((one) => one.order === order);
  const horn = (change: Partial<PlanRequest['airframe']['horn']>) => ({ ...AIRFRAME, horn: { ...AIRFRAME.horn, ...change } });
  it('landing setting just inside the take-off band: silent above the height; just outside it: not', () => {
    const at = worst(horn({ takeOffBandDeg: 16.1, heightFt: 500 }), 'settingFirst');
    expect(at.find(({ place }) => place === 'level')!.worst).toBe('silent');
    expect(worst(horn({ takeOffBandDeg: 15.9, heightFt: 500 }), 'settingFirst').find(({ place }) => place === 'level')!.worst).toBe('sounds');
  });
  it('below the height it may be silenced in the take-off band', () => {
    expect(worst(horn({ takeOffBandDeg: 20, heightFt: 1900 }), 'settingFirst').find(({ place }) => place === 'level')!.worst).toBe('silenceable');
  });
  it('above the landing band it sounds at any lever angle: from that flap until the gear is locked', () => {
    const [level] = worst(horn({ landingBandDeg: 14, bothLiveTlaDeg: 0 }), 'settingFirst');
    expect(level!.worst).toBe('sounds');
    expect(level!.spans[0]!.flapDeg).toBeCloseTo(14, 1);
    expect(level!.spans[0]!.toS).toBeCloseTo(level!.gearDownS!, 1);
  });
  it('a threshold of 0 is never met: silent in either order (Airframe B is so)', () => {
    expect(worst(horn({ bothLiveTlaDeg: 0 }), 'settingFirst').every((one) => one.worst === 'silent')).toBe(true);
    const small = planOf(planRequestOf(drill('small-and-quick'), AIRFRAME_B));
    expect(small.horn.every((one) => one.worst === 'silent')).toBe(true);
  });
  it('with the gear down already, neither order makes a difference', () => {
    const { horn: both } = planOf(short({ gear: 'down' }));
    expect(both.every(({ worst: one }) => one === 'silent')).toBe(true);
    expect(both.every(({ gearFromS }) => gearFromS === null)).toBe(true);
  });
});

describe('the motor', () => {
  it('begun hot it asks for a rest: from the cut-out to the reset, 700 ln(0.98 / 0.6) s', () => {
    const plan = planOf(short({ motorHeat: 0.97 }));
    expect(plan.restS).toBeGreaterThan(0);
    expect(Math.abs(plan.restS - 700 * Math.log(0.98 / 0.6))).toBeLessThan(1);
    expect(plan.mostHeat).toBeLessThan(1);
    expect(planItems(plan).find(({ id }) => id === 'rest')!.right).toBe('yes');
  });
  it('too little room above the ground is told', () => {
    const low = flyApproach(short({ altitudeFt: 1000 }), 'settingFirst', 'path', 133, false);
    expect(low.whole).toBe(false);
    expect(flyApproach(short({ altitudeFt: 4500 }), 'settingFirst', 'path', 133, false).whole).toBe(true);
  });
});

describe('whatever the day', () => {
  const day = fc.record({ massT: fc.integer({ min: 36, max: 53 }), windKt: fc.integer({ min: -20, max: 60 }), altitudeFt: fc.integer({ min: 2200, max: 4000 }) });
  const runs = { numRuns: 3 };
  it('more head wind is never a longer way over the ground; heavier is never a slower reference; ice never lowers a speed', () => {
    fc.assert(fc.property(day, ({ massT, windKt, altitudeFt }) => {
      const here = planOf(short({ massT, windKt, altitudeFt }));
      const windy = planOf(short({ massT, windKt: windKt + 10, altitudeFt }));
      expect(windy.startByNm).toBeLessThan(here.startByNm!);
      expect(windy.totalS).toBe(here.totalS);
      expect(windy.fuel.approachKg).toBeGreaterThan(here.fuel.approachKg);
      expect(windy.fuel.divertKg).toBe(here.fuel.divertKg);
      const heavy = planOf(short({ massT: massT + 0.5, windKt, altitudeFt }));
      expect(heavy.landing.referenceKt).toBeGreaterThan(here.landing.referenceKt);
      const iced = planOf(short({ massT, windKt, altitudeFt, icing: true }));
      iced.speeds.settings.forEach((row, index) => {
        expect(row.manoeuvreKt).toBeGreaterThan(here.speeds.settings[index]!.manoeuvreKt);
        expect(row.referenceKt).toBeGreaterThan(here.speeds.settings[index]!.referenceKt);
      });
      for (const { settingDeg, stallKt, referenceKt } of here.speeds.settings) expect(referenceKt, String(settingDeg)).toBeGreaterThanOrEqual(1.23 * stallKt);
    }), runs);
  });
  it('a quicker drive is never a longer plan', () => {
    fc.assert(fc.property(day, anywhere(1.1, 3), ({ massT, altitudeFt }, faster) => {
      const quick = { ...AIRFRAME, drive: { ...AIRFRAME.drive, noLoadRateDegPerS: AIRFRAME.drive.noLoadRateDegPerS * faster } };
      const [a, b] = [planOf(short({ massT, altitudeFt })), planOf(short({ massT, altitudeFt, airframe: quick }))];
      expect(b.totalS).toBeLessThan(a.totalS!);
      expect(b.motorOnS).toBeLessThan(a.motorOnS);
    }), runs);
  });
});

describe('what a scenario asks for', () => {
  const settings = (keys: Record<string, unknown>) => planRequestOf(scenario(keys), AIRFRAME);
  it('its own settings, and on to the one that is landed with', () => {
    expect(settings({ start: { flapDeg: 0, leadingEdge: 'in' }, task: { settings: [4, 9] } }).settings).toEqual([4, 9, 16]);
    expect(settings({ task: { settings: [16] } })).toMatchObject({ fromDeg: 4, settings: [16] });
    expect(settings({ start: { flapDeg: 16 }, task: { settings: [26] } })).toMatchObject({ fromDeg: 16, settings: [26] });
  });
  it('a task that goes in: from where it ends, out again', () => {
    expect(settings({ start: { flapDeg: 16 }, task: { settings: [9, 4] } })).toMatchObject({ fromDeg: 4, settings: [9, 16] });
  });
  it('what the scenario says of its plan, and made-up figures where it says nothing', () => {
    expect(settings({ plan: { holdMin: 4, runwayM: 2000, landingM: 1200, additiveKt: 5 }, start: { windKt: 12, icing: true, fuelKg: 3000, distanceNm: 40 } }))
      .toMatchObject({ holdMin: 4, runwayM: 2000, landingM: 1200, additiveKt: 5, alternateNm: 60, divertFt: 10_000, windKt: 12, icing: true, fuelKg: 3000, distanceNm: 40 });
  });
});

describe('the decision before the first touch', () => {
  const commit = (change: Partial<PlanRequest>) => planOf(short(change)).commit;
  it('continue where nothing speaks against it; divert where the runway is short and the fuel reaches; never a diversion that does not', () => {
    const { fuel, distance } = planOf(short());
    expect(commit({})).toBe('continue');
    const needM = 1200 * distance.ratio * 1.15;
    expect(commit({ landingM: 1200, runwayM: needM })).toBe('continue');
    expect(commit({ landingM: 1200, runwayM: needM - 1 })).toBe('divert');
    expect(commit({ landingM: 1200, runwayM: needM - 1, fuelKg: fuel.cleanKg })).toBe('divert');
    expect(commit({ landingM: 1200, runwayM: needM - 1, fuelKg: fuel.cleanKg - 1 })).toBe('continue');
    expect(commit({ fuelKg: fuel.continueKg })).toBe('continue');
  });
});
