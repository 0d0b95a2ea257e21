// The ways in on the first page: from where somebody stands to one next thing.
import { describe, expect, test } from 'vitest';
import type { CourseCard, StepCard } from '../../../src/pages/course/house.js';
import { FIRST_HOLD, pilotWay, traineeWay, type Flight } from '../../../src/pages/front/ways.js';
import { routeOf } from '../../../src/pages/route.js';
import type { SetCard } from '../../../src/pages/set/card.js';
import { AIRFRAME } from '../../sim/bench.js';

const set = (number: number, more: Partial<SetCard> = {}): SetCard => ({
  number, shipped: true, brief: '', runs: 30, blocks: 3, loaded: false, back: false, minutes: 30, limitDeg: 2.5, words: [], from: '4', to: '16', speedKt: 167, airframe: AIRFRAME, ...more,
});
const SETS = [set(1, { runs: 12, minutes: 9 }), set(2), set(3, { loaded: true }), set(4, { shipped: false })];
const flight = (number: number, done: number, runs = 30, leftMs: number | null = null): Flight =>
  ({ number, runs, leftMs, done: Array.from({ length: done }, (_, at) => ({ entry: `${at}`, outcome: 'caught' as const })) });

describe('a pilot alone', () => {
  test('begins with the first set, and goes to the next that was never flown', () => {
    expect(pilotWay(SETS, [])).toEqual({ href: '#/set/1', go: 'Fly set 1', line: '12 runs in about 9 min: how soon you let go, with its interval.' });
    expect(pilotWay(SETS, [flight(1, 12, 12)]).go).toBe('Fly set 2');
    // Left off counts as flown: it is offered again by nobody.
    expect(pilotWay(SETS, [flight(2, 3, 30, 1000), flight(1, 12, 12)])).toMatchObject({ go: 'Fly set 3', line: '30 runs in about 30 min, with questions to answer: how soon you let go, with its interval.' });
  });

  test('goes on with the set that is under way', () => {
    expect(pilotWay(SETS, [flight(1, 12, 12), flight(2, 20)])).toEqual({ href: '#/set/2', go: 'Go on with set 2', line: '20 of 30 runs flown; about 10 min are left.' });
    expect(pilotWay(SETS, [flight(2, 29)]).line).toBe('29 of 30 runs flown; about 1 min are left.'); // never none
    // Begun anew behind one that was not flown through: the newer one stands.
    expect(pilotWay(SETS, [flight(1, 12, 12), flight(1, 3, 12)]).go).toBe('Fly set 2');
  });

  test('with every set flown goes to what they show together; a set of a course is none of these', () => {
    const all = [flight(3, 30), flight(2, 30), flight(1, 12, 12)];
    expect(pilotWay(SETS, all)).toMatchObject({ href: '#/person', go: 'What to practise next' });
    expect(pilotWay(SETS, [flight(4, 3), ...all]).href).toBe('#/person');
    expect(pilotWay(SETS, [flight(0, 3)]).go).toBe('Fly set 1'); // a set that is no longer here
  });
});

describe('a trainee', () => {
  const step = (number: number, more: Partial<StepCard> = {}): StepCard =>
    ({ number, teaches: `Lesson ${number}.`, kind: 'drill', task: '', done: 'flown', needs: [], gate: null, drill: number, set: null, limitDeg: null, minutes: 3, loaded: false, ...more });
  const course: CourseCard = { number: 1, title: '', brief: '', own: null, steps: [step(1), step(2), step(3, { kind: 'set', set: 6, drill: null })] };

  test('goes to the first hold, then to what the course proposes', () => {
    expect(routeOf(FIRST_HOLD.href)).toEqual({ page: 'step', course: 1, step: 1 });
    expect(traineeWay(course, { fly: 'step', step: 1, why: 'next', minutes: 3 }, 1)).toEqual({ href: '#/course/1/2', go: 'Fly step 2', line: '1 of 3 steps done. Step 2. Lesson 2.' });
    expect(traineeWay(course, { fly: 'set', step: 2, why: 'first flight', runs: 10, minutes: 9 }, 2)).toEqual({ href: '#/set/6', go: 'Go to set 6', line: '2 of 3 steps done. Step 3, 10 runs of its set. Lesson 3.' });
    expect(traineeWay(course, { fly: 'practice', step: 2, why: 'before set', runs: 4, minutes: 4 }, 2)).toMatchObject({ href: '#/practice', go: 'Go to practice' });
  });
});
