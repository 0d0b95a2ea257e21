/** What the eye looks at and what the hand holds, with the names of their parts. The same picture before every drill. */
import type { Airframe } from '../../../sim/files/index.js';
import { Fan, gaugeOf } from '../fan.js';

export function Parts({ airframe }: { airframe: Airframe }) {
  const { extendSwitch, retractSwitch, stopDeg } = airframe.drive;
  const even = stopDeg * 0.3;
  return (
    <section class="parts" aria-labelledby="parts-title">
      <h2 id="parts-title" class="ruled">What you look at, and what you hold</h2>
      <div class="parts-pair">
        <figure>
          <Fan gauge={gaugeOf(airframe)} left={even + stopDeg * 0.045} right={even - stopDeg * 0.045} radius={176} title="The flap gauge: a solid pointer for the left side, an open one for the right, on one scale with the settings named." />
          <figcaption><strong>Flap gauge.</strong> L, solid: left side. R, open: right side. Named marks are the settings. Drawn here with a split of {(stopDeg * 0.09).toFixed(1)}°; even, the solid pointer lies inside the open one.</figcaption>
        </figure>
        <figure>
          <Switch extend={extendSwitch} retract={retractSwitch} />
          <figcaption><strong>Standby drive.</strong> Guard open, then arm, then the switch. Extend {KIND[extendSwitch]}; retract {KIND[retractSwitch]}.</figcaption>
        </figure>
      </div>
    </section>
  );
}

type Kind = Airframe['drive']['extendSwitch'];

const KIND: Readonly<Record<Kind, string>> = { sprung: 'runs only while you hold it', latched: 'stays where it is put until you put it to off' };

/** Guard, arm and switch as the drill draws them: lid on its hinge, cam in its ring, knob on its spring. */
function Switch({ extend, retract }: { extend: Kind; retract: Kind }) {
  const places = { retract: 42, off: 100, extend: 158 };
  const coil = Array.from({ length: 9 }, (_, turn) => `L${turn % 2 === 0 ? 160 : 140} ${125.5 + turn * 8}`).join('');
  return (
    <svg class="switch" viewBox="0 0 330 222" width="330" height="222" role="img" aria-label="The standby drive: a guard on a hinge, an arm knob, and a switch with three places, retract, off and extend.">
      <path class="switch-thin" d="M8 60H40" /><path class="switch-lid" d="M8 60L16 32" /><circle class="switch-hinge" cx="8" cy="60" r="3" />
      <text class="switch-name" x="8" y="84">guard</text><text x="8" y="101">open</text>
      <circle class="switch-ring" cx="22" cy="146" r="14" /><path class="switch-cam" d="M22 133V159" />
      <text class="switch-name" x="8" y="184">arm</text><text x="8" y="201">armed</text>
      <rect class="switch-pit" x="84" y="8" width="238" height="206" rx="10" />
      <path class="switch-slot" d={`M150 ${places.retract}V${places.extend}`} />
      {extend === 'sprung' && <path class="switch-coil" d={`M150 118V122${coil}L150 193V202M130 202H170`} />}
      {retract === 'latched' && <path class="switch-notch" d="M136 66L145 71L136 76ZM164 66L155 71L164 76Z" />}
      {extend === 'latched' && <path class="switch-notch" d="M136 130L145 135L136 140ZM164 130L155 135L164 140Z" />}
      <circle class="switch-knob" cx="150" cy={places.off} r="18" />
      {(['retract', 'off', 'extend'] as const).map((way) => (
        <g key={way}>
          <path class="switch-thin" d={`M178 ${places[way]}H190`} />
          <text class="switch-name" x="198" y={places[way] + (way === 'off' ? 5 : -2)}>{way}</text>
          {way !== 'off' && <text x="198" y={places[way] + 16}>{(way === 'extend' ? extend : retract) === 'sprung' ? 'hold' : 'stays'}</text>}
        </g>
      ))}
    </svg>
  );
}
