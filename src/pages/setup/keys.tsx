/** The keys, each with a button that takes the next key pressed. Esc leaves it as it was; Tab goes on as ever. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { change, say } from '../changing.js';
import type { House, KeyLine, Rebound } from '../house.js';
import { bindings, letters } from '../settings.js';

/** Keys that only go with others, or are for the page and the reader. */
const ALONE = new Set(['ShiftLeft', 'ShiftRight', 'ControlLeft', 'ControlRight', 'AltLeft', 'AltRight', 'MetaLeft', 'MetaRight', 'CapsLock', 'NumLock', 'Fn']);

/** A key that another intent has, while it is asked what is to be done. */
interface Conflict {
  readonly line: KeyLine;
  readonly by: KeyLine;
  readonly exchanged: Extract<Rebound, { what: 'taken' }>['exchanged'];
}

const named = ({ keys }: KeyLine): string => keys.join(' and ');

export function SetupKeys({ house }: { house: House }) {
  const waiting = useSignal<string | null>(null);
  const conflict = useSignal<Conflict | null>(null);
  const section = useRef<HTMLElement>(null);
  const groups = house.keys.groups(bindings.value);
  const lineOf = (intent: string): KeyLine => house.keys.groups(bindings.value).flatMap(({ lines }) => lines).find((line) => line.intent === intent) as KeyLine;

  const focusOn = (intent: string): void => section.current?.querySelector<HTMLElement>(`[data-intent="${intent}"]`)?.focus();
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
        return `${upper(line.does)}: key ${named(lineOf(line.intent))}`;
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
      take(lineOf(intent), house.keys.rebind(bindings.value, intent, { code: key.code, shift: key.shiftKey }));
    };
    addEventListener('keydown', onKey, { capture: true });
    return () => removeEventListener('keydown', onKey, { capture: true });
  }, [house]);

  return (
    <section ref={section} class="setup-keys" aria-labelledby="setup-keys">
      <h2 id="setup-keys" class="ruled">Keys</h2>
      <label class="choice">
        <input
          type="checkbox" checked={letters.value}
          onChange={({ currentTarget: { checked } }) => change(() => { letters.value = checked; return `Letter keys: ${checked ? 'on' : 'off'}`; })}
        />
        <span>Letter keys act<small>Off: only arrows and Esc act, and whatever has the focus. Esc always pauses, arrow up and down always move the flap lever.</small></span>
      </label>
      <div class="key-groups">{groups.map(({ name, lines }) => (
        <div key={name} class="key-group">
          <h3>{name}</h3>
          <ul>
            {lines.map((line) => (
              <li key={line.intent} class="key-line">
                <span class="key-does">{line.does}{line.held && <em> hold</em>}</span>
                {line.intent in bindings.value && (
                  <button class="plain" type="button" aria-label={`${line.does}: the key it came with`} onClick={() => { focusOn(line.intent); take(line, house.keys.rebindToDefault(bindings.value, line.intent)); }}>reset</button>
                )}
                <button
                  class="key" type="button" data-intent={line.intent} aria-label={waiting.value === line.intent ? `${line.does}: press a key` : `${line.does}: key ${line.keys.join(' ')}. Change`}
                  onClick={() => {
                    conflict.value = null;
                    waiting.value = line.intent;
                    say(`Press the new key for ${line.does}. Esc leaves it.`);
                  }}
                  onBlur={() => { if (waiting.value === line.intent) waiting.value = null; }}
                >{waiting.value === line.intent ? <span>press a key</span> : line.keys.map((key, index) => <>{index > 0 && ' '}<kbd key={key}>{key}</kbd></>)}</button>
                {conflict.value?.line.intent === line.intent && <Taken conflict={conflict.value} take={(rebound) => { take(line, rebound); focusOn(line.intent); }} leave={() => { leave(); say('Left as it was'); focusOn(line.intent); }} />}
              </li>
            ))}
          </ul>
        </div>
      ))}</div>
      <button class="button quiet" type="button" disabled={Object.keys(bindings.value).length === 0} onClick={() => { leave(); change(() => { bindings.value = {}; return 'All keys as they came'; }); }}>Reset all keys</button>
    </section>
  );
}

const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function Taken({ conflict: { line, by, exchanged }, take, leave }: { conflict: Conflict; take: (rebound: Rebound) => void; leave: () => void }) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  return (
    <div class="taken" role="group" aria-label="That key is taken">
      <p><strong>{named(by)}</strong> is for <strong>{by.does}</strong>.{exchanged === null && ` It cannot have ${named(line)} in return.`}</p>
      {exchanged !== null && <button ref={first} class="button quiet" type="button" onClick={() => take({ what: 'put', changes: exchanged })}>Exchange</button>}
      <button ref={exchanged === null ? first : null} class="button quiet" type="button" onClick={leave}>Leave it</button>
    </div>
  );
}
