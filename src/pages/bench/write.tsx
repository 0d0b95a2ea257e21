/** The document: above it its name and the way back, then form and text, and beside them what it comes to. */
import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { AirframePanel } from './airframes/panel.js';
import type { BenchProps } from './bench.js';
import { Coverage } from './coverage/coverage.js';
import { Form } from './form/form.js';
import { KINDS, type BenchKind } from './kinds.js';
import { Lesson } from './lesson/lesson.js';
import { Parameters } from './parameters/parameters.js';
import { Picture } from './picture/picture.js';
import { Preview } from './preview/preview.js';
import { by, place } from './looked.js';
import { Problems } from './problems.js';
import { SetPanel } from './sets/sets.js';
import { Share } from './shelf/share.js';
import { Text } from './text/text.js';
import { TraineePanel } from './trainees/trainees.js';

interface Panel {
  readonly name: string;
  readonly is: ComponentType<BenchProps>;
}

/** What stands beside a document of each kind, the first one to begin with. */
const PANELS: { readonly [K in BenchKind]: readonly Panel[] } = {
  scenario: [{ name: 'Preview', is: Preview }, { name: 'Lesson sheet', is: Lesson }, { name: 'Coverage', is: Coverage }],
  set: [{ name: 'Gates and figures', is: SetPanel }],
  trainee: [{ name: 'What it does', is: TraineePanel }],
  airframe: [{ name: 'What it comes to', is: AirframePanel }],
};

export interface WriteProps extends BenchProps {
  /** Leads to the list of files. */
  readonly list: () => void;
}

export function Write({ list, ...props }: WriteProps) {
  const { draft } = props;
  const beside = useSignal(0);
  const kind = draft.kind.value;
  const panels = PANELS[kind];
  const Beside = (panels[beside.value] ?? panels[0] as Panel).is;
  return (
    <>
      <header class="bench-bar">
        <button class="plain" type="button" onClick={list}>All files</button>
        <h1 class="unseen">Bench: {KINDS[kind].noun} {draft.name.value}</h1>
        <div class="bench-title">
          <input class="bench-name" type="text" aria-label="Name of the file" value={draft.name.value} maxLength={64} spellcheck={false} onInput={({ currentTarget: { value } }) => draft.rename(value)} onBlur={() => draft.part()} />
          <small>{KINDS[kind].noun}{draft.unsaved.value ? ', kept while you write, not on the shelf yet' : ''}</small>
        </div>
        <button class="plain" type="button" disabled={!draft.canUndo.value} onClick={draft.undo}>Undo</button>
        <button class="plain" type="button" disabled={!draft.canRedo.value} onClick={draft.redo}>Redo</button>
        <button class="plain" type="button" onClick={draft.discard}>Discard</button>
      </header>
      {draft.found.value && <p class="small" role="status">This was being written when the page went away; here it is as it was.</p>}
      <Share {...props} />
      {kind === 'scenario' && <Picture {...props} />}
      <Problems {...props} lead={({ line, column }) => { by.value = 'text'; place.value = { line, column }; }} />
      <div class="bench-columns">
        <section class="bench-written" data-by={by.value} aria-label="Written">
          <div class="bench-tabs" role="group" aria-label="Write by">
            {(['form', 'text'] as const).map((one) => <button key={one} class="plain" type="button" aria-pressed={by.value === one} onClick={() => { by.value = one; }}>{one === 'form' ? 'Form' : 'Text'}</button>)}
          </div>
          <div class="bench-form"><Form {...props} /></div>
          <div class="bench-text"><Text {...props} /></div>
        </section>
        <section class="bench-beside" aria-label="Beside the document" tabIndex={0}>
          <h2 class="unseen">{panels[beside.value]?.name ?? ''}</h2>
          {panels.length > 1 && (
            <div class="bench-tabs" role="group" aria-label="Beside it">
              {panels.map(({ name }, index) => <button key={name} class="plain" type="button" aria-pressed={beside.value === index} onClick={() => { beside.value = index; }}>{name}</button>)}
            </div>
          )}
          <Parameters draft={draft} />
          <Beside {...props} />
        </section>
      </div>
    </>
  );
}
