/** What is set beforehand: each parameter of the scenario with its range. A change is one of the file, so preview, flight and link have it. */
import { parametersOf } from '../../../text/index.js';
import { valueAt, valuesCount, type Parameter } from '../../../../sim/files/index.js';
import '../../look/parameters.css';
import type { Draft } from '../draft.js';

export function Parameters({ draft }: { draft: Draft }) {
  const json = draft.json.value;
  const all = parametersOf(json);
  // By name in the list as it is written: one that is not whole yet has no slider, and still has its place.
  const written = (json as { readonly parameters?: readonly { readonly name?: unknown }[] }).parameters ?? [];
  if (draft.kind.value !== 'scenario' || all.length === 0) return null;
  return (
    <section class="parameters" aria-labelledby="parameters-title">
      <h2 id="parameters-title" class="ruled">Set beforehand</h2>
      {all.map((one) => <One key={one.name} draft={draft} one={one} index={written.findIndex((other) => other.name === one.name)} />)}
    </section>
  );
}

function One({ draft, one, index }: { draft: Draft; one: Parameter; index: number }) {
  const { name, default: value, min, max, step = 0.01, unit, meaning, drawn = false } = one;
  const id = `parameter-${name}`;
  const put = (next: number): void => draft.put(['parameters', index, 'default'], next, `parameter ${name}`);
  const last = valuesCount(one) - 1;
  // The slider counts steps, so that what it gives is a value that can be drawn as well.
  const at = Math.min(last, Math.max(0, Math.round((value - min) / step)));
  const said = `${value}${unit === undefined ? '' : ` ${unit}`}`;
  return (
    <div class="parameter">
      <label for={id}><strong>{name}</strong>{meaning !== undefined && <span class="small"> {meaning}</span>}</label>
      <div class="parameter-set">
        <input id={id} type="range" min={0} max={last} step={1} value={at} disabled={drawn} aria-valuetext={said} onInput={({ currentTarget }) => put(valueAt(one, Number(currentTarget.value)))} onBlur={() => draft.part()} />
        <output for={id}>{drawn ? 'drawn' : said}</output>
      </div>
      <p class="parameter-ends small"><span>{min}</span><label class="check"><input type="checkbox" checked={drawn} onChange={({ currentTarget }) => draft.put(['parameters', index, 'drawn'], currentTarget.checked ? true : undefined)} />Drawn by the seed</label><span>{max}</span></p>
    </div>
  );
}
