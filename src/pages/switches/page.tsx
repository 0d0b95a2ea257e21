/** Switches and levers: every device as the browser sees it, drawn live, and what each part of it does, given by pressing it. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { change, forget, say } from '../changing.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { pads as kept } from '../settings.js';
import { Told } from '../told.js';
import { Device } from './device.js';
import type { PadSeen } from './house.js';
import { nameOf, Seen } from './seen.js';
import '../look/switches.css';

export function SwitchesPage({ house }: { house: House }) {
  const pads = useSignal<readonly PadSeen[]>([]);
  useEffect(() => {
    // Drawn anew only when something has moved.
    let drawn = '';
    const unwatch = house.switches.watch((now) => {
      const state = JSON.stringify(now);
      if (state === drawn) return;
      drawn = state;
      const names = (all: readonly PadSeen[]): string => all.map(({ index, id }) => `${index} ${id}`).join();
      if (names(now) !== names(pads.peek())) say(now.length > pads.peek().length ? `Seen: ${nameOf(now.at(-1)?.id ?? '')}` : 'A device is gone');
      pads.value = now;
    });
    return () => { unwatch(); forget(); };
  }, [house]);
  const known = Object.keys(kept.value).filter((id) => !pads.value.some((pad) => pad.id === id));
  return (
    <Page title="Switches and levers" kind="setup">
      <p class="above"><a href="#/settings">Set-up</a></p>
      <h1>Switches and levers</h1>
      <p class="large size-lead">A switch box, a lever, a gamepad: give each part of it what it does by moving it. It then acts in every run as the key would, and the hold is a real hold.</p>
      {!house.switches.has && <p class="note" role="status"><span><strong>No devices from this address.</strong> Browsers give them to pages of this machine and over https alone. Keys, mouse and touch work as ever.</span></p>}
      {house.switches.has && pads.value.length === 0 && <Nothing />}
      {pads.value.map((pad) => (
        <section key={`${pad.index} ${pad.id}`} class="device" aria-label={nameOf(pad.id)}>
          <h2 class="ruled">{nameOf(pad.id)}</h2>
          <Seen pad={pad} />
          <Device house={house.switches} pad={pad} />
        </section>
      ))}
      {known.length > 0 && (
        <section class="device" aria-labelledby="known-devices">
          <h2 id="known-devices" class="ruled">Known, and not seen now</h2>
          <ul class="device-known">
            {known.map((id) => (
              <li key={id}><span>{nameOf(id)}</span><em>{kept.value[id]?.length} given</em>
                <button
                  class="plain" type="button" aria-label={`Forget ${nameOf(id)}`}
                  onClick={() => change(() => {
                    const { [id]: _gone, ...others } = kept.value;
                    kept.value = others;
                    return `Forgotten: ${nameOf(id)}`;
                  })}
                >Forget</button>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section class="device-rules" aria-labelledby="device-rules">
        <h2 id="device-rules" class="ruled">How they act in a run</h2>
        <ul>
          <li>What is on as a run begins, or behind a pause, says nothing until it has been off. Put switches that stay to off before you start.</li>
          <li>A lever moves nothing until it is moved. Moved thrust levers let the speed hold go, as your hand would.</li>
          <li>A device that is pulled out lets everything go and stops the clock, as a lost window does.</li>
          <li>Devices are read once a frame. Where one says when it was moved, that time counts; where it does not, the frame that saw it counts, on average half a frame later, and the record says “by frames”. A touch shorter than a frame is not seen.</li>
        </ul>
      </section>
      <Told />
    </Page>
  );
}

const Nothing = () => (
  <div class="device-none">
    <svg viewBox="0 0 220 96" width="220" height="96" aria-hidden="true">
      <rect class="device-box" x="2" y="2" width="216" height="92" rx="12" />
      <circle class="device-ring" cx="52" cy="48" r="17" /><circle class="device-ring" cx="110" cy="48" r="17" />
      <path class="device-slot" d="M174 20V76" /><rect class="device-lever" x="160" y="48" width="28" height="14" rx="4" />
      <path class="device-press" d="M52 96V72M44 80L52 71L60 80" />
    </svg>
    <p class="large" role="status"><strong>No device is seen yet.</strong> Plug it in and press any button on it: a browser shows a device only once it has been touched.</p>
  </div>
);
