/** One person over time: what is laid side by side, what is kept apart, and what named blocks may be said to show. */
import { describe, expect, it } from 'vitest';
import { adviceOf, flownSet, historyOf, type ConditionGroup, type FlightOfSet, type SetFlight } from '../../sim/index.js';
import { judgeTrial } from '../../sim/stats/trial.js';
import { personOf } from '../../sim/stats/person.js';
import type { RunRecord } from '../../sim/files/index.js';
import { shippedSet } from '../set/shipped.js';
import { flownRecords, madeFlight } from './made-flight.js';

const of = shippedSet('short');
const records = flownRecords(of, 3);
const sized = (pxPerDeg: number): RunRecord[] => records.map((record) => ({ ...record, gauge: { ...record.gauge, pxPerDeg } }));
const flight = (id: string, startedMs: number, more: Partial<FlightOfSet> = {}): FlightOfSet => madeFlight(of, records, { id, startedMs, ...more });
const ids = ({ flights }: Pick<ConditionGroup, 'flights'>): string[] => flights.map(({ id }) => id);

describe('side by side', () => {
  it('flights of one condition together in time order, whatever order they are given in; each with its own three numbers', () => {
    const { groups } = historyOf([flight('late', 3), flight('early', 1), flight('middle', 2, { records: records.slice(0, 5), leftOff: true })]);
    expect(groups.map(ids)).toEqual([['early', 'middle', 'late']]);
    expect(groups[0]?.condition).toEqual({ set: 1, airframe: 'airframe-a', limitDeg: 2.5, pxPerDeg: 4.61, minPerDeg: null, apartDeg: null, input: 'mouse', assisted: [] });
    expect(groups[0]?.flights[2]?.result).toEqual(flownSet(of, records));
    expect(groups[0]?.flights.map(({ done, leftOff }) => [done, leftOff])).toEqual([[12, false], [5, true], [12, false]]);
  });
  it('another gauge, hand, help or set is another group, the one flown last first', () => {
    const changed: Record<string, Partial<FlightOfSet>> = {
      gauge: { records: sized(5) }, hand: { records: records.map((one) => ({ ...one, device: { ...one.device, input: 'touch' } })) },
      help: { records: records.map((one) => ({ ...one, device: { ...one.device, assisted: ['latchedHold'] } })) }, set: { set: 2 },
    };
    for (const [what, more] of Object.entries(changed)) expect(historyOf([flight('a', 1), flight('b', 2, more)]).groups.map(ids), what).toEqual([['b'], ['a']]);
  });
  it('on a measured screen by the size for the eye: the card laid anew, a hair off, is the same gauge; farther off, or another way to the speed, is not', () => {
    // 4.61 px at 0.25 mm a px are 1.1525 mm: 5.58 minutes of arc at 710 mm, 6.60 at 600.
    const seen = (gauge: object): RunRecord[] => records.map((record) => ({ ...record, gauge: { ...record.gauge, mmPerPx: 0.25, distanceMm: 710, apartDeg: 23.6, ...gauge } }));
    const groups = (gauge: object) => historyOf([flight('a', 1, { records: seen({}) }), flight('b', 2, { records: seen(gauge) })]).groups;
    expect(groups({ mmPerPx: 0.2505, apartDeg: 24.4 }).map(ids)).toEqual([['a', 'b']]);
    expect(groups({})[0]?.condition).toMatchObject({ pxPerDeg: null, minPerDeg: 5.6, apartDeg: 24 });
    for (const gauge of [{ distanceMm: 600 }, { apartDeg: 25 }, { mmPerPx: 0.28 }, { mmPerPx: null }]) expect(groups(gauge).map(ids), JSON.stringify(gauge)).toEqual([['b'], ['a']]);
  });
  it('a flight whose gauge changed on the way stands alone, also beside another of its kind', () => {
    const mixed = [...sized(4).slice(0, 6), ...sized(5).slice(6)];
    const { groups } = historyOf([flight('a', 1, { records: mixed }), flight('b', 2, { records: mixed })]);
    expect(groups.map(({ condition, flights }) => [condition, flights.length])).toEqual([[null, 1], [null, 1]]);
  });
  it('leaves out what a script flew, and counts it; a flight without a run is gone', () => {
    const scripted = records.map((one): RunRecord => ({ ...one, source: 'scripted' }));
    const found = historyOf([flight('a', 1, { records: [...records.slice(0, 8), ...scripted.slice(8)] }), flight('b', 2, { records: scripted }), flight('c', 3, { records: [] })]);
    expect(found.groups.map(ids)).toEqual([['a']]);
    expect(found.groups[0]?.flights[0]?.done).toBe(8);
    expect([found.notByHand, found.gone]).toEqual([16, 2]);
  });
});

