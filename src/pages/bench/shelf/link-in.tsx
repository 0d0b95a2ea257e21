/** A document that came in the address: opened as any file from outside, and then gone from the address. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { goInstead } from '../../session.js';
import type { BenchProps } from '../bench.js';
import { openedText, titleOf, type Opened } from './opened.js';
import { Refusal } from '../../refusal.js';

interface Props extends BenchProps {
  readonly link: string | null;
  /** Leads to the document. */
  readonly write: () => void;
}

export function LinkIn({ house, kit, draft, link, write }: Props) {
  const refused = useSignal<Extract<Opened, { ok: false }> | null>(null);
  const came = useSignal(false);
  useEffect(() => {
    if (link === null) return;
    let gone = false;
    came.value = false;
    void house.own.textOfLink(link).then((opened) => {
      if (gone) return;
      const read: Opened = opened.ok ? openedText(opened.text, 'The link', kit) : { ok: false, name: 'The link', why: opened.why, problems: [], more: 0 };
      refused.value = read.ok ? null : read;
      if (!read.ok) return;
      draft.open({ kind: read.kind, name: titleOf(read.text), text: read.text, own: null });
      came.value = true;
      goInstead({ page: 'bench', link: null });
      write();
    });
    return () => { gone = true; };
  }, [link]);
  if (refused.value !== null) return <Refusal {...refused.value} heading="h3" />;
  return came.value ? <p class="note" role="status"><span>Opened from a link. What was being written before comes back with Undo.</span> <button class="plain" type="button" onClick={() => { came.value = false; }}>Close</button></p> : null;
}
