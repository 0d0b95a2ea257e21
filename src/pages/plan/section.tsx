/** In the debrief: planned and flown, item by item, from the replayed record. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import type { FlownItem } from '../../../sim/index.js';
import type { House } from '../house.js';

const NAMES: Readonly<Record<string, string>> = {
  order: 'Order', horn: 'Gear horn', motorOnS: 'Motor on', totalS: 'To both there', startByNm: 'Begun at',
  descentFtPerMin: 'Rate of descent', continueKg: 'Fuel',
};
const WORDS: Readonly<Record<string, string>> = {
  gearFirst: 'gear first', settingFirst: 'setting first', silent: 'silent', silenceable: 'sounds, may be silenced', sounds: 'sounds, not to be silenced',
};

export function PlannedFlown({ house, run }: { house: House; run: RunRecord }) {
  const items = useSignal<readonly FlownItem[] | null>(null);
  useEffect(() => {
    items.value = null;
    if (run.plan !== undefined) void house.plan.flown(run).then((all) => { items.value = all; });
  }, [house, run]);
  if (items.value === null || items.value.length === 0) return null;
  const name = (deg: number): string => run.airframe.settings.find((one) => one.deg === deg)?.name ?? `${deg}°`;
  return (
    <section class="plan-flown" aria-labelledby="plan-flown-title">
      <h2 id="plan-flown-title" class="ruled">Planned and flown</h2>
      <table>
        <thead><tr><td /><th scope="col">planned</th><th scope="col">flown</th><th scope="col">difference</th></tr></thead>
        <tbody>
          {items.value.map((item) => (
            <tr key={item.id}>
              <th scope="row">{item.settingDeg === undefined ? NAMES[item.id] ?? item.id : `Lever to ${name(item.settingDeg)} at`}{item.shown && <small> shown</small>}</th>
              <td>{said(item, item.planned)}</td><td>{said(item, item.flown)}</td><td>{differenceOf(item)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small">As the record plays it again. Blanks are left out; a dash is what the run never came to. Fuel: hold and approach as planned, and what the run burnt.</p>
    </section>
  );
}

function said({ unit, decimals }: FlownItem, value: number | string | null): string {
  if (value === null) return '–';
  return typeof value === 'number' ? `${value.toFixed(decimals)}\u00a0${unit}` : WORDS[value] ?? value;
}

/** Flown less planned. */
export function differenceOf({ id, planned, flown, unit, decimals }: FlownItem): string {
  // A run seldom holds the hold: what it burnt is no measure of the plan.
  if (planned === null || flown === null || id === 'continueKg') return '';
  if (typeof planned !== 'number' || typeof flown !== 'number') return planned === flown ? 'same' : 'other';
  const by = (flown - planned).toFixed(decimals);
  return Number(by) === 0 ? 'same' : `${Number(by) > 0 ? '+' : '−'}${by.replace('-', '')}\u00a0${unit}`;
}
