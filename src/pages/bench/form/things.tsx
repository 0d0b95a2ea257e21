/** The list of faults, or of events: each a sentence, the open one with its fields; added, copied, moved and taken away. */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { ChoiceShape, ObjectShape } from '../../../../sim/files/index.js';
import type { Json } from '../../../text/index.js';
import { Sign } from '../picture/sign.js';
import { isWritten, timesWords, triggerWords, word, type Written } from '../words.js';
import { addThing, copyThing, LISTS, moveThing, removeThing, type ListName } from './add.js';
import { Answers } from './answers.js';
import { problemsIn, valueAt } from './at.js';
import { ofKind } from './begin.js';
import { Field, Fields } from './fields.js';
import type { FormProps } from './form.js';
import { chosen } from './chosen.js';
import { FaultName } from './faultname.js';
import { TriggerFields } from './trigger.js';

interface Props extends FormProps {
  readonly list: ListName;
  readonly shape: ChoiceShape;
}

export function Things({ draft, list, shape }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const told = useSignal('');
  const found = valueAt(draft.json.value, [list]);
  const things: readonly Json[] = Array.isArray(found) ? found : [];
  /** The focus follows what was moved, copied or left. */
  const edited = (at: number, words?: string): void => {
    if (words !== undefined) told.value = words;
    queueMicrotask(() => requestAnimationFrame(() => place.current?.querySelectorAll<HTMLElement>('.thing-head')[at]?.focus()));
  };
  const add = (kind: string): void => {
    const added = addThing(draft, list, shape, kind);
    if (added !== null) edited(things.length, `Added: ${added}.`);
  };
  return (
    <div ref={place} class="things">
      <ol>
        {things.map((one, index) => <Item key={index} draft={draft} list={list} shape={shape} index={index} count={things.length} thing={isWritten(one) ? one : {}} edited={edited} />)}
      </ol>
      <Adding list={list} shape={shape} add={add} />
      <p class="unseen" role="status">{told.value}</p>
    </div>
  );
}

interface ItemProps extends OneProps {
  readonly count: number;
  /** Something was done to the list: which one has the focus now, and what it came to. */
  readonly edited: (at: number, words?: string) => void;
}

function Item({ draft, list, shape, index, count, thing, edited }: ItemProps) {
  const { by, noun, words } = LISTS[list];
  const isOpen = chosen.value?.list === list && chosen.value.index === index;
  const name = typeof thing['name'] === 'string' ? thing['name'] : noun;
  const wrong = problemsIn(draft, [list, index]).length;
  const move = (to: number): void => {
    moveThing(draft, list, index, to);
    edited(to, `Now ${to + 1} of ${count}.`);
  };
  const copy = (): void => {
    copyThing(draft, list, index, name);
    edited(index + 1);
  };
  const remove = (): void => {
    removeThing(draft, list, index);
    edited(Math.min(index, count - 2), `Taken away: the ${noun}. Undo brings it back.`);
  };
  return (
    <li class={isOpen ? 'thing open' : 'thing'}>
      <button class="thing-head" type="button" aria-expanded={isOpen} onClick={() => { chosen.value = isOpen ? null : { list, index }; }}>
        <Sign list={list} kind={word(thing[by])} />
        <span class="thing-words">{words(thing)} <span>{triggerWords(thing['when'])}{timesWords(thing)}</span></span>
        {wrong > 0 && <span class="thing-wrong">{wrong === 1 ? 'one problem' : `${wrong} problems`}</span>}
      </button>
      {isOpen && (
        <div class="thing-fields">
          <One draft={draft} list={list} index={index} shape={shape} thing={thing} />
          <div class="thing-tools">
            <button class="plain" type="button" disabled={index === 0} onClick={() => move(index - 1)}>Move up</button>
            <button class="plain" type="button" disabled={index === count - 1} onClick={() => move(index + 1)}>Move down</button>
            <button class="plain" type="button" onClick={copy}>Duplicate</button>
            <button class="plain" type="button" onClick={remove}>Take away</button>
          </div>
        </div>
      )}
    </li>
  );
}

/** Kinds as choices, each with what it does. */
const kindsOf = (list: ListName, { options }: ChoiceShape) =>
  [...options].map(([kind, { keys }]) => <option key={kind} value={kind}>{kind} – {(keys.get(LISTS[list].by)?.shape.description ?? '').replace(/\.$/, '')}</option>);

function Adding({ list, shape, add }: { list: ListName; shape: ChoiceShape; add: (kind: string) => void }) {
  const words = LISTS[list].noun === 'event' ? 'Add an event' : 'Add a fault';
  return (
    <div class="thing-add">
      <select aria-label={words} value="" onChange={({ currentTarget }) => { const kind = currentTarget.value; currentTarget.value = ''; add(kind); }}>
        <option value="">{words} …</option>
        {kindsOf(list, shape)}
      </select>
    </div>
  );
}

/** Keys of how often it acts. */
const REPEATS = ['times', 'everyS'];

interface OneProps {
  readonly draft: Props['draft'];
  readonly list: ListName;
  readonly index: number;
  readonly shape: ChoiceShape;
  readonly thing: Written;
}

/** The fields of one: its kind, what only this kind has, its name, and when it acts. */
function One({ draft, list, index, shape, thing }: OneProps) {
  const { by } = LISTS[list];
  const path = [list, index];
  const kind = word(thing[by]);
  const option = shape.options.get(kind);
  const trigger = option?.keys.get('when')?.shape;
  const change = (to: string): void => {
    const next = shape.options.get(to);
    if (next !== undefined) draft.put(path, ofKind(next, by, to, thing, draft.json.value));
  };
  const fields = [...(option?.keys ?? [])].filter(([key]) => ![by, 'name', 'when', 'answers', 'right', ...REPEATS].includes(key) && !unfit(thing, key));
  return (
    <>
      <Fields>
        <div class="field field-kind">
          <span class="field-name" aria-hidden="true">{by === 'kind' ? 'What goes wrong' : 'What happens'}</span>
          <select aria-label={by === 'kind' ? 'What goes wrong' : 'What happens'} value={kind} onChange={({ currentTarget: { value } }) => change(value)}>
            {!shape.options.has(kind) && <option value={kind}>{kind}</option>}
            {kindsOf(list, shape)}
          </select>
        </div>
        {fields.map(([key, of]) => (key === 'fault'
          ? <FaultName key={key} draft={draft} path={[...path, key]} of={of} />
          : <Field key={`${kind} ${key}`} draft={draft} path={[...path, key]} of={of} />))}
        {option !== undefined && <Field draft={draft} path={[...path, 'name']} of={option.keys.get('name') as Parameters<typeof Field>[0]['of']} label="Name in the file" />}
      </Fields>
      {option?.keys.has('answers') === true && <Answers draft={draft} path={path} thing={thing} />}
      {trigger?.kind === 'object' && <TriggerFields draft={draft} path={[...path, 'when']} shape={trigger satisfies ObjectShape} of={word(thing['name'])} />}
      {option !== undefined && (
        <details open={thing['times'] !== undefined || thing['everyS'] !== undefined}>
          <summary>How often it acts</summary>
          <Fields>{[...option.keys].filter(([key]) => REPEATS.includes(key)).map(([key, of]) => <Field key={key} draft={draft} path={[...path, key]} of={of} />)}</Fields>
        </details>
      )}
    </>
  );
}

/** Of a lying pointer: figures of another way of lying. */
const unfit = ({ kind, mode }: Written, key: string): boolean => kind === 'pointer' && ((key === 'biasDeg' && mode !== 'bias') || (key === 'driftDegPerS' && mode !== 'drift'));
