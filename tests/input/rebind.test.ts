// Keys that are changed: free ones are put, taken ones are told and exchanged, others refused with a reason.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keyGroups } from '../../src/input/card.js';
import { BINDABLE, bindingsOf, DEFAULT_BINDINGS, intentOf, mayHave, type Bindings } from '../../src/input/keys.js';
import { isBindable, rebind, rebindToDefault } from '../../src/input/rebind.js';

const stroke = (code: string, shift = false) => ({ code, shift });

test('a free key is put, and the old one is free', () => {
  const rebound = rebind(DEFAULT_BINDINGS, 'call', stroke('KeyW'));
  expect(rebound).toEqual({ what: 'put', changes: { call: stroke('KeyW') } });
  const bindings = bindingsOf(rebound.what === 'put' ? rebound.changes : {});
  expect([intentOf({ code: 'KeyW', shiftKey: false }, bindings, true), intentOf({ code: 'KeyS', shiftKey: false }, bindings, true)]).toEqual(['call', null]);
});

test('its own key again is no change', () => expect(rebind(DEFAULT_BINDINGS, 'call', stroke('KeyS'))).toEqual({ what: 'put', changes: {} }));

test('a taken key is told, with what exchanging comes to', () => {
  expect(rebind(DEFAULT_BINDINGS, 'call', stroke('KeyG'))).toEqual({ what: 'taken', by: 'guard', exchanged: { call: stroke('KeyG'), guard: stroke('KeyS') } });
  // Extend is held and takes no Shift, so it cannot have Shift+F.
  expect(rebind(DEFAULT_BINDINGS, 'leverForward', stroke('KeyE'))).toEqual({ what: 'taken', by: 'extend', exchanged: null });
});

test('what is not to be had is refused with its reason', () => {
  const why = (code: string, shift = false) => {
    const rebound = rebind(DEFAULT_BINDINGS, 'extend', stroke(code, shift));
    return rebound.what === 'refused' ? rebound.why : rebound.what;
  };
  expect([why('ArrowUp'), why('Space'), why('F5'), why('KeyW', true), why('KeyW')]).toEqual([
    'Arrow up and down always move the flap lever.', 'Space and Enter press what has the focus.', 'That key belongs to the browser or the page.',
    'A switch that is held takes no Shift.', 'put',
  ]);
});

test('the first key comes back, or is told to be another’s by now', () => {
  const moved = bindingsOf({ call: stroke('KeyW') });
  expect(rebindToDefault(moved, 'call')).toEqual({ what: 'put', changes: {} });
  const exchanged = bindingsOf({ call: stroke('KeyG'), guard: stroke('KeyS') });
  expect(rebindToDefault(exchanged, 'call')).toEqual({ what: 'taken', by: 'guard', exchanged: {} });
});

test('the groups hold every intent once', () => {
  const named = keyGroups(DEFAULT_BINDINGS).flatMap(({ lines }) => lines.map(({ intent }) => intent));
  expect([...named].sort()).toEqual([...BINDABLE].sort());
  expect(['call', 'pause', 'toString'].map(isBindable)).toEqual([true, false, false]);
});

test('after any changes, every intent has a key of its own', () => {
  const codes = fc.constantFrom('KeyA', 'KeyE', 'KeyG', 'KeyS', 'KeyW', 'KeyF', 'Digit7', 'ArrowLeft', 'ArrowUp', 'Space', 'Home');
  const wish = fc.record({ intent: fc.constantFrom(...BINDABLE), code: codes, shift: fc.boolean() });
  fc.assert(fc.property(fc.array(wish, { maxLength: 30 }), (wishes) => {
    let bindings: Bindings = DEFAULT_BINDINGS;
    for (const { intent, code, shift } of wishes) {
      const rebound = rebind(bindings, intent, stroke(code, shift));
      const changes = rebound.what === 'put' ? rebound.changes : rebound.what === 'taken' ? rebound.exchanged : null;
      if (changes === null) continue;
      bindings = bindingsOf(changes);
      expect(bindings[intent]).toEqual(stroke(code, shift));
      expect(new Set(BINDABLE.map((one) => JSON.stringify(bindings[one]))).size).toBe(BINDABLE.length);
      for (const one of BINDABLE) expect(mayHave(one, bindings[one])).toBe(true);
    }
  }));
});
