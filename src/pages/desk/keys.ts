/** Letter keys of the desk: each a press of a button that names it. Where letter keys are off, so are these (WCAG 2.2, 2.1.4). */
import { useEffect } from 'preact/hooks';
import { letters } from '../settings.js';

export type DeskKeys = Readonly<Record<string, () => void>>;

const TYPED = ['INPUT', 'TEXTAREA', 'SELECT'];

/** Whether a stroke is meant for a field. A box to tick and a choice take no letters. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && TYPED.includes(target.tagName) && !(target instanceof HTMLInputElement && ['radio', 'checkbox'].includes(target.type));

/** Acts on a key without modifiers, once a stroke. */
export function useDeskKeys(keys: DeskKeys): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!letters.peek() || event.repeat || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
      const act = keys[event.key.toLowerCase()];
      if (act === undefined) return;
      event.preventDefault();
      act();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  });
}
