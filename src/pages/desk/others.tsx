/** The outside, as a desk plays it: one choice of what happens, and the fields of that alone. */
import { useSignal } from '@preact/signals';
import type { DeskAct } from '../../../sim/files/index.js';
import { FRESH, hasText, isSpoken, isTimed, KINDS, longest, outsideAct, usualWords, type Fields, type From, type Kind } from './outside.js';

const FROMS: readonly (readonly [From, string])[] = [['controller', 'controller'], ['otherPilot', 'other pilot'], ['cabin', 'cabin'], ['nobody', 'nobody named']];
const TEXTS: Partial<Record<Kind, readonly [label: string, placeholder: string]>> = {
  say: ['What is said', 'what is said'], callout: ['The question', 'the question'], caution: ['Words of the caution', 'words of the caution'],
};
const PLACES = [0, 1, 2] as const;

interface FigureProps {
  readonly name: string;
  readonly unit: string;
  readonly value: string;
  readonly bounds: readonly [low: number, high: number, step: number];
  readonly put: (value: string) => void;
}

const Figure = ({ name, unit, value, bounds: [min, max, step], put }: FigureProps) => (
  <label class="desk-number"><input type="number" aria-label={name} min={min} max={max} step={step} value={value} onInput={({ currentTarget }) => put(currentTarget.value)} />{unit}</label>
);

export function Others({ act, here }: { act: (act: DeskAct) => void; here: boolean }) {
  const kind = useSignal<Kind>('say');
  const fields = useSignal<Fields>(FRESH);
  const put = (part: Partial<Fields>): void => { fields.value = { ...fields.value, ...part }; };
  const is = kind.value;
  const { from, text, answers, right, withinS, deg, ft, kt } = fields.value;
  const made = outsideAct(is, fields.value);
  const missing = 'missing' in made ? made.missing : null;
  const send = (event: Event): void => {
    event.preventDefault();
    if (!here || 'missing' in made) return;
    act(made);
    put({ text: '', answers: FRESH.answers });
  };
  const [label, placeholder] = TEXTS[is] ?? ['In other words', usualWords(is, fields.value) || 'in other words'];
  return (
    <section aria-labelledby="desk-others">
      <h2 id="desk-others" class="ruled">Other pilot and controller</h2>
      <form class="desk-form desk-outside" onSubmit={send}>
        <div class="desk-row">
          {isSpoken(is) && <select aria-label="Who says it" value={from} onChange={({ currentTarget }) => put({ from: currentTarget.value as From })}>{FROMS.map(([one, words]) => <option key={one} value={one}>{words}</option>)}</select>}
          <select id="desk-outside" aria-label="What happens" aria-keyshortcuts="o" value={is} onChange={({ currentTarget }) => { kind.value = currentTarget.value as Kind; }}>
            {KINDS.map(([group, kinds]) => <optgroup key={group} label={group}>{kinds.map(([one, words]) => <option key={one} value={one}>{words}</option>)}</optgroup>)}
          </select>
          {is === 'clearHeading' && <Figure name="Heading, degrees" unit="°" value={deg} bounds={[1, 360, 1]} put={(value) => put({ deg: value })} />}
          {is === 'clearAltitude' && <Figure name="Height to clear to, feet" unit="ft" value={ft} bounds={[-2000, 26000, 100]} put={(value) => put({ ft: value })} />}
          {is === 'descend' && <Figure name="Height to descend to, feet" unit="ft" value={ft} bounds={[-2000, 26000, 100]} put={(value) => put({ ft: value })} />}
          {is === 'selectSpeed' && <Figure name="Speed to select, knots" unit="kt" value={kt} bounds={[60, 400, 1]} put={(value) => put({ kt: value })} />}
        </div>
        {hasText(is) && <div class="desk-row"><input type="text" aria-label={label} maxLength={longest(is)} placeholder={placeholder} value={text} onInput={({ currentTarget }) => put({ text: currentTarget.value })} /></div>}
        {is === 'callout' && (
          <fieldset class="desk-answers">
            <legend class="unseen">Answers; mark the right one</legend>
            {PLACES.map((place) => (
              <div key={place} class="desk-row">
                <label class="check"><input type="radio" name="desk-right" checked={right === place} onChange={() => put({ right: place })} /><span class="unseen">Answer {place + 1} is </span>right</label>
                <input type="text" aria-label={`Answer ${place + 1}`} maxLength={80} placeholder={place === 2 ? 'a third, or none' : 'an answer'} value={answers[place]} onInput={({ currentTarget }) => put({ answers: answers.with(place, currentTarget.value) as unknown as Fields['answers'] })} />
              </div>
            ))}
          </fieldset>
        )}
        <div class="desk-row">
          {isTimed(is) && <Figure name="Time allowed, seconds" unit="s allowed" value={withinS} bounds={[1, 120, 1]} put={(value) => put({ withinS: value })} />}
          <button class="button" type="submit" disabled={!here || missing !== null}>{is === 'say' ? 'Say' : 'Send'}</button>
          {missing !== null && !hasText(is) && <p class="small" role="alert">{missing}</p>}
        </div>
        {missing !== null && hasText(is) && is !== 'say' && <p class="small" role="status">Still wanted: {missing.charAt(0).toLowerCase()}{missing.slice(1)}</p>}
      </form>
    </section>
  );
}
