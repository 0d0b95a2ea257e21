/** What is due: faults and events with what they wait for, counting; to disarm, to clear one, to clear all. */
import type { DeskAct } from '../../../sim/files/index.js';
import type { DueRow } from '../../../sim/index.js';
import { letters } from '../settings.js';
import { dueWords, STATES, waitWords } from './words.js';

const ORDER: readonly DueRow['state'][] = ['acted', 'waits', 'ended', 'disarmed'];

export function Due({ due, act, here }: { due: readonly DueRow[]; act: (act: DeskAct) => void; here: boolean }) {
  const faults = due.filter(({ fault }) => fault !== null).toSorted((a, b) => ORDER.indexOf(a.state) - ORDER.indexOf(b.state));
  const events = due.filter(({ fault, event, state, byDesk }) => fault === null && event !== null && state === 'waits' && !byDesk);
  return (
    <section aria-labelledby="desk-due">
      <h2 id="desk-due" class="ruled">What is due</h2>
      {faults.length + events.length === 0 && <p class="desk-quiet">Nothing: a whole aeroplane, and nothing is to come.</p>}
      <ul class="desk-due">
        {faults.map((row) => <Fault key={row.place} row={row} act={act} here={here} />)}
        {events.map((row) => <li key={row.place} class="desk-event"><span>{dueWords(row)}</span><em>{row.waits === null ? '' : waitWords(row.waits)}</em></li>)}
      </ul>
      {faults.some(({ state }) => state === 'acted' || state === 'waits') && (
        <button class="plain desk-key" type="button" disabled={!here} aria-keyshortcuts="c" onClick={() => act({ do: 'clearFaults' })}>{letters.value && <kbd>C</kbd>}Clear all, disarm all</button>
      )}
    </section>
  );
}

function Fault({ row, act, here }: { row: DueRow; act: (act: DeskAct) => void; here: boolean }) {
  const { name, state, waits } = row;
  const words = dueWords(row);
  return (
    <li class={`desk-fault desk-${state}`}>
      <span>{words}{row.byDesk && <small> by hand</small>}</span>
      <em>{waits === null ? STATES[state] : waitWords(waits)}</em>
      {name !== null && state === 'waits' && <button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'disarmFault', name })}>Disarm<span class="unseen"> {words}</span></button>}
      {name !== null && state === 'acted' && <button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'clearFault', name })}>Clear<span class="unseen"> {words}</span></button>}
    </li>
  );
}
