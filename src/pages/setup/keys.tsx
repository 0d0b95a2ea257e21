/** The keys, each with a button that takes the next key pressed. Esc leaves it as it was; Tab goes on as ever. */
import { useEffect, useRef } from 'preact/hooks';
import { change, say } from '../changing.js';
import type { House, KeyLine, Rebound } from '../house.js';
import { bindings, letters } from '../settings.js';
import { namedKeys, useRebinding, type Conflict, type Rebinding } from './rebinding.js';

export function SetupKeys({ house }: { house: House }) {
  const section = useRef<HTMLElement>(null);
  const rebinding = useRebinding(house);
  const focusOn = (intent: string): void => section.current?.querySelector<HTMLElement>(`[data-intent="${intent}"]`)?.focus();
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
      <div class="key-groups">{house.keys.groups(bindings.value).map(({ name, lines }) => (
        <div key={name} class="key-group">
          <h3>{name}</h3>
          <ul>{lines.map((line) => <Line key={line.intent} house={house} line={line} rebinding={rebinding} focus={() => focusOn(line.intent)} />)}</ul>
        </div>
      ))}</div>
      <button class="button quiet" type="button" disabled={Object.keys(bindings.value).length === 0} onClick={() => { rebinding.leave(); change(() => { bindings.value = {}; return 'All keys as they came'; }); }}>Reset all keys</button>
    </section>
  );
}

function Line({ house, line, rebinding, focus }: { house: House; line: KeyLine; rebinding: Rebinding; focus: () => void }) {
  const { intent, does, held, keys } = line;
  const { conflict, wait, take, leave } = rebinding;
  const waits = rebinding.waiting === intent;
  return (
    <li class="key-line">
      <span class="key-does">{does}{held && <em> hold</em>}</span>
      {intent in bindings.value && (
        <button class="plain" type="button" aria-label={`${does}: the key it came with`} onClick={() => { focus(); take(line, house.keys.rebindToDefault(bindings.value, intent)); }}>reset</button>
      )}
      <button
        class="key" type="button" data-intent={intent} aria-label={waits ? `${does}: press a key` : `${does}: key ${keys.join(' ')}. Change`}
        onClick={() => wait(line)} onBlur={() => rebinding.lose(line)}
      >{waits ? <span>press a key</span> : keys.map((key, index) => <>{index > 0 && ' '}<kbd key={key}>{key}</kbd></>)}</button>
      {conflict?.line.intent === intent && <Taken conflict={conflict} take={(rebound) => { take(line, rebound); focus(); }} leave={() => { leave(); say('Left as it was'); focus(); }} />}
    </li>
  );
}

function Taken({ conflict: { line, by, exchanged }, take, leave }: { conflict: Conflict; take: (rebound: Rebound) => void; leave: () => void }) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  return (
    <div class="taken" role="group" aria-label="That key is taken">
      <p><strong>{namedKeys(by)}</strong> is for <strong>{by.does}</strong>.{exchanged === null && ` It cannot have ${namedKeys(line)} in return.`}</p>
      {exchanged !== null && <button ref={first} class="button quiet" type="button" onClick={() => take({ what: 'put', changes: exchanged })}>Exchange</button>}
      <button ref={exchanged === null ? first : null} class="button quiet" type="button" onClick={leave}>Leave it</button>
    </div>
  );
}
