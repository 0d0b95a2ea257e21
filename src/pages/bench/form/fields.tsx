/** Fields of the form, one for each kind of value, made from what the schema says of the key: unit, range, default, meaning. */
import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { allowedBy, type Key } from '../../../../sim/files/index.js';
import { parametersOf, type Path } from '../../../text/index.js';
import type { Draft } from '../draft.js';
import { figure, isWritten } from '../words.js';
import { wrongSentence } from '../wrong.js';
import { idOf, problemsAt, valueAt } from './at.js';
import { labelOf, numberOf, stepOf, stepped, wordLabel } from './labels.js';
import { upper } from '../../../view/words.js';

/** What a field is given: its place, and what may stand there. */
export interface FieldProps {
  readonly draft: Draft;
  readonly path: Path;
  readonly of: Key;
  /** In place of the key's own label. */
  readonly label?: string;
  /** Said beside the label: who reads it, say. */
  readonly aside?: string;
  /** What holds where nothing stands, if something other than the file tells it. */
  readonly otherwise?: number | string | boolean | undefined;
}

export const stepName = (path: Path): string => `field ${path.join('.')}`;

/** The field that suits the shape; null for what has a part of its own in the form or is written as text. */
export function Field(props: FieldProps) {
  switch (props.of.shape.kind) {
    case 'number': return <NumberField {...props} />;
    case 'word': return <WordField {...props} />;
    case 'flag': return <FlagField {...props} />;
    case 'text': return <TextField {...props} />;
    default: return null;
  }
}

/** Meaning, range and default in one line. */
export function meaning({ of: { shape, fallback } }: Pick<FieldProps, 'of'>): string {
  const otherwise = fallback === undefined ? '' : ` ${typeof fallback === 'object' ? 'As by default' : JSON.stringify(fallback)} if left out.`;
  const allowed = shape.kind === 'flag' ? '' : ` ${upper(allowedBy(shape))}.`;
  return `${shape.description ?? ''}${allowed}${otherwise}`.trim();
}

/** What stands under a field: its meaning for whoever hears the field (read with it, and not once more behind it), its problems for everyone. */
export function Under({ draft, path, of, own }: FieldProps & { readonly own?: string | null }) {
  const problems = [...(own == null ? [] : [own]), ...problemsAt(draft, path).map(wrongSentence)];
  return (
    <>
      <span hidden id={`${idOf(path)}-means`}>{meaning({ of })}</span>
      {problems.length > 0 && <span class="field-wrong" id={`${idOf(path)}-wrong`}>{problems.join(' ')}</span>}
    </>
  );
}

export const described = (path: Path, wrong: boolean): string => `${idOf(path)}-means${wrong ? ` ${idOf(path)}-wrong` : ''}`;

