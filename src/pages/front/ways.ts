/** What the first page offers each of those who come, from where they stand: one next thing, and why. */
import type { Proposal } from '../../../sim/index.js';
import { nextPlace, type Attempt } from '../../records/logbook/attempt.js';
import type { CourseCard } from '../course/house.js';
import { proposalWords } from '../course/words.js';
import { fragmentOf } from '../route.js';
import type { SetCard } from '../set/card.js';

export interface WayIn {
  readonly href: string;
  /** On the button: what it leads to. */
  readonly go: string;
  readonly line: string;
}

/** To whoever has flown no step yet, and as long as nobody knows better. */
export const FIRST_HOLD: WayIn = { href: fragmentOf({ page: 'step', course: 1, step: 1 }), go: 'Fly the first hold', line: 'Step 1 of the course: about three minutes, by mouse, finger or keys.' };

/** The next step of the course. @param done steps that are done */
export function traineeWay(course: CourseCard, proposal: Proposal, done: number): WayIn {
  const { what, go } = proposalWords(proposal, course.steps);
  const step = 'step' in proposal ? course.steps[proposal.step] : undefined;
  const count = `${done} of ${course.steps.length} steps done.`;
  const href = proposal.fly === 'practice' ? fragmentOf({ page: 'practice' })
    : proposal.fly === 'advised' ? fragmentOf({ page: 'set', number: proposal.advice.fly })
      : step?.set != null ? fragmentOf({ page: 'set', number: step.set })
        : fragmentOf({ page: 'step', course: course.number, step: step?.number ?? 1 });
  return { href, go, line: `${count} ${what}` };
}

/** A flight of a set by whoever flies. */
export type Flight = Pick<Attempt, 'done' | 'runs' | 'leftMs'> & { readonly number: number };

/** The set that is under way, else the first that was never flown, else what the flights so far advise. @param flights newest first */
export function pilotWay(sets: readonly SetCard[], flights: readonly Flight[]): WayIn {
  const shipped = sets.filter((set) => set.shipped);
  const cardOf = (flight: Flight): SetCard | undefined => shipped.find(({ number }) => number === flight.number);
  // A set that was begun anew has left its older flights behind.
  const newest = flights.filter(({ number }, at) => flights.findIndex((one) => one.number === number) === at);
  const underway = newest.find((flight) => nextPlace(flight) !== null && cardOf(flight) !== undefined);
  if (underway !== undefined) {
    const left = Math.max(1, Math.round((cardOf(underway) as SetCard).minutes * (1 - underway.done.length / underway.runs)));
    return { href: fragmentOf({ page: 'set', number: underway.number }), go: `Go on with set ${underway.number}`, line: `${underway.done.length} of ${underway.runs} runs flown; about ${left} min are left.` };
  }
  const next = shipped.find(({ number }) => !flights.some((flight) => flight.number === number));
  if (next === undefined) return { href: fragmentOf({ page: 'person' }), go: 'What to practise next', line: 'Every set is flown. What they show together says which to fly again.' };
  return { href: fragmentOf({ page: 'set', number: next.number }), go: `Fly set ${next.number}`, line: `${next.runs} runs in about ${next.minutes} min${next.loaded ? ', with questions to answer' : ''}: how soon you let go, with its interval.` };
}
