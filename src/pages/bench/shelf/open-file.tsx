/** A file from outside, chosen or dropped anywhere on the page. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { useDropped } from '../../dropped.js';
import { Refusal } from '../../refusal.js';
import type { FilesProps } from '../files.js';
import { openedFile, type Opened } from './opened.js';

export function OpenFile({ kit, draft, write }: FilesProps) {
  const refused = useSignal<Extract<Opened, { ok: false }> | null>(null);
  const id = useId();
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const opened = await openedFile(file, kit);
    refused.value = opened.ok ? null : opened;
    if (!opened.ok) return;
    draft.open({ kind: opened.kind, name: opened.name, text: opened.text, own: null });
    write();
  };
  const over = useDropped(([file]) => void take(file));
  return (
    <div class={over.value ? 'opening over' : 'opening'}>
      <label class="button quiet" for={id}>
        Open a file
        <input id={id} class="unseen" type="file" accept=".json,.jsonc,application/json" onChange={({ currentTarget }) => { void take(currentTarget.files?.[0]); currentTarget.value = ''; }} />
      </label>
      <p>or drop it anywhere on this page. It is checked first, and stays on this machine.</p>
      {refused.value !== null && <Refusal {...refused.value} heading="h3" />}
    </div>
  );
}
