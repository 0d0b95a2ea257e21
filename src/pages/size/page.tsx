/** True size: a card on the screen, the distance of the eye, how the gauge is drawn, and what all that comes to. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Airframe } from '../../../sim/files/index.js';
import { ASSUMED_DISTANCE_MM, DISTANCE_MM } from '../../view/size.js';
import { change, forget } from '../changing.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { Told } from '../told.js';
import { Card } from './card.js';
import { APART_DEG, size } from './choices.js';
import { ComesTo } from './comesto.js';
import { pxPerMm, screenName } from './screen.js';
import '../look/size.css';

export function SizePage({ house }: { house: House }) {
  const airframes = useSignal<readonly Airframe[]>([]);
  useEffect(() => {
    void house.airframes().then((all) => { airframes.value = all; });
    return forget;
  }, [house]);
  return (
    <Page title="True size" kind="setup">
      <p class="above"><a href="#/settings">Set-up</a></p>
      <h1>True size</h1>
      <p class="large size-lead">What your eye learns here belongs to the size it learned it at. With this screen measured, the gauge can be drawn as long as the one in the aeroplane, and every record says how large it was for your eye.</p>
      <Screen />
      <div class="columns size-wishes">
        <Distance />
        <Wishes />
      </div>
      {airframes.value.length > 0 && <ComesTo airframes={airframes.value} />}
      <Told />
    </Page>
  );
}

/** The card, or what it said. */
function Screen() {
  const again = useSignal(false);
  const known = pxPerMm.value;
  const others = Object.keys(size.value.screens).filter((name) => name !== screenName.value).length;
  const measuring = known === null || again.value;
  return (
    <section class="size-screen" aria-labelledby="size-screen">
      <h2 id="size-screen" class="ruled">This screen</h2>
      {measuring && known === null && others > 0 && <p class="note" role="status"><span><strong>This is another screen, or another zoom,</strong> than the {others === 1 ? 'one' : `${others}`} you measured. Lay the card on it too; the other {others === 1 ? 'one is' : 'ones are'} kept.</span></p>}
      {measuring && (
        <Card
          key={screenName.value} before={known}
          measured={(found) => {
            again.value = false;
            change(() => {
              size.value = { ...size.value, screens: { ...size.value.screens, [screenName.value]: found } };
              return `This screen: ${found.toFixed(2)} px a millimetre`;
            });
          }}
          leave={known === null ? null : () => { again.value = false; }}
        />
      )}
      {!measuring && (
        <div class="size-known">
          <p class="large"><strong>{known.toFixed(2)} px</strong> a millimetre, at this zoom.</p>
          <button class="button quiet" type="button" onClick={() => { again.value = true; }}>Lay the card again</button>
        </div>
      )}
    </section>
  );
}

function Distance() {
  const stated = size.value.distanceMm;
  return (
    <section aria-labelledby="size-eye">
      <h2 id="size-eye" class="ruled">Your eye</h2>
      <label class="size-number">
        <span>From the eye to the screen, mm</span>
        <input
          type="number" min={DISTANCE_MM.least} max={DISTANCE_MM.most} step={10} value={stated ?? ASSUMED_DISTANCE_MM}
          onChange={({ currentTarget }) => {
            const mm = Math.round(Number(currentTarget.value));
            if (!(mm >= DISTANCE_MM.least && mm <= DISTANCE_MM.most)) {
              currentTarget.value = String(stated ?? ASSUMED_DISTANCE_MM);
              return;
            }
            change(() => { size.value = { ...size.value, distanceMm: mm }; return `Eye to screen: ${mm} mm`; });
          }}
        />
      </label>
      <p class="small">{stated === null
        ? `${ASSUMED_DISTANCE_MM} mm is assumed: about what a panel is from the eye on a flight deck, from memory. Measure yours with a tape; ${DISTANCE_MM.least} to ${DISTANCE_MM.most} mm.`
        : 'As you state it. Lean forward, and it is no longer true.'}</p>
      {stated !== null && <button class="plain" type="button" onClick={() => change(() => { size.value = { ...size.value, distanceMm: null }; return `Eye to screen: ${ASSUMED_DISTANCE_MM} mm, assumed`; })}>Assume {ASSUMED_DISTANCE_MM} mm</button>}
    </section>
  );
}

function Wishes() {
  const { isTrue, apartDeg } = size.value;
  const none = pxPerMm.value === null;
  const set = (to: Partial<typeof size.value>, words: string): void => change(() => { size.value = { ...size.value, ...to }; return words; });
  return (
    <section aria-labelledby="size-gauge">
      <h2 id="size-gauge" class="ruled">The gauge</h2>
      <fieldset class="answers size-choice">
        <legend class="unseen">Length of the pointers</legend>
        <label class="answer"><input type="radio" name="length" checked={!isTrue} onChange={() => set({ isTrue: false }, 'Gauge: fills the window')} /><span>Fill the window</span></label>
        <label class="answer"><input type="radio" name="length" checked={isTrue} onChange={() => set({ isTrue: true }, 'Gauge: true size')} /><span>True size</span></label>
      </fieldset>
      <fieldset class="answers size-choice">
        <legend>Between speed and gauge</legend>
        <label class="answer"><input type="radio" name="apart" checked={apartDeg === null} onChange={() => set({ apartDeg: null }, 'Speed and gauge: as the window has them')} /><span>As the window has it</span></label>
        <label class="answer"><input type="radio" name="apart" checked={apartDeg !== null} onChange={() => set({ apartDeg: 30 }, 'Speed and gauge: 30° apart')} /><span>An angle</span></label>
        {apartDeg !== null && (
          <label class="size-number">
            <span>Angle at the eye, °</span>
            <input
              type="number" min={APART_DEG.least} max={APART_DEG.most} step={1} value={apartDeg}
              onChange={({ currentTarget }) => {
                const deg = Number(currentTarget.value);
                if (deg >= APART_DEG.least && deg <= APART_DEG.most) set({ apartDeg: deg }, `Speed and gauge: ${deg}° apart`);
                else currentTarget.value = String(apartDeg);
              }}
            />
          </label>
        )}
      </fieldset>
      {none && (isTrue || apartDeg !== null) && <p class="small">Until this screen is measured, the gauge fills the window all the same.</p>}
    </section>
  );
}
