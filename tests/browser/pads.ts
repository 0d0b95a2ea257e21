// A switch box of the test's own, in place of what the browser sees: it runs in the page before the app.
import type { Page } from 'playwright-core';

/** Two axes and eight buttons; not there until it is plugged in. */
export function fakeBox(): void {
  const box = {
    id: 'Panel of the test (Vendor: 1234 Product: abcd)', index: 0, connected: true, mapping: '', timestamp: 0,
    axes: [-1, 0], buttons: Array.from({ length: 8 }, () => ({ pressed: false, touched: false, value: 0 })), vibrationActuator: null,
  };
  const state = { in: false };
  Object.defineProperty(navigator, 'getGamepads', { value: () => (state.in ? [{ ...box, axes: [...box.axes], buttons: box.buttons.map((one) => ({ ...one })) }] : [null]) });
  Object.assign(globalThis, {
    plug(inIt: boolean) { state.in = inIt; },
    /** @param own whether the box tells when */
    press(button: number, on: boolean, own: boolean) {
      box.buttons[button] = { pressed: on, touched: on, value: on ? 1 : 0 };
      const now = performance.now();
      if (own) box.timestamp = now;
      return now;
    },
    move(axis: number, value: number) {
      box.axes[axis] = value;
      box.timestamp = performance.now();
    },
  });
}

interface Box {
  plug(inIt: boolean): void;
  press(button: number, on: boolean, own: boolean): number;
  move(axis: number, value: number): void;
}

export const plug = (page: Page, inIt: boolean): Promise<void> => page.evaluate((one) => (globalThis as unknown as Box).plug(one), inIt);
/** @returns when, ms of the page's clock */
export const press = (page: Page, button: number, on: boolean, own = true): Promise<number> => page.evaluate(([one, two, three]) => (globalThis as unknown as Box).press(one, two, three), [button, on, own] as const);
export const move = (page: Page, axis: number, value: number): Promise<void> => page.evaluate(([one, two]) => (globalThis as unknown as Box).move(one, two), [axis, value] as const);
