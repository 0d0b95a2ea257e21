/**
 * Hands on the drill: every event of pointer, key and page that touches it, as one stream of deeds with the event's own
 * stamp. Nothing is done on the event itself but filing the act; the run takes it at its tick.
 */
import { filter, fromEvent, map, merge, scan, share, Subject, type Subscription } from 'rxjs';
import { frames } from '../clock/frames.js';
import { controlOf, isOurs, type Deck } from './deck.js';
import { foreseen } from './foreseen.js';
import { keys, losses, pointers, type Felt } from './felt.js';
import { holdStep, latchedEvent, type Deed, type Held } from './hold.js';
import { padChanges, padFelt, padPresses } from './padHands.js';
import { readPads, type ReadPads } from './pads.js';
import { presses } from './press.js';
import { slides } from './slide.js';

/** Hands that are on the drill. */
export interface Hands {
  /** Lets the switch go, whoever holds it: the clock is about to stop, and what is let go meanwhile would go unseen. */
  letGo(stampMs: number): void;
  close(): void;
}

/** Binds the controls below `root`, found by their `data-control`, and the devices. */
export function bindHands(root: HTMLElement, deck: Deck, read: ReadPads = readPads): Hands {
  const letGo$ = new Subject<number>();
  const keyDown = fromEvent<KeyboardEvent>(window, 'keydown').pipe(filter((key) => isOurs(key)), share());
  const pads = padChanges(frames(), () => (Object.keys(deck.pads()).length === 0 ? [] : read()));
  const felt = merge(pointers(root, deck), keys(root, deck, keyDown), losses(), padFelt(pads, deck), letGo$.pipe(map((stampMs): Felt => ({ event: { what: 'letGo' }, stampMs, hand: 'key' }))));
  const deeds = felt.pipe(
    scan((state: { held: Held; deed: Deed | null; from: Felt | null }, from: Felt) => {
      const event = deck.latched() ? latchedEvent(state.held, from.event) : from.event;
      return event === null ? { ...state, deed: null } : { ...holdStep(state.held, event), from };
    }, { held: null, deed: null, from: null }),
  );
  const undo = deeds.subscribe(({ deed, from }) => {
    if (deed === null || from === null) return;
    if (deed.deed === 'lose') deck.lose(from.stampMs, deed.loss);
    else if (deed.deed === 'hold') deck.act(from.stampMs, { do: 'holdDrive', way: deed.way }, from.hand);
    else deck.act(from.stampMs, { do: 'releaseDrive' }, from.hand);
  });
  const seen = foreseen(deck);
  undo.add(presses(root, seen, keyDown));
  undo.add(slides(root, seen, keyDown));
  undo.add(padPresses(pads, seen));
  undo.add(quiet(root));
  return { letGo: (stampMs) => letGo$.next(stampMs), close: () => undo.unsubscribe() };
}

/** No menu, no selected text, no focus taken from the keys by a press of the mouse. */
function quiet(root: HTMLElement): Subscription {
  const undo = fromEvent(root, 'contextmenu').subscribe((event) => event.preventDefault());
  undo.add(fromEvent(root, 'selectstart').subscribe((event) => event.preventDefault()));
  undo.add(
    fromEvent<MouseEvent>(root, 'mousedown').subscribe((event) => {
      if (controlOf(event) !== null) event.preventDefault();
    }),
  );
  return undo;
}
