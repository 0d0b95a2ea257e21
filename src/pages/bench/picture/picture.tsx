/** The scenario at a glance: what comes along the time of the run and along the travel of the flaps. Marks are moved by hand. */
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { BenchProps } from '../bench.js';
import { removeThing } from '../form/add.js';
import { chosen } from '../form/chosen.js';
import { airframeIn } from '../form/scenario.js';
import { by } from '../looked.js';
import { actedIn } from '../preview/acted.js';
import { marksIn, timeOf, travelOf, type Mark } from './marks.js';
import { MarkButton } from './mark.js';
import { Track, type Settings } from './track.js';

export function Picture({ draft, kit }: BenchProps) {
  const place = useRef<HTMLElement>(null);
  const width = useSignal(0);
  useEffect(() => {
    const host = place.current;
    if (host === null) return undefined;
    const watch = new ResizeObserver(([entry]) => { width.value = Math.floor(entry?.contentRect.width ?? 0); });
    watch.observe(host);
    return () => watch.disconnect();
  }, []);
  const marks = useComputed(() => marksIn(draft.json.value, actedIn(draft.text.value)));
  const json = draft.json.value;
  const waits = draft.read.value.json === null;
  const settings: Settings = airframeIn(json, kit)?.settings ?? [];
  const elsewhere = marks.value.filter(({ on }) => on === null);
  const shared = { draft, marks: marks.value, width: width.value, waits };
  return (
    <section ref={place} class="picture" aria-label="Picture of the scenario">
      {width.value > 0 && (
        <>
          <Track {...shared} ruler="time" range={timeOf(json)} settings={[]} />
          <Track {...shared} ruler="travel" range={travelOf(json)} settings={settings} />
        </>
      )}
      <Looked {...shared} />
      {elsewhere.length > 0 && <Elsewhere {...shared} marks={elsewhere} />}
    </section>
  );
}

/** What waits for something that no ruler measures, and has not acted in the run that was previewed. */
const Elsewhere = ({ draft, marks }: { readonly draft: BenchProps['draft']; readonly marks: readonly Mark[] }) => (
  <div class="elsewhere">
    <span class="ruler-name">On a condition</span>
    <ul>{marks.map((mark) => <li key={`${mark.list} ${mark.index}`}><MarkButton draft={draft} mark={mark} /></li>)}</ul>
  </div>
);

/** The one that is looked at, in a sentence, with the ways to change it that need no drawing. */
function Looked({ draft, marks }: { readonly draft: BenchProps['draft']; readonly marks: readonly Mark[] }) {
  const at = chosen.value;
  const mark = at === null ? undefined : marks.find(({ list, index }) => list === at.list && index === at.index);
  if (mark === undefined) return null;
  const edit = (): void => {
    by.value = 'form';
    // The form may be only about to be seen.
    requestAnimationFrame(() => document.querySelector<HTMLElement>('.thing.open .thing-head')?.focus());
  };
  return (
    <div class="looked">
      <p><strong>{mark.name}</strong> {mark.words}</p>
      <button class="plain" type="button" onClick={edit}>Edit<span class="unseen"> {mark.name} in the form</span></button>
      <button class="plain" type="button" onClick={() => removeThing(draft, mark.list, mark.index)}>Take away<span class="unseen"> {mark.name}</span></button>
    </div>
  );
}
