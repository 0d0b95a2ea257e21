/** The shelf of own files, and the way in for files from outside. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { OwnEntry, OwnShelf } from '../../../records/own/index.js';
import type { FilesProps } from '../files.js';
import { isBenchKind, KINDS } from '../kinds.js';
import { OpenFile } from './open-file.js';
import { shelfTrouble } from './trouble.js';

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

export function Shelf(props: FilesProps) {
  const { house, draft, write } = props;
  const all = useSignal<readonly OwnEntry[] | null>(null);
  const trouble = useSignal<string | null>(null);
  const removed = useSignal<OwnEntry | null>(null);
  const work = async (act: (shelf: OwnShelf) => Promise<unknown>): Promise<void> => {
    try {
      const shelf = await house.own.shelf();
      await act(shelf);
      all.value = await shelf.list();
      trouble.value = null;
    } catch (problem) {
      trouble.value = shelfTrouble(problem);
    }
  };
  useEffect(() => { void work(async () => undefined); }, [house]);
  const open = ({ id }: OwnEntry): Promise<void> => work(async (shelf) => {
    const file = await shelf.file(id);
    if (file === null || !isBenchKind(file.kind)) return;
    draft.open({ kind: file.kind, name: file.name, text: file.text, own: file.id });
    write();
  });
  const take = (entry: OwnEntry): Promise<void> => work(async (shelf) => {
    await shelf.remove(entry.id, Date.now());
    removed.value = entry;
  });
  const putBack = (entry: OwnEntry): Promise<void> => work(async (shelf) => {
    await shelf.putBack(entry.id);
    removed.value = null;
  });
  return (
    <section class="own-files" aria-labelledby="own-files-title">
      <h2 id="own-files-title" class="ruled">Own files, kept in this browser</h2>
      {trouble.value !== null && <p class="note" role="alert"><span>{trouble.value}</span></p>}
      {all.value === null && trouble.value === null && <p class="waiting">Opening the shelf …</p>}
      {all.value?.length === 0 && <p class="empty">None yet. What is written on the bench is put here by Save; a file from elsewhere is opened below.</p>}
      {all.value !== null && all.value.length > 0 && (
        <ul>
          {all.value.map((entry) => (
            <Row
              key={entry.id} entry={entry} open={() => void open(entry)} take={() => void take(entry)}
              rename={(name) => void work((shelf) => shelf.rename(entry.id, name))}
              double={() => void work((shelf) => shelf.duplicate(entry.id, house.own.newId(), Date.now()))}
            />
          ))}
        </ul>
      )}
      <div role="status">{removed.value !== null && <p class="note"><span>{removed.value.name} is off the shelf.</span> <button class="button quiet" type="button" onClick={() => { if (removed.value !== null) void putBack(removed.value); }}>Put it back</button></p>}</div>
      <OpenFile {...props} />
    </section>
  );
}

interface RowProps {
  readonly entry: OwnEntry;
  readonly open: () => void;
  readonly rename: (name: string) => void;
  readonly double: () => void;
  readonly take: () => void;
}

function Row({ entry: { kind, name, changedMs }, open, rename, double, take }: RowProps) {
  const naming = useSignal<string | null>(null);
  const done = (): void => {
    if (naming.value !== null && naming.value.trim() !== '' && naming.value !== name) rename(naming.value);
    naming.value = null;
  };
  return (
    <li>
      {naming.value === null
        ? <button class="link" type="button" onClick={open}>{name}</button>
        : (
          <input
            type="text" aria-label={`New name of ${name}`} value={naming.value} maxLength={64} ref={(field) => field?.focus()}
            onInput={({ currentTarget: { value } }) => { naming.value = value; }} onBlur={done}
            onKeyDown={(event) => { if (event.key === 'Enter') done(); else if (event.key === 'Escape') naming.value = null; }}
          />
        )}
      <span class="small">{isBenchKind(kind) ? KINDS[kind].noun : kind}</span>
      <time class="small" dateTime={new Date(changedMs).toISOString()}>{WHEN.format(changedMs)}</time>
      <span class="row-tools">
        <button class="plain" type="button" aria-label={`Rename ${name}`} onClick={() => { naming.value = name; }}>Rename</button>
        <button class="plain" type="button" aria-label={`Duplicate ${name}`} onClick={double}>Duplicate</button>
        <button class="plain" type="button" aria-label={`Take off: ${name}`} onClick={take}>Take off</button>
      </span>
    </li>
  );
}
