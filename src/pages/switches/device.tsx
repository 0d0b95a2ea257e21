/** What the parts of a device do: each line waits for a switch to be pressed, or for a lever to be moved to both its ends. */
import { useRef } from 'preact/hooks';
import { pads as kept } from '../settings.js';
import { useAsking } from './asking.js';
import type { PadSeen, SwitchHouse } from './house.js';
import { Line } from './line.js';

export function Device({ house, pad }: { house: SwitchHouse; pad: PadSeen }) {
  const list = useRef<HTMLDivElement>(null);
  const focusOn = (does: string): void => list.current?.querySelector<HTMLElement>(`[data-does="${does}"]`)?.focus();
  const asking = useAsking(house, pad, focusOn);
  return (
    <div ref={list} class="key-groups device-lines">
      {house.groups(kept.value, pad.id).map(({ name, lines }) => (
        <div key={name} class="key-group">
          <h3>{name}</h3>
          <ul>{lines.map((line) => <Line key={line.does} house={house} pad={pad} line={line} asking={asking} focusOn={focusOn} />)}</ul>
        </div>
      ))}
    </div>
  );
}
