/** Sentences of a course: where one stands in a step, what a gate asks and what is shown, what to do next and why. */
import type { AskKey, GateFile } from '../../../sim/files/index.js';
import type { AskShown, GateShown, Proposal, StepStand } from '../../../sim/index.js';
import type { CourseProgress, FirstLook } from '../../records/progress.js';
import { adviceWords } from '../person/words.js';
import { degrees, OUTCOME_WORDS, seconds } from '../words.js';
import type { StepCard } from './house.js';
import { upper } from '../../view/words.js';

/** "step 2", "steps 2 and 3", "steps 2, 3 and 5". */
export function stepsNamed(numbers: readonly number[]): string {
  const [last, ...before] = [...numbers].reverse();
  return before.length === 0 ? `step ${last ?? ''}` : `steps ${before.reverse().join(', ')} and ${last}`;
}

const counted = (count: number, one: string, many: string): string => (count === 1 ? `one ${one}` : `${count} ${many}`);

/** When a step counts as done. */
export function doneRule({ kind, done, gate }: Pick<StepCard, 'kind' | 'done' | 'gate'>): string {
  if (kind === 'set') return gate === null ? 'Done when flown to its last run.' : 'Done when flown to its last run and what is asked is shown.';
  return { flown: 'Done when flown to its end.', passed: 'Done when its standard is met once.', passedTwice: 'Done when its standard is met twice in a row, with different dice.' }[done];
}

/** Where one stands in a step. */
export function standWords({ kind, done }: Pick<StepCard, 'kind' | 'done'>, stand: StepStand): string {
  const { state, waitsFor, flown, lastPassed, flownThrough, underway, gate } = stand;
  const flights = counted(flown, kind === 'set' ? 'flight' : 'run', kind === 'set' ? 'flights' : 'runs');
  if (state === 'closed') return `Opens once ${stepsNamed(waitsFor.map((at) => at + 1))} ${waitsFor.length === 1 ? 'is' : 'are'} done.${flown > 0 ? ` ${upper(flights)} flown already.` : ''}`;
  if (state === 'done') return `Done, ${flights}.`;
  if (kind === 'set') {
    if (underway !== null) return `Under way: ${underway.done} of ${underway.runs} runs flown.`;
    if (flown === 0) return 'Not flown yet.';
    if (!flownThrough) return `${upper(flights)}, none to its last run.`;
    return gate === null ? `${upper(flights)}.` : `${upper(flights)}; what is asked is not shown yet.`;
  }
  if (flown === 0) return 'Not flown yet.';
  if (lastPassed === null) return `${upper(flights)}; none of them decided anything.`;
  if (lastPassed) return done === 'passedTwice' ? `${upper(flights)}, the last one to standard. Once more, with other dice.` : `${upper(flights)}.`;
  return `${upper(flights)}; the last one was not to standard.`;
}

/** Never 100 % of what is not all, nor 0 % of what is not nothing. */
const share = (part: number): string => (part > 0.995 && part < 1 ? 'over 99 %' : part < 0.005 && part > 0 ? 'under 1 %' : `${Math.round(part * 100)} %`);
const figure = (ask: AskShown['ask'], value: number): string =>
  (ask === 'caught' ? share(value) : ask === 'falseReleases' ? `${value.toFixed(2)} a minute` : degrees(value));

const ASKED: Readonly<Record<AskShown['ask'], string>> = { caught: 'Caught', median: 'Median split at release', ninety: 'Nine in ten let go within', falseReleases: 'False releases' };

export const askName = (ask: AskShown['ask']): string => ASKED[ask];

/** What is asked, of which end of the interval. */
export const askedWords = (ask: AskShown['ask'], asked: number): string => (ask === 'caught' ? `from ${figure(ask, asked)}` : `up to ${figure(ask, asked)}`);

const ASKS: Readonly<Record<AskKey, AskShown['ask']>> = { caughtFrom: 'caught', medianToDeg: 'median', ninetyToDeg: 'ninety', falseToPerMin: 'falseReleases' };

/** Everything that a gate asks, for print and before the first flight. */
export function gateAsks(gate: GateFile): { readonly ask: AskShown['ask']; readonly asked: number }[] {
  return (Object.keys(ASKS) as AskKey[]).flatMap((key) => {
    const asked = gate[key];
    return asked === undefined ? [] : [{ ask: ASKS[key], asked }];
  });
}

/** One's own figure with its interval; a dash below the counts that it needs. */
export function ownWords({ ask, value, lo, hi, count, of, more }: AskShown): string {
  if (value === null && lo === null) return more === null ? 'no quiet minute yet' : `shown from 8 decided runs on: ${more} more`;
  const own = ask === 'caught' ? `${count} of ${of}` : ask === 'falseReleases' ? `${count} in ${of.toFixed(1)} min: ${figure(ask, value ?? 0)}` : value === null ? 'beyond what was seen' : figure(ask, value);
  const end = (limit: number | null): string => (limit === null ? 'beyond what was seen' : ask === 'falseReleases' ? limit.toFixed(2) : figure(ask, limit));
  return `${own}; ${end(lo)} to ${end(hi)}`;
}

