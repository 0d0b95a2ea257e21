/** One hold that is watched by itself, for the timing check: pressed and let go with the same events and stamps as in a run. */
import { filter, fromEvent, map, merge } from 'rxjs';
import { frames } from '../clock/frames.js';
import type { Hand } from '../run/drill.js';
import { handOf, isOurs } from './deck.js';
import type { Grip } from './hold.js';
import { intentOf, type Bindings } from './keys.js';
import { isTravel, type PadBindings } from './padBindings.js';
import { handOfPad, padChanges } from './padHands.js';
import { readPads, type ReadPads } from './pads.js';

/** Told of the hold as it happens. */
export interface Holding {
  press(hand: Hand): void;
  /** @param stampMs when, by the page's clock */
  lift(stampMs: number): void;
  /** Window, page or device went away. */
  lost(): void;
}

type Felt = { readonly what: 'press' | 'lift'; readonly grip: Grip; readonly stampMs: number; readonly hand: Hand } | { readonly what: 'lost' };

/** @param root what is pressed by pointer, and by Space or Enter while it has the focus */
export function watchHold(root: HTMLElement, { bindings, pads }: { readonly bindings: Bindings; readonly pads: PadBindings }, told: Holding, read: ReadPads = readPads): () => void {
  const pointer = (name: string, what: 'press' | 'lift') => fromEvent<PointerEvent>(root, name).pipe(
    filter((event) => what === 'lift' || event.button === 0),
    map((event): Felt => {
      if (what === 'press') root.setPointerCapture(event.pointerId);
      return { what, grip: `pointer ${event.pointerId}`, stampMs: event.timeStamp, hand: handOf(event) };
    }),
  );
  const isHoldKey = (key: KeyboardEvent): boolean => intentOf({ code: key.code, shiftKey: false }, bindings, true) === 'extend' || ((key.code === 'Space' || key.code === 'Enter') && key.target === root);
  const down = fromEvent<KeyboardEvent>(window, 'keydown').pipe(
    filter((key) => {
      if (!isOurs(key) || !isHoldKey(key)) return false;
      key.preventDefault();
      return !key.repeat;
    }),
    map((key): Felt => ({ what: 'press', grip: `key ${key.code}`, stampMs: key.timeStamp, hand: 'key' })),
  );
  const up = fromEvent<KeyboardEvent>(window, 'keyup').pipe(map((key): Felt => ({ what: 'lift', grip: `key ${key.code}`, stampMs: key.timeStamp, hand: 'key' })));
  const device = padChanges(frames(), read).pipe(
    map((event): Felt | null => {
      if (event.what === 'gone') return { what: 'lost' };
      const isHold = event.what === 'button' && pads[event.id]?.some((use) => !isTravel(use) && use.does === 'extend' && use.button === event.button) === true;
      return isHold ? { what: event.on ? 'press' : 'lift', grip: `pad ${event.index} ${event.button}`, stampMs: event.stampMs, hand: handOfPad(event) } : null;
    }),
    filter((felt) => felt !== null),
  );
  const lost = merge(fromEvent(window, 'blur'), fromEvent(document, 'visibilitychange'), fromEvent(root, 'pointercancel')).pipe(map((): Felt => ({ what: 'lost' })));
  let held: Grip | null = null;
  const undo = merge(pointer('pointerdown', 'press'), pointer('pointerup', 'lift'), down, up, device, lost).subscribe((felt) => {
    if (felt.what === 'press') {
      if (held !== null) return;
      held = felt.grip;
      told.press(felt.hand);
    } else if (felt.what === 'lift') {
      if (held !== felt.grip) return;
      held = null;
      told.lift(felt.stampMs);
    } else if (held !== null) {
      held = null;
      told.lost();
    }
  });
  undo.add(fromEvent(root, 'contextmenu').subscribe((event) => event.preventDefault()));
  return () => undo.unsubscribe();
}