describe('named blocks', () => {
  const prompt = flownRecords(of, 5, { sees: 'split', thresholdDeg: 0.5, thresholdLogSd: 0, reactionS: 0.3, reactionLogSd: 0, spread: 0, lapse: 0, falsePerMin: 0 });
  const slow = flownRecords(of, 6, { sees: 'split', thresholdDeg: 1.5, thresholdLogSd: 0, reactionS: 1, reactionLogSd: 0, spread: 0, lapse: 0, falsePerMin: 0 });
  it('each with the one before it; a name twice in a row is one block; without a name nothing is compared', () => {
    const { groups: [group] } = historyOf([
      flight('a', 1, { name: 'before', records: slow }), flight('b', 2, { name: 'before', records: slow }), flight('x', 3),
      flight('c', 4, { name: 'after', records: prompt }), flight('d', 5, { name: 'a year on', records: prompt.slice(0, 3) }),
    ]);
    expect(group?.pairs.map(({ earlier, later, change: { verdict } }) => [earlier, later, verdict])).toEqual([['before', 'after', 'improved'], ['after', 'a year on', 'tooFew']]);
    const decided = slow.filter(({ outcome }) => ['caught', 'late', 'missed'].includes(outcome)).length;
    expect(group?.pairs[0]?.change.decided[0]).toBe(2 * decided);
    expect(historyOf([flight('a', 1), flight('b', 2)]).groups[0]?.pairs).toEqual([]);
  });
});

describe('what to practise next', () => {
  const SETS = [{ number: 1, loaded: false, trueDrive: false }, { number: 2, loaded: false, trueDrive: true }, { number: 3, loaded: true, trueDrive: true }];
  const trial = (split: number, rate: number) => judgeTrial({ rateDegPerS: rate, onsetS: 10, releaseS: 10 + split / rate, endS: 76, limitDeg: 2.5 }, 0.1);
  const group = (set: number, trials: ReturnType<typeof trial>[]): ConditionGroup => ({
    condition: null, set, pairs: [],
    flights: [{ id: 'a', name: '', startedMs: 0, runs: 30, leftOff: false, done: 30, trials, result: { person: personOf(trials, 0.1) } } as unknown as SetFlight],
  });
  const good = Array.from({ length: 10 }, (_, at) => trial(1, at % 2 === 0 ? 0.075 : 0.155));
  const advice = (...groups: ConditionGroup[]) => adviceOf({ groups }, SETS);
  it('nothing flown: the first set; too few runs: that set, and how many', () => {
    expect(advice()).toEqual({ why: 'first', fly: 1 });
    expect(advice(group(2, good.slice(0, 5)))).toEqual({ why: 'finish', fly: 2, runs: 3 });
  });
  it('false releases only when even the lower limit is above one in two minutes: 6 in 4.9 quiet minutes are not, 9 are', () => {
    // Garwood 1936: 6 events 2.20 to 13.06, 9 events 4.12 to 17.08.
    const eager = (count: number) => [...good, ...Array.from({ length: count }, () => judgeTrial({ rateDegPerS: null, onsetS: null, releaseS: 180 / count, endS: 76, limitDeg: 2.5 }, 0.1))];
    expect(advice(group(2, eager(6))).why).toBe('loaded');
    expect(advice(group(2, eager(9)))).toMatchObject({ why: 'falseReleases', fly: 2, count: 9 });
  });
  it('the fast rate from two that got away, while the slow ones were all caught', () => {
    expect(advice(group(2, [...good, trial(3, 0.155)])).why).toBe('loaded');
    expect(advice(group(2, [...good, trial(3, 0.155), trial(2.6, 0.155)]))).toEqual({ why: 'fastRate', fly: 2, rateDegPerS: 0.155, notCaught: 2, decided: 7 });
    expect(advice(group(2, [...good, trial(3, 0.155), trial(2.6, 0.155), trial(3, 0.075)])).why).toBe('loaded');
  });
  it('the loaded true drive until it has its numbers; then more runs for a comparison, or nothing', () => {
    expect(advice(group(2, good), group(3, good.slice(0, 7)))).toEqual({ why: 'loaded', fly: 3 });
    expect(advice(group(2, good), group(3, good))).toEqual({ why: 'steady', fly: 2 });
    const change = { verdict: 'noClearChange', moreRuns: 29 } as ConditionGroup['pairs'][number]['change'];
    expect(advice({ ...group(3, good), pairs: [{ earlier: 'a', later: 'b', change }] })).toEqual({ why: 'moreRuns', fly: 3, name: 'b', runs: 29 });
  });
});
