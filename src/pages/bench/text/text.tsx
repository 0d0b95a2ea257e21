/** The text of the document: its editor, and below it what the key at the caret means. */
import { effect, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { TRAINEES } from '../../../../sim/index.js';
import { suggest, tellAt, type Names, type Told } from '../../../text/index.js';
import type { BenchProps } from '../bench.js';
import { namesIn } from '../form/begin.js';
import { airframeIn } from '../form/scenario.js';
import { KINDS } from '../kinds.js';
import { place } from '../looked.js';
import { openEditor, type Editor } from './editor.js';
import { Find } from './find.js';

export function Text({ draft, kit }: BenchProps) {
  const host = useRef<HTMLDivElement>(null);
  const told = useSignal<Told | null>(null);
  const finding = useSignal(false);
  const made = useRef<Editor | null>(null);
  useEffect(() => {
    if (host.current === null) return undefined;
    const shape = () => KINDS[draft.kind.value].shape;
    const editor = openEditor(host.current, draft.text.value, {
      typed: draft.edit,
      rested: draft.part,
      suggest: (text, offset) => suggest(text, offset, shape(), namesFor({ draft, kit })),
      tell: (text, offset) => tellAt(text, offset, shape()),
      at: (now) => { told.value = now; },
      find: () => { finding.value = true; },
    });
    made.current = editor;
    const stops = [
      effect(() => editor.setText(draft.text.value)),
      effect(() => editor.setProblems(draft.read.value.problems)),
      effect(() => {
        const to = place.value;
        // The text may be only about to be seen.
        if (to !== null) requestAnimationFrame(() => editor.go(to.line, to.column));
      }),
    ];
    return () => {
      for (const stop of stops) stop();
      editor.close();
      made.current = null;
      place.value = null;
    };
  }, [draft, kit]);
  const { value } = told;
  return (
    <>
      {finding.value && (
        <Find
          find={(words, way) => made.current?.find(words, way) ?? { count: 0, at: 0 }}
          close={() => {
            finding.value = false;
            made.current?.find('', 0);
            made.current?.focus();
          }}
        />
      )}
      <div ref={host} class="editor" />
      <p class="told-key">{value === null ? 'Ctrl and Space: what may stand here. F8: the next problem. Ctrl and F: find.' : <><strong>{String(value.path.at(-1))}</strong> {value.meaning} <span>{value.allowed}; {value.otherwise}</span></>}</p>
    </>
  );
}

/** Names that a place may refer to. */
function namesFor({ draft, kit }: Pick<BenchProps, 'draft' | 'kit'>): Names {
  return (path) => {
    const json = draft.json.peek();
    const last = String(path.at(-1));
    const above = path.at(-2);
    if (last === 'airframe') return [...kit.airframes.keys()];
    if (last === 'scenario' && draft.kind.peek() === 'set') return [...kit.drills].filter(([, { faults }]) => faults.length === 0).map(([name]) => name);
    if (last === 'after' || last === 'fault') return namesIn(json);
    if (above === 'passes' || above === 'fails') return TRAINEES;
    if (above === 'settings' || last === 'flapLeverDeg') return airframeIn(json, kit)?.settings.map(({ deg }) => deg) ?? [];
    return [];
  };
}
