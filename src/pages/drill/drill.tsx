/** The drill itself: a canvas, its twins, and a way to pause and to leave. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Airframe, RunRecord } from '../../../sim/files/index.js';
import { layout } from '../../view/layout.js';
import type { Tab } from '../../view/place.js';
import type { Picture } from '../../view/picture.js';
import { ShortCaution } from '../frame.js';
import type { Cabin, Flown, Flying, House } from '../house.js';
import { AllKeys } from './keycard.js';
import type { Route } from '../route.js';
import { fromFile, lastOwn, lastStep, record, route, started } from '../session.js';
import { bindings, latchedHold, letters, look, loudness, muted, pads, spokenPointers } from '../settings.js';
import { isNews } from './news.js';
import { planFor } from '../plan/kept.js';
import { size } from '../size/choices.js';
import { look as lookAtScreen, pxPerMm, screenName } from '../size/screen.js';
import { differences, sameAgain, sightOf, wishOf, type Sight } from '../size/sight.js';
import { timingNow } from '../timing/kept.js';
import { keepFocus, Tabs } from './tabs.js';
import { Frozen, Talk } from './talk.js';
import { Twins } from './twins.js';

/** Where a run leads that has ended by itself. */
const BEHIND: readonly Route['page'][] = ['say', 'step-say', 'own-say', 'set-say', 'practice'];

type Why = 'pause' | 'focusLost' | 'hidden' | 'resized';

const WHYS: Readonly<Record<Why, string>> = {
  pause: 'You paused the run.',
  focusLost: 'The window or the device lost your hand. The switch was let go.',
  hidden: 'The page was hidden. The switch was let go.',
  resized: 'The window or its zoom changed, and the gauge with it. The switch was let go.',
};

interface Props {
  readonly house: House;
  readonly of: Flown;
  /** What the page is called: never what the run holds. */
  readonly name: string;
  /** How the gauge was seen before: it is drawn so again, and a change in mid-run stops the clock. */
  readonly lock?: Sight | null;
  /** The run is over, and its record is at hand. */
  readonly over: (run: RunRecord) => void;
  /** The run was left by going back; what it came to so far. */
  readonly left: (run: RunRecord) => void;
}

