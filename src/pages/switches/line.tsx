/** One line of a device: what it does, which part does it, and what more can be said of that part. */
import { change } from '../changing.js';
import { pads as kept } from '../settings.js';
import { upper } from '../../view/words.js';
import type { Asking } from './asking.js';
import type { PadChanges, PadLine, PadSeen, SwitchHouse } from './house.js';
import { axisName, sourceOf } from './source.js';
import { widestOf, type Waiting } from './waiting.js';

interface Props {
  readonly house: SwitchHouse;
  readonly pad: PadSeen;
  readonly line: PadLine;
  readonly asking: Asking;
  readonly focusOn: (does: string) => void;
}

/** A lever that was moved by so much since is the one that is meant. */
const MEANT = 0.25;

const set = (changes: PadChanges, words: string, slide?: string): void => change(() => { kept.value = changes; return words; }, slide);

export function Line({ house, pad, line, asking, focusOn }: Props) {
  const { does, words, is, source } = line;
  const waits = asking.waiting?.does === does ? asking.waiting : null;
  const isOn = is === 'switch' && source !== null && pad.buttons[source] === true;
  const asks = is === 'switch' ? 'press it' : 'move it';
  return (
    <li class="key-line">
      <span class="key-does">{words}{line.held && <em> hold</em>}</span>
      {source !== null && waits === null && <button class="plain" type="button" aria-label={`clear: ${words}`} onClick={() => { focusOn(does); set(house.clear(kept.value, pad.id, does), `${upper(words)}: nothing`); }}>clear</button>}
      <button
        class="key" type="button" data-does={does} aria-label={waits !== null ? `${words}: ${asks}` : `${words}: ${source === null ? 'none' : `${is} ${sourceOf(line)}`}. Change`}
        onClick={() => asking.wait(line)}
      >{waits !== null ? <span>{asks}</span> : source === null ? <i>none</i> : <kbd class={isOn ? 'device-on' : undefined}>{sourceOf(line)}</kbd>}</button>
      {waits !== null && is === 'lever' && <Ends waits={waits} pad={pad} begins={line.begins} done={() => asking.done(line)} />}
      {waits === null && line.stays !== null && source !== null && (
        <label class="device-more"><input type="checkbox" checked={line.stays} onChange={({ currentTarget: { checked } }) => set(house.setStays(kept.value, pad.id, does, checked), `${upper(words)}: ${checked ? 'a switch that stays' : 'each press acts'}`)} /> a switch that stays</label>
      )}
      {waits === null && is === 'lever' && source !== null && <Lever house={house} pad={pad} line={line} />}
      {asking.taken?.line.does === does && (
        <div class="taken" role="group" aria-label="That is taken">
          <p>That {is} is for <strong>{asking.taken.put.by}</strong> already.</p>
          <button class="button quiet" type="button" onClick={asking.instead}>Take it from there</button>
          <button class="button quiet" type="button" onClick={asking.leave}>Leave it</button>
        </div>
      )}
    </li>
  );
}

/** How far a lever has been moved, while both its ends are asked for. */
function Ends({ waits, pad, begins, done }: { waits: Waiting; pad: PadSeen; begins: string; done: () => void }) {
  const { axis, least, most } = widestOf(waits);
  const moved = most - least >= MEANT;
  const x = (value: number): number => 84 + Math.min(Math.max(value, -1), 1) * 80;
  return (
    <div class="device-ends">
      <p class="small">Move it to both its ends, then leave it {begins}.</p>
      <svg viewBox="0 0 168 20" width="168" height="20" role="img" aria-label={moved ? `Lever ${axisName(axis)} from ${least.toFixed(1)} to ${most.toFixed(1)}` : 'Nothing has moved yet'}>
        <path class="device-rule" d="M4 10H164" />
        {moved && <path class="device-way" d={`M${x(least)} 10H${x(most)}`} />}
        {moved && <circle class="device-mark" cx={x(pad.axes[axis] ?? 0)} cy="10" r="5" />}
      </svg>
      <button class="button quiet" type="button" disabled={!moved} onClick={done}>Done</button>
    </div>
  );
}

/** Where a lever stands on its way, which end it begins at, and its dead zone. */
function Lever({ house, pad: { id, axes }, line: { does, words, begins, dead } }: Pick<Props, 'house' | 'pad' | 'line'>) {
  return (
    <div class="device-more">
      <Travel part={house.partOf(kept.value, id, does, axes) ?? 0} begins={begins} />
      <button class="plain" type="button" aria-label={`${words}: turn round`} onClick={() => set(house.turnRound(kept.value, id, does), `${upper(words)}: turned round`)}>turn round</button>
      <label>dead zone, % <input type="number" min={0} max={25} step={1} value={Math.round((dead ?? 0) * 100)} onChange={({ currentTarget: { value } }) => set(house.setDead(kept.value, id, does, Number(value) / 100), `${upper(words)}: dead zone ${value} %`, `dead ${does}`)} /></label>
    </div>
  );
}

const Travel = ({ part, begins }: { part: number; begins: string }) => (
  <svg class="device-travel" viewBox="0 0 120 20" width="120" height="20" role="img" aria-label={`${Math.round(part * 100)} % from ${begins.replace(/^at /, '')}`}>
    <path class="device-rule" d="M6 10H114M6 5V15" /><path class="device-way" d={`M6 10H${6 + part * 108}`} /><circle class="device-mark" cx={6 + part * 108} cy="10" r="5" />
  </svg>
);
