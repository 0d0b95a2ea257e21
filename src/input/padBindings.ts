/** What each switch and lever of a device does. Kept by the name of the device; pure data and plain functions. */
import { BINDABLE, type Bindable } from './keys.js';

/** What a lever that moves along may be. */
export const PAD_LEVERS = ['bothThrust', 'leftThrust', 'rightThrust', 'lever', 'roll'] as const;
export type PadLever = (typeof PAD_LEVERS)[number];

export type PadIntent = Bindable | 'pause';
export const PAD_INTENTS: readonly PadIntent[] = [...BINDABLE, 'pause'];

/** Intents that have two places, so that a switch that stays can stand for them. */
const PLACED = ['guard', 'arm', 'extend', 'retract', 'gear', 'speedHold'] as const satisfies readonly PadIntent[];
/** Whether a switch that stays can stand for an intent; any other is pressed anew each time. */
export const mayStay = (does: PadIntent): boolean => PLACED.some((one) => one === does);

/** A button of a device, by the number under which the browser gives it, from 0. */
export interface PadSwitch {
  readonly does: PadIntent;
  readonly button: number;
  /** A switch that stays where it is put: on and off are its two places. Else each press acts. */
  readonly stays: boolean;
}

/** An axis of a device, by its number from 0; its readings lie between -1 and 1. */
export interface PadTravel {
  readonly does: PadLever;
  readonly axis: number;
  /** Readings at idle, at up, at full left; and at the other end. */
  readonly from: number;
  readonly to: number;
  /** Part of the travel at either end (for the roll control: about the middle) that counts as being there. */
  readonly dead: number;
}

export type PadUse = PadSwitch | PadTravel;
/** The uses of every device that was ever set up, by what the device calls itself. */
export type PadBindings = Readonly<Record<string, readonly PadUse[]>>;

/** Dead zones that may be chosen, and the one a lever begins with: parts of the travel at either end. */
export const DEAD = { least: 0, usual: 0.03, most: 0.25 } as const;
/** A lever that reads less from end to end was not moved to both. */
export const LEAST_TRAVEL = 0.25;

export const isTravel = (use: PadUse): use is PadTravel => 'axis' in use;

const whole = (value: unknown): value is number => typeof value === 'number' && Number.isInteger(value) && value >= 0 && value < 256;
const reading = (value: unknown): value is number => typeof value === 'number' && Math.abs(value) <= 1.5;

function useOf(found: unknown): PadUse | null {
  if (typeof found !== 'object' || found === null || !('does' in found)) return null;
  const { does, button, stays, axis, from, to, dead } = found as Record<string, unknown>;
  const intent = PAD_INTENTS.find((one) => one === does);
  if (intent !== undefined && whole(button) && typeof stays === 'boolean') return { does: intent, button, stays: stays && mayStay(intent) };
  const lever = PAD_LEVERS.find((one) => one === does);
  if (lever === undefined || !whole(axis) || !reading(from) || !reading(to) || typeof dead !== 'number') return null;
  return Math.abs(to - from) >= LEAST_TRAVEL && dead >= DEAD.least && dead <= DEAD.most ? { does: lever, axis, from, to, dead } : null;
}

/** Of what is kept, what fits: a store can hold anything. Of two that want one switch, or one thing twice, the first has it. */
export function padBindingsOf(kept: Readonly<Record<string, readonly unknown[]>>): PadBindings {
  return Object.fromEntries(Object.entries(kept).map(([id, uses]) => [id, uses.map(useOf).filter((use) => use !== null).filter((use, at, all) => all.findIndex((one) => clash(one, use)) === at)]));
}

/** Two that cannot both be: the same switch or lever, or the same thing done. */
const clash = (one: PadUse, other: PadUse): boolean => one.does === other.does || sameSource(one, other);

function sameSource(one: PadUse, other: PadUse): boolean {
  if (isTravel(one)) return isTravel(other) && one.axis === other.axis;
  return !isTravel(other) && one.button === other.button;
}

/** Who has the switch or lever of a use already; null: nobody but itself. */
export const takenBy = (uses: readonly PadUse[], use: PadUse): PadUse | null => uses.find((one) => one.does !== use.does && sameSource(one, use)) ?? null;

/** The uses with this one, which takes its switch or lever from whoever had it. */
export const withUse = (uses: readonly PadUse[], use: PadUse): PadUse[] => [...uses.filter((one) => !clash(one, use)), use];
/** The uses with nothing left that does this. */
export const without = (uses: readonly PadUse[], does: PadUse['does']): PadUse[] => uses.filter((one) => one.does !== does);

/** How far along its travel a lever stands, 0 to 1; inside the dead zone of an end it is there. */
export function partOf(value: number, { from, to, dead }: Pick<PadTravel, 'from' | 'to' | 'dead'>): number {
  const part = (value - from) / (to - from);
  return Math.min(Math.max((part - dead) / (1 - 2 * dead), 0), 1);
}

/** The roll control, -1 full left to 1 full right, with its dead zone about the middle. */
export function controlOf(value: number, { from, to, dead }: Pick<PadTravel, 'from' | 'to' | 'dead'>): number {
  const off = Math.min(Math.max(((value - from) / (to - from)) * 2 - 1, -1), 1);
  return Math.abs(off) <= dead ? 0 : (Math.sign(off) * (Math.abs(off) - dead)) / (1 - dead);
}
