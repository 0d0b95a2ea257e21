/** A new scenario that begins where the cursor stands in the previewed run; what a start cannot hold is told. */
import { useSignal } from '@preact/signals';
import { startHere, type NotHeld } from '../../../../sim/index.js';
import { edited, type Json } from '../../../text/index.js';
import { seconds } from '../../words.js';
import type { BenchProps } from '../bench.js';
import { cursor } from './chosen.js';
import type { Seen } from './seen.js';

const NOT_HELD: Readonly<Record<NotHeld, string>> = {
  split: 'the sides were apart; a start has both at their mean', held: 'the switch was held or the drive moved', armed: 'the drive was armed',
  leadingEdge: 'the leading edge was on its way; it starts out', gear: 'the gear was on its way; it starts where its lever is',
  leftEngine: 'the left engine had failed; with one engine a start has the right one failed', path: 'the aeroplane was climbing or descending; a start is level',
  bank: 'it was banked, or flown by hand; a start is level by autopilot', speedSelected: 'another speed was selected; a start has its own speed selected',
  normalDrive: 'the normal flap drive was back', faults: 'what had acted is left out, and with it what it had done', hazards: 'chances are drawn anew',
  groups: 'crossings already made inside a group of conditions are forgotten', goAround: 'a go-around was being flown',
};

interface Props extends BenchProps {
  readonly seen: Seen;
  readonly stale: boolean;
}

export function StartHereButton({ draft, seen: { order, scenario, preview }, stale }: Props) {
  const told = useSignal<{ readonly atS: number; readonly notHeld: readonly NotHeld[] } | null>(null);
  const endS = preview.rows.at(-1)?.atS ?? 0;
  const atS = Math.min(cursor.value, endS);
  const begin = (): void => {
    const { start, task, mainDrive, faults, events, notHeld } = startHere(scenario, order.airframe, order.seed, preview.commands, preview.acted, atS);
    const parts: readonly (readonly [string, unknown])[] = [['start', start], ['task', task], ['mainDrive', mainDrive], ['faults', faults], ['events', events], ['parameters', undefined], ...(scenario.recognition === undefined ? [] : [['recognition', scenario.recognition] as const])];
    // What a value leaves out stands in no text.
    const plain = (value: unknown): Json | undefined => (value === undefined ? undefined : JSON.parse(JSON.stringify(value)) as Json);
    const text = parts.reduce((before, [key, value]) => edited(before, [key], plain(value)), draft.text.value);
    draft.open({ kind: 'scenario', name: `${draft.name.value.slice(0, 50)}-from-${Math.round(atS)}s`, text, own: null });
    told.value = { atS, notHeld };
    cursor.value = 0;
  };
  return (
    <div class="start-here">
      <button class="plain" type="button" disabled={stale || atS >= endS} onClick={begin}>Start a new scenario at {seconds(atS)}</button>
      <div role="status">
        {told.value !== null && (
          <div class="note">
            <p>This scenario begins where the run before stood at {seconds(told.value.atS)}. Undo leads back to that one.{told.value.notHeld.length > 0 && ' A start cannot hold all of it:'}</p>
            {told.value.notHeld.length > 0 && <ul>{told.value.notHeld.map((one) => <li key={one}>{NOT_HELD[one]}</li>)}</ul>}
            <button class="plain" type="button" onClick={() => { told.value = null; }}>Close</button>
          </div>
        )}
      </div>
    </div>
  );
}
