/** Settings to reach, in order, typed as one list; those of the airframe stand beside it to be pressed. */
import { useSignal } from '@preact/signals';
import type { Airframe } from '../../../../sim/files/index.js';
import { wrongSentence } from '../wrong.js';
import { problemsIn, valueAt, idOf } from './at.js';
import { described, meaning, stepName, type FieldProps } from './fields.js';
import { numberOf } from './labels.js';

export function SettingsField({ draft, path, of, airframe }: FieldProps & { readonly airframe: Airframe | null }) {
  const typed = useSignal<string | null>(null);
  const found = valueAt(draft.json.value, path);
  const list = Array.isArray(found) ? found : [];
  const problems = problemsIn(draft, path);
  const write = (text: string): void => {
    typed.value = text;
    const parts = text.split(/[\s,;]+/).filter((part) => part !== '').map(numberOf);
    if (parts.every((part) => part !== null)) draft.put(path, parts, stepName(path));
  };
  const own = typed.value !== null && typed.value.split(/[\s,;]+/).some((part) => part !== '' && numberOf(part) === null) ? 'Needs numbers with commas between.' : null;
  const wrong = problems.length > 0 || own !== null;
  return (
    <div class={wrong ? 'field field-settings wrong' : 'field field-settings'} title={meaning({ of })}>
      <label>
        <span class="field-name">Settings to reach, in order</span>
        <span class="field-in">
        <input
          type="text" id={idOf(path)} inputMode="decimal" autocomplete="off" value={typed.value ?? list.map(String).join(', ')} aria-describedby={described(path, wrong)} aria-invalid={wrong}
          onInput={({ currentTarget: { value } }) => write(value)} onBlur={() => { typed.value = null; draft.part(); }}
        />
        </span>
      </label>
      <span class="field-unit" aria-hidden="true">deg</span>
      {airframe !== null && (
        <span class="setting-names" role="group" aria-label="Add a setting">
          {airframe.settings.map(({ deg, name }) => <button key={deg} class="plain" type="button" aria-label={`Then ${name}`} disabled={list.at(-1) === deg} onClick={() => { typed.value = null; draft.put([...path, list.length], deg); }}>+ {name}</button>)}
        </span>
      )}
      <span hidden id={`${idOf(path)}-means`}>{meaning({ of })}</span>
      {wrong && <span class="field-wrong" id={`${idOf(path)}-wrong`}>{[own, ...problems.map(wrongSentence)].filter((one) => one !== null).join(' ')}</span>}
    </div>
  );
}
