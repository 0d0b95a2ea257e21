/** The document as a form. Fields come from the schema's own words; where they stand is laid out by hand. */
import type { ObjectShape } from '../../../../sim/files/index.js';
import type { BenchProps } from '../bench.js';
import type { Draft } from '../draft.js';
import { KINDS } from '../kinds.js';
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
  return (
    <form aria-label="Form" onSubmit={(event) => event.preventDefault()}>
      {json === null && first !== undefined && (
        <p class="note form-waits" role="status">The form waits: the text cannot be read at line {first.line}, column {first.column}. It has {first.found}, and needs {first.allowed}.</p>
      )}
      <fieldset class="form-all" disabled={json === null}>
        <legend class="unseen">{KINDS[kind].noun}</legend>
        {kind === 'scenario' ? <ScenarioForm draft={draft} kit={kit} shape={shape} /> : <Auto draft={draft} path={[]} shape={shape} but={['$schema', 'format', 'order']} />}
      </fieldset>
    </form>
  );
}
