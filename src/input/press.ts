/** What is pressed once: clicks on controls, and keys that hold nothing. */
import { filter, fromEvent, map, type Observable, type Subscription } from 'rxjs';
import type { Hand } from '../run/drill.js';
import type { Picture } from '../view/picture.js';
import { rowAt } from '../view/rows.js';
import { actOf, afterAct, leverTo, putAct, stays, type Now } from './acts.js';
import { controlOf, handOf, type Deck } from './deck.js';
import { intentOf, type Intent } from './keys.js';

/** A deck to press on: where its controls stand, with what was pressed since the last picture. */
interface Foreseen extends Deck {
  standing(): Now | null;
}

function foreseen(deck: Deck): Foreseen {
  let seen: Picture | null = null;
  let standing: Now | null = null;
  const look = (): Now | null => {
    const now = deck.now();
    if (now !== seen) standing = seen = now;
    return now === null || now.blank ? null : standing;
  };
  return {
    ...deck,
    standing: look,
    act(stampMs, act, hand) {
      const now = look();
      if (now !== null) standing = afterAct(now, act);
      deck.act(stampMs, act, hand);
    },
  };
}

export function presses(root: HTMLElement, onto: Deck, keyDown: Observable<KeyboardEvent>): Subscription {
  const deck = foreseen(onto);
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

function doIntent(intent: Intent, stampMs: number, hand: Hand, deck: Foreseen): void {
  if (intent === 'pause') return deck.pause(stampMs);
  const now = deck.standing();
  if (now === null) return;
  if (intent === 'extend' || intent === 'retract') {
    if (stays(intent, deck.panel)) deck.act(stampMs, putAct(intent, now), hand);
    return;
  }
  const act = actOf(intent, now, deck.panel);
  if (act !== null) deck.act(stampMs, act, hand);
}

function chooseRow(click: PointerEvent, hand: Hand, deck: Foreseen): void {
  const now = deck.standing();
  if (now === null || hand === 'key') return;
  const { top, height } = (click.target as Element).getBoundingClientRect();
  const row = rowAt({ x: 0, y: top, w: 0, h: height }, deck.panel.settings.length, click.clientY);
  const act = leverTo(row, now, deck.panel);
  if (act !== null) deck.act(click.timeStamp, act, hand);
}
