/** What is pressed once: clicks on controls, and keys that hold nothing. */
import { filter, fromEvent, map, type Observable, type Subscription } from 'rxjs';
import type { Act } from '../../sim/files/index.js';
import type { Hand } from '../run/drill.js';
import { rowAt } from '../view/rows.js';
import { actOf, afterAct, leverTo, putAct, stays, type Now } from './acts.js';
import { controlOf, handOf, type Deck } from './deck.js';
import { intentOf, type Intent } from './keys.js';

/** How long an act may take to show in a picture, ms: a frame, and a late one. */
const SHOWN_MS = 250;

/** A deck to press on: where its controls stand, with what was pressed and does not show yet. */
interface Foreseen extends Deck {
  standing(stampMs: number): Now | null;
}

function foreseen(deck: Deck): Foreseen {
  let pressed: { act: Act; stampMs: number }[] = [];
  return {
    ...deck,
    standing(stampMs) {
      const now = deck.now();
      if (now === null || now.blank) return null;
      pressed = pressed.filter((one) => one.stampMs > stampMs - SHOWN_MS);
      // Acts say where a control goes and not how far: one that shows already changes nothing.
      return pressed.reduce<Now>((standing, { act }) => afterAct(standing, act), now);
    },
    act(stampMs, act, hand) {
      pressed.push({ act, stampMs });
      deck.act(stampMs, act, hand);
    },
  };
}

export function presses(root: HTMLElement, onto: Deck, keyDown: Observable<KeyboardEvent>): Subscription {
  const deck = foreseen(onto);
  const intents = keyDown.pipe(
    filter((key) => !key.repeat),
    map((key) => ({ intent: intentOf(key, deck.bindings(), deck.letters()), key })),
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

function doIntent(intent: Intent, stampMs: number, hand: Hand, deck: Foreseen): void {
  if (intent === 'pause') return deck.pause(stampMs);
  const now = deck.standing(stampMs);
  if (now === null) return;
  if (intent === 'extend' || intent === 'retract') {
    if (stays(intent, deck.panel)) deck.act(stampMs, putAct(intent, now), hand);
    return;
  }
  const act = actOf(intent, now, deck.panel);
  if (act !== null) deck.act(stampMs, act, hand);
}

function chooseRow(click: PointerEvent, hand: Hand, deck: Foreseen): void {
  const now = deck.standing(click.timeStamp);
  if (now === null || hand === 'key') return;
  const { top, height } = (click.target as Element).getBoundingClientRect();
  const row = rowAt({ x: 0, y: top, w: 0, h: height }, deck.panel.settings.length, click.clientY);
  const act = leverTo(row, now, deck.panel);
  if (act !== null) deck.act(click.timeStamp, act, hand);
}
