/** The drill itself: a canvas, its twins, and a way to pause and to leave. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Tab } from '../../view/place.js';
import { ShortCaution } from '../frame.js';
import type { Flown, House } from '../house.js';
import { spokenPointers } from '../settings.js';
import { useAboard, type Boarding } from './aboard.js';
import { Head, sides } from './head.js';
import { Paused } from './paused.js';
import { Tabs } from './tabs.js';
import { Frozen, Talk } from './talk.js';
import { Twins } from './twins.js';

export function Drill(props: Boarding) {
  const { house, of, name } = props;
  const deck = useRef<HTMLElement>(null);
  const { flying, now, paused, desks, failed, at } = useAboard(deck, props);
  const task = useSignal('');
  const tab = useSignal<Tab>('flaps');
  /** Words that were put aside where they stand over the controls. */
  const aside = useSignal<number | null>(null);
  const spoken = spokenPointers.peek();
  useEffect(() => { void taskOf(house, of).then((words) => { task.value = words; }); }, [house]);

  const picture = now.value;
  const words = picture === null || picture.blank || picture.frozen ? null : picture.talk;
  const talk = aside.value === words?.id ? null : words;
  /** Words were put aside that still wait: the way back to them stands in the place of the task. */
  const put = at.value.talkOver && words !== null && talk === null;
  const covered = at.value.talkOver && (talk !== null || picture?.frozen === true);
  const up = covered ? null : tab.value;
  useEffect(() => flying.value?.turn(up), [up, flying.value, at.value]);

  // Behind the pause nothing takes the focus; once it is over, the hands have it again.
  useEffect(() => { if (paused.value === null) deck.current?.focus({ preventScroll: true }); }, [paused.value]);

  const goOn = (stampMs: number): void => {
    paused.value = null;
    flying.value?.resume(stampMs);
    deck.current?.focus();
  };
  const turn = (next: Tab): void => {
    tab.value = next;
    if (picture !== null && picture.talk !== null) aside.value = picture.talk.id;
  };
  const flown = flying.value === null || picture === null ? null : { panel: flying.value.panel, now: picture };
  return (
    <div class="drill-page" style={{ fontSize: `${at.value.type.label}px` }}>
      <Head
        at={at.value} name={name} task={task.value} desks={desks.value} pause={(stampMs) => flying.value?.pause(stampMs)}
        put={put ? (words.answers.length === 0 ? 'Message' : 'Question') : null} takeUp={() => { aside.value = null; }}
      />
      <main ref={deck} class="deck" aria-label="Drill" tabIndex={-1} inert={paused.value !== null}>
        {flown !== null && <Twins at={at.value} {...flown} tab={up} spoken={spoken} />}
        {flown !== null && at.value.tabbed && <Tabs at={at.value} {...flown} tab={up} turn={turn} />}
        {talk !== null && <Talk at={at.value} talk={talk} later={() => { aside.value = talk.id; }} />}
        {picture?.frozen === true && <Frozen at={at.value} resume={goOn} />}
        {flying.value === null && failed.value === null && <p class="waiting">Getting ready …</p>}
        {failed.value !== null && <p class="waiting" role="alert">The drill could not start: {failed.value}</p>}
      </main>
      {paused.value !== null && flying.value !== null && <Paused house={house} why={paused.value} resume={goOn} leave={(stampMs) => flying.value?.stop(stampMs)} />}
      <footer class="drill-foot" style={{ ...sides(at.value), height: `${at.value.foot.h}px` }}><ShortCaution /></footer>
    </div>
  );
}

/** The task in the head of the page. */
async function taskOf(house: House, of: Flown): Promise<string> {
  if ('practice' in of) return 'let go when they part';
  if ('course' in of) return `flaps to ${(await house.course.brief(of.course, of.step))?.to.join(', then ') ?? ''}`;
  if ('own' in of) return `flaps to ${(await house.own.flight(of.own))?.card.to.join(', then ') ?? ''}`;
  if ('set' in of) return `flaps toward ${(await house.sets())[of.set - 1]?.to ?? ''}`;
  return `flaps to ${(await house.drills())[of.drill - 1]?.to.join(', then ') ?? ''}`;
}
