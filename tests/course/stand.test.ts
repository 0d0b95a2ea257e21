// Where a person stands in a course, and what is the next useful thing: from made facts, so that every rule is met alone.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CourseStep, GateFile, Outcome } from '../../sim/files/index.js';
import { firstLookAt, nextOf, standOf, type Advice, type ConditionGroup, type JudgedTrial, type ReadyStep, type SetFlight, type StepFacts, type StepRun } from '../../sim/index.js';
import { drill } from '../files/shipped.js';
import { AIRFRAME } from '../sim/bench.js';
import { shippedSet } from '../set/shipped.js';

const step = (more: Partial<ReadyStep> = {}): ReadyStep => ({
  name: 'x', teaches: 't', needs: [], done: 'passed', gate: null,
  flies: { kind: 'drill', scenario: drill('hold-and-nothing'), airframe: AIRFRAME, shipped: 'hold-and-nothing' }, ...more,
});
const ofSet = (more: Partial<ReadyStep> = {}): ReadyStep => step({ done: 'flown', flies: { kind: 'set', of: shippedSet('true-drive-calm'), shipped: 'true-drive-calm' }, ...more });
/** p passed, f failed, v void; a capital is of the same seed as the one before. */
function runs(letters: string): StepFacts {
  let seed = 0;
  return { kind: 'drill', runs: letters.split('').map((one, at): StepRun => {
    seed += one === one.toLowerCase() ? 1 : 0;
    const is = one.toLowerCase();
    return { atMs: at, seed, passed: is === 'v' ? null : is === 'p', outcome: ({ p: 'caught', f: 'late', v: 'void' } as Record<string, Outcome>)[is]!, assisted: false };
  }) };
}
const trial = (outcome: 'caught' | 'late'): JudgedTrial => ({ rateDegPerS: 0.155, onsetS: 10, releaseS: 16, endS: 76, limitDeg: 2.5, outcome, growthDeg: outcome === 'caught' ? 1 : 3 });
const flight = (id: number, caughts: number, { done = 30, leftOff = false } = {}): SetFlight =>
  ({ id: String(id), name: '', startedMs: id, runs: 30, done, leftOff, trials: Array.from({ length: 20 }, (_, at) => trial(at < caughts ? 'caught' : 'late')) }) as unknown as SetFlight;
const CONDITION = { set: 1, airframe: 'a', limitDeg: 2.5, pxPerDeg: 4, minPerDeg: null, apartDeg: null, input: 'mouse', assisted: [] };
const flights = (all: readonly SetFlight[], underway: Extract<StepFacts, { kind: 'set' }>['underway'] = null): StepFacts =>
  ({ kind: 'set', seenDeg: 0.1, underway, groups: all.length === 0 ? [] : [{ condition: CONDITION, set: 1, flights: all, pairs: [] } satisfies ConditionGroup] });
const GATE: GateFile = { flights: 1, source: 's', caughtFrom: 0.6 };

describe('a drill is done', () => {
  it.each<[CourseStep['done'], string, boolean]>([
    ['flown', '', false], ['flown', 'f', true], ['flown', 'v', false],
    ['passed', 'fff', false], ['passed', 'fp', true], ['passed', 'pf', true],
    ['passedTwice', 'p', false], ['passedTwice', 'pfp', false], ['passedTwice', 'pp', true], ['passedTwice', 'fppf', true],
    ['passedTwice', 'pP', false], ['passedTwice', 'pPp', true], ['passedTwice', 'pvp', true], // a void run decides nothing, and breaks no row
  ])('%s after %s: %s', (done, letters, is) => {
    const [stand] = standOf([step({ done })], [runs(letters)]);
    expect(stand!.state).toBe(is ? 'done' : 'open');
  });
});

describe('a set is done', () => {
  it('flown to its last run, and its gate met', () => {
    const state = (gate: GateFile | null, facts: StepFacts): string => standOf([ofSet({ gate })], [facts])[0]!.state;
    expect(state(null, flights([]))).toBe('open');
    expect(state(null, flights([flight(1, 20, { done: 12, leftOff: true })]))).toBe('open');
    expect(state(null, flights([flight(1, 3)]))).toBe('done');
    expect(state(GATE, flights([flight(1, 15)]))).toBe('open'); // 15 of 20 from .509
    expect(state(GATE, flights([flight(1, 18)]))).toBe('done'); // 18 of 20 from .683
    expect(state(GATE, flights([flight(1, 18), flight(2, 2)]))).toBe('done');
  });
});

it('a step is closed until all that it needs is done, and says what that is; what is done stays done', () => {
  const steps = [step(), step(), step({ needs: [0, 1] })];
  const states = (...letters: string[]) => standOf(steps, letters.map(runs)).map(({ state, waitsFor }) => `${state} ${waitsFor.join()}`.trim());
  expect(states('', '', '')).toEqual(['open', 'open', 'closed 0,1']);
  expect(states('p', 'f', '')).toEqual(['done', 'open', 'closed 1']);
  expect(states('p', 'p', '')).toEqual(['done', 'done', 'open']);
  expect(states('p', '', 'p')).toEqual(['done', 'open', 'done']); // flown from the list of drills
});

