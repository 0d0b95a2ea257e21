/** Set-up: colours, sound, helps for hands and ears, keys. Every change is told, and can be taken back. */
import { useEffect } from 'preact/hooks';
import { change, forget } from '../changing.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { deskMayJoin, latchedHold, look, loudness, muted, pads, spokenPointers, volume, type Look } from '../settings.js';
import { fragmentOf } from '../route.js';
import { cameFrom } from '../session.js';
import { SetupKeys } from './keys.js';
import { size } from '../size/choices.js';
import { pxPerMm } from '../size/screen.js';
import { timing } from '../timing/kept.js';
import { Told } from '../told.js';
import { isFit } from '../../../sim/stats/timing-check.js';

const LOOKS: readonly (readonly [Look, string])[] = [['day', 'Day'], ['night', 'Night'], ['system', 'System']];
const MARKED = 'A run flown with it is marked assisted in its record and kept apart from the others.';

export function Setup({ house }: { house: House }) {
  useEffect(() => forget, []);
  const from = cameFrom.value;
  return (
    <Page title="Set-up" kind="setup">
      {from !== null && from.page !== 'choose' && <p class="above"><a href={fragmentOf(from)}>Back to where you were</a></p>}
      <h1>Set-up</h1>
      <div class="choices">
        <fieldset class="answers">
          <legend class="ruled">Colours</legend>
          {LOOKS.map(([value, name]) => (
            <label key={value} class="answer">
              <input type="radio" name="look" checked={look.value === value} onChange={() => change(() => { look.value = value; return `Colours: ${name.toLowerCase()}`; })} />
              <span>{name}</span>
            </label>
          ))}
        </fieldset>
        <Sound house={house} />
        <fieldset>
          <legend class="ruled">Helps</legend>
          <Choice
            name="Latched hold" on={latchedHold.value} set={(on) => { latchedHold.value = on; }}
            text={`Press the drive switch to run it, press again to stop, for a hand that cannot hold. ${MARKED}`}
          />
          <Choice
            name="Spoken pointers" on={spokenPointers.value} set={(on) => { spokenPointers.value = on; }}
            text={`A screen reader is told both pointers as they move, at the gauge’s own resolution. ${MARKED}`}
          />
          <Choice
            name="A desk may follow" on={deskMayJoin.value} set={(on) => { deskMayJoin.value = on; }}
            text="An instructor in another window may follow a drill and act in it. The drill says that one is there. Sets and practice are always flown alone."
          />
        </fieldset>
      </div>
      <Devices />
      <SetupKeys house={house} />
      <Told reset />
    </Page>
  );
}

/** What has a page of its own: each with how it stands. */
function Devices() {
  const scale = pxPerMm.value;
  const devices = Object.keys(pads.value).length;
  const rows = [
    {
      to: 'size', name: 'True size', says: 'Measure this screen with a bank card; draw the gauge as large as in the aeroplane.',
      stands: scale === null ? 'this screen is not measured' : `${scale.toFixed(2)} px a millimetre, ${size.value.isTrue ? 'true size' : 'gauge fills the window'}`,
    },
    { to: 'switches', name: 'Switches and levers', says: 'Give a switch box, a lever or a gamepad its part in the run.', stands: devices === 0 ? 'none known' : `${devices} known` },
    { to: 'timing', name: 'Timing check', says: 'One minute, if you like: are screen and switch quick and even enough?', stands: timing.value === null ? 'not made' : isFit(timing.value) ? 'fit for timing' : 'not fit for timing' },
  ] as const;
  return (
    <section class="devices" aria-labelledby="devices">
      <h2 id="devices" class="ruled">Screen and hands</h2>
      <ul>{rows.map(({ to, name, says, stands }) => <li key={to}><a href={fragmentOf({ page: to })}>{name}</a><span>{says}</span><em>{stands}</em></li>)}</ul>
    </section>
  );
}

function Choice({ name, text, on, set }: { name: string; text?: string; on: boolean; set: (on: boolean) => void }) {
  return (
    <label class="choice">
      <input type="checkbox" checked={on} onChange={({ currentTarget: { checked } }) => change(() => { set(checked); return `${name}: ${checked ? 'on' : 'off'}`; })} />
      <span>{name}{text !== undefined && <small>{text}</small>}</span>
    </label>
  );
}

function Sound({ house }: { house: House }) {
  const percent = Math.round(volume.value * 100);
  return (
    <fieldset>
      <legend class="ruled">Sound of this page</legend>
      <div class="slide">
        <input
          type="range" min={0} max={100} step={5} value={percent} aria-label="Volume" aria-valuetext={`${percent} percent`}
          onInput={({ currentTarget: { value } }) => change(() => { volume.value = Number(value) / 100; return `Volume: ${value} percent`; }, 'volume')}
        />
        <span class="slid" aria-hidden="true">{percent}</span>
      </div>
      <Choice name="Muted" on={muted.value} set={(on) => { muted.value = on; }} />
      <div class="tries">
        <button class="button quiet" type="button" onClick={() => house.trySound('horn', loudness)}>Try the gear horn</button>
        <button class="button quiet" type="button" onClick={() => house.trySound('autopilotOff', loudness)}>Try the autopilot-off sound</button>
      </div>
      <p class="small">The aeroplane’s own silence for the gear horn is on its panel, and is another thing.</p>
    </fieldset>
  );
}
