/** What there is to write on: a new file, a shipped one, one's own, and what was being written. */
import { edited } from '../../text/index.js';
import type { BenchProps } from './bench.js';
import { BENCH_KINDS, KINDS, type BenchKind } from './kinds.js';
import { Shelf } from './shelf/shelf.js';

/** A shipped file as one's own: without its place among the shipped, and without a path that leads nowhere from here. */
const unshipped = (text: string): string => ['$schema', 'order'].reduce((left, key) => edited(left, [key], undefined), text);

export interface FilesProps extends BenchProps {
  /** Leads to the document. */
  readonly write: () => void;
}

export function Files(props: FilesProps) {
  const { draft, kit, write } = props;
  const open = (kind: BenchKind, name: string, text: string): void => {
    draft.open({ kind, name, text, own: null });
    write();
  };
  return (
    <>
      <h1>Bench</h1>
      <p class="large">Write what goes wrong, when, and what is asked; try it before anyone flies it.</p>
      {draft.text.value !== '' && (
        <p class="note"><span>Being written: {draft.name.value === '' ? 'a file without a name' : draft.name.value}.</span> <button class="button quiet" type="button" onClick={write}>Go on</button></p>
      )}
      {draft.text.value === '' && draft.canUndo.value && (
        <p class="note" role="status"><span>The bench is empty.</span> <button class="button quiet" type="button" onClick={() => { draft.undo(); write(); }}>Undo: bring back what was there</button></p>
      )}
      <section class="bench-new" aria-labelledby="bench-new-title">
        <h2 id="bench-new-title" class="ruled">New</h2>
        {BENCH_KINDS.map((kind) => (
          <div key={kind}>
            <button class="button quiet" type="button" onClick={() => open(kind, `new-${kind}`, KINDS[kind].blank)}>New {KINDS[kind].noun}</button>
            <p class="small">{KINDS[kind].holds}</p>
          </div>
        ))}
      </section>
      <Shelf {...props} />
      <section aria-labelledby="bench-shipped-title">
        <h2 id="bench-shipped-title" class="ruled">Shipped, to begin from</h2>
        {BENCH_KINDS.map((kind) => [kind, kit.shipped.filter((one) => one.kind === kind)] as const).filter(([, files]) => files.length > 0).map(([kind, files]) => (
          <div key={kind} class="bench-shipped">
            <h3>{KINDS[kind].nouns}</h3>
            <ul class="bench-files">
              {files.map(({ name, title, text }) => <li key={name}><button class="link" type="button" onClick={() => open(kind, name, unshipped(text))}>{title}</button></li>)}
            </ul>
          </div>
        ))}
      </section>
    </>
  );
}
