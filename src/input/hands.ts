/**
 * Hands on the drill: every event of pointer, key and page that touches it, as one stream of deeds with the event's own
 * stamp. Nothing is done on the event itself but filing the act; the run takes it at its tick.
 */
import { filter, fromEvent, map, merge, scan, share, type Observable } from 'rxjs';
import type { Act } from '../../sim/files/index.js';
import type { Hand, Loss } from '../run/drill.js';
import type { Panel, Picture } from '../view/picture.js';
import { rowAt } from '../view/rows.js';
import { actOf, leverTo, putAct, stays } from './acts.js';
import { holdStep, type Deed, type Held, type HoldEvent, type Way } from './hold.js';
import { intentOf, type Intent } from './keys.js';

/** What the hands work on. */
export interface Deck {
  readonly panel: Panel;
  now(): Picture | null;
  /** Whether letters act, or only arrows and Esc. */
  letters(): boolean;
  act(stampMs: number, act: Act, hand: Hand): void;
  lose(stampMs: number, loss: Loss): void;
  pause(stampMs: number): void;
}

type Felt = { event: HoldEvent; stampMs: number; hand: Hand };

/** Binds the controls below `root`, found by their `data-control`. Returns its undo. */
export function bindHands(root: HTMLElement, deck: Deck): () => void {
  const keyDown = fromEvent<KeyboardEvent>(window, 'keydown').pipe(filter((key) => isOurs(key)), share());
  const felt = merge(pointers(root, deck), keys(root, deck, keyDown), losses());
  const deeds = felt.pipe(
    scan((state: { held: Held; deed: Deed | null; from: Felt | null }, from: Felt) => ({ ...holdStep(state.held, from.event), from }), { held: null, deed: null, from: null }),
  );
  const undo = deeds.subscribe(({ deed, from }) => {
    if (deed === null || from === null) return;
    if (deed.deed === 'lose') deck.lose(from.stampMs, deed.loss);
    else if (deed.deed === 'hold') deck.act(from.stampMs, { do: 'holdDrive', way: deed.way }, from.hand);
    else deck.act(from.stampMs, { do: 'releaseDrive' }, from.hand);
  });
  undo.add(presses(root, deck, keyDown));
  undo.add(quiet(root));
  return () => undo.unsubscribe();
}

const controlOf = (event: Event): string | null =>
  event.target instanceof Element ? (event.target.closest<HTMLElement>('[data-control]')?.dataset['control'] ?? null) : null;

/** While the instruments are blanked no hand goes on the switch. */
const shown = (deck: Deck): boolean => deck.now()?.blank === false;

const isWay = (control: string | null): control is Way => control === 'extend' || control === 'retract';

/** Not with a modifier of the browser, not while something is typed, not in a dialog of its own. */
function isOurs(key: KeyboardEvent): boolean {
  if (key.ctrlKey || key.altKey || key.metaKey) return false;
  return !(key.target instanceof Element && key.target.closest('input, select, textarea, dialog, [data-own-keys]'));
}

const handOf = (pointer: { pointerType?: string }): Hand =>
  pointer.pointerType === 'touch' || pointer.pointerType === 'pen' ? pointer.pointerType : 'mouse';

function pointers(root: HTMLElement, deck: Deck): Observable<Felt> {
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
  const intent = intentOf(key, deck.letters());
  if (intent === 'extend' || intent === 'retract') return intent;
  const control = controlOf(key);
  return (key.code === 'Space' || key.code === 'Enter') && isWay(control) ? control : null;
}

function keys(root: HTMLElement, deck: Deck, keyDown: Observable<KeyboardEvent>): Observable<Felt> {
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

function losses(): Observable<Felt> {
  const lost = (loss: Loss) => map((event: Event): Felt => ({ event: { what: 'lost', loss }, stampMs: event.timeStamp, hand: 'mouse' }));
  return merge(
    fromEvent(window, 'blur').pipe(lost('focusLost')),
    fromEvent(document, 'visibilitychange').pipe(filter(() => document.visibilityState === 'hidden'), lost('hidden')),
    fromEvent(window, 'pagehide').pipe(lost('hidden')),
  );
}

/** Everything that is pressed once: clicks on controls, and keys that hold nothing. */
function presses(root: HTMLElement, deck: Deck, keyDown: Observable<KeyboardEvent>) {
  const intents = keyDown.pipe(
    filter((key) => !key.repeat),
    map((key) => ({ intent: intentOf(key, deck.letters()), key })),
    filter((one): one is { intent: Intent; key: KeyboardEvent } => one.intent !== null),
  );
  const undo = intents.subscribe(({ intent, key }) => {
    if (intent !== 'pause') key.preventDefault();
    doIntent(intent, key.timeStamp, 'key', deck);
  });
  undo.add(
    fromEvent<PointerEvent>(root, 'click').subscribe((click) => {
      const control = controlOf(click);
      // A click that no pointer made came from Space or Enter on the focused control.
      const hand = click.detail === 0 ? 'key' : handOf(click);
      if (control === 'lever') chooseRow(click, hand, deck);
      else if (control !== null) doIntent(control as Intent, click.timeStamp, hand, deck);
    }),
  );
  return undo;
}

function doIntent(intent: Intent, stampMs: number, hand: Hand, deck: Deck): void {
  if (intent === 'pause') return deck.pause(stampMs);
  const now = deck.now();
  if (now === null || now.blank) return;
  if (intent === 'extend' || intent === 'retract') {
    if (stays(intent, deck.panel)) deck.act(stampMs, putAct(intent, now), hand);
    return;
  }
  const act = actOf(intent, now, deck.panel);
  if (act !== null) deck.act(stampMs, act, hand);
}

function chooseRow(click: PointerEvent, hand: Hand, deck: Deck): void {
  const now = deck.now();
  if (now === null || now.blank || hand === 'key') return;
  const { top, height } = (click.target as Element).getBoundingClientRect();
  const row = rowAt({ x: 0, y: top, w: 0, h: height }, deck.panel.settings.length, click.clientY);
  const act = leverTo(row, now, deck.panel);
  if (act !== null) deck.act(click.timeStamp, act, hand);
}

/** No menu, no selected text, no focus taken from the keys by a press of the mouse. */
function quiet(root: HTMLElement) {
  const undo = fromEvent(root, 'contextmenu').subscribe((event) => event.preventDefault());
  undo.add(fromEvent(root, 'selectstart').subscribe((event) => event.preventDefault()));
  undo.add(
    fromEvent<MouseEvent>(root, 'mousedown').subscribe((event) => {
      if (controlOf(event) !== null) event.preventDefault();
    }),
  );
  return undo;
}
