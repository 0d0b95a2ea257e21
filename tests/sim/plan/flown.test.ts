/**
 * The plan in a record: inside the digest, outside the hash, not provable; and planned beside flown, from a replay. The run
 * is flown by inputs whose times are known, so that each flown figure is known beforehand.
 */
import { describe, expect, it } from 'vitest';
import { composeRecord, digestOf, NOT_PROVABLE, recordSchema, scriptedRecord, tryAs, verify, type Inputs, type RunRecord } from '../../../sim/files/index.js';
import { BLANK, flyInputs, MODEL_VERSION, plannedAndFlown, withEntered } from '../../../sim/index.js';
import { AIRFRAME, scenario } from '../bench.js';

const INPUTS: Inputs = [
  { atS: 10, do: 'openGuard' }, { atS: 11, do: 'arm' }, { atS: 12, do: 'setFlapLever', settingDeg: 16 }, { atS: 14, do: 'holdDrive', way: 'extend' },
  { atS: 62.6, do: 'releaseDrive' }, { atS: 70, do: 'setGear', to: 'down' }, { atS: 75, do: 'descend', toFt: 1000, pathDeg: -3 },
];
const ready = scenario({ start: { flapDeg: 9, speedKt: 154, altitudeFt: 3000, groundFt: 500, distanceNm: 20, windKt: 10, guard: 'closed' }, task: { settings: [16], limitS: 120 } });
const { commands, flight } = flyInputs(ready, AIRFRAME, 3, INPUTS);
const planned = ([['manoeuvre-9', 150], ['order', 'gearFirst'], ['horn', 'silent'], ['motorOnS', 45], ['totalS', 60], ['startByNm', 20], ['descentFtPerMin', 800], ['continueKg', 500]] as const)
  .reduce((made, [id, value]) => withEntered(made, id, value), { ...BLANK, shown: ['totalS'] });
const bare = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed: 3, airframe: AIRFRAME, scenario: ready, commands, end: flight.end, hash: flight.hash, outcome: flight.outcome, score: flight.score });
const { format: _format, digest: _digest, ...parts } = bare;
const record: RunRecord = composeRecord({ ...parts, plan: planned });

describe('in the record', () => {
  it('changes the digest and nothing else: hash and outcome are as without', () => {
    expect(record.digest).not.toBe(bare.digest);
    expect([record.hash, record.outcome]).toEqual([bare.hash, bare.outcome]);
    expect(tryAs(recordSchema, JSON.parse(JSON.stringify(record))).ok).toBe(true);
    expect(verify(record)).toMatchObject({ ok: true });
  });
  it('an altered plan is refused by its digest; digested anew it passes, and the list says that nothing proves it', () => {
    const altered: RunRecord = { ...record, plan: withEntered(planned, 'motorOnS', 50) };
    expect(verify(altered).refused.map(({ code }) => code)).toEqual(['digest']);
    expect(verify({ ...altered, digest: digestOf(altered) }).ok).toBe(true);
    expect(NOT_PROVABLE).toContain('plan');
  });
  it('a figure out of range, or a word that is none, is refused at the door', () => {
    for (const plan of [{ ...planned, motorOnS: -1 }, { ...planned, order: 'both' }, { ...planned, more: 1 }]) expect(tryAs(recordSchema, { ...record, plan }).ok).toBe(false);
  });
});

describe('planned and flown', () => {
  const items = plannedAndFlown(record)!;
  const flown = (id: string) => items.find((one) => one.id === id)?.flown;
  it('nothing is said of a record without a plan, nor of what was left blank', () => {
    expect(plannedAndFlown(bare)).toBeNull();
    expect(items.map(({ id }) => id)).toEqual(['manoeuvre-9', 'order', 'horn', 'motorOnS', 'totalS', 'startByNm', 'descentFtPerMin', 'continueKg']);
    expect(items.filter(({ shown }) => shown).map(({ id }) => id)).toEqual(['totalS']);
  });
  it('speed at the lever, order, horn', () => {
    expect(flown('manoeuvre-9') as number).toBeCloseTo(154, 0);
    expect(flown('order')).toBe('settingFirst');
    expect(flown('horn')).toBe('sounds'); // on the path at 16, the gear not locked until 85 s
  });
  it('motor on: pressed at 14, let go at 62.6, 0.06 s to pick up and 0.08 s to drop out', () => expect(Math.abs((flown('motorOnS') as number) - 48.62)).toBeLessThan(0.03));
  it('from the first act, at 10, to the arrival, at 62.6', () => expect(flown('totalS') as number).toBeCloseTo(52.6, 1));
  it('begun 10 s in: 20 NM less 10 s at 154 kt calibrated, about 161 true, less 10 of head wind', () => {
    expect(flown('startByNm') as number).toBeCloseTo(20 - 10 * 151 / 3600, 1);
  });
  it('3 degrees at 154 kt calibrated, about 161 true: 161 x 101.27 x sin 3 deg = 853 ft/min', () => expect(Math.abs((flown('descentFtPerMin') as number) - 853)).toBeLessThan(15));
  it('what the run never came to is null: no path, no distance, no landing setting', () => {
    const short = scenario({ start: { flapDeg: 4, speedKt: 160 }, task: { settings: [9], limitS: 30 } });
    const made = flyInputs(short, AIRFRAME, 3, []);
    const left = plannedAndFlown(composeRecord({ ...parts, scenario: short, commands: [], end: made.flight.end, hash: made.flight.hash, outcome: made.flight.outcome, score: made.flight.score, plan: planned }))!;
    for (const id of ['order', 'motorOnS', 'totalS', 'startByNm', 'descentFtPerMin']) expect(left.find((one) => one.id === id)?.flown, id).toBeNull();
  });
});