export function NumberField(props: FieldProps) {
  const { draft, path, of, label = labelOf(String(path.at(-1))), otherwise = of.fallback } = props;
  const typed = useSignal<string | null>(null);
  const { shape } = of;
  if (shape.kind !== 'number') return null;
  const value = valueAt(draft.json.value, path);
  const isNumber = typeof value === 'number';
  const isParameter = (text: string): boolean => parametersOf(draft.json.value).some(({ name }) => name === text.trim());
  const own = typed.value === null || typed.value.trim() === '' || isParameter(typed.value) ? null : numberOf(typed.value) === null ? `Is “${typed.value}”; needs a number, or a parameter by its name.` : null;
  const wrong = own !== null || problemsAt(draft, path).length > 0;
  const write = (text: string): void => {
    typed.value = text;
    const next = numberOf(text);
    if (next !== null) draft.put(path, next, stepName(path));
    else if (isParameter(text)) draft.put(path, { parameter: text.trim() }, stepName(path));
    else if (text.trim() === '' && !of.required) draft.put(path, undefined, stepName(path));
  };
  const step = (by: number): void => {
    if (isWritten(value)) return;
    const from = isNumber ? value : typeof otherwise === 'number' ? otherwise : shape.min > 0 ? shape.min : 0;
    typed.value = null;
    draft.put(path, stepped(from, by, shape), stepName(path));
  };
  const onKey = (event: KeyboardEvent): void => {
    const way = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
    if (way === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    step(way * stepOf(shape) * (event.shiftKey ? 10 : 1));
  };
  const shown = typed.value ?? (value === undefined ? '' : isNumber ? String(value) : isWritten(value) ? figure(value) : JSON.stringify(value));
  return (
    <div class={wrong ? 'field wrong' : 'field'} title={meaning({ of })}>
      <label>
        <span class="field-name">{label}</span>
        <span class="field-in"><input
          type="text" role="spinbutton" inputMode="decimal" id={idOf(path)} value={shown} placeholder={typeof otherwise === 'number' ? String(otherwise) : ''} autocomplete="off"
          aria-valuemin={shape.min} aria-valuemax={shape.max} {...(isNumber ? { 'aria-valuenow': value, 'aria-valuetext': `${value}${shape.unit === '1' ? '' : ` ${shape.unit}`}` } : {})}
          aria-describedby={described(path, wrong)} aria-invalid={wrong} aria-required={of.required}
          onInput={({ currentTarget }) => write(currentTarget.value)} onKeyDown={onKey} onBlur={() => { typed.value = null; draft.part(); }}
        /></span>
      </label>
      {shape.unit !== '1' && <span class="field-unit" aria-hidden="true">{shape.unit}</span>}
      <Under {...props} own={own} />
    </div>
  );
}

/** More than one column takes. */
const isLong = (names: readonly string[]): boolean => names.some((name) => name.length > 9) || names.join('').length > 13;

/** Few words stand beside each other; more are in a list. One that may be left out can be. */
function WordField(props: FieldProps) {
  const { draft, path, of, label = labelOf(String(path.at(-1))), otherwise } = props;
  const { shape } = of;
  if (shape.kind !== 'word') return null;
  const value = valueAt(draft.json.value, path);
  const wrong = problemsAt(draft, path).length > 0;
  const [chosen] = [value, of.fallback, ''].filter((one) => typeof one === 'string' || typeof one === 'number');
  const choices: readonly (readonly [value: string | number, name: string])[] = [
    ...(!of.required && of.fallback === undefined ? [['', otherwise === undefined ? 'not given' : `as it is: ${otherwise}`] as const] : []), ...shape.words.map((word) => [word, wordLabel(word)] as const),
  ];
  const choose = (to: string | number): void => draft.put(path, to === '' ? undefined : to);
  if (choices.length > 4) return (
    <div class={wrong ? 'field wrong' : 'field'} title={meaning({ of })}>
      <span class="field-name" aria-hidden="true">{label}</span>
      <select id={idOf(path)} aria-label={label} value={String(chosen)} aria-describedby={described(path, wrong)} onChange={({ currentTarget: { value: to } }) => choose(shape.words.find((word) => String(word) === to) ?? to)}>
        {choices.map(([word, name]) => <option key={word} value={String(word)}>{name}</option>)}
      </select>
      <Under {...props} />
    </div>
  );
  return (
    <div class={`field${wrong ? ' wrong' : ''}${isLong(choices.map(([, name]) => name)) ? ' field-wide' : ''}`} role="radiogroup" aria-label={label} aria-describedby={described(path, wrong)} title={meaning({ of })}>
      <span class="field-name" aria-hidden="true">{label}</span>
      <Segments name={idOf(path)} choices={choices} chosen={chosen} choose={choose} />
      <Under {...props} />
    </div>
  );
}

interface SegmentsProps<T extends string | number> {
  readonly name: string;
  readonly choices: readonly (readonly [value: T, name: string])[];
  readonly chosen: unknown;
  readonly choose: (to: T) => void;
}

export const Segments = <T extends string | number>({ name, choices, chosen, choose }: SegmentsProps<T>) => (
  <span class="segments">
    {choices.map(([word, text]) => (
      <label key={word}><input type="radio" name={name} checked={chosen === word} onChange={() => choose(word)} /><span>{text}</span></label>
    ))}
  </span>
);

function FlagField(props: FieldProps) {
  const { draft, path, of, label = labelOf(String(path.at(-1))), otherwise = of.fallback } = props;
  const value = valueAt(draft.json.value, path);
  const wrong = problemsAt(draft, path).length > 0;
  return (
    <span class={wrong ? 'field wrong' : 'field'} title={meaning({ of })}>
      <label class="check">
        <input type="checkbox" id={idOf(path)} checked={value === undefined ? otherwise === true : value === true} aria-describedby={described(path, wrong)} onChange={({ currentTarget: { checked } }) => draft.put(path, checked)} />
        {label}
      </label>
      <Under {...props} />
    </span>
  );
}

/** A browser brings the line of the caret into sight, not the field. */
export const showWhole = ({ currentTarget }: { readonly currentTarget: HTMLElement }): void => currentTarget.scrollIntoView({ block: 'nearest' });

/** Long texts have room for it. */
const LONG = 200;

function TextField(props: FieldProps) {
  const { draft, path, of, label = labelOf(String(path.at(-1))), aside } = props;
  const { shape } = of;
  if (shape.kind !== 'text') return null;
  const value = valueAt(draft.json.value, path);
  const wrong = problemsAt(draft, path).length > 0;
  const shared = {
    id: idOf(path), value: typeof value === 'string' ? value : value === undefined ? '' : JSON.stringify(value), 'aria-describedby': described(path, wrong), 'aria-invalid': wrong,
    onInput: ({ currentTarget: { value: text } }: { currentTarget: { value: string } }) => draft.put(path, text === '' && !of.required ? undefined : text, stepName(path)),
    onBlur: () => draft.part(),
  };
  return (
    <div class={`field field-long${wrong ? ' wrong' : ''}`}>
      <label>
        <span class="field-name">{label}{aside !== undefined && <> <em>{aside}</em></>}</span>
        {(shape.max ?? 0) > LONG ? <textarea rows={3} {...shared} onFocus={showWhole} /> : <input type="text" autocomplete="off" {...shared} />}
      </label>
      <Under {...props} />
    </div>
  );
}

/** Fields beside each other. */
export const Fields = ({ children }: { children: ComponentChildren }) => <div class="fields">{children}</div>;
