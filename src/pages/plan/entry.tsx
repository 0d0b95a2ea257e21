/** One item of a plan: its question with a field, then, once it stands, what was entered, the verdict and the sum. */
import { useSignal } from '@preact/signals';
import { enteredOf, verdictOf, type PlanItem, type PlanItemId } from '../../../sim/index.js';
import type { Planned } from '../../../sim/files/index.js';
import { Sign } from '../debrief/procedure.js';
import { offWords, toleranceWords, typeset, valueWords, VERDICT_WORDS } from './words.js';
import { upper } from '../../view/words.js';

type Value = number | string | readonly string[] | null;

interface Props {
  readonly item: PlanItem;
  readonly planned: Planned;
  readonly settled: boolean;
  readonly enter: (id: PlanItemId, value: Value) => void;
  readonly check: (id: PlanItemId) => void;
  readonly show: (item: PlanItem) => void;
}

export function Entry({ item, planned, settled, enter, check, show }: Props) {
  const value = enteredOf(item.id, planned);
  if (settled) return <Settled item={item} planned={planned} />;
  const ask = value === null
    ? <button class="plain plan-do" type="button" onClick={() => show(item)}>Show me<span class="unseen"> {item.name}</span></button>
    : <button class="plain plan-do" type="button" onClick={() => check(item.id)}>Check<span class="unseen"> {item.name}</span></button>;
  if (item.kind === 'number') {
    return (
      <li class="plan-item">
        <label class="plan-name" for={`plan-${item.id}`}>{item.name}</label>
        <NumberField item={item} value={typeof value === 'number' ? value : null} enter={(to) => enter(item.id, to)} done={() => { if (value !== null) check(item.id); }} />
        {ask}
      </li>
    );
  }
  const ticked = Array.isArray(value) ? (value as readonly string[]) : [];
  return (
    <li class="plan-item">
      <fieldset class="plan-choice">
        <legend class="plan-name">{item.name}</legend>
        <div class="plan-answers">
          {item.kind === 'choice'
            ? item.choices.map(([one, words]) => (
              <label key={one} class="answer"><input type="radio" name={`plan-${item.id}`} checked={value === one} onChange={() => enter(item.id, one)} /><span>{words}</span></label>
            ))
            : item.choices.map((one) => (
              <label key={one} class="answer">
                <input type="checkbox" checked={ticked.includes(one)} onChange={({ currentTarget: { checked } }) => enter(item.id, item.choices.filter((each) => (each === one ? checked : ticked.includes(each))))} />
                <span>{one}</span>
              </label>
            ))}
        </div>
      </fieldset>
      {ask}
    </li>
  );
}

function NumberField({ item, value, enter, done }: { item: Extract<PlanItem, { kind: 'number' }>; value: number | null; enter: (to: number | null) => void; done: () => void }) {
  const typed = useSignal(value === null ? '' : String(value));
  return (
    <span class="plan-field">
      <input
        id={`plan-${item.id}`} type="text" inputMode="decimal" autocomplete="off" size={7} value={typed.value} aria-describedby={`plan-unit-${item.id}`}
        aria-invalid={typed.value.trim() !== '' && numberOf(typed.value) === null ? 'true' : undefined}
        onInput={({ currentTarget }) => {
          typed.value = currentTarget.value;
          enter(numberOf(currentTarget.value));
        }}
        onKeyDown={(event) => { if (event.key === 'Enter') done(); }}
      />
      <span id={`plan-unit-${item.id}`}>{item.unit}{typed.value.trim() !== '' && numberOf(typed.value) === null && <em> a number, please</em>}</span>
    </span>
  );
}

/** A figure as people type it: with a comma, a space in thousands; null for what is none, or below 0. */
export function numberOf(text: string): number | null {
  const plain = text.trim().replace(/(\d)\s(?=\d{3}(\D|$))/g, '$1').replace(',', '.');
  if (!/^\d{1,6}(\.\d{0,3})?$/.test(plain)) return null;
  return Number(plain);
}

function Settled({ item, planned }: { item: PlanItem; planned: Planned }) {
  const value = enteredOf(item.id, planned);
  const shown = planned.shown.includes(item.id);
  const verdict = shown ? null : verdictOf(item, planned);
  const off = shown ? '' : offWords(item, value);
  const right = valueWords(item, item.right);
  return (
    <li class="plan-item plan-settled">
      <span class="plan-name">{item.name}</span>
      <strong class="plan-value">{valueWords(item, value)}</strong>
      <span class="plan-verdict">
        {verdict !== null && <Sign ok={verdict === 'right' ? true : verdict === 'near' ? null : false} />}
        <span>{verdict === null ? 'shown' : VERDICT_WORDS[verdict]}{off !== '' && verdict !== 'right' && <>: {off}</>}</span>
      </span>
      <p class="plan-sum">
        {verdict !== null && verdict !== 'right' && item.kind !== 'many' && <strong>{right}. </strong>}
        {typeset(sentence(item.sum))}
        {item.kind === 'number' && !shown && <span class="plan-tolerance"> ({toleranceWords(item)})</span>}
      </p>
    </li>
  );
}

const sentence = (sum: string): string => `${upper(sum)}.`;
