/** What is done with the document: flown, kept, saved as a file, or handed on as a link. */
import { useSignal } from '@preact/signals';
import { LONGEST_MADE } from '../../../records/link.js';
import { go } from '../../session.js';
import type { BenchProps } from '../bench.js';
import { slug } from './opened.js';
import { shelfTrouble } from './trouble.js';

interface Handed {
  readonly address: string;
  /** Opens on the bench, or flies. */
  readonly for: 'bench' | 'trainee';
  readonly copied: boolean;
}

export function Share({ house, draft }: BenchProps) {
  const handed = useSignal<Handed | null>(null);
  const said = useSignal<string | null>(null);
  const trouble = useSignal<string | null>(null);
  const { value } = draft.read.value;
  const text = draft.text.value;
  const flies = value?.kind === 'scenario';
  const tell = (words: string | null, wrong: string | null = null): void => {
    said.value = words;
    trouble.value = wrong;
    handed.value = null;
  };
  const keep = async (): Promise<void> => {
    try {
      const shelf = await house.own.shelf();
      const id = draft.own.value ?? house.own.newId();
      await shelf.keep({ id, kind: draft.kind.value, name: draft.name.value, text, changedMs: Date.now() });
      draft.saved(id);
      tell('Kept on the shelf of this browser.');
    } catch (problem) {
      tell(null, shelfTrouble(problem));
    }
  };
  const save = async (): Promise<void> => {
    const name = `${slug(draft.name.value)}.json`;
    await house.saveFile(new Blob([text], { type: 'application/json' }), name);
    tell(`Handed to the browser as ${name}.`);
  };
  const link = async (to: Handed['for']): Promise<void> => {
    const code = await house.own.linkCode(to === 'trainee' ? await house.own.sealedText(text) : text);
    if (code.length > LONGEST_MADE) {
      tell(null, `As a link this would be ${code.length} letters long; mail and chat cut links of more than ${LONGEST_MADE}. Save it as a file and send that.`);
      return;
    }
    const address = `${location.href.replace(/#.*$/, '')}#/${to === 'trainee' ? 'own' : 'bench'}?s=${code}`;
    tell(null);
    handed.value = { address, for: to, copied: await copied(address) };
  };
  const fly = async (): Promise<void> => {
    go({ page: 'own', id: await house.own.handOn(text, null, 'bench') });
  };
  return (
    <div class="share">
      <div class="share-tools">
        {draft.kind.value === 'scenario' && <button class="button" type="button" disabled={!flies} onClick={() => void fly()}>Fly it now</button>}
        <button class="button quiet" type="button" disabled={!draft.unsaved.value && draft.own.value !== null} onClick={() => void keep()}>Save<span class="unseen"> on the shelf of this browser</span></button>
        <button class="plain" type="button" onClick={() => void save()}>Save as a file</button>
        <button class="plain" type="button" disabled={value === null} onClick={() => void link('bench')}>Copy link</button>
        {draft.kind.value === 'scenario' && <button class="plain" type="button" disabled={!flies} onClick={() => void link('trainee')}>Copy link for trainees, without title and notes</button>}
      </div>
      <div role="status">{said.value !== null && <p class="small">{said.value}</p>}{handed.value !== null && <Link of={handed.value} />}</div>
      {trouble.value !== null && <p class="note" role="alert"><span>{trouble.value}</span></p>}
    </div>
  );
}

const Link = ({ of: { address, for: to, copied: was } }: { readonly of: Handed }) => (
  <p class="handed">
    <label><span>{was ? 'Copied' : 'Copy it from here'}: {to === 'trainee' ? 'flies at once; title, notes and comments are left out. The run itself stands in it, for whoever takes it apart.' : 'opens on the bench of whoever follows it.'} {address.length} letters.</span>
      <input type="text" readOnly value={address} onFocus={({ currentTarget }) => currentTarget.select()} />
    </label>
  </p>
);

/** Absent over plain http on a network, and refused where the person has said so. */
async function copied(address: string): Promise<boolean> {
  try {
    await (navigator.clipboard as Clipboard | undefined)?.writeText(address);
    return navigator.clipboard !== undefined;
  } catch {
    return false;
  }
}
