/** Remarks of one press, one in words, and the moments to come back to. */
import { useSignal } from '@preact/signals';
import type { DeskAct } from '../../../sim/files/index.js';
import { letters } from '../settings.js';
import { REMARKS } from './anchors.js';
import type { DeskLive } from './house.js';
import { clock } from './words.js';

export function Remarks({ moments, act, here }: { moments: DeskLive['moments']; act: (act: DeskAct) => void; here: boolean }) {
  const text = useSignal('');
  const write = (event: Event): void => {
    event.preventDefault();
    const words = text.value.trim();
    if (!here || words === '') return;
    act(words.length <= 40 ? { do: 'remark', label: words } : { do: 'remark', label: `${words.slice(0, 39)}…`, text: words });
    text.value = '';
  };
  return (
    <section aria-labelledby="desk-remarks">
      <h2 id="desk-remarks" class="ruled">Remarks</h2>
      <div class="desk-remarks">
        {REMARKS.map((label, at) => <button key={label} class="plain desk-key" type="button" disabled={!here} aria-keyshortcuts={String(at + 1)} onClick={() => act({ do: 'remark', label })}>{letters.value && <kbd>{at + 1}</kbd>}{label}</button>)}
      </div>
      <form class="desk-row" onSubmit={write}>
        <input type="text" aria-label="A remark in your words" maxLength={400} placeholder="in your words" value={text.value} onInput={({ currentTarget }) => { text.value = currentTarget.value; }} />
        <button class="plain" type="submit" disabled={!here || text.value.trim() === ''}>Note</button>
      </form>
      {moments.length > 0 && (
        <ul class="desk-moments" aria-label="Saved moments">
          {moments.map(({ label, tick }) => <li key={tick}><span>{label}</span><em>{clock(tick)}</em><button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'reposition', toTick: tick })}>Back<span class="unseen"> to {label}</span></button></li>)}
        </ul>
      )}
    </section>
  );
}
