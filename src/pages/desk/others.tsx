/** The outside, as a desk plays it: words, the other pilot, a controller, engines, the normal drive. */
import { useSignal } from '@preact/signals';
import type { DeskAct } from '../../../sim/files/index.js';

type From = 'message' | 'controller' | 'otherPilot';
const FROMS: readonly (readonly [From, string])[] = [['controller', 'controller'], ['otherPilot', 'other pilot'], ['message', 'a message']];

const spoken = (from: From, text: string): DeskAct => (from === 'message' ? { do: 'message', text } : { do: 'say', from, text });

export function Others({ act, here }: { act: (act: DeskAct) => void; here: boolean }) {
  const from = useSignal<From>('controller');
  const text = useSignal('');
  const kt = useSignal('160');
  const ft = useSignal('3000');
  const number = (value: string, low: number, high: number): number | null => (value.trim() !== '' && Number(value) >= low && Number(value) <= high ? Number(value) : null);
  const speedKt = number(kt.value, 60, 400);
  const toFt = number(ft.value, -2000, 26000);
  const say = (event: Event): void => {
    event.preventDefault();
    if (!here || text.value.trim() === '') return;
    act(spoken(from.value, text.value.trim()));
    text.value = '';
  };
  return (
    <section aria-labelledby="desk-others">
      <h2 id="desk-others" class="ruled">Other pilot and controller</h2>
      <form class="desk-form" onSubmit={say}>
        <div class="desk-row">
          <select aria-label="Who says it" value={from.value} onChange={({ currentTarget }) => { from.value = currentTarget.value as From; }}>{FROMS.map(([is, words]) => <option key={is} value={is}>{words}</option>)}</select>
          <input type="text" aria-label="What is said" maxLength={400} placeholder="what is said" value={text.value} onInput={({ currentTarget }) => { text.value = currentTarget.value; }} />
          <button class="plain" type="submit" disabled={!here || text.value.trim() === ''}>Say</button>
        </div>
      </form>
      <div class="desk-row">
        <input type="number" aria-label="Speed to select, knots" min={60} max={400} step={1} value={kt.value} onInput={({ currentTarget }) => { kt.value = currentTarget.value; }} /> kt
        <button class="plain" type="button" disabled={!here || speedKt === null} onClick={() => { if (speedKt !== null) act({ do: 'selectSpeed', speedKt }); }}>Select speed</button>
      </div>
      <div class="desk-row">
        <input type="number" aria-label="Height to descend to, feet" min={-2000} max={26000} step={100} value={ft.value} onInput={({ currentTarget }) => { ft.value = currentTarget.value; }} /> ft
        <button class="plain" type="button" disabled={!here || toFt === null} onClick={() => { if (toFt !== null) act({ do: 'descend', toFt, pathDeg: -3 }); }}>Descend at 3°</button>
        <button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'level' })}>Level</button>
      </div>
      <div class="desk-row">
        <button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'setGear', to: 'down' })}>Gear down</button>
        <button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'setGear', to: 'up' })}>Gear up</button>
        <button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'returnMainDrive' })}>Normal drive back</button>
      </div>
      <div class="desk-row">
        <button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'failEngine', side: 'left' })}>Left engine stops</button>
        <button class="plain" type="button" disabled={!here} onClick={() => act({ do: 'failEngine', side: 'right' })}>Right engine stops</button>
      </div>
    </section>
  );
}
