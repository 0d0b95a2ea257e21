/**
 * What a key means. Keys are named by their place on the board (`code`) and not by what is printed on them; each intent
 * has one, which can be changed. Pure data and plain functions: who reads the board, and where changes are kept, is
 * not known here.
 */
export type Intent =
  | 'guard' | 'arm' | 'extend' | 'retract' | 'off'
  | 'leverAft' | 'leverForward'
  | 'call' | 'callClear' | 'callFailed' | 'callMoving'
  | 'gear' | 'thrustForward' | 'thrustAft' | 'speedUp' | 'speedDown' | 'speedHold' | 'goAround' | 'rollLeft' | 'rollRight'
  | 'silenceCover' | 'silence' | 'mute'
  | 'answer1' | 'answer2' | 'answer3' | 'answer4'
  | 'pause';

/** Esc always pauses: a way out must not be lost by a change. */
export type Bindable = Exclude<Intent, 'pause'>;

/** One key, with Shift or without. */
export interface Stroke {
  readonly code: string;
  readonly shift: boolean;
}

/** The key of every intent; no two have the same. */
export type Bindings = Readonly<Record<Bindable, Stroke>>;

const plain = (code: string): Stroke => ({ code, shift: false });

/**
 * Free on purpose are W, D, 3 and 4, which lie next to the hold: a finger that slips off E finds nothing there, or the
 * call. Answers, speeds and thrust lie under the other hand. Silencing takes two keys, apart from each other and from the call.
 */
export const DEFAULT_BINDINGS: Bindings = {
  guard: plain('KeyG'), arm: plain('KeyA'), extend: plain('KeyE'), retract: plain('KeyR'), off: plain('KeyO'),
  leverAft: plain('KeyF'), leverForward: { code: 'KeyF', shift: true },
  call: plain('KeyS'), callClear: plain('KeyC'), callFailed: plain('KeyX'), callMoving: plain('KeyV'),
  gear: plain('KeyL'), thrustForward: plain('KeyI'), thrustAft: plain('KeyK'), speedUp: plain('KeyU'), speedDown: plain('KeyJ'),
  speedHold: plain('KeyH'), goAround: plain('KeyN'), rollLeft: plain('ArrowLeft'), rollRight: plain('ArrowRight'),
  silenceCover: plain('KeyP'), silence: plain('KeyY'), mute: plain('KeyM'),
  answer1: plain('Digit7'), answer2: plain('Digit8'), answer3: plain('Digit9'), answer4: plain('Digit0'),
};

export const BINDABLE = Object.keys(DEFAULT_BINDINGS) as Bindable[];

/** Keys that mean the same whatever is changed; they act with the letters switched off too. */
const FIXED: Readonly<Record<string, Intent>> = { Escape: 'pause', ArrowDown: 'leverAft', ArrowUp: 'leverForward' };

/** Keys that print a character: those that WCAG 2.2, 2.1.4 wants to be switched off or changed. */
const isCharacter = (code: string): boolean => /^(Key[A-Z]|Digit\d|Numpad\w+|Intl\w+|Minus|Equal|Bracket(Left|Right)|Backslash|Semicolon|Comma|Period|Backquote)$/.test(code);

const same = (one: Stroke, other: Stroke): boolean => one.code === other.code && one.shift === other.shift;

/** The intent that has exactly this key; null for none. */
export const intentOn = (stroke: Stroke, bindings: Bindings): Bindable | null => BINDABLE.find((intent) => same(bindings[intent], stroke)) ?? null;

/**
 * What a key asks for. Shift beside a key that has no meaning of its own with Shift changes nothing.
 * @param letters whether keys that print a character act
 */
export function intentOf(key: { code: string; shiftKey: boolean }, bindings: Bindings, letters: boolean): Intent | null {
  const fixed = FIXED[key.code];
  if (fixed !== undefined) return fixed;
  if (!letters && isCharacter(key.code)) return null;
  return intentOn({ code: key.code, shift: key.shiftKey }, bindings) ?? intentOn(plain(key.code), bindings);
}

/** Whether an intent may have a key: not one of the browser's or of the page's own, and no Shift where the key is held. */
export function mayHave(intent: Bindable, { code, shift }: Stroke): boolean {
  if (shift && (intent === 'extend' || intent === 'retract')) return false;
  return isCharacter(code) ? code !== 'NumpadEnter' : /^(Arrow(Left|Right)|Home|End|PageUp|PageDown|Insert|Delete)$/.test(code);
}

/**
 * The bindings with what was changed. Of changes that do not fit (an unknown intent, a key that may not be had, two on
 * one key) nothing is taken: a store can hold anything.
 */
export function bindingsOf(changes: Readonly<Record<string, Stroke>>): Bindings {
  const changed = Object.fromEntries(Object.entries(changes).filter(([intent, stroke]) => Object.hasOwn(DEFAULT_BINDINGS, intent) && mayHave(intent as Bindable, stroke)));
  const bindings: Bindings = { ...DEFAULT_BINDINGS, ...changed };
  const alone = BINDABLE.every((intent) => intentOn(bindings[intent], bindings) === intent);
  return alone ? bindings : DEFAULT_BINDINGS;
}

/** What was changed, as it is kept: a later default still reaches everyone who left that key alone. */
export function changesOf(bindings: Bindings): Record<string, Stroke> {
  return Object.fromEntries(BINDABLE.filter((intent) => !same(bindings[intent], DEFAULT_BINDINGS[intent])).map((intent) => [intent, bindings[intent]]));
}
