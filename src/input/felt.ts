/** What the switch feels: every event that may take it or let it go, as one stream, each with its own stamp. */
import { filter, fromEvent, map, merge, type Observable } from 'rxjs';
import type { Hand, Loss } from '../run/drill.js';
import { stays } from './acts.js';
import { controlOf, handOf, isWay, shown, type Deck } from './deck.js';
import type { HoldEvent, Way } from './hold.js';
import { intentOf } from './keys.js';

/** What happened to the switch, when by the page's clock, and by what kind of input. */
export type Felt = { event: HoldEvent; stampMs: number; hand: Hand };

/** Holding by mouse, finger or pen: a pointer that took the switch has it until it is lifted, wherever it goes meanwhile. */
export function pointers(root: HTMLElement, deck: Deck): Observable<Felt> {
  const on = (name: string): Observable<PointerEvent> => fromEvent<PointerEvent>(root, name);
  const feel = (what: 'lift' | 'gone') => map((pointer: PointerEvent): Felt => ({ event: { what, grip: `pointer ${pointer.pointerId}` }, stampMs: pointer.timeStamp, hand: handOf(pointer) }));
  const down = on('pointerdown').pipe(
    // The main button alone, and only where the switch must be held; a place that stays is put by a click.
    filter((pointer) => pointer.button === 0 && shown(deck) && isWay(controlOf(pointer)) && !stays(controlOf(pointer) as Way, deck.panel)),
    map((pointer): Felt => {
      // The hold survives a slip off the control: every later event of this pointer comes here.
      (pointer.target as Element).setPointerCapture(pointer.pointerId);
      return { event: { what: 'press', grip: `pointer ${pointer.pointerId}`, way: controlOf(pointer) as Way }, stampMs: pointer.timeStamp, hand: handOf(pointer) };
    }),
  );
  return merge(down, on('pointerup').pipe(feel('lift')), on('pointercancel').pipe(feel('gone')), on('lostpointercapture').pipe(feel('gone')));
}

/** The way a key asks for: its own letter, or Space and Enter while the switch itself has the focus. */
function wayOf(key: KeyboardEvent, deck: Deck): Way | null {
  const intent = intentOf(key, deck.bindings(), deck.letters());
  if (intent === 'extend' || intent === 'retract') return intent;
  const control = controlOf(key);
  return (key.code === 'Space' || key.code === 'Enter') && isWay(control) ? control : null;
}

/** Holding by keys, repeats left out; let go, too, when the focus moves inside the page. */
export function keys(root: HTMLElement, deck: Deck, keyDown: Observable<KeyboardEvent>): Observable<Felt> {
  const down = keyDown.pipe(
    filter((key) => {
      const way = wayOf(key, deck);
      if (way === null || stays(way, deck.panel) || !shown(deck)) return false;
      key.preventDefault();
      return !key.repeat;
    }),
    map((key): Felt => ({ event: { what: 'press', grip: `key ${key.code}`, way: wayOf(key, deck) as Way }, stampMs: key.timeStamp, hand: 'key' })),
  );
  const up = fromEvent<KeyboardEvent>(window, 'keyup').pipe(map((key): Felt => ({ event: { what: 'lift', grip: `key ${key.code}` }, stampMs: key.timeStamp, hand: 'key' })));
  // A window that loses its focus says so by itself; this is the focus that goes from part to part of the page.
  const moved = fromEvent<FocusEvent>(root, 'focusout').pipe(
    filter(() => document.hasFocus()),
    map((focus): Felt => ({ event: { what: 'moved' }, stampMs: focus.timeStamp, hand: 'key' })),
  );
  return merge(down, up, moved);
}

/** The window or the page goes away: told whether or not anything is held. */
export function losses(): Observable<Felt> {
  const lost = (loss: Loss) => map((event: Event): Felt => ({ event: { what: 'lost', loss }, stampMs: event.timeStamp, hand: 'mouse' }));
  return merge(
    fromEvent(window, 'blur').pipe(lost('focusLost')),
    fromEvent(document, 'visibilitychange').pipe(filter(() => document.visibilityState === 'hidden'), lost('hidden')),
    fromEvent(window, 'pagehide').pipe(lost('hidden')),
  );
}
