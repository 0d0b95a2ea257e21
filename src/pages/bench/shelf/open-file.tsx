/** A file from outside, chosen or dropped anywhere on the page. */
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { FilesProps } from '../files.js';
import { openedFile, type Opened } from './opened.js';
import { Refusal } from './refusal.js';

export function OpenFile({ kit, draft, write }: FilesProps) {
  const over = useSignal(false);
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
  useEffect(() => {
    const drag = (event: DragEvent): void => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      over.value = event.type === 'dragover';
      if (event.type === 'drop') void take(event.dataTransfer.files[0]);
    };
    const names = ['dragover', 'dragleave', 'drop'] as const;
    for (const name of names) addEventListener(name, drag);
    return () => { for (const name of names) removeEventListener(name, drag); };
  }, [kit, draft]);
  return (
    <div class={over.value ? 'opening over' : 'opening'}>
      <label class="button quiet" for={id}>
        Open a file
        <input id={id} class="unseen" type="file" accept=".json,.jsonc,application/json" onChange={({ currentTarget }) => { void take(currentTarget.files?.[0]); currentTarget.value = ''; }} />
      </label>
      <p>or drop it anywhere on this page. It is checked first, and stays on this machine.</p>
      {refused.value !== null && <Refusal of={refused.value} />}
    </div>
  );
}
