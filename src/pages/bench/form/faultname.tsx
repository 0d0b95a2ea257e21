/** The fault that an event ends, chosen among those of the file. */
import { isWritten } from '../words.js';
import { idOf, problemsAt, valueAt } from './at.js';
import { described, meaning, Under, type FieldProps } from './fields.js';
import { labelOf } from './labels.js';

export function FaultName({ draft, path, of }: FieldProps) {
  const value = valueAt(draft.json.value, path);
  const chosen = typeof value === 'string' ? value : '';
  const faults = valueAt(draft.json.value, ['faults']);
  const names = Array.isArray(faults) ? faults.flatMap((one) => (isWritten(one) && typeof one['name'] === 'string' ? [one['name']] : [])) : [];
  const wrong = problemsAt(draft, path).length > 0;
  const label = labelOf(String(path.at(-1)));
  return (
    <div class={wrong ? 'field wrong' : 'field'} title={meaning({ of })}>
      <span class="field-name" aria-hidden="true">{label}</span>
      <select id={idOf(path)} aria-label={label} value={chosen} aria-describedby={described(path, wrong)} onChange={({ currentTarget }) => draft.put(path, currentTarget.value)}>
        {[...new Set([chosen, ...names])].map((name) => <option key={name} value={name}>{name === '' ? 'none yet' : name}</option>)}
      </select>
      <Under draft={draft} path={path} of={of} />
    </div>
  );
}
