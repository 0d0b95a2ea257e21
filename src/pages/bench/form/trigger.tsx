/** When a fault or an event acts: one condition or a group of them, with the whole of it as a sentence above. */
import type { ObjectShape } from '../../../../sim/files/index.js';
import type { Json, Path } from '../../../text/index.js';
import type { Draft } from '../draft.js';
import { isWritten, triggerWords, word, type Written } from '../words.js';
import { wrongSentence } from '../wrong.js';
import { problemsAt, valueAt } from './at.js';
import { kindIn, namesIn, triggerOf, TRIGGERS, type TriggerKind } from './begin.js';
import { NumberField, Segments } from './fields.js';

interface Props {
  readonly draft: Draft;
  readonly path: Path;
  /** Shape of a trigger. */
  readonly shape: ObjectShape;
  /** Name of the thing whose trigger this is: it cannot wait for itself. */
  readonly of: string;
}

export function TriggerFields(props: Props) {
  const { draft, path } = props;
  return (
    <div class="trigger">
      <p class="trigger-words">Acts {triggerWords(valueAt(draft.json.value, path))}</p>
      <Condition {...props} remove={null} />
      {problemsAt(draft, path).map((problem) => <p key={problem.allowed} class="field-wrong">{wrongSentence(problem)}</p>)}
    </div>
  );
}

const EDGES = {
  flapDeg: [['rising', 'extending'], ['falling', 'retracting'], ['either', 'either way']],
  speedKt: [['rising', 'rising'], ['falling', 'falling'], ['either', 'either way']],
} as const;

/** Deepest group that the form makes; a text may hold deeper ones. */
const DEEPEST_GROUP = 3;

function Condition(props: Props & { readonly remove: (() => void) | null }) {
  const { draft, path, of, remove } = props;
  const found = valueAt(draft.json.value, path);
  const when: Written = isWritten(found) ? found : {};
  const kind = kindIn(when);
  const group = kind === 'all' || kind === 'any' ? kind : null;
  const depth = path.filter((part) => part === 'all' || part === 'any').length;
  const others = namesIn(draft.json.value).filter((name) => name !== of);
  const kinds = (Object.keys(TRIGGERS) as TriggerKind[]).filter((one) => (one !== 'after' || others.length > 0 || kind === 'after') && ((one !== 'all' && one !== 'any') || depth < DEEPEST_GROUP || kind === one));
  const become = (to: TriggerKind): void => draft.put(path, triggerOf(to, when, draft.json.value, others[0] ?? ''));
  return (
    <div class={group === null ? 'condition' : 'condition condition-group'}>
      <div class="field">
        <select aria-label="Acts" value={kind ?? ''} onChange={({ currentTarget: { value } }) => become(value as TriggerKind)}>
          {kind === null && <option value="">choose</option>}
          {kinds.map((one) => <option key={one} value={one}>{TRIGGERS[one]}</option>)}
        </select>
      </div>
      {group === null ? <Leaf {...props} when={when} kind={kind} others={others} /> : <Group {...props} when={when} group={group} />}
      {remove !== null && <button class="plain" type="button" aria-label="Take away this condition" onClick={remove}>Take away</button>}
      {group === null && depth === 0 && kind !== null && (
        <span class="condition-more">
          {(['all', 'any'] as const).map((one) => (
            <button key={one} class="plain" type="button" onClick={() => draft.put(path, { [one]: [when as { [key: string]: Json }, triggerOf(kind === 'speedKt' ? 'flapDeg' : 'speedKt', {}, draft.json.value, '')] })}>{one === 'all' ? 'and …' : 'or …'}</button>
          ))}
        </span>
      )}
    </div>
  );
}

function Leaf({ draft, path, shape, when, kind, others }: Props & { readonly when: Written; readonly kind: TriggerKind | null; readonly others: readonly string[] }) {
  const number = (key: string, label: string) => {
    const of = shape.keys.get(key);
    return of !== undefined && <NumberField key={key} draft={draft} path={[...path, key]} of={{ ...of, required: key === kind }} label={label} />;
  };
  switch (kind) {
    case null: case 'all': case 'any': return null;
    case 'flapDeg': case 'speedKt': case 'altitudeFt': return (
      <>
        {number(kind, { flapDeg: 'Position', speedKt: 'Speed', altitudeFt: 'Height' }[kind])}
        <div class="field" role="radiogroup" aria-label="Which way">
          <span class="field-name" aria-hidden="true">Which way</span>
          <Segments name={`${path.join('-')}-edge`} choices={EDGES[kind === 'flapDeg' ? 'flapDeg' : 'speedKt']} chosen={when['edge'] ?? 'either'} choose={(to) => draft.put([...path, 'edge'], to)} />
        </div>
      </>
    );
    case 'after': return (
      <>
        <div class="field">
          <span class="field-name" aria-hidden="true">Behind</span>
          <select aria-label="Behind" value={word(when['after'])} onChange={({ currentTarget: { value } }) => draft.put([...path, 'after'], value)}>
            {[...new Set([...others, word(when['after'])])].map((name) => <option key={name} value={name}>{name}</option>)}
          </select>
        </div>
        {number('delayS', 'Waits')}
      </>
    );
    case 'hazardPerS': return <>{number('hazardPerS', 'Chance')}{number('hazardFromS', 'From')}{number('hazardForS', 'For')}</>;
    case 'atS': return number('atS', 'Time');
    case 'heldS': return number('heldS', 'Held');
  }
}

function Group({ draft, path, shape, of, when, group }: Props & { readonly when: Written; readonly group: 'all' | 'any' }) {
  const list = when[group];
  const conditions = Array.isArray(list) ? list : [];
  /** A group of one is that one. */
  const drop = (index: number): void => {
    const rest = conditions.filter((_, at) => at !== index);
    draft.put(path, rest.length === 1 ? (rest[0] as Json) : { [group]: rest });
  };
  return (
    <ul class="conditions">
      {conditions.map((_, index) => (
        <li key={index}><Condition draft={draft} path={[...path, group, index]} shape={shape} of={of} remove={conditions.length < 2 ? null : () => drop(index)} /></li>
      ))}
      <li><button class="plain" type="button" disabled={conditions.length >= 8} onClick={() => draft.put([...path, group, conditions.length], triggerOf('atS', {}, draft.json.value, ''))}>{group === 'all' ? 'and …' : 'or …'}</button></li>
    </ul>
  );
}
