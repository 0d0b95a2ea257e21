/** The drill itself: a canvas, its twins, and a way to pause and to leave. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { layout } from '../view/layout.js';
import type { Picture } from '../view/picture.js';
import { SHORT_CAUTION } from './frame.js';
import type { Flying, House } from './house.js';
import { fromFile, goInstead, lastDrill, left, record, route, started } from './session.js';
import { bindings, letters, look } from './settings.js';
import { Twins } from './twins.js';

/** Seconds between two readings for the twins; the state of a control is told at once. */
const READ_EVERY_S = 0.5;

type Why = 'pause' | 'focusLost' | 'hidden';

const WHYS: Readonly<Record<Why, string>> = {
  pause: 'You paused the run.',
  focusLost: 'The window or the device lost your hand. The switch was let go.',
  hidden: 'The page was hidden. The switch was let go.',
};

export function Drill({ house, number, seed }: { house: House; number: number; seed: number | null }) {
  const deck = useRef<HTMLElement>(null);
  const flying = useSignal<Flying | null>(null);
  const now = useSignal<Picture | null>(null);
  const paused = useSignal<Why | null>(null);
  const task = useSignal('');
  const failed = useSignal<string | null>(null);
  const at = useSignal(layout(innerWidth, innerHeight));

  useEffect(() => {
    document.title = `Drill ${number} · Evenhand`;
    const host = deck.current as HTMLElement;
    let over = false;
    let flight: Flying | null = null;
    const undo: (() => void)[] = [];
    host.focus({ preventScroll: true });
    void house.drills().then((all) => { task.value = `flaps to ${all[number - 1]?.to.join(', then ') ?? ''}`; });
    const onEnd = (run: NonNullable<typeof record.value>): void => {
      lastDrill.value = number;
      if (over) {
        left.value = run;
        return;
      }
      record.value = run;
      fromFile.value = false;
      goInstead({ page: 'say', number, seed });
    };
    void house.fly({
      host, at: at.value, number, seed, letters: () => letters.value, bindings: () => bindings.value, onEnd,
      onPause: (why) => { paused.value = why; },
    }).then((begun) => {
      flight = begun;
      if (over) return begun.close();
      undo.push(begun.onPicture((picture) => { if (isNews(now.value, picture)) now.value = picture; }));
      flying.value = begun;
    }).catch((problem: unknown) => { failed.value = problem instanceof Error ? problem.message : String(problem); });
    const fit = (): void => {
      at.value = layout(innerWidth, innerHeight);
      // Colours are worked out by the style sheet first.
      requestAnimationFrame(() => flight?.place(at.value));
    };
    const dark = matchMedia('(prefers-color-scheme: dark)');
    addEventListener('resize', fit);
    dark.addEventListener('change', fit);
    undo.push(look.subscribe(fit), () => removeEventListener('resize', fit), () => dark.removeEventListener('change', fit));
    return () => {
      over = true;
      started.value = false;
      for (const one of undo) one();
      // Left by Back, or over: whichever it was, nothing stays held.
      if (record.value === null || route.value.page !== 'say') flight?.stop(performance.now());
      flight?.close();
    };
  }, [house, number]);

  return (
    <div class="drill-page">
      <header class="drill-head" style={sides(at.value.head.x)}>
        <h1>Drill {number} <span>{task.value}</span></h1>
        <button class="plain" type="button" onClick={({ timeStamp }) => flying.value?.pause(timeStamp)}>Pause</button>
      </header>
      <main ref={deck} class="deck" aria-label="Drill" tabIndex={-1}>
        {flying.value !== null && now.value !== null && <Twins at={at.value} panel={flying.value.panel} now={now.value} />}
        {flying.value === null && failed.value === null && <p class="waiting">Getting ready …</p>}
        {failed.value !== null && <p class="waiting" role="alert">The drill could not start: {failed.value}</p>}
      </main>
      {paused.value !== null && flying.value !== null && <Paused why={paused.value} resume={(stampMs) => { paused.value = null; flying.value?.resume(stampMs); deck.current?.focus(); }} leave={(stampMs) => flying.value?.stop(stampMs)} />}
      <footer class="drill-foot" style={sides(at.value.head.x)}>{SHORT_CAUTION}</footer>
    </div>
  );
}

/** Head and foot share their margins with the drawing between them. */
const sides = (px: number) => ({ left: `${px}px`, right: `${px}px` });

/** A state of a control at once, everything else at a reader's pace. */
function isNews(before: Picture | null, next: Picture): boolean {
  if (before === null || next.timeS - before.timeS >= READ_EVERY_S || next.timeS < before.timeS) return true;
  return (['blank', 'guardOpen', 'armed', 'drive', 'flapLeverDeg', 'leadingEdge', 'manoeuvreHollow'] as const).some((key) => before[key] !== next[key]);
}

function Paused({ why, resume, leave }: { why: Why; resume: (stampMs: number) => void; leave: (stampMs: number) => void }) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  return (
    <section class="paused" data-own-keys="" role="dialog" aria-labelledby="paused-title">
      <h2 id="paused-title">Paused</h2>
      <p>{WHYS[why]} The instruments are blanked, and a scored run no longer counts.</p>
      <button ref={first} class="button" type="button" onClick={({ timeStamp }) => resume(timeStamp)}>Go on</button>
      <button class="button quiet" type="button" onClick={({ timeStamp }) => leave(timeStamp)}>End the run</button>
    </section>
  );
}
