/** What is pressed once: clicks on controls, and keys that hold nothing. */
import { filter, fromEvent, map, type Observable, type Subscription } from 'rxjs';
import type { Hand } from '../run/drill.js';
import { CONTROLS } from '../view/instruments.js';
import { rowAt } from '../view/rows.js';
import { actsOf, answer, leverTo, putAct, stays, type Press } from './acts.js';
import { controlOf, handOf, isWay } from './deck.js';
import type { Foreseen } from './foreseen.js';
import { intentOf, type Intent } from './keys.js';
import { slideOfKey } from './slide.js';

/** Keys that go on while they are kept down, as a hand that keeps moving a lever does. */
const REPEATS: ReadonlySet<Intent> = new Set(['thrustForward', 'thrustAft', 'speedUp', 'speedDown', 'rollLeft', 'rollRight']);

/** Never by a click that a key made: Space and Enter are pressed by habit (14 CFR 25.729(e)(4)). Their own keys do it. */
const DELIBERATE: ReadonlySet<string> = new Set(['silenceCover', 'silence']);

const PRESSES: ReadonlySet<string> = new Set(CONTROLS.flatMap(({ id, role }) => (role === 'press' ? [id] : [])));

export function presses(root: HTMLElement, deck: Foreseen, keyDown: Observable<KeyboardEvent>): Subscription {
  const intents = keyDown.pipe(
    filter((key) => slideOfKey(key) === null),
    map((key) => ({ intent: intentOf(key, deck.bindings(), deck.letters() || DELIBERATE.has(controlOf(key) ?? '')), key })),
    filter((one): one is { intent: Intent; key: KeyboardEvent } => one.intent !== null && (!one.key.repeat || REPEATS.has(one.intent))),
  );
  const undo = intents.subscribe(({ intent, key }) => {
    if (intent !== 'pause') key.preventDefault();
    if (intent === 'pause') deck.pause(key.timeStamp);
    else if (intent === 'mute') deck.mute();
    else doPress(intent, key.timeStamp, 'key', deck);
  });
  undo.add(
    fromEvent<PointerEvent>(root, 'click').subscribe((click) => {
      const control = controlOf(click);
      // A click that no pointer made came from Space or Enter on the focused control.
      const hand = click.detail === 0 ? 'key' : handOf(click);
      if (control === null || (hand === 'key' && DELIBERATE.has(control))) return;
      if (control === 'lever') chooseRow(click, hand, deck);
      else if (control === 'gear' && hand !== 'key') chooseGear(click, hand, deck);
      // The second half of a double click would answer, unread, what has come up in the place of the first.
      else if (/^answer\d$/.test(control) && click.detail < 2) doAnswer(Number(control.slice(6)) - 1, click.timeStamp, hand, deck);
      else if (isWay(control) || PRESSES.has(control)) doPress(control as Press, click.timeStamp, hand, deck);
    }),
  );
  return undo;
}

/** Does nothing while the clock stands, and nothing with a switch that has to be held. */
export function doPress(press: Press | 'extend' | 'retract' | 'silenceCover', stampMs: number, hand: Hand, deck: Foreseen): void {
  const now = deck.standing(stampMs);
  if (now === null) return;
  if (press === 'silenceCover') deck.cover(stampMs);
  else if (press === 'extend' || press === 'retract') {
    if (stays(press, deck.panel)) deck.act(stampMs, putAct(press, now), hand);
  } else for (const act of actsOf(press, now, deck.panel)) deck.act(stampMs, act, hand);
}

function doAnswer(place: number, stampMs: number, hand: Hand, deck: Foreseen): void {
  const now = deck.standing(stampMs);
  if (now !== null) for (const act of answer(place, now)) deck.act(stampMs, act, hand);
}

/** How far down in the control a click was, 0 to 1. */
function partDown(click: PointerEvent): number {
  const { top, height } = (click.target as Element).getBoundingClientRect();
  return (click.clientY - top) / height;
}

function chooseRow(click: PointerEvent, hand: Hand, deck: Foreseen): void {
  const now = deck.standing(click.timeStamp);
  if (now === null || hand === 'key') return;
  const row = rowAt({ x: 0, y: 0, w: 0, h: 1 }, deck.panel.settings.length, partDown(click));
  for (const act of leverTo(row, now, deck.panel)) deck.act(click.timeStamp, act, hand);
}

/** The place that is touched: up above, down below, and between them the other one. */
function chooseGear(click: PointerEvent, hand: Hand, deck: Foreseen): void {
  const now = deck.standing(click.timeStamp);
  if (now === null) return;
  const part = partDown(click);
  const other = now.gearLever === 'up' ? 'down' : 'up';
  const to = part < 1 / 3 ? 'up' : part > 2 / 3 ? 'down' : other;
  if (now.gearLever !== to) deck.act(click.timeStamp, { do: 'setGear', to }, hand);
}
