/**
 * The drill for hands and for whoever hears it: a real control over every drawn one, a reading beside every drawn
 * reading. All of them come from the one list of instruments.
 */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { CONTROLS, READINGS, settingName, type Control } from '../view/instruments.js';
import { leverRows } from '../view/rows.js';
import type { Layout, Rect } from '../view/place.js';
import type { Panel, Picture } from '../view/picture.js';
import { spokenDeg } from '../view/words.js';

interface Props {
  readonly at: Layout;
  readonly panel: Panel;
  /** The picture as often as the twins need it. */
  readonly now: Picture;
}

const over = ({ x, y, w, h }: Rect) => ({ left: `${x}px`, top: `${y}px`, width: `${w}px`, height: `${h}px` });

export function Twins({ at, panel, now }: Props) {
  return (
    <>
      <section aria-label="Readings" class="readings">
        {READINGS.map(({ id, name, place, say }) => (
          <p key={id} class="reading" data-reading={id} style={over(place(at))}><span class="unseen">{name}: {say(now, panel)}</span></p>
        ))}
      </section>
      <section aria-label="Controls">
        {CONTROLS.map((control) => <Twin key={control.id} control={control} at={at} panel={panel} now={now} />)}
      </section>
      <Spoken now={now} />
    </>
  );
}

function Twin({ control, at, panel, now }: { control: Control; at: Layout; panel: Panel; now: Picture }) {
  const { id, name, role, place, say, on } = control;
  const state = say(now, panel);
  const pressed = on(now, panel);
  if (role === 'slide') return <LeverTwin place={place(at)} panel={panel} now={now} name={name} />;
  return (
    <button
      type="button" class="twin" data-control={id} style={over(place(at))}
      aria-label={state === '' ? name : `${name}: ${state}`} {...(pressed === null ? {} : { 'aria-pressed': pressed })}
    />
  );
}

/** Values run with the settings by their order: their places on the lever are evenly apart. */
function LeverTwin({ place, panel, now, name }: { place: Rect; panel: Panel; now: Picture; name: string }) {
  const { top } = leverRows(place, panel.settings.length);
  const rows = { ...place, y: top, h: place.y + place.h - top };
  return (
    <div
      class="twin" data-control="lever" role="slider" tabIndex={0} style={over(rows)}
      aria-label={name} aria-orientation="vertical" aria-valuemin={0} aria-valuemax={panel.settings.length - 1}
      aria-valuenow={Math.max(0, panel.settings.findIndex(({ deg }) => deg === now.flapLeverDeg))}
      aria-valuetext={settingName(panel, now.flapLeverDeg)}
    />
  );
}

/** Seconds between two spoken readings of the pointers: a voice needs about that long to say them. */
const SPEAK_EVERY_S = 3;

/** The pointers aloud, at the gauge's own resolution, when they have changed and not too often. */
function Spoken({ now }: { now: Picture }) {
  const words = useSignal('');
  const said = useSignal(-SPEAK_EVERY_S);
  const { blank, timeS, leftPointerDeg, rightPointerDeg } = now;
  const next = blank ? '' : `left ${spokenDeg(leftPointerDeg)}, right ${spokenDeg(rightPointerDeg)}`;
  useEffect(() => {
    if (next === words.value || timeS - said.value < SPEAK_EVERY_S) return;
    words.value = next;
    said.value = timeS;
  }, [next, timeS]);
  return <p class="unseen" role="status">{words.value}</p>;
}
