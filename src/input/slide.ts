/**
 * What is moved along a track: thrust levers, the selected speed, the roll control. A handle that is taken goes with the
 * hand; a press on the track beside it does the same without a drag (WCAG 2.2, 2.5.7).
 */
import { fromEvent, map, merge, scan, type Observable, type Subscription } from 'rxjs';
import type { Act } from '../../sim/files/index.js';
import type { Hand } from '../run/drill.js';
import type { Panel } from '../view/picture.js';
import { controlOf, handOf } from './deck.js';
import type { Foreseen } from './foreseen.js';
import { rollTo, selectTo, STEPS, thrustTo, type Now } from './acts.js';

const SLIDES = ['leftThrust', 'bothThrust', 'rightThrust', 'selectSpeed', 'roll'] as const;
export type Slide = (typeof SLIDES)[number];

const isSlide = (control: string | null): control is Slide => SLIDES.some((slide) => slide === control);

/** Half of the handle, px: a press nearer to it than that takes it, any other is on the track. */
const REACH_PX = 22;
/** A hand that lies on a handle without moving it this far moves nothing, px. */
const DEAD_PX = 3;

interface Track {
  readonly from: number;
  readonly to: number;
  readonly value: (now: Now) => number;
  readonly set: (value: number, now: Now) => readonly Act[];
  /** What a press on the track beside the handle asks for. */
  readonly press: (pressed: number, now: Now) => number;
  readonly step: number;
  readonly many: number;
}

function trackOf(slide: Slide, panel: Panel): Track {
  if (slide === 'selectSpeed') {
    return {
      from: panel.stripKt[0], to: panel.stripKt[1], value: (now) => now.selectedKt, set: (kt, now) => selectTo(kt, now, panel),
      // A step toward the finger: a strip is touched by accident, and a speed must not jump.
      press: (pressed, now) => now.selectedKt + Math.sign(pressed - now.selectedKt) * STEPS.manyKt,
      step: STEPS.kt, many: STEPS.manyKt,
    };
  }
  if (slide === 'roll') {
    return { from: -1, to: 1, value: (now) => now.handControl, set: rollTo, press: (pressed) => pressed, step: STEPS.control, many: 4 * STEPS.control };
  }
  const lever = slide === 'leftThrust' ? 'left' : slide === 'rightThrust' ? 'right' : 'both';
  return {
    from: 0, to: panel.tlaMaxDeg, set: (deg, now) => thrustTo(lever, deg, now, panel), press: (pressed) => pressed, step: STEPS.tlaDeg, many: 5 * STEPS.tlaDeg,
    value: (now) => (lever === 'left' ? now.leftTlaDeg : lever === 'right' ? now.rightTlaDeg : (now.leftTlaDeg + now.rightTlaDeg) / 2),
  };
}

/** The value that a key asks of the slider that has the focus; null for a key that is none of its own. */
function keyed(code: string, value: number, { from, to, step, many }: Track): number | null {
  switch (code) {
    case 'ArrowUp': case 'ArrowRight': return value + step;
    case 'ArrowDown': case 'ArrowLeft': return value - step;
    case 'PageUp': return value + many;
    case 'PageDown': return value - many;
    case 'Home': return from;
    case 'End': return to;
    default: return null;
  }
}

/** The slider that a key is for: the one that has the focus, if the key is one of a slider's own. */
export function slideOfKey(key: KeyboardEvent): Slide | null {
  const control = controlOf(key);
  return isSlide(control) && /^(Arrow(Up|Down|Left|Right)|Page(Up|Down)|Home|End)$/.test(key.code) ? control : null;
}

/** A hand on a slider: where it took it, and what the slider said then. */
interface Grip {
  readonly slide: Slide;
  readonly pointer: number;
  readonly at: number;
  readonly value: number;
  readonly valuePerPx: number;
  readonly moved: boolean;
}

type Moment = { readonly event: PointerEvent; readonly what: 'down' | 'move' | 'end' };

export function slides(root: HTMLElement, deck: Foreseen, keyDown: Observable<KeyboardEvent>): Subscription {
  const file = (acts: readonly Act[], stampMs: number, hand: Hand): void => acts.forEach((act) => deck.act(stampMs, act, hand));
  const on = (name: string, what: Moment['what']): Observable<Moment> => fromEvent<PointerEvent>(root, name).pipe(map((event) => ({ event, what })));
  const grips = merge(on('pointerdown', 'down'), on('pointermove', 'move'), on('pointerup', 'end'), on('pointercancel', 'end'), on('lostpointercapture', 'end')).pipe(
    scan((grip: { held: Grip | null; event: PointerEvent | null }, { event, what }: Moment) => ({ held: step(grip.held, event, what), event }), { held: null, event: null }),
  );
  const undo = grips.subscribe(({ held, event }) => {
    if (held === null || event === null || !held.moved || event.pointerId !== held.pointer) return;
    const now = deck.standing(event.timeStamp);
    if (now !== null) file(trackOf(held.slide, deck.panel).set(held.value + (along(held.slide, event) - held.at) * held.valuePerPx, now), event.timeStamp, handOf(event));
  });

  function step(held: Grip | null, event: PointerEvent, what: Moment['what']): Grip | null {
    if (held !== null) {
      if (event.pointerId !== held.pointer) return held;
      if (what !== 'move') return null;
      return held.moved || Math.abs(along(held.slide, event) - held.at) < DEAD_PX ? held : { ...held, moved: true };
    }
    const control = controlOf(event);
    const now = deck.standing(event.timeStamp);
    if (what !== 'down' || event.button !== 0 || !isSlide(control) || now === null) return null;
    return take(control, event, now);
  }

  function take(slide: Slide, event: PointerEvent, now: Now): Grip {
    const track = trackOf(slide, deck.panel);
    const box = (event.target as Element).getBoundingClientRect();
    const [start, length] = slide === 'roll' ? [box.left, box.width] : [box.bottom, -box.height];
    const inset = Number((event.target as HTMLElement).dataset['inset'] ?? 0) * Math.sign(length);
    const valuePerPx = (track.to - track.from) / (length - 2 * inset);
    const pressed = track.from + (along(slide, event) - start - inset) * valuePerPx;
    const value = track.value(now);
    (event.target as Element).setPointerCapture(event.pointerId);
    const grip = { slide, pointer: event.pointerId, at: along(slide, event), value, valuePerPx, moved: false };
    if (Math.abs((pressed - value) / valuePerPx) <= REACH_PX) return grip;
    const wish = track.press(pressed, now);
    file(track.set(wish, now), event.timeStamp, handOf(event));
    return { ...grip, value: wish };
  }

  undo.add(keyDown.subscribe((key) => {
    const slide = slideOfKey(key);
    const now = deck.standing(key.timeStamp);
    if (slide === null) return;
    key.preventDefault();
    if (now === null) return;
    const track = trackOf(slide, deck.panel);
    const wish = keyed(key.code, track.value(now), track);
    if (wish !== null) file(track.set(wish, now), key.timeStamp, 'key');
  }));
  return undo;
}

/** Where an event is along its track, px of the window. */
const along = (slide: Slide, { clientX, clientY }: PointerEvent): number => (slide === 'roll' ? clientX : clientY);
