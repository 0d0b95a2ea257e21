/** Opening a record: by choosing a file or by dropping one anywhere on the page. A wrong file says where it is wrong. */
import { useEffect, useId } from 'preact/hooks';
import { useDropped } from '../dropped.js';
import type { House } from '../house.js';
import { Refusal } from '../refusal.js';
import { fromFile, go, record, refused } from '../session.js';

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
  const over = useDropped(([file]) => void take(house, file));
  const id = useId();
  // What was refused is told where it was opened, and on no later page.
  useEffect(() => () => { refused.value = null; }, []);
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
      {refused.value !== null && <Refusal {...refused.value} />}
    </section>
  );
}
