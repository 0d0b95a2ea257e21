/** Three who come, and for each of them one press to the first useful minute: who learns, who teaches, who wants to be measured. */
import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import type { House } from '../house.js';
import { fragmentOf } from '../route.js';
import { person } from '../settings.js';
import { FIRST_HOLD, pilotWay, traineeWay, type WayIn } from './ways.js';

/** Until the sets are known nothing is said of them: a line that changes while it is read is worse than one that comes. */
const FIRST_SET: WayIn = { href: fragmentOf({ page: 'set', number: 1 }), go: 'Fly set 1', line: '' };
const SETS_LINE = 'Many short runs that count together: how soon you let go, with its interval.';

export function Whoever({ house }: { house: House }) {
  const trainee = useSignal(FIRST_HOLD);
  const pilot = useSignal(FIRST_SET);
  const name = person.value;
  useEffect(() => {
    let gone = false;
    trainee.value = FIRST_HOLD;
    void standing(house, name, (way) => { if (!gone) trainee.value = way; }, (way) => { if (!gone) pilot.value = way; });
    return () => { gone = true; };
  }, [house, name]);
  return (
    <div class="whoever">
      <Who title="Trainee" ways={[trainee.value]} first more={<a class="plain" href="#/course">The whole course</a>}>{trainee.value.line}</Who>
      <Who title="Pilot alone" ways={[pilot.value]} more={<a class="plain" href={fragmentOf({ page: 'practice' })}>Practice, told at once</a>}>{pilot.value.line}</Who>
      <Who title="Instructor" ways={[{ href: '#/bench', go: 'Write a run' }, { href: '#/desk', go: 'Follow a run' }]} more={<a class="plain" href="#/class">A class, from its files</a>}>
        On the bench you write what fails and when; at the desk you follow a trainee’s run as it is flown.
      </Who>
    </div>
  );
}

interface Props {
  readonly title: string;
  readonly ways: readonly Pick<WayIn, 'href' | 'go'>[];
  /** What most of those who come will want: one filled button a page. */
  readonly first?: boolean;
  readonly more: ComponentChildren;
  readonly children: ComponentChildren;
}

const Who = ({ title, ways, first = false, more, children }: Props) => (
  <section aria-label={title}>
    <h2 class="ruled">{title}</h2>
    <p class="whoever-go">{ways.map(({ href, go }) => <a key={href} class={first ? 'button' : 'button quiet'} href={href}>{go}</a>)}</p>
    <p class="whoever-line">{children}</p>
    <p class="whoever-more">{more}</p>
  </section>
);

/** Looks up where this person stands, once the page is there: a closed or empty logbook leaves the offers as they are. */
async function standing(house: House, name: string, learns: (way: WayIn) => void, alone: (way: WayIn) => void): Promise<void> {
  try {
    const [book, sets] = await Promise.all([house.logbook(), house.sets()]);
    const names = await Promise.all(sets.map(({ number }) => house.setName(number)));
    const flights = (await book.attempts()).filter((one) => one.person === name);
    alone(pilotWay(sets, flights.map((one) => ({ ...one, number: names.indexOf(one.set) + 1 }))));
    if (await book.count() === 0) return;
    const [[course], progress] = await Promise.all([house.course.courses(), house.course.progress(1, name)]);
    const done = progress.stands.filter(({ state }) => state === 'done').length;
    if (course !== undefined && progress.stands.some(({ flown }) => flown > 0)) learns(traineeWay(course, progress.proposal, done));
  } catch {
    // What keeps the logbook shut is told where it is needed: here the first hold and the first set stay on offer.
    alone({ ...FIRST_SET, line: SETS_LINE });
  }
}