it('one more run, however it goes, takes nothing that is done or open back', () => fc.assert(fc.property(
  fc.array(fc.constantFrom('passed' as const, 'passedTwice' as const, 'flown' as const), { minLength: 2, maxLength: 5 }), fc.array(fc.stringMatching(/^[pfvP]{0,5}$/), { minLength: 5, maxLength: 5 }), fc.nat(4), fc.constantFrom('p', 'f', 'v'),
  (dones, letters, at, next) => {
    const steps = dones.map((done, place) => step({ done, needs: place === 0 ? [] : [place - 1] }));
    const before = standOf(steps, dones.map((_, place) => runs(letters[place]!)));
    const after = standOf(steps, dones.map((_, place) => runs(letters[place]! + (place === at % dones.length ? next : ''))));
    before.forEach(({ state }, place) => {
      if (state === 'done') expect(after[place]!.state).toBe('done');
      if (state === 'open') expect(after[place]!.state).not.toBe('closed');
    });
  },
)));

const ADVICE: Advice = { why: 'steady', fly: 2 };
function next(steps: ReadyStep[], facts: StepFacts[], practised = { ever: 4, since: 4 }) {
  return nextOf({ steps, stands: standOf(steps, facts), advice: ADVICE, adviceMinutes: 31, practised });
}

describe('the next quarter of an hour', () => {
  it('the first step that is open: begin, next, again, once more', () => {
    expect(next([step(), step()], [runs(''), runs('')])).toMatchObject({ fly: 'step', step: 0, why: 'begin' });
    expect(next([step(), step()], [runs('p'), runs('')])).toMatchObject({ fly: 'step', step: 1, why: 'next' });
    expect(next([step(), step()], [runs('f'), runs('')])).toMatchObject({ fly: 'step', step: 0, why: 'again' });
    expect(next([step({ done: 'passedTwice' })], [runs('fp')])).toMatchObject({ fly: 'step', step: 0, why: 'once more' });
  });
  it('a set that is under way comes first, as far as its next pause: 15 runs of (38 + 20) s are 14.5 min', () => {
    const facts = [runs(''), flights([], { done: 0, runs: 30, blocks: 2 })];
    expect(next([step(), ofSet()], facts)).toEqual({ fly: 'set', why: 'underway', step: 1, runs: 15, minutes: 15 });
    expect(next([step(), ofSet()], [runs(''), flights([], { done: 20, runs: 30, blocks: 2 })])).toMatchObject({ runs: 10, minutes: 10 });
  });
  it('before the first set ever, four runs of practice; with them behind, the set', () => {
    expect(next([ofSet()], [flights([])], { ever: 0, since: 0 })).toMatchObject({ fly: 'practice', why: 'before set', runs: 4 });
    expect(next([ofSet()], [flights([])])).toMatchObject({ fly: 'set', why: 'first flight' });
  });
  it('a gate without an answer: the set again, with what it lacks; a gate clearly not met: another block', () => {
    expect(next([ofSet({ gate: GATE })], [flights([flight(1, 15)])])).toMatchObject({ fly: 'set', why: 'short', unit: 'runs', more: expect.toSatisfy((more: number) => more > 5 && more < 40) });
    expect(next([ofSet({ gate: GATE })], [flights([flight(1, 3)])])).toMatchObject({ fly: 'set', why: 'block' });
  });
  it('everything done: what the figures advise', () => expect(next([step()], [runs('p')])).toEqual({ fly: 'advised', advice: ADVICE, minutes: 15 }));
  it('there is always something to do, and it is never closed', () => fc.assert(fc.property(
    fc.array(fc.tuple(fc.boolean(), fc.stringMatching(/^[pfv]{0,4}$/), fc.nat(3)), { minLength: 1, maxLength: 8 }), fc.nat(6), (drawn, ever) => {
      const steps = drawn.map(([isSet, , back], at) => (isSet ? ofSet : step)({ needs: at >= back && back > 0 ? [at - back] : [] }));
      const facts = drawn.map(([isSet, letters]) => (isSet ? flights(letters === '' ? [] : [flight(1, 10)]) : runs(letters)));
      const proposal = next(steps, facts, { ever, since: ever });
      expect(proposal.minutes).toBeGreaterThan(0);
      if ('step' in proposal) expect(standOf(steps, facts)[proposal.step]!.state).toBe('open');
    },
  )));
});

describe('the first look', () => {
  const none = (): boolean => false;
  it('one of the holds, by the seed, each as likely: 3,000 persons', () => {
    const counts = [0, 0, 0];
    for (let seed = 0; seed < 3000; seed += 1) counts[[3, 4, 5].indexOf(firstLookAt([3, 4, 5], seed, none)!)]! += 1;
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(4 * Math.sqrt(3000 * (1 / 3) * (2 / 3))); // four standard deviations
  });
  it('the same for the same seed; flown elsewhere it moves on; when all are flown there is none', () => fc.assert(fc.property(fc.nat(0xffffffff), (seed) => {
    const first = firstLookAt([3, 4, 5], seed, none)!;
    expect(firstLookAt([3, 4, 5], seed, none)).toBe(first);
    expect(firstLookAt([3, 4, 5], seed, (place) => place !== first)).toBe(first);
    const second = firstLookAt([3, 4, 5], seed, (place) => place === first);
    expect([3, 4, 5].filter((place) => place !== first)).toContain(second);
    expect(firstLookAt([3, 4, 5], seed, () => true)).toBeNull();
  })));
});
