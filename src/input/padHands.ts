/** Switches and levers of devices on a deck: read once a frame, each change with its stamp, acting as the same thing by key or finger would. */
import { filter, map, mergeMap, share, type Observable, type Subscription } from 'rxjs';
import type { Act } from '../../sim/files/index.js';
import type { Hand } from '../run/drill.js';
import { leverTo, rollTo, stays, thrustTo, type Now } from './acts.js';
import { isWay, shown, type Deck } from './deck.js';
import type { Felt } from './felt.js';
import type { Foreseen } from './foreseen.js';
import { controlOf, isTravel, partOf, type PadSwitch, type PadTravel } from './padBindings.js';
import { padEvents, type Moment, type PadEvent, type PadNow, type ReadPads } from './pads.js';
import { doPress } from './press.js';

/** What changed on any device, once a frame. The first reading changes nothing. */
export function padChanges(frame$: Observable<number>, read: ReadPads, now: () => number = () => performance.now()): Observable<PadEvent> {
  let before: readonly PadNow[] | null = null;
  let last: Moment = { readMs: 0 };
  return frame$.pipe(mergeMap((frameMs) => {
    const pads = read();
    const at = { readMs: Math.max(now(), frameMs) };
    const events = before === null ? [] : padEvents(before, pads, last, at);
    [before, last] = [pads, at];
    return events;
  }), share());
}

export const handOfPad = ({ clock }: PadEvent): Hand => (clock === 'device' ? 'gamepad' : 'gamepad by frames');

const switchOf = (event: PadEvent, deck: Deck): PadSwitch | null =>
  (event.what === 'button' ? deck.pads()[event.id]?.find((use): use is PadSwitch => !isTravel(use) && use.button === event.button) ?? null : null);

/** The hold by a device, and the loss of a device that has had a hand in the run. */
export function padFelt(events: Observable<PadEvent>, deck: Deck): Observable<Felt> {
  const used = new Set<number>();
  return events.pipe(
    map((event): Felt | null => {
      const about = { stampMs: event.stampMs, hand: handOfPad(event) };
      if (event.what === 'gone') return used.delete(event.index) ? { ...about, event: { what: 'lost', loss: 'focusLost' } } : null;
      if (deck.pads()[event.id]?.some((use) => (isTravel(use) ? event.what === 'axis' && use.axis === event.axis : event.what === 'button' && use.button === event.button)) !== true) return null;
      if (shown(deck)) used.add(event.index);
      const use = switchOf(event, deck);
      if (use === null || event.what !== 'button' || !isWay(use.does) || stays(use.does, deck.panel)) return null;
      const grip = `pad ${event.index} ${event.button}` as const;
      if (!event.on) return { ...about, event: { what: 'lift', grip } };
      return shown(deck) ? { ...about, event: { what: 'press', grip, way: use.does } } : null;
    }),
    filter((felt) => felt !== null),
  );
}

/** Everything that is no hold. */
export function padPresses(events: Observable<PadEvent>, deck: Foreseen): Subscription {
  const travels = new Map<string, number>();
  return events.subscribe((event) => {
    if (event.what === 'gone') return;
    const use = event.what === 'button' ? switchOf(event, deck) : null;
    if (event.what === 'button' && use !== null) doSwitch(use, event.on, event, deck);
    if (event.what !== 'axis') return;
    const travel = deck.pads()[event.id]?.find((one): one is PadTravel => isTravel(one) && one.axis === event.axis);
    if (travel !== undefined) doTravel(travel, event, deck, travels);
  });
}

function doSwitch({ does, stays: placed }: PadSwitch, on: boolean, event: PadEvent, deck: Foreseen): void {
  const hand = handOfPad(event);
  if (placed) {
    const now = deck.standing(event.stampMs);
    if (now !== null) for (const act of placeActs(does, on, now, deck)) deck.act(event.stampMs, act, hand);
  } else if (on) {
    if (does === 'pause') deck.pause(event.stampMs);
    else if (does === 'mute') deck.mute();
    else doPress(does, event.stampMs, hand, deck);
  }
}

/** A switch that stays says where the thing is to be; where it is already, nothing is done. */
function placeActs(does: PadSwitch['does'], on: boolean, now: Now, { panel }: Deck): readonly Act[] {
  switch (does) {
    case 'guard': return now.guardOpen === on ? [] : [{ do: on ? 'openGuard' : 'closeGuard' }];
    case 'arm': return now.armed === on ? [] : [{ do: on ? 'arm' : 'disarm' }];
    case 'gear': return (now.gearLever === 'down') === on ? [] : [{ do: 'setGear', to: on ? 'down' : 'up' }];
    case 'speedHold': return now.speedHold === on ? [] : [{ do: 'setSpeedHold', on }];
    case 'extend': case 'retract':
      // A sprung place is held: padFelt does that.
      if (!stays(does, panel) || (now.drive === does) === on) return [];
      return [{ do: 'setDrive', to: on ? does : 'off' }];
    default: return [];
  }
}

/** A lever acts once it has moved by so much of its travel since it acted last: hands tremble, and so do old potentiometers. */
const MOVED = 0.01;
/** Against the speed hold, which a moved lever lets go, by more. */
const MOVED_AGAINST_HOLD = 0.04;
/** How near a lever must be to a detent, in detents. */
const NEAR = 0.35;

function doTravel(travel: PadTravel, event: Extract<PadEvent, { what: 'axis' }>, deck: Foreseen, travels: Map<string, number>): void {
  const now = deck.standing(event.stampMs);
  if (now === null) return;
  const key = `${event.index} ${event.axis}`;
  const last = travels.get(key) ?? partOf(event.before, travel);
  const part = partOf(event.value, travel);
  travels.set(key, last);
  const acts = travelActs(travel, event.value, part, last, now, deck);
  if (acts === null) return;
  travels.set(key, part);
  for (const act of acts) deck.act(event.stampMs, act, handOfPad(event));
}

/** null: it has not moved as far as anything is concerned. */
function travelActs(travel: PadTravel, value: number, part: number, last: number, now: Now, { panel }: Deck): readonly Act[] | null {
  const { does } = travel;
  const atEnd = part !== last && (part === 0 || part === 1);
  if (does === 'lever') {
    const detents = panel.settings.length - 1;
    const row = Math.round(part * detents);
    return Math.abs(part * detents - row) > NEAR || Math.round(last * detents) === row ? null : leverTo(row, now, panel);
  }
  const far = does === 'roll' || !now.speedHold ? MOVED : MOVED_AGAINST_HOLD;
  if (Math.abs(part - last) < far && !(atEnd && far === MOVED)) return null;
  if (does === 'roll') return rollTo(controlOf(value, travel), now);
  return thrustTo(does === 'bothThrust' ? 'both' : does === 'leftThrust' ? 'left' : 'right', part * panel.tlaMaxDeg, now, panel);
}
