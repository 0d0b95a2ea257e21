/** Gives an intent another key: one waits for the next key pressed, and what is taken already is asked about. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { change, say } from '../changing.js';
import type { House, KeyLine, Rebound } from '../house.js';
import { bindings } from '../settings.js';
import { upper } from '../../view/words.js';

/** Keys that only go with others, or are for the page and the reader. */
const ALONE = new Set(['ShiftLeft', 'ShiftRight', 'ControlLeft', 'ControlRight', 'AltLeft', 'AltRight', 'MetaLeft', 'MetaRight', 'CapsLock', 'NumLock', 'Fn']);

/** A key that another intent has, while it is asked what is to be done. */
export interface Conflict {
  readonly line: KeyLine;
  readonly by: KeyLine;
  readonly exchanged: Extract<Rebound, { what: 'taken' }>['exchanged'];
}

export interface Rebinding {
  /** Intent that waits for a key; null for none. */
  readonly waiting: string | null;
  readonly conflict: Conflict | null;
  wait(line: KeyLine): void;
  /** Its button has lost the focus: it waits no more. */
  lose(line: KeyLine): void;
  take(line: KeyLine, rebound: Rebound): void;
  /** Nothing waits any more, and nothing is asked. */
  leave(): void;
}

export const namedKeys = ({ keys }: KeyLine): string => keys.join(' and ');

export function useRebinding({ keys }: House): Rebinding {
  const waiting = useSignal<string | null>(null);
  const conflict = useSignal<Conflict | null>(null);
  const lineOf = (intent: string): KeyLine => keys.groups(bindings.value).flatMap(({ lines }) => lines).find((line) => line.intent === intent) as KeyLine;
  const leave = (): void => {
    waiting.value = null;
    conflict.value = null;
  };
  const take = (line: KeyLine, rebound: Rebound): void => {
    leave();
    if (rebound.what === 'refused') return say(rebound.why);
    if (rebound.what === 'put') {
      return change(() => {
        bindings.value = rebound.changes;
        return `${upper(line.does)}: key ${namedKeys(lineOf(line.intent))}`;
      });
    }
    conflict.value = { line, by: lineOf(rebound.by), exchanged: rebound.exchanged };
    say(`That key is for ${lineOf(rebound.by).does}.`);
  };

  useEffect(() => {
    // One listener for good: one that came with the next drawing would miss a key pressed at once.
    const onKey = (key: KeyboardEvent): void => {
      const intent = waiting.peek();
      if (intent === null) return;
      if (key.code === 'Tab' || ALONE.has(key.code) || key.repeat) {
        if (key.code === 'Tab') leave();
        return;
      }
      key.preventDefault();
      key.stopPropagation();
      if (key.code === 'Escape') {
        leave();
        return say('Left as it was');
      }
      if (key.ctrlKey || key.altKey || key.metaKey) return say('Only a key by itself, or with Shift');
      take(lineOf(intent), keys.rebind(bindings.value, intent, { code: key.code, shift: key.shiftKey }));
    };
    addEventListener('keydown', onKey, { capture: true });
    return () => removeEventListener('keydown', onKey, { capture: true });
  }, [keys]);

  return {
    waiting: waiting.value, conflict: conflict.value, take, leave,
    lose({ intent }) {
      if (waiting.peek() === intent) waiting.value = null;
    },
    wait({ intent, does }) {
      conflict.value = null;
      waiting.value = intent;
      say(`Press the new key for ${does}. Esc leaves it.`);
    },
  };
}
