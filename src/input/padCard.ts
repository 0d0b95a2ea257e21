/** What a device can do, as a page shows it. */
import { DOES, GROUPS } from './card.js';
import { DEAD, isTravel, LEAST_TRAVEL, mayStay, PAD_INTENTS, PAD_LEVERS, takenBy, without, withUse, type PadBindings, type PadIntent, type PadLever, type PadUse } from './padBindings.js';
import type { Bindable } from './keys.js';

const LEVERS: Readonly<Record<PadLever, readonly [words: string, begins: string]>> = {
  bothThrust: ['both thrust levers', 'at idle'], leftThrust: ['left thrust lever', 'at idle'], rightThrust: ['right thrust lever', 'at idle'],
  lever: ['flap lever, by its detents', 'at flaps up'], roll: ['roll control', 'full left'],
};

const padWords = (does: PadUse['does']): string => (does === 'pause' ? 'pause' : does in LEVERS ? LEVERS[does as PadLever][0] : DOES[does as Bindable]);

/** Pause belongs to the sound and the page's own. */
const SWITCHES: readonly (readonly [name: string, does: readonly PadIntent[]])[] = GROUPS.map(([name, intents]) => (name === 'Sound' ? ['Sound and page', [...intents, 'pause']] : [name, intents]));

interface PadLine {
  readonly does: string;
  readonly words: string;
  readonly held: boolean;
  readonly is: 'switch' | 'lever';
  readonly source: number | null;
  readonly stays: boolean | null;
  readonly dead: number | null;
  readonly begins: string;
}

/** Every switch and lever that could be bound, under its heading, with what it is bound to on one device. */
export function padGroups(uses: readonly PadUse[]): { name: string; lines: PadLine[] }[] {
  const used = (does: PadUse['does']): PadUse | undefined => uses.find((one) => one.does === does);
  const levers = PAD_LEVERS.map((does): PadLine => {
    const use = used(does);
    const travel = use !== undefined && isTravel(use) ? use : null;
    return { does, words: LEVERS[does][0], held: false, is: 'lever', source: travel?.axis ?? null, stays: null, dead: travel?.dead ?? null, begins: LEVERS[does][1] };
  });
  const switches = (does: PadIntent): PadLine => {
    const use = used(does);
    const button = use === undefined || isTravel(use) ? null : use;
    return { does, words: padWords(does), held: does === 'extend', is: 'switch', source: button?.button ?? null, stays: mayStay(does) ? button?.stays ?? false : null, dead: null, begins: '' };
  };
  return [...SWITCHES.map(([name, all]) => ({ name, lines: all.map(switches) })), { name: 'Levers that move along', lines: levers }];
}

type Put = { readonly what: 'put'; readonly changes: PadBindings } | { readonly what: 'taken'; readonly by: string; readonly instead: PadBindings } | { readonly what: 'refused'; readonly why: string };

function put(bindings: PadBindings, id: string, use: PadUse): Put {
  const uses = bindings[id] ?? [];
  const other = takenBy(uses, use);
  const changes = { ...bindings, [id]: withUse(uses, use) };
  return other === null ? { what: 'put', changes } : { what: 'taken', by: padWords(other.does), instead: changes };
}

/** Binds a button to an intent. taken: it does something else, and `instead` is what taking it over comes to. refused: says why. */
export function putSwitch(bindings: PadBindings, id: string, does: string, button: number): Put {
  const intent = PAD_INTENTS.find((one) => one === does);
  if (intent === undefined) return { what: 'refused', why: 'That is no switch.' };
  const before = bindings[id]?.find((one) => one.does === intent);
  return put(bindings, id, { does: intent, button, stays: before !== undefined && !isTravel(before) && before.stays });
}

/** Binds an axis to a lever, with its readings at the beginning and at the end; outcomes as for a switch. */
export function putLever(bindings: PadBindings, id: string, does: string, axis: number, from: number, to: number): Put {
  const lever = PAD_LEVERS.find((one) => one === does);
  if (lever === undefined) return { what: 'refused', why: 'That is no lever.' };
  if (Math.abs(to - from) < LEAST_TRAVEL) return { what: 'refused', why: 'It was not moved from one end to the other.' };
  return put(bindings, id, { does: lever, axis, from, to, dead: DEAD.usual });
}

/** The bindings with one use changed; none where there is no such use. */
const changed = (bindings: PadBindings, id: string, does: string, to: (use: PadUse) => PadUse): PadBindings =>
  ({ ...bindings, [id]: (bindings[id] ?? []).map((use) => (use.does === does ? to(use) : use)) });

/** Changes nothing of a lever, nor of an intent that has not two places. */
export const setStays = (bindings: PadBindings, id: string, does: string, stays: boolean): PadBindings =>
  changed(bindings, id, does, (use) => (isTravel(use) || !mayStay(use.does) ? use : { ...use, stays }));
/** Cut to the least and the most of `DEAD`; changes nothing of a switch. */
export const setDead = (bindings: PadBindings, id: string, does: string, dead: number): PadBindings =>
  changed(bindings, id, does, (use) => (isTravel(use) ? { ...use, dead: Math.min(Math.max(dead, DEAD.least), DEAD.most) } : use));
/** What was its beginning is its end. */
export const turnRound = (bindings: PadBindings, id: string, does: string): PadBindings =>
  changed(bindings, id, does, (use) => (isTravel(use) ? { ...use, from: use.to, to: use.from } : use));

/** Unbinds what does this; a device that does nothing any more is left out. */
export function clear(bindings: PadBindings, id: string, does: string): PadBindings {
  const { [id]: uses = [], ...others } = bindings;
  const left = uses.filter((use) => use.does === does).reduce<readonly PadUse[]>((all, use) => without(all, use.does), uses);
  return left.length === 0 ? others : { ...others, [id]: left };
}
