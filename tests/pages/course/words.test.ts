/** Sentences of a course: no more is said than the figures hold, and nothing of what comes. */
import { describe, expect, it } from 'vitest';
import { readyCourse, type CourseFile } from '../../../sim/files/index.js';
import type { AskShown, Proposal, StepStand } from '../../../sim/index.js';
import { courseCard } from '../../../src/pages/course/card.js';
import type { StepCard } from '../../../src/pages/course/house.js';
import { answerWords, askedWords, doneRule, firstLookWords, gateNotes, ownWords, proposalWords, standWords, stepsNamed } from '../../../src/pages/course/words.js';
import { drill, drillNames, lookup } from '../../files/shipped.js';

const ask = (more: Partial<AskShown>): AskShown => ({ ask: 'caught', asked: 0.8, value: 0.9, lo: 0.683, hi: 0.9877, count: 18, of: 20, answer: 'open', more: 12, ...more });
const stand = (more: Partial<StepStand>): StepStand => ({ state: 'open', waitsFor: [], flown: 0, lastPassed: null, flownThrough: false, underway: null, gate: null, ...more });

describe('a gate', () => {
  it('own figure and interval beside what is asked', () => {
    expect(askedWords('caught', 0.8)).toBe('from 80 %');
    expect(ownWords(ask({}))).toBe('18 of 20; 68 % to 99 %');
    expect(ownWords(ask({ count: 20, value: 1, lo: 0.8316, hi: 1 }))).toBe('20 of 20; 83 % to 100 %');
    expect(ownWords(ask({ hi: 0.9986 }))).toContain('to over 99 %'); // never 100 % of what is not all
    expect(ownWords(ask({ ask: 'falseReleases', count: 2, of: 10, value: 0.2, lo: 0.0242, hi: 0.7225 }))).toBe('2 in 10.0 min: 0.20 a minute; 0.02 to 0.72');
    expect(ownWords(ask({ ask: 'median', value: 0.9, lo: 0.7, hi: null }))).toBe('0.90°; 0.70° to beyond what was seen');
    expect(ownWords(ask({ value: null, lo: null, hi: null, more: 3 }))).toBe('shown from 8 decided runs on: 3 more');
  });
  it('met, not met, or no clear answer and about how many more', () => {
    expect(answerWords(ask({ answer: 'met' }))).toBe('shown');
    expect(answerWords(ask({ answer: 'notMet' }))).toContain('not met');
    expect(answerWords(ask({}))).toBe('no clear answer yet, about 12 more decided runs like these');
    expect(answerWords(ask({ ask: 'falseReleases', more: 1 }))).toContain('about one more quiet minute like these');
    expect(answerWords(ask({ more: null }))).toBe('no clear answer; runs like these will not show it');
  });
  it('how often it was tried is never left out', () => {
    const gate = { flights: 2, source: 's' };
    const block = { flights: ['a', 'b'], startedMs: 1, whole: true, decided: 40, asks: [], met: false };
    expect(gateNotes(gate, { met: false, block, tries: 3, passedOver: 1 }).join(' ')).toBe('Flights are judged 2 at a time, each once; try 3 is told here. A gate that is tried often is met by luck now and then. Left out: one flight in which the gauge, the hand or a help changed.');
    expect(gateNotes(gate, { met: false, block: { ...block, flights: ['a'], whole: false }, tries: 0, passedOver: 0 })).toEqual(['Flights are judged 2 at a time, each once; 1 of 2 flown in this one.']);
  });
});

describe('a step', () => {
  // Whatever wants an answer loads: a heading, a height or a caution no less than a callout.
  it.each([['callout', 'calls-come-in', true], ['headings, heights, cautions', 'headings-and-heights', true], ['messages alone', 'back-in', false], ['nothing', 'hold-and-nothing', false]])('%s: loaded or not', (_, name, loaded) => {
    const course: CourseFile = { format: 1, title: 't', brief: 'b', steps: [{ name: 'a', teaches: 'x', drill: name, done: 'flown', needs: [] }] };
    const ready = readyCourse(course, { airframes: lookup, drills: (one) => (drillNames.includes(one) ? drill(one) : undefined), sets: () => undefined });
    expect(courseCard(ready, 1, null, { drill: () => 1, set: () => null }).steps.map((step) => step.loaded)).toEqual([loaded]);
  });
  it('when it counts, and where one stands', () => {
    expect(doneRule({ kind: 'drill', done: 'passedTwice', gate: null })).toContain('twice in a row, with different dice');
    expect(stepsNamed([2])).toBe('step 2');
    expect(stepsNamed([2, 3, 5])).toBe('steps 2, 3 and 5');
    const drill = { kind: 'drill', done: 'passedTwice' } as const;
    expect(standWords(drill, stand({ state: 'closed', waitsFor: [0, 2], flown: 1 }))).toBe('Opens once steps 1 and 3 are done. One run flown already.');
    expect(standWords(drill, stand({ flown: 2, lastPassed: true }))).toBe('2 runs, the last one to standard. Once more, with other dice.');
    expect(standWords(drill, stand({ flown: 2, lastPassed: false }))).toBe('2 runs; the last one was not to standard.');
    const set = { kind: 'set', done: 'flown' } as const;
    expect(standWords(set, stand({ underway: { done: 12, runs: 30, blocks: 2 } }))).toBe('Under way: 12 of 30 runs flown.');
    expect(standWords(set, stand({ flown: 1 }))).toBe('One flight, none to its last run.');
  });
});

const steps = [1, 2].map((number): StepCard => ({ number, teaches: 'Holding on.', kind: number === 1 ? 'drill' : 'set', task: '', done: 'passed', needs: [], gate: null, drill: null, set: 4, limitDeg: null, minutes: 5, loaded: false }));
it.each<[Proposal, string, string]>([
  [{ fly: 'step', step: 0, why: 'again', minutes: 6 }, 'Fly step 1', 'not to standard'],
  [{ fly: 'set', step: 1, why: 'short', runs: 15, more: 12, unit: 'runs', minutes: 15 }, 'Go to set 4', 'about 12 more decided runs like these'],
  [{ fly: 'practice', step: 1, why: 'before set', runs: 4, minutes: 4 }, 'Go to practice', 'count for nothing'],
  [{ fly: 'practice', step: 1, why: 'false releases', runs: 8, perMin: 1.234, minutes: 8 }, 'Go to practice', '1.23 times a minute'],
  [{ fly: 'advised', advice: { why: 'steady', fly: 3 }, minutes: 15 }, 'Go to set 3', 'Nothing stands out'],
])('the next quarter of an hour: %j', (proposal, go, why) => {
  const words = proposalWords(proposal, steps);
  expect(words.go).toBe(go);
  expect(words.why).toContain(why);
});

it('a first look is told alone, and never of a person', () => {
  const look = { step: 3, id: 'x', atMs: 0, outcome: 'completed', parted: true, afterOnsetS: 2.1, growthDeg: -0.33, passed: true } as const;
  expect(firstLookWords(look)).toBe('Two sides parted without notice: let go after 2.1 s, 0.33° further apart. The run came out as completed, to standard. One run says nothing about a person; it stands apart from every figure and every step.');
  expect(firstLookWords({ ...look, afterOnsetS: null, growthDeg: null, outcome: 'lost', passed: false })).toContain('was not let go for it. The run came out as control lost, not to standard.');
  expect(firstLookWords({ ...look, parted: false })).toContain('did not show before the run ended');
});