export function Drill({ house, of, name, lock = null, over: isOver, left: isLeft }: Props) {
  const deck = useRef<HTMLElement>(null);
  const flying = useSignal<Flying | null>(null);
  const now = useSignal<Picture | null>(null);
  const paused = useSignal<Why | null>(null);
  const desks = useSignal(0);
  const task = useSignal('');
  const failed = useSignal<string | null>(null);
  const at = useSignal(layout(innerWidth, innerHeight));
  const tab = useSignal<Tab>('flaps');
  /** Words that were put aside where they stand over the controls. */
  const aside = useSignal<number | null>(null);
  const spoken = spokenPointers.peek();

  useEffect(() => {
    document.title = `${name} · Evenhand`;
    const host = deck.current as HTMLElement;
    let over = false;
    let flight: Flying | null = null;
    /** The gauge that is flown, and how it was seen at the start. */
    let gauge: Airframe['gauge'] | null = null;
    let sight: Sight | null = null;
    const place = (): Sight | null => {
      lookAtScreen();
      const wish = gauge === null ? undefined : lock === null ? wishOf(size.peek(), pxPerMm.peek(), gauge) : sameAgain(lock, gauge);
      at.value = layout(innerWidth, innerHeight, wish);
      return gauge === null ? null : sightOf(at.value, gauge, size.peek(), pxPerMm.peek(), devicePixelRatio);
    };
    const undo: (() => void)[] = [];
    host.focus({ preventScroll: true });
    if (!('course' in of)) lastStep.value = null;
    void taskOf(house, of).then((words) => { task.value = words; });
    const onEnd = (run: NonNullable<typeof record.value>): void => {
      if (!('own' in of)) lastOwn.value = null;
      if (over) return isLeft(run);
      record.value = run;
      fromFile.value = false;
      isOver(run);
    };
    void house.fly({
      host, of,
      place: (flown) => {
        gauge = flown;
        sight = place();
        return { at: at.value, sight: sight as Sight };
      },
      letters: () => letters.value, bindings: () => bindings.value, pads: () => pads.value, onEnd,
      latched: () => latchedHold.value, mute: () => { muted.value = !muted.value; }, loudness,
      assisted: helpsInUse(), timing: timingNow(), ...planned(of),
      onPause: (why) => { paused.value = why; },
      onDesks: (count) => { desks.value = count; },
    }).then((begun) => {
      flight = begun;
      if (over) return begun.close();
      undo.push(begun.onPicture((picture) => { if (isNews(now.value, picture)) now.value = picture; }));
      flying.value = begun;
    }).catch((problem: unknown) => { failed.value = problem instanceof Error ? problem.message : String(problem); });
    const fit = (): void => {
      const now = place();
      if (sight !== null && now !== null && differences(sight, now).length > 0) {
        flight?.resized();
        // What is measured is measured at one size: the clock stops, and the run no longer counts.
        if ('set' in of && flight !== null && paused.peek() === null) {
          flight.pause(performance.now());
          paused.value = 'resized';
        }
      }
      // Colours are worked out by the style sheet first.
      requestAnimationFrame(() => flight?.place(at.value));
    };
    const dark = matchMedia('(prefers-color-scheme: dark)');
    addEventListener('resize', fit);
    dark.addEventListener('change', fit);
    undo.push(look.subscribe(fit), screenName.subscribe(fit), () => removeEventListener('resize', fit), () => dark.removeEventListener('change', fit));
    return () => {
      over = true;
      started.value = false;
      for (const one of undo) one();
      // Left by Back, or over: whichever it was, nothing stays held.
      if (record.value === null || !BEHIND.includes(route.value.page)) flight?.stop(performance.now());
      flight?.close();
    };
  }, [house]);

  const picture = now.value;
  const talk = picture === null || picture.blank || picture.frozen || aside.value === picture.talk?.id ? null : picture.talk;
  /** Words were put aside that still wait: the way back to them stands in the place of the task. */
  const put = at.value.talkOver && picture !== null && !picture.blank && !picture.frozen && picture.talk !== null && talk === null;
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
  return (
    <div class="drill-page" style={{ fontSize: `${at.value.type.label}px` }}>
      <header class="drill-head" style={{ ...sides(at.value.head.x), height: `${at.value.head.h}px` }}>
        <h1 style={{ maxWidth: `${at.value.head.w}px` }}>{name} <span class={put ? 'unseen' : undefined}>{task.value}</span></h1>
        {put && <button class="plain drill-put" type="button" onMouseDown={keepFocus} style={{ left: `${(name.length * 0.66 - 0.02).toFixed(2)}em` }} onClick={() => { aside.value = null; }}>{picture?.talk?.answers.length === 0 ? 'Message' : 'Question'}</button>}
        <div class="drill-tools">
          {desks.value > 0 && <span class="drill-desk" role="status">{desks.value === 1 ? <><i>A </i>desk<i> follows</i></> : <>{desks.value} desks<i> follow</i></>}</span>}
          <button class="plain" type="button" aria-pressed={muted.value} onMouseDown={keepFocus} onClick={() => { muted.value = !muted.value; }}>{muted.value ? 'Sound off' : 'Sound on'}</button>
          <button class="plain" type="button" onClick={({ timeStamp }) => flying.value?.pause(timeStamp)}>Pause</button>
        </div>
      </header>
      <main ref={deck} class="deck" aria-label="Drill" tabIndex={-1} inert={paused.value !== null}>
        {flying.value !== null && picture !== null && <Twins at={at.value} panel={flying.value.panel} now={picture} tab={up} spoken={spoken} />}
        {flying.value !== null && picture !== null && at.value.tabbed && (
          <Tabs
            at={at.value} panel={flying.value.panel} now={picture} tab={up}
            turn={(next) => {
              tab.value = next;
              if (picture.talk !== null) aside.value = picture.talk.id;
            }}
          />
        )}
        {talk !== null && <Talk at={at.value} talk={talk} later={() => { aside.value = talk.id; }} />}
        {picture?.frozen === true && <Frozen at={at.value} resume={goOn} />}
        {flying.value === null && failed.value === null && <p class="waiting">Getting ready …</p>}
        {failed.value !== null && <p class="waiting" role="alert">The drill could not start: {failed.value}</p>}
      </main>
      {paused.value !== null && flying.value !== null && <Paused house={house} why={paused.value} resume={goOn} leave={(stampMs) => flying.value?.stop(stampMs)} />}
      <footer class="drill-foot" style={{ ...sides(at.value.head.x), height: `${at.value.foot.h}px` }}><ShortCaution /></footer>
    </div>
  );
}

/** The plan that goes along: of a drill, or of a run from a bench. */
function planned(of: Flown): Pick<Cabin, 'plan'> {
  const shipped = 'drill' in of ? of.drill : 'course' in of ? of.shipped : null;
  const plan = shipped !== null ? planFor({ drill: shipped }) : 'own' in of ? planFor({ own: of.own }) : undefined;
  return plan === undefined ? {} : { plan };
}

/** The task in the head of the page. */
async function taskOf(house: House, of: Flown): Promise<string> {
  if ('practice' in of) return 'let go when they part';
  if ('course' in of) return `flaps to ${(await house.course.brief(of.course, of.step))?.to.join(', then ') ?? ''}`;
  if ('own' in of) return `flaps to ${(await house.own.flight(of.own))?.card.to.join(', then ') ?? ''}`;
  if ('set' in of) return `flaps toward ${(await house.sets())[of.set - 1]?.to ?? ''}`;
  return `flaps to ${(await house.drills())[of.drill - 1]?.to.join(', then ') ?? ''}`;
}

/** Head and foot share their margins with the drawing between them. */
const sides = (px: number) => ({ left: `${px}px`, right: `${px}px` });

/** Helps that mark the record of a run. */
function helpsInUse(): NonNullable<RunRecord['device']['assisted']> {
  return [...(latchedHold.peek() ? ['latchedHold' as const] : []), ...(spokenPointers.peek() ? ['spokenPointers' as const] : [])];
}

function Paused({ house, why, resume, leave }: { house: House; why: Why; resume: (stampMs: number) => void; leave: (stampMs: number) => void }) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  return (
    <section class="paused" data-own-keys="" role="dialog" aria-labelledby="paused-title">
      <h2 id="paused-title">Paused</h2>
      <p>{WHYS[why]} The instruments are blanked, and a scored run no longer counts.</p>
      <button ref={first} class="button" type="button" onClick={({ timeStamp }) => resume(timeStamp)}>Go on</button>
      <button class="button quiet" type="button" onClick={({ timeStamp }) => leave(timeStamp)}>End the run</button>
      <AllKeys house={house} />
    </section>
  );
}
