/** Finding words in the text. The browser's own search sees only the lines that are drawn. */
import { useSignal } from '@preact/signals';
import { MOST_FOUND } from './found.js';

/** What came of a step: how many there are, and which one stands in sight, from 1; 0 for none. */
export interface FoundAt {
  readonly count: number;
  readonly at: number;
}

interface Props {
  /** Goes to the next place of the words, or back; 0 stays where they stand already, as they are typed. */
  readonly find: (words: string, way: 1 | -1 | 0) => FoundAt;
  /** Leads back to the text. */
  readonly close: () => void;
}

export function Find({ find, close }: Props) {
  const words = useSignal('');
  const found = useSignal<FoundAt | null>(null);
  const go = (way: 1 | -1 | 0): void => { found.value = words.value === '' ? null : find(words.value, way); };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') go(event.shiftKey ? -1 : 1);
    else if (event.key === 'Escape') close();
    else return;
    event.preventDefault();
  };
  const { value } = found;
  return (
    <div class="find" role="search" aria-label="Find in the text" onKeyDown={onKey}>
      <input
        type="text" aria-label="Find" placeholder="find in the text" autocomplete="off" spellcheck={false} ref={(field) => { if (field !== null && words.peek() === '' && found.peek() === null) field.focus(); }}
        value={words.value} onInput={({ currentTarget }) => {
          words.value = currentTarget.value;
          if (currentTarget.value === '') find('', 0);
          go(0);
        }}
      />
      <span class="small" role="status">{value === null ? '' : value.count === 0 ? 'none' : `${value.at} of ${value.count >= MOST_FOUND ? `${MOST_FOUND} or more` : value.count}`}</span>
      <button class="plain" type="button" disabled={value === null || value.count === 0} onClick={() => go(-1)}>Back</button>
      <button class="plain" type="button" disabled={value === null || value.count === 0} onClick={() => go(1)}>Next</button>
      <button class="plain" type="button" onClick={close}>Close</button>
    </div>
  );
}
