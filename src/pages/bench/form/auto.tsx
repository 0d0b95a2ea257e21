/** Fields for every key of an object that has no part of its own in the form: whatever a schema gains, the form has. */
import type { ObjectShape, Shape } from '../../../../sim/files/index.js';
import type { Json, Path } from '../../../text/index.js';
import type { Draft } from '../draft.js';
import { isWritten } from '../words.js';
import { wrongSentence } from '../wrong.js';
import { idOf, problemsAt, problemsIn, valueAt } from './at.js';
import { beginOf } from './begin.js';
import { described, Field, Fields, stepName, Under, type FieldProps } from './fields.js';
import { labelOf } from './labels.js';
import { LinesField } from './lines.js';
import { SettingsField } from './settings.js';

interface Props {
  readonly draft: Draft;
  readonly path: Path;
  readonly shape: ObjectShape;
  /** Keys that stand elsewhere. */
  readonly but?: readonly string[];
  /** What holds of a key where nothing stands, if something other than the file tells it. */
  readonly otherwise?: Readonly<Record<string, number | string | boolean>>;
}

const PLAIN = ['number', 'word', 'flag', 'text'];

/** Keys of a file that stands in another: its place among the shipped and its version say nothing there. */
const OF_A_FILE = ['$schema', 'format', 'order', 'group', 'passes', 'fails'];

export function Auto({ draft, path, shape, but = [], otherwise = {} }: Props) {
  const keys = [...shape.keys].filter(([key]) => !but.includes(key));
  const plain = keys.filter(([, { shape: inner }]) => PLAIN.includes(inner.kind));
  return (
    <>
      <Fields>{plain.map(([key, of]) => <Field key={key} draft={draft} path={[...path, key]} of={of} otherwise={otherwise[key]} />)}</Fields>
      {keys.map(([key, of]) => <Inner key={key} draft={draft} path={[...path, key]} of={of} />)}
    </>
  );
}

/** An object, a list of objects, or what is written as text alone. */
function Inner(props: FieldProps) {
  const { draft, path, of } = props;
  const value = valueAt(draft.json.value, path);
  const shape = objectIn(of.shape, value);
  const name = labelOf(String(path.at(-1)));
  if (PLAIN.includes(of.shape.kind)) return null;
  if (of.shape.kind === 'list') return <ListField {...props} />;
  if (of.shape.kind === 'either' && typeof value === 'string') return <NameField {...props} value={value} />;
  if (shape === null) return <p class="small">{name} is written in the text.</p>;
  if (!isWritten(value) && !of.required) return (
    <p class="auto-add"><button class="plain" type="button" onClick={() => draft.put(path, beginOf(shape))}>Add: {name.toLowerCase()}</button> <span class="small">{of.shape.description}</span></p>
  );
  return (
    <fieldset class="auto">
      <legend class="ruled">{name}</legend>
      <Auto draft={draft} path={path} shape={shape} but={shape.keys.has('format') ? OF_A_FILE : []} />
      {!of.required && <button class="plain" type="button" onClick={() => draft.put(path, undefined)}>Take away: {name.toLowerCase()}</button>}
    </fieldset>
  );
}

/** Rows of objects, lines of texts, figures with commas between; any other list is written in the text. */
function ListField(props: FieldProps) {
  const { draft, path, of: { shape } } = props;
  if (shape.kind !== 'list') return null;
  if (objectIn(shape.item, undefined) !== null) return <Rows {...props} />;
  if (shape.item.kind === 'text') return <LinesField {...props} />;
  if (shape.item.kind === 'number') return <Fields><SettingsField {...props} airframe={null} /></Fields>;
  const value = valueAt(draft.json.value, path);
  const count = Array.isArray(value) ? value.length : 0;
  return <p class="small">{labelOf(String(path.at(-1)))}: {count === 0 ? 'none' : count}; written in the text.</p>;
}

/** Something shipped, by its name; in full it is written in the text. */
const NameField = ({ draft, path, of, value }: FieldProps & { readonly value: string }) => (
  <div class="field field-long">
    <label>
      <span class="field-name">{labelOf(String(path.at(-1)))}, by its name</span>
      <input type="text" id={idOf(path)} value={value} autocomplete="off" spellcheck={false} aria-describedby={described(path, problemsAt(draft, path).length > 0)} onInput={({ currentTarget }) => draft.put(path, currentTarget.value, stepName(path))} onBlur={() => draft.part()} />
    </label>
    <Under draft={draft} path={path} of={of} />
  </div>
);

/** The object that a shape may be; of a name or an object the object, where no name stands. */
function objectIn(shape: Shape, value: Json | undefined): ObjectShape | null {
  if (shape.kind === 'object') return shape;
  if (shape.kind === 'either' && typeof value !== 'string') return shape.options.find((option): option is ObjectShape => option.kind === 'object') ?? null;
  return null;
}

function Rows({ draft, path, of: { shape } }: FieldProps) {
  if (shape.kind !== 'list') return null;
  const item = objectIn(shape.item, undefined);
  const value = valueAt(draft.json.value, path);
  const rows = Array.isArray(value) ? value : [];
  if (item === null) return null;
  const most = shape.max ?? Infinity;
  return (
    <fieldset class="auto">
      <legend class="ruled">{labelOf(String(path.at(-1)))}</legend>
      {rows.map((_, index) => (
        <div key={index} class="auto-row">
          <Auto draft={draft} path={[...path, index]} shape={item} />
          <button class="plain" type="button" disabled={rows.length <= shape.min} aria-label={`Take away row ${index + 1}`} onClick={() => draft.put([...path, index], undefined)}>Take away</button>
        </div>
      ))}
      <button class="plain" type="button" disabled={rows.length >= most} onClick={() => draft.put([...path, rows.length], rowFor(String(path.at(-1)), rows, item))}>Another row</button>
      {problemsIn(draft, path).filter((problem) => problem.path === path.join('.')).map((problem) => <p key={problem.allowed} class="field-wrong">{wrongSentence(problem)}</p>)}
    </fieldset>
  );
}

/** A further row: like the last one, but a parameter needs a name of its own. */
function rowFor(key: string, rows: readonly Json[], item: ObjectShape): Json {
  if (key === 'parameters') return { name: `value${rows.length + 1}`, default: 8, min: 4, max: 12 };
  return rows.at(-1) ?? beginOf(item);
}
