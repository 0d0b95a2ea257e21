/** Where a window has no room for all of the hand's controls: which of them are up. What the others say stays in sight. */
import type { Layout, Tab } from '../../view/place.js';
import { TABS } from '../../view/place.js';
import { settingName } from '../../view/instruments.js';
import type { Panel, Picture } from '../../view/picture.js';
import { anglesOf, GEAR_SHORT } from '../../view/words.js';
import { over } from './twins.js';

interface Props {
  readonly at: Layout;
  readonly panel: Panel;
  readonly now: Picture;
  readonly tab: Tab | null;
  readonly turn: (tab: Tab) => void;
}

/** A press of the mouse beside the switch must not take the focus from a key that holds it. */
export const keepFocus = (event: Event): void => event.preventDefault();

const NAMES: Readonly<Record<Tab, string>> = { flaps: 'Flaps', thrust: 'Thrust', gear: 'Gear' };

export function Tabs({ at, panel, now, tab, turn }: Props) {
  const said: Readonly<Record<Tab, string>> = {
    flaps: settingName(panel, now.flapLeverDeg), thrust: now.blank ? '' : anglesOf(now), gear: now.blank ? '' : GEAR_SHORT[now.gear],
  };
  return (
    <div class="tabs" role="group" aria-label="Levers" style={over(at.tabs)}>
      {TABS.map((one) => (
        <button key={one} type="button" class="tab" data-tab={one} aria-pressed={tab === one} onMouseDown={keepFocus} onClick={() => turn(one)}>
          {NAMES[one]} <span>{said[one]}</span>
        </button>
      ))}
    </div>
  );
}
