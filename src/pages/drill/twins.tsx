/**
 * The drill for hands and for whoever hears it: a real control over every drawn one, a reading beside every drawn
 * reading. All of them come from the one list of instruments.
 */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { alertWords } from '../../view/alertList.js';
import { CONTROLS, isOfFlying, READINGS, settingName, type Control } from '../../view/instruments.js';
import { isUp, type Layout, type Rect, type Tab, TAB_OF } from '../../view/place.js';
import type { Panel, Picture } from '../../view/picture.js';
import { STRIP_INSET } from '../../view/strip.js';
import { THRUST_INSET } from '../../view/inset.js';
import { spokenDeg } from '../../view/words.js';

interface Props {
  readonly at: Layout;
  readonly panel: Panel;
  /** The picture as often as the twins need it. */
  readonly now: Picture;
  /** The controls that are up where they take turns; null while words stand in their place. */
  readonly tab: Tab | null;
  /** The pointers are spoken. */
  readonly spoken: boolean;
}

export const over = ({ x, y, w, h }: Rect) => ({ left: `${x}px`, top: `${y}px`, width: `${w}px`, height: `${h}px` });

export function Twins({ at, panel, now, tab, spoken }: Props) {
  const there = ({ id }: Control): boolean => at[id].w > 0 && (tab === null ? TAB_OF[id] === undefined || (!at.tabbed && id.startsWith('speed') && id !== 'speedHold') : isUp(at, tab, id));
  return (
    <>
      <section aria-label="Readings" class="readings">
        {READINGS.map(({ id, name, place, say }) => (
          <p key={id} class="reading" data-reading={id} style={over(at[place])}><span class="unseen">{name}: {say(now, panel)}</span></p>
        ))}
      </section>
      <section aria-label="Controls">
        {CONTROLS.filter(there).map((control) => <Twin key={control.id} control={control} at={at} panel={panel} now={now} />)}
      </section>
      <p class="unseen" role="alert" data-alerts="">{alertWords(now)}</p>
      {spoken && <Spoken now={now} />}
    </>
  );
}

function Twin({ control, at, panel, now }: { control: Control; at: Layout; panel: Panel; now: Picture }) {
  const { id, name, role, say, on } = control;
  const state = say(now, panel);
  const pressed = on(now, panel);
  if (role === 'slide') return <Slider control={control} place={at[id]} panel={panel} now={now} />;
  return (
    <button
      type="button" class="twin" data-control={id} style={over(at[id])}
      aria-label={state === '' ? name : `${name}: ${state}`} {...(now.otherFlies && isOfFlying(id) ? { 'aria-disabled': true } : {})} {...(pressed === null ? {} : { 'aria-pressed': pressed })}
    />
  );
}

interface Range {
  readonly from: number;
  readonly to: number;
  readonly value: number;
  /** From the ends of the place to the ends of the travel, px. */
  readonly inset: number;
}

function rangeOf(id: Control['id'], panel: Panel, now: Picture): Range {
  switch (id) {
    // Values run with the settings by their order: their places on the lever are evenly apart.
    case 'lever': return { from: 0, to: panel.settings.length - 1, value: Math.max(0, panel.settings.findIndex(({ deg }) => deg === now.flapLeverDeg)), inset: 0 };
    case 'selectSpeed': return { from: panel.stripKt[0], to: panel.stripKt[1], value: Math.min(Math.max(Math.round(now.selectedKt), panel.stripKt[0]), panel.stripKt[1]), inset: STRIP_INSET };
    case 'roll': return { from: -1, to: 1, value: now.handControl, inset: 10 };
    case 'leftThrust': return { from: 0, to: panel.tlaMaxDeg, value: Math.round(now.leftTlaDeg), inset: THRUST_INSET };
    case 'rightThrust': return { from: 0, to: panel.tlaMaxDeg, value: Math.round(now.rightTlaDeg), inset: THRUST_INSET };
    default: return { from: 0, to: panel.tlaMaxDeg, value: Math.round((now.leftTlaDeg + now.rightTlaDeg) / 2), inset: THRUST_INSET };
  }
}

function Slider({ control: { id, name, say }, place, panel, now }: { control: Control; place: Rect; panel: Panel; now: Picture }) {
  const { from, to, value, inset } = rangeOf(id, panel, now);
  return (
    <div
      class="twin" data-control={id} data-inset={inset} role="slider" tabIndex={0} style={over(place)}
      aria-label={name} aria-orientation={id === 'roll' ? 'horizontal' : 'vertical'} aria-valuemin={from} aria-valuemax={to}
      aria-valuenow={now.blank && id !== 'lever' ? from : value} aria-valuetext={id === 'lever' ? settingName(panel, now.flapLeverDeg) : say(now, panel)}
      {...(now.otherFlies && isOfFlying(id) ? { 'aria-disabled': true } : {})}
      {...(id === 'roll' ? { 'aria-disabled': now.autopilot } : {})}
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
  return <p class="unseen" role="status" data-spoken="">{words.value}</p>;
}
