/** A fault put in: which, on which side, and when. */
import { useSignal } from '@preact/signals';
import type { DeskAct } from '../../../sim/files/index.js';
import type { DeskLive } from './house.js';
import { injection, PRESETS, type Side, type When } from './presets.js';

const SIDES: readonly (readonly [Side, string])[] = [['left', 'left'], ['right', 'right'], ['drawn', 'either']];
const WHENS = [['now', 'now'], ['flapDeg', 'at'], ['heldS', 'after']] as const;

export function Inject({ live, act, here }: { live: DeskLive; act: (act: DeskAct) => void; here: boolean }) {
  const which = useSignal(0);
  const side = useSignal<Side>('drawn');
  const of = useSignal<When['of']>('now');
  const deg = useSignal('8');
  const held = useSignal('5');
  const preset = PRESETS[which.value] ?? PRESETS[0];
  const value = Number(of.value === 'flapDeg' ? deg.value : held.value);
  const fits = of.value === 'now' || (Number.isFinite(value) && value >= 0 && value <= (of.value === 'flapDeg' ? live.panel.stopDeg : 600));
  const put = (event: Event): void => {
    event.preventDefault();
    if (!here || !fits || preset === undefined) return;
    const when: When = of.value === 'now' ? { of: 'now' } : { of: of.value, value };
    act(injection(preset, side.value, when, live.heldS, live.names));
  };
  return (
    <section aria-labelledby="desk-inject">
      <h2 id="desk-inject" class="ruled">Put in a fault</h2>
      <form class="desk-form desk-inject" onSubmit={put}>
        <label>Fault <select id="desk-put" aria-keyshortcuts="i" value={which.value} onChange={({ currentTarget }) => { which.value = Number(currentTarget.value); }}>{PRESETS.map(({ id, words }, at) => <option key={id} value={at}>{words}</option>)}</select></label>
        <fieldset disabled={preset?.sided !== true}>
          <legend>Side</legend>
          <div class="segments">{SIDES.map(([is, words]) => <label key={is}><input type="radio" name="desk-side" checked={side.value === is} onChange={() => { side.value = is; }} /><span>{words}</span></label>)}</div>
        </fieldset>
        <fieldset>
          <legend>When</legend>
          <div class="desk-whens">{WHENS.map(([is, words]) => (
            <span key={is} class="desk-when">
              <label class="check"><input type="radio" name="desk-when" checked={of.value === is} onChange={() => { of.value = is; }} />{words}</label>
              {is === 'flapDeg' && <label class="desk-number"><input type="number" min={0} max={live.panel.stopDeg} step="0.1" value={deg.value} aria-label="Flap position, degrees" onFocus={() => { of.value = 'flapDeg'; }} onInput={({ currentTarget }) => { deg.value = currentTarget.value; }} />°</label>}
              {is === 'heldS' && <label class="desk-number"><input type="number" min={0} max={600} step="0.5" value={held.value} aria-label="Seconds of further holding" onFocus={() => { of.value = 'heldS'; }} onInput={({ currentTarget }) => { held.value = currentTarget.value; }} />s held</label>}
            </span>
          ))}</div>
        </fieldset>
        <button class="button" type="submit" disabled={!here || !fits}>{of.value === 'now' ? 'Put in' : 'Arm'}</button>
        {!fits && <p class="small" role="alert">{of.value === 'flapDeg' ? `A flap position from 0 to ${live.panel.stopDeg}°.` : 'From 0 to 600 s of holding.'}</p>}
      </form>
    </section>
  );
}
