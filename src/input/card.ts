/** The keys as pages show them: what is printed on a key, and what it does. */
import type { Bindable, Bindings, Intent, Stroke } from './keys.js';

export interface KeyLine {
  readonly intent: Intent;
  /** As shown on the card. */
  readonly keys: readonly string[];
  readonly does: string;
  readonly held: boolean;
}

export const DOES: Readonly<Record<Bindable, string>> = {
  guard: 'guard open, closed', arm: 'arm, disarm', extend: 'extend', retract: 'retract', off: 'switch to off',
  leverAft: 'flap lever aft', leverForward: 'flap lever forward',
  call: 'call split', callClear: 'call clear, going on', callFailed: 'call drive failed', callMoving: 'call still moving',
  gear: 'gear up, down', thrustForward: 'thrust forward', thrustAft: 'thrust aft', speedUp: 'select a higher speed', speedDown: 'select a lower speed',
  speedHold: 'speed hold on, off', goAround: 'go around', rollLeft: 'roll left', rollRight: 'roll right',
  silenceCover: 'cover of the silence open, closed', silence: 'silence the gear horn', mute: 'sound off, on',
  answer1: 'first answer', answer2: 'second answer', answer3: 'third answer', answer4: 'fourth answer',
};

/** Named here and not by their letter: signs of keys that print nothing, or not what their name says. */
const SIGNS: Readonly<Record<string, string>> = {
  ArrowLeft: '←', ArrowRight: '→', ArrowUp: '↑', ArrowDown: '↓', PageUp: 'Page up', PageDown: 'Page down', Minus: '-', Equal: '=', BracketLeft: '[',
  BracketRight: ']', Backslash: '\\', Semicolon: ';', Comma: ',', Period: '.', Backquote: '`', NumpadAdd: 'Num +', NumpadSubtract: 'Num -',
};

/** What is printed on keys, by their place, where the browser knows the board; empty where it does not. */
export type Printed = ReadonlyMap<string, string>;

/** A board of the common kind. */
const COMMON: Printed = new Map();

/** What is printed on the keys of a stroke. Figures stand on every board, with Shift or without. */
export function keyText({ code, shift }: Stroke, printed: Printed = COMMON): string[] {
  const known = code.startsWith('Digit') || code.startsWith('Numpad') ? undefined : printed.get(code);
  const sign = known?.toLocaleUpperCase() ?? SIGNS[code] ?? code.replace(/^(Key|Digit)/, '').replace(/^Numpad/, 'Num ');
  return shift ? ['Shift', sign] : [sign];
}

function lineOf(intent: Intent, bindings: Bindings, printed?: Printed): KeyLine {
  if (intent === 'pause') return { intent, keys: ['Esc'], does: 'pause', held: false };
  return { intent, keys: keyText(bindings[intent], printed), does: DOES[intent], held: intent === 'extend' };
}

/** What belongs to the drive and to letting go of it; the rest stands on the set-up page. */
const CARD: readonly Intent[] = ['guard', 'arm', 'extend', 'retract', 'off', 'mute', 'pause', 'leverAft', 'leverForward', 'call', 'callClear', 'callFailed', 'callMoving'];

/** The card of keys that the brief shows. */
export const keyCard = (bindings: Bindings, printed?: Printed): KeyLine[] => CARD.map((intent) => lineOf(intent, bindings, printed));

/** Headings of the card in order, each with its intents; every key that can be changed stands under one of them. */
export const GROUPS: readonly (readonly [name: string, intents: readonly Bindable[]])[] = [
  ['Standby drive', ['guard', 'arm', 'extend', 'retract', 'off']],
  ['Flap lever', ['leverAft', 'leverForward']],
  ['Sound', ['silenceCover', 'silence', 'mute']],
  ['Calls', ['call', 'callClear', 'callFailed', 'callMoving']],
  ['Answers', ['answer1', 'answer2', 'answer3', 'answer4']],
  ['Flying', ['speedUp', 'speedDown', 'speedHold', 'thrustForward', 'thrustAft', 'goAround', 'gear', 'rollLeft', 'rollRight']],
];

/** Every key that can be changed, by what it belongs to. */
export const keyGroups = (bindings: Bindings, printed?: Printed): { name: string; lines: KeyLine[] }[] =>
  GROUPS.map(([name, intents]) => ({ name, lines: intents.map((intent) => lineOf(intent, bindings, printed)) }));
