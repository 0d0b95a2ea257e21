/** Choices that are kept on this machine, and whether someone has been here before. */
import { batch, effect, signal, type Signal } from '@preact/signals';
import { read, write } from './kept.js';
import { AS_IT_COMES, size, type SizeChoices } from './size/choices.js';
import type { PadChanges } from './switches/house.js';
import { timing, type KeptTiming } from './timing/kept.js';

export type Look = 'system' | 'day' | 'night';

/** Keys that were changed: by intent, the place on the board and whether with Shift. What fits is known to the hand alone. */
export type KeyChanges = Readonly<Record<string, { readonly code: string; readonly shift: boolean }>>;

const lookOf = (text: string | null): Look => (text === 'day' || text === 'night' ? text : 'system');

/** A store holds whatever an older page or a hand has put there: what is no key is left out. */
export function keyChangesOf(text: string | null): KeyChanges {
  const isKey = (one: unknown): one is KeyChanges[string] =>
    typeof one === 'object' && one !== null && 'code' in one && typeof one.code === 'string' && 'shift' in one && typeof one.shift === 'boolean';
  try {
    const found: unknown = JSON.parse(text ?? '{}');
    if (typeof found !== 'object' || found === null) return {};
    return Object.fromEntries(Object.entries(found).flatMap(([intent, one]) => (isKey(one) ? [[intent, { code: one.code, shift: one.shift }]] : [])));
  } catch {
    return {};
  }
}

/** What is kept of devices: lists by their names. What is in them is known to the hand alone. */
export function padChangesOf(text: string | null): PadChanges {
  try {
    const found: unknown = JSON.parse(text ?? '{}');
    if (typeof found !== 'object' || found === null) return {};
    return Object.fromEntries(Object.entries(found).filter((one): one is [string, unknown[]] => Array.isArray(one[1])));
  } catch {
    return {};
  }
}

/** Loudness of the page, 0 to 1. */
const DEFAULT_VOLUME = 0.7;

export function volumeOf(text: string | null): number {
  const found = text === null || text.trim() === '' ? Number.NaN : Number(text);
  return found >= 0 && found <= 1 ? found : DEFAULT_VOLUME;
}

/** A choice that is on or off. */
function kept(key: string, otherwise: boolean): Signal<boolean> {
  const text = read(key);
  const choice = signal(text === 'on' ? true : text === 'off' ? false : otherwise);
  effect(() => write(key, choice.value ? 'on' : 'off'));
  return choice;
}

export const pads = signal<PadChanges>(padChangesOf(read('pads')));
export const look = signal<Look>(lookOf(read('look')));
/** Whether keys that print a character act. */
export const letters = kept('letters', true);
export const bindings = signal<KeyChanges>(keyChangesOf(read('keys')));
/** Press to run, press to stop, for hands that cannot hold; such a run is marked assisted. */
export const latchedHold = kept('latched', false);
/** The twins speak the pointers; such a run is marked assisted. */
export const spokenPointers = kept('spoken', false);
/** A desk may follow a drill that is flown here; runs of a set and of a practice are always flown alone. */
export const deskMayJoin = kept('desk', true);
/** The sound of the page is off; apart from the aeroplane's own silence. */
export const muted = kept('muted', false);
export const volume = signal(volumeOf(read('volume')));
/** Short name of who flies; empty for no name. */
export const person = signal(read('person') ?? '');
export const firstVisit = read('seen') === null;

effect(() => {
  const root = document.documentElement;
  if (look.value === 'system') delete root.dataset['look'];
  else root.dataset['look'] = look.value;
  write('look', look.value);
});
effect(() => write('person', person.value));
effect(() => write('pads', JSON.stringify(pads.value)));
effect(() => write('keys', JSON.stringify(bindings.value)));
effect(() => write('volume', String(volume.value)));
write('seen', 'yes');

/** Every choice at one moment. */
export interface Choices {
  readonly look: Look;
  readonly letters: boolean;
  readonly bindings: KeyChanges;
  readonly latchedHold: boolean;
  readonly spokenPointers: boolean;
  readonly deskMayJoin: boolean;
  readonly muted: boolean;
  readonly volume: number;
  readonly size: SizeChoices;
  readonly pads: PadChanges;
  readonly timing: KeptTiming | null;
}

export const DEFAULT_CHOICES: Choices = { look: 'system', letters: true, bindings: {}, latchedHold: false, spokenPointers: false, deskMayJoin: true, muted: false, volume: DEFAULT_VOLUME, size: AS_IT_COMES, pads: {}, timing: null };

/** Where each choice stands: what Undo takes back. */
const STANDS: { readonly [K in keyof Choices]: Signal<Choices[K]> } = { look, letters, bindings, latchedHold, spokenPointers, deskMayJoin, muted, volume, size, pads, timing };
const NAMES = Object.keys(STANDS) as (keyof Choices)[];

const stand = <K extends keyof Choices>(name: K, value: Choices[K]): void => { STANDS[name].value = value; };

export const choicesNow = (): Choices => Object.fromEntries(NAMES.map((name) => [name, STANDS[name].value])) as unknown as Choices;

export const setChoices = (to: Choices): void => batch(() => { for (const name of NAMES) stand(name, to[name]); });

/** Loudness of the page as it is heard, 0 to 1. */
export const loudness = (): number => (muted.value ? 0 : volume.value);
