// What keys mean, and how that is changed.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readBoard } from '../../src/input/board.js';
import { keyCard, keyText } from '../../src/input/card.js';
import { BINDABLE, bindingsOf, changesOf, DEFAULT_BINDINGS, intentOf, mayHave, type Bindings } from '../../src/input/keys.js';

const key = (code: string, shiftKey = false) => ({ code, shiftKey });
const asShipped = (code: string, shift = false, letters = true) => intentOf(key(code, shift), DEFAULT_BINDINGS, letters);
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.split('');

test('keys by their place on the board', () => {
  const map = ['KeyG', 'KeyA', 'KeyE', 'KeyR', 'KeyO', 'KeyF', 'KeyS', 'ArrowDown', 'ArrowUp', 'Escape'].map((code) => asShipped(code));
  expect(map).toEqual(['guard', 'arm', 'extend', 'retract', 'off', 'leverAft', 'call', 'leverAft', 'leverForward', 'pause']);
  expect(asShipped('KeyF', true)).toBe('leverForward');
  // Shift that is held by chance does not take a key away.
  expect(asShipped('KeyE', true)).toBe('extend');
});

test('no two intents have one key, and every one may have its own', () => {
  const strokes = BINDABLE.map((intent) => `${DEFAULT_BINDINGS[intent].code} ${DEFAULT_BINDINGS[intent].shift}`);
  expect(new Set(strokes).size).toBe(strokes.length);
  expect(strokes.length).toBeGreaterThan(20);
  for (const intent of BINDABLE) expect(mayHave(intent, DEFAULT_BINDINGS[intent]), intent).toBe(true);
});

// Where the keys lie on a board of the common kind (ISO/IEC 9995-2 grid): E touches 3, 4, W, R, S and D.
test('beside the hold lie its own way back and the call, and else nothing', () => {
  const beside = ['Digit3', 'Digit4', 'KeyW', 'KeyR', 'KeyS', 'KeyD'].map((code) => asShipped(code));
  expect(beside).toEqual([null, null, null, 'retract', 'call', null]);
});

test('silencing takes two keys, neither of them Space or Enter, neither beside the call', () => {
  const codes = [DEFAULT_BINDINGS.silenceCover.code, DEFAULT_BINDINGS.silence.code];
  expect(new Set(codes).size).toBe(2);
  const besideCall = ['KeyQ', 'KeyW', 'KeyE', 'KeyA', 'KeyD', 'KeyZ', 'KeyX'];
  for (const code of codes) expect(['Space', 'Enter', 'NumpadEnter', 'KeyS', ...besideCall]).not.toContain(code);
});

test('keys of the browser and of the page are nobody’s', () => {
  const theirs = ['Space', 'Enter', 'NumpadEnter', 'Tab', 'Escape', 'F1', 'F5', 'F12', 'Slash', 'Quote', 'Backspace', 'ShiftLeft', 'ControlLeft', 'AltLeft', 'MetaLeft', 'ContextMenu', 'CapsLock', 'ArrowUp', 'ArrowDown', ''];
  for (const code of theirs) {
    for (const intent of BINDABLE) expect(mayHave(intent, { code, shift: false }), `${intent} ${code}`).toBe(false);
    expect(['leverAft', 'leverForward', 'pause', null]).toContain(asShipped(code));
  }
  // A key that is held takes no Shift: letting Shift go first would not let the switch go.
  expect(mayHave('extend', { code: 'KeyW', shift: true })).toBe(false);
  expect(mayHave('guard', { code: 'KeyW', shift: true })).toBe(true);
});

test('letters and figures can be switched off; arrows and Esc stay (WCAG 2.2, 2.1.4)', () => {
  for (const code of [...LETTERS.map((letter) => `Key${letter}`), ...'0123456789'.split('').map((one) => `Digit${one}`)]) expect(asShipped(code, false, false)).toBeNull();
  expect(['ArrowDown', 'ArrowLeft', 'ArrowRight', 'Escape'].map((code) => asShipped(code, false, false))).toEqual(['leverAft', 'rollLeft', 'rollRight', 'pause']);
});

test('the card shows the key that each intent has now', () => {
  expect(keyCard(DEFAULT_BINDINGS).map(({ intent, keys, held }) => `${intent} ${keys.join('+')}${held ? ' hold' : ''}`)).toEqual([
    'guard G', 'arm A', 'extend E hold', 'retract R', 'off O', 'mute M', 'pause Esc', 'leverAft F', 'leverForward Shift+F', 'call S', 'callClear C', 'callFailed X', 'callMoving V',
  ]);
  const moved = keyCard(bindingsOf({ call: { code: 'KeyW', shift: true } })).find(({ intent }) => intent === 'call');
  expect(moved?.keys).toEqual(['Shift', 'W']);
  expect(['Digit7', 'Numpad4', 'ArrowLeft', 'BracketLeft', 'Home'].map((code) => keyText({ code, shift: false })[0])).toEqual(['7', 'Num 4', '←', '[', 'Home']);
});

test('keys are named as they are printed, where the browser tells; figures always as figures', async () => {
  // Letters of a French board, from memory; the places are those of W3C UI Events KeyboardEvent code Values.
  const board = new Map([['KeyA', 'q'], ['KeyQ', 'a'], ['Semicolon', 'm'], ['Digit7', 'è'], ['Backquote', '²']]);
  expect(['KeyA', 'KeyG', 'Semicolon', 'Digit7', 'Home'].map((code) => keyText({ code, shift: false }, board)[0])).toEqual(['Q', 'G', 'M', '7', 'Home']);
  expect(keyCard(DEFAULT_BINDINGS, board).find(({ intent }) => intent === 'arm')?.keys).toEqual(['Q']);
  expect(await readBoard({ keyboard: { getLayoutMap: async () => board } })).toBe(board);
  expect(await readBoard({})).toBeNull();
  expect(await readBoard({ keyboard: { getLayoutMap: () => Promise.reject(new Error('not allowed here')) } })).toBeNull();
});

test('only what was changed is kept, and comes back the same', () => {
  expect(changesOf(DEFAULT_BINDINGS)).toEqual({});
  const changes = { call: { code: 'KeyW', shift: false }, guard: { code: 'KeyS', shift: false } };
  expect(changesOf(bindingsOf(changes))).toEqual(changes);
  expect(intentOf(key('KeyS'), bindingsOf(changes), true)).toBe('guard');
  expect(intentOf(key('KeyG'), bindingsOf(changes), true)).toBeNull();
});

test('whatever the store holds, every intent has a key of its own that it may have', () => {
  const stroke = fc.record({ code: fc.oneof(fc.constantFrom('KeyA', 'KeyS', 'KeyW', 'Space', 'Escape', 'ArrowUp', 'Digit1'), fc.string()), shift: fc.boolean() });
  const changes = fc.dictionary(fc.oneof(fc.constantFrom(...BINDABLE), fc.constantFrom('pause', '__proto__', 'toString', 'other')), stroke);
  fc.assert(fc.property(changes, (some) => {
    const bindings: Bindings = bindingsOf(some);
    expect(Object.keys(bindings)).toEqual(BINDABLE);
    expect(new Set(BINDABLE.map((intent) => JSON.stringify(bindings[intent]))).size).toBe(BINDABLE.length);
    for (const intent of BINDABLE) {
      const { code, shift } = bindings[intent];
      expect(mayHave(intent, bindings[intent])).toBe(true);
      expect(intentOf(key(code, shift), bindings, true)).toBe(intent);
    }
  }));
});
