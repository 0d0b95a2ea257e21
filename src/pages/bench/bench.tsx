/** The bench: where scenarios, sets and trainees are written. Its list of files, its document, and what the document comes to. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import '../look/bench.css';
import { theDraft, type Draft } from './draft.js';
import { Files } from './files.js';
import type { BenchKit } from './house.js';
import { LinkIn } from './shelf/link-in.js';
import { Write } from './write.js';

/** What every part of the bench is given. */
export interface BenchProps {
  readonly house: House;
  readonly kit: BenchKit;
  readonly draft: Draft;
}

interface Props {
  readonly house: House;
  /** A document that came in the address; null for none. */
  readonly link: string | null;
}

export function Bench({ house, link }: Props) {
  const kit = useSignal<BenchKit | null>(null);
  const failed = useSignal(false);
  const get = (): void => {
    failed.value = false;
    house.bench.kit().then((found) => { kit.value = found; }, () => { failed.value = true; });
  };
  useEffect(get, [house]);
  if (kit.value !== null) return <Opened house={house} kit={kit.value} draft={theDraft(kit.value)} link={link} />;
  return (
    <Page title="Bench" kind="bench">
      <h1>Bench</h1>
      {failed.value
        ? <p class="note" role="alert"><span>The bench could not be fetched; the server may have gone.</span> <button class="plain" type="button" onClick={get}>Try again</button></p>
        : <p class="waiting">Fetching the bench …</p>}
    </Page>
  );
}

/** The list of files where nothing is being written, or where it is asked for. */
function Opened({ link, ...props }: BenchProps & { readonly link: string | null }) {
  const { draft } = props;
  const listed = useSignal(draft.text.value === '');
  useEffect(() => {
    // One history for everything that is written here: the fields' own would bring back what stands no longer.
    const onKey = (event: KeyboardEvent): void => {
      const key = event.key.toLowerCase();
      if (!(event.ctrlKey || event.metaKey) || event.altKey || (key !== 'z' && key !== 'y')) return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) draft.redo();
      else draft.undo();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [draft]);
  const isListed = listed.value || draft.text.value === '';
  useEffect(() => {
    scrollTo(0, 0);
    if (document.activeElement === document.body) document.querySelector<HTMLElement>('main')?.focus({ preventScroll: true });
  }, [isListed]);
  const write = (): void => { listed.value = false; };
  return (
    <Page title="Bench" kind="bench">
      <LinkIn {...props} link={link} write={write} />
      {isListed
        ? <Files {...props} write={write} />
        : <Write {...props} list={() => { listed.value = true; }} />}
    </Page>
  );
}
