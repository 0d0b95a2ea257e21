/** What was changed last, and the way back: one step, or to where everything began. */
import { change, lastChange, undo } from './changing.js';
import { DEFAULT_CHOICES, setChoices } from './settings.js';

/** @param reset whether everything can be put back to how it came */
export function Told({ reset = false }: { reset?: boolean }) {
  const { words, before } = lastChange.value;
  // Where nothing was changed there is nothing to take back: only the place that will speak is there already.
  if (words === '' && before === null && !reset) return <p class="unseen" role="status" />;
  return (
    <div class={words === '' ? 'told' : 'told told-now'}>
      <p role="status">{words}</p>
      <div>
        <button class="button quiet" type="button" disabled={before === null} onClick={undo}>Undo</button>
        {reset && <button class="button quiet" type="button" onClick={() => change(() => { setChoices(DEFAULT_CHOICES); return 'Everything as it came'; })}>Reset everything</button>}
      </div>
    </div>
  );
}
