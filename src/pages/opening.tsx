/** Opening a record: by choosing a file or by dropping one anywhere on the page. A wrong file says where it is wrong. */
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { House } from './house.js';
import { fromFile, go, record, refused } from './session.js';

async function take(house: House, file: File | undefined): Promise<void> {
  if (file === undefined) return;
  const opened = await house.open(file);
  if (!opened.ok) {
    refused.value = opened;
    return;
  }
  refused.value = null;
  record.value = opened.record;
  fromFile.value = true;
  go({ page: 'debrief' });
}

export function Opening({ house }: { house: House }) {
  const over = useSignal(false);
  const id = useId();
  useEffect(() => {
    const drag = (event: DragEvent): void => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      over.value = event.type === 'dragover';
      if (event.type === 'drop') void take(house, event.dataTransfer.files[0]);
    };
    const names = ['dragover', 'dragleave', 'drop'] as const;
    for (const name of names) addEventListener(name, drag);
    return () => {
      names.forEach((name) => removeEventListener(name, drag));
      // What was refused is told where it was opened, and on no later page.
      refused.value = null;
    };
  }, [house]);
  return (
    <section class={over.value ? 'opening over' : 'opening'} aria-label="Open a record">
      <label class="button quiet" for={id}>
        Open a record
        <input
          id={id} class="unseen" type="file" accept=".json,application/json"
          onChange={({ currentTarget }) => {
            void take(house, currentTarget.files?.[0]);
            currentTarget.value = '';
          }}
        />
      </label>
      <p>or drop its file anywhere on this page. Records stay on this machine.</p>
      <Refused />
    </section>
  );
}

function Refused() {
  const file = refused.value;
  if (file === null) return null;
  return (
    <div class="refused" role="alert">
      <h2>{file.name} was not opened</h2>
      <ul>
        {file.problems.map(({ line, column, path, found, allowed }) => (
          <li key={`${line}:${column}:${path}:${found}`}>
            {line > 0 && <span class="place">line {line}, column {column}</span>}
            {path !== '' && <code>{path}</code>} <span>found {found}; {line > 0 ? 'allowed: ' : 'expected '}{allowed}</span>
          </li>
        ))}
      </ul>
      {file.more > 0 && <p>{file.more} more.</p>}
    </div>
  );
}
