/** The document as a form. Fields come from the schema's own words; where they stand is laid out by hand. */
import { useSignal } from '@preact/signals';
import type { ObjectShape } from '../../../../sim/files/index.js';
import { TRAINEE_NUMBERS, TRAINEES } from '../../../../sim/index.js';
import type { Json } from '../../../text/index.js';
import type { BenchProps } from '../bench.js';
import type { Draft } from '../draft.js';
import { KINDS } from '../kinds.js';
import { valueAt } from './at.js';
import { Auto } from './auto.js';
import { ScenarioForm } from './scenario.js';

export interface FormProps {
  readonly draft: Draft;
}

export function Form({ draft, kit }: BenchProps) {
  const { json, problems } = draft.read.value;
  const kind = draft.kind.value;
  const shape = KINDS[kind].shape as ObjectShape;
  const [first] = problems;
  const told = useSignal<Told | null>(null);
  const tell = ({ target }: Event): void => { told.value = toldOf(target); };
  return (
    <form aria-label="Form" onSubmit={(event) => event.preventDefault()} onFocusIn={tell} onFocusOut={() => { told.value = null; }}>
      {json === null && first !== undefined && (
        <p class="note form-waits" role="status">The form waits: the text cannot be read at line {first.line}, column {first.column}. It has {first.found}, and needs {first.allowed}.</p>
      )}
      <fieldset class="form-all" disabled={json === null}>
        <legend class="unseen">{KINDS[kind].noun}</legend>
        {kind === 'scenario' ? <ScenarioForm draft={draft} kit={kit} shape={shape} /> : <Auto draft={draft} path={[]} shape={shape} but={['$schema', 'format', 'order']} otherwise={kind === 'trainee' ? numbersOf(json) : {}} />}
      </fieldset>
      {told.value !== null && <p class="form-told" aria-hidden="true">{told.value.name !== '' && <strong>{told.value.name}</strong>} {told.value.means}</p>}
    </form>
  );
}

/** A field that has the focus, for whoever sees the page: who hears it has the same from the field. */
interface Told {
  readonly name: string;
  readonly means: string;
}

function toldOf(target: EventTarget | null): Told | null {
  const field = target instanceof Element ? target.closest('.field') : null;
  const means = field?.querySelector('[id$="-means"]')?.textContent ?? '';
  if (field === null || means === '') return null;
  const name = field.querySelector('.field-name')?.firstChild?.textContent ?? field.querySelector('.check')?.textContent ?? '';
  // A meaning that begins with the name needs it no second time.
  return { name: means.toLowerCase().startsWith(name.trim().toLowerCase()) ? '' : name.trim(), means };
}

/** The numbers of the scripted trainee that the file begins from. */
function numbersOf(json: Json | null): Readonly<Record<string, number | string | boolean>> {
  const name = TRAINEES.find((one) => one === valueAt(json ?? {}, ['trainee']));
  return name === undefined ? {} : { ...TRAINEE_NUMBERS[name] };
}