/** Whether it is shown, and if not, what is missing. */
export function answerWords({ ask, answer, more, value, lo }: AskShown): string {
  if (answer === 'met') return 'shown';
  if (answer === 'notMet') return 'not met: the whole interval lies outside';
  if (value === null && lo === null) return 'no answer yet';
  if (more === null) return 'no clear answer; runs like these will not show it';
  return `no clear answer yet, about ${counted(more, ask === 'falseReleases' ? 'more quiet minute' : 'more decided run', ask === 'falseReleases' ? 'more quiet minutes' : 'more decided runs')} like these`;
}

/** What stands behind a gate: which flights, how often tried, what was left out. */
export function gateNotes({ flights }: GateFile, { met, block, tries, passedOver }: GateShown): string[] {
  const lines: string[] = [];
  const size = flights === 1 ? 'Each flight is judged for itself' : `Flights are judged ${flights} at a time, each once`;
  if (block === null) lines.push(`${size}.`);
  else if (met) lines.push(`${size}; met at try ${tries}.`);
  else lines.push(`${size}; ${block.whole ? `try ${tries} is told here` : `${block.flights.length} of ${flights} flown in this one`}.`);
  if (tries > 1) lines.push('A gate that is tried often is met by luck now and then.');
  if (passedOver > 0) lines.push(`Left out: ${counted(passedOver, 'flight', 'flights')} in which the gauge, the hand or a help changed.`);
  return lines;
}

/** What to do next: what, why, and what the button says. */
export function proposalWords(proposal: Proposal, steps: readonly StepCard[]): { readonly what: string; readonly why: string; readonly go: string } {
  const card = 'step' in proposal ? steps[proposal.step] : undefined;
  const number = card?.number ?? 0;
  switch (proposal.fly) {
    case 'step': return { what: `Step ${number}. ${card?.teaches ?? ''}`, go: `Fly step ${number}`, why: STEP_WHY[proposal.why] };
    case 'set': {
      const runs = counted(proposal.runs, 'run', 'runs');
      const what = `Step ${number}, ${runs} of its set. ${card?.teaches ?? ''}`;
      const go = `Go to set ${card?.set ?? ''}`;
      if (proposal.why === 'short') return { what, go, why: `What is asked has no clear answer yet: about ${counted(proposal.more, `more ${proposal.unit === 'runs' ? 'decided run' : 'quiet minute'}`, `more ${proposal.unit === 'runs' ? 'decided runs' : 'quiet minutes'}`)} like these would give one.` };
      return { what, go, why: SET_WHY[proposal.why] };
    }
    case 'practice': return proposal.why === 'before set'
      ? { what: `${upper(counted(proposal.runs, 'run', 'runs'))} of practice, then step ${number}.`, go: 'Go to practice', why: 'The first set is near. These warm the hand, are told at once, and count for nothing.' }
      : { what: `${upper(counted(proposal.runs, 'run', 'runs'))} of practice, then step ${number} again.`, go: 'Go to practice', why: `You let go for nothing ${proposal.perMin.toFixed(2)} times a minute, more than is asked. Practice tells at once which stir was none.` };
    case 'advised': return { what: 'Every step is done.', go: `Go to set ${proposal.advice.fly}`, why: adviceWords(proposal.advice) };
  }
}

const STEP_WHY: Readonly<Record<Extract<Proposal, { fly: 'step' }>['why'], string>> = {
  begin: 'It is the first step, and asks for nothing before it.', next: 'It is the first step that is open and not done.',
  again: 'Your last run of it was not to standard. Its debrief shows where; fly it once more while that is fresh.',
  'once more': 'Your last run of it was to standard. Once more with other dice, and it is done.',
};
const SET_WHY: Readonly<Record<'underway' | 'first flight' | 'block', string>> = {
  underway: 'This set is under way. It goes on where it stood.', 'first flight': 'It is the first step that is open and not done. A set may be flown in several sittings.',
  block: 'What is asked was not shown. The next flight is judged for itself.',
};

/** The run that nobody announced, in a sentence. */
export function firstLookWords({ parted, afterOnsetS, growthDeg, passed, outcome }: FirstLook): string {
  const came = !parted ? 'The fault did not show before the run ended.'
    : afterOnsetS === null || growthDeg === null ? 'Two sides parted without notice, and the switch was not let go for it.'
      : `Two sides parted without notice: let go after ${seconds(afterOnsetS)}, ${degrees(Math.abs(growthDeg))} further apart.`;
  return `${came} The run came out as ${OUTCOME_WORDS[outcome]}${passed === null ? '' : passed ? ', to standard' : ', not to standard'}. One run says nothing about a person; it stands apart from every figure and every step.`;
}

/** What is left out of the standing. */
export const olderWords = ({ older }: Pick<CourseProgress, 'older'>): string | null =>
  (older === 0 ? null : `${upper(counted(older, 'run was', 'runs were'))} flown on another version of the model. They count as flown, and whether they met a standard cannot be told here.`);
