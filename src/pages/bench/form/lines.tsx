/** A list of short texts, one on each line. */
import { useSignal } from '@preact/signals';
import { problemsIn, idOf, valueAt } from './at.js';
import { described, meaning, showWhole, stepName, type FieldProps } from './fields.js';
import { labelOf } from './labels.js';
import { wrongSentence } from '../wrong.js';

export function LinesField({ draft, path, of, label = labelOf(String(path.at(-1))) }: FieldProps) {
  /** As typed: an empty last line is none yet. */
  const typed = useSignal<string | null>(null);
  const value = valueAt(draft.json.value, path);
  const lines = Array.isArray(value) ? value.map((one) => (typeof one === 'string' ? one : JSON.stringify(one))) : [];
  const problems = problemsIn(draft, path);
  const write = (text: string): void => {
    typed.value = text;
    const next = text.split('\n').map((line) => line.trim()).filter((line) => line !== '');
    draft.put(path, next.length === 0 && !of.required ? undefined : next, stepName(path));
  };
  return (
    <div class={`field field-long${problems.length > 0 ? ' wrong' : ''}`}>
      <label>
        <span class="field-name">{label}, one on each line</span>
        <textarea
          id={idOf(path)} rows={3} value={typed.value ?? lines.join('\n')} aria-describedby={described(path, problems.length > 0)} aria-invalid={problems.length > 0}
          onInput={({ currentTarget }) => write(currentTarget.value)} onFocus={showWhole} onBlur={() => { typed.value = null; draft.part(); }}
        />
      </label>
      <span hidden id={`${idOf(path)}-means`}>{meaning({ of })}</span>
      {problems.length > 0 && <span class="field-wrong" id={`${idOf(path)}-wrong`}>{problems.map(wrongSentence).join(' ')}</span>}
    </div>
  );
}
