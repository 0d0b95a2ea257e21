/** What the parts of a device do: each line waits for a switch to be pressed, or for a lever to be moved to both its ends. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { change, say } from '../changing.js';
import { pads as kept } from '../settings.js';
import type { PadLine, PadPut, PadSeen, SwitchHouse } from './house.js';

interface Props {
  readonly house: SwitchHouse;
  readonly pad: PadSeen;
}

interface Waiting {
  readonly does: string;
  /** The reading as waiting began: what is on already, and where the axes stood. */
  readonly from: PadSeen;
  /** Least and greatest of each axis since. */
  readonly ends: readonly (readonly [least: number, greatest: number])[];
}

/** A lever that was moved by so much since is the one that is meant. */
const MEANT = 0.25;
const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const axisName = (axis: number): string => String.fromCodePoint(65 + axis % 26);
const sourceOf = ({ is, source }: PadLine): string => (source === null ? 'none' : is === 'switch' ? `${source + 1}` : axisName(source));

export function Device({ house, pad }: Props) {
  const waiting = useSignal<Waiting | null>(null);
  const taken = useSignal<{ readonly line: PadLine; readonly put: Extract<PadPut, { what: 'taken' }> } | null>(null);
  const list = useRef<HTMLDivElement>(null);
  const { id } = pad;
  const groups = house.groups(kept.value, id);
  const focusOn = (does: string): void => list.current?.querySelector<HTMLElement>(`[data-does="${does}"]`)?.focus();
  const lineOf = (does: string): PadLine | undefined => house.groups(kept.value, id).flatMap(({ lines }) => lines).find((one) => one.does === does);

  const take = (line: PadLine, put: PadPut): void => {
    waiting.value = null;
    taken.value = null;
    if (put.what === 'refused') return say(put.why);
    if (put.what === 'taken') {
      taken.value = { line, put };
      return say(`That is for ${put.by} already.`);
    }
    change(() => {
      kept.value = put.changes;
      const now = lineOf(line.does);
      return `${upper(line.words)}: ${now === undefined || now.source === null ? 'nothing' : `${now.is === 'switch' ? 'switch' : 'lever'} ${sourceOf(now)}`}`;
    });
  };

  // Every reading goes to the line that waits.
  useEffect(() => {
    const now = waiting.peek();
    const line = now === null ? undefined : lineOf(now.does);
    if (now === null || line === undefined) return;
    if (line.is === 'switch') {
      const pressed = pad.buttons.findIndex((on, at) => on && now.from.buttons[at] !== true);
      if (pressed >= 0) return take(line, house.putSwitch(kept.value, id, line.does, pressed));
      // What was on from before must be let go first.
      const still = pad.buttons.map((on, at) => on && now.from.buttons[at] === true);
      if (still.some((on, at) => on !== now.from.buttons[at])) waiting.value = { ...now, from: { ...now.from, buttons: still } };
    } else {
      const ends = pad.axes.map((value, at) => [Math.min(value, now.ends[at]?.[0] ?? value), Math.max(value, now.ends[at]?.[1] ?? value)] as const);
      if (JSON.stringify(ends) !== JSON.stringify(now.ends)) waiting.value = { ...now, ends };
    }
  }, [pad]);

  useEffect(() => {
    const onKey = (key: KeyboardEvent): void => {
      if (key.code !== 'Escape' || (waiting.peek() === null && taken.peek() === null)) return;
      const does = waiting.peek()?.does ?? taken.peek()?.line.does ?? '';
      waiting.value = null;
      taken.value = null;
      say('Left as it was');
      focusOn(does);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);

  const wait = (line: PadLine): void => {
    taken.value = null;
    waiting.value = { does: line.does, from: pad, ends: pad.axes.map((value) => [value, value]) };
    say(line.is === 'switch' ? `Press the switch for ${line.words}. Esc leaves it.` : `Move the lever for ${line.words} to both its ends, leave it ${line.begins}, then press Done. Esc leaves it.`);
  };
  const done = (line: PadLine): void => {
    const now = waiting.peek();
    if (now === null) return;
    const axis = now.ends.reduce((best, [least, most], at) => (most - least > (now.ends[best]?.[1] ?? 0) - (now.ends[best]?.[0] ?? 0) ? at : best), 0);
    const [least, most] = now.ends[axis] ?? [0, 0];
    const value = pad.axes[axis] ?? 0;
    // It was left where it begins: the farther end is the other one.
    const to = Math.abs(value - least) > Math.abs(value - most) ? least : most;
    take(line, house.putLever(kept.value, id, line.does, axis, to === least ? most : least, to));
    focusOn(line.does);
  };
  const set = (changes: typeof kept.value, words: string, slide?: string): void => change(() => { kept.value = changes; return words; }, slide);

  return (
    <div ref={list} class="key-groups device-lines">
      {groups.map(({ name, lines }) => (
        <div key={name} class="key-group">
          <h3>{name}</h3>
          <ul>
            {lines.map((line) => {
              const waits = waiting.value?.does === line.does ? waiting.value : null;
              const { does, words, is, source } = line;
              const isOn = is === 'switch' && source !== null && pad.buttons[source] === true;
              return (
                <li key={does} class="key-line">
                  <span class="key-does">{words}{line.held && <em> hold</em>}</span>
                  {source !== null && waits === null && <button class="plain" type="button" aria-label={`clear: ${words}`} onClick={() => { focusOn(does); set(house.clear(kept.value, id, does), `${upper(words)}: nothing`); }}>clear</button>}
                  <button
                    class="key" type="button" data-does={does} aria-label={waits !== null ? `${words}: ${is === 'switch' ? 'press it' : 'move it'}` : `${words}: ${source === null ? 'none' : `${is} ${sourceOf(line)}`}. Change`}
                    onClick={() => wait(line)}
                  >{waits !== null ? <span>{is === 'switch' ? 'press it' : 'move it'}</span> : source === null ? <i>none</i> : <kbd class={isOn ? 'device-on' : undefined}>{sourceOf(line)}</kbd>}</button>
                  {waits !== null && is === 'lever' && <Ends waits={waits} pad={pad} begins={line.begins} done={() => done(line)} />}
                  {waits === null && line.stays !== null && source !== null && (
                    <label class="device-more"><input type="checkbox" checked={line.stays} onChange={({ currentTarget: { checked } }) => set(house.setStays(kept.value, id, does, checked), `${upper(words)}: ${checked ? 'a switch that stays' : 'each press acts'}`)} /> a switch that stays</label>
                  )}
                  {waits === null && is === 'lever' && source !== null && (
                    <div class="device-more">
                      <Travel part={house.partOf(kept.value, id, does, pad.axes) ?? 0} begins={line.begins} />
                      <button class="plain" type="button" aria-label={`${words}: turn round`} onClick={() => set(house.turnRound(kept.value, id, does), `${upper(words)}: turned round`)}>turn round</button>
                      <label>dead zone, % <input type="number" min={0} max={25} step={1} value={Math.round((line.dead ?? 0) * 100)} onChange={({ currentTarget: { value } }) => set(house.setDead(kept.value, id, does, Number(value) / 100), `${upper(words)}: dead zone ${value} %`, `dead ${does}`)} /></label>
                    </div>
                  )}
                  {taken.value?.line.does === does && (
                    <div class="taken" role="group" aria-label="That is taken">
                      <p>That {is} is for <strong>{taken.value.put.by}</strong> already.</p>
                      <button class="button quiet" type="button" onClick={() => { const { put } = taken.value as NonNullable<typeof taken.value>; take(line, { what: 'put', changes: put.instead }); focusOn(does); }}>Take it from there</button>
                      <button class="button quiet" type="button" onClick={() => { taken.value = null; say('Left as it was'); focusOn(does); }}>Leave it</button>
                    </div>
                  )}
                </li>
              );
            })}
          </ul>
        </div>
      ))}
    </div>
  );
}

/** How far a lever has been moved, while both its ends are asked for. */
function Ends({ waits, pad, begins, done }: { waits: Waiting; pad: PadSeen; begins: string; done: () => void }) {
  const widest = waits.ends.reduce((best, [least, most], at) => (most - least > (waits.ends[best]?.[1] ?? 0) - (waits.ends[best]?.[0] ?? 0) ? at : best), 0);
  const [least, most] = waits.ends[widest] ?? [0, 0];
  const moved = most - least >= MEANT;
  const x = (value: number): number => 84 + Math.min(Math.max(value, -1), 1) * 80;
  return (
    <div class="device-ends">
      <p class="small">Move it to both its ends, then leave it {begins}.</p>
      <svg viewBox="0 0 168 20" width="168" height="20" role="img" aria-label={moved ? `Lever ${axisName(widest)} from ${least.toFixed(1)} to ${most.toFixed(1)}` : 'Nothing has moved yet'}>
        <path class="device-rule" d="M4 10H164" />
        {moved && <path class="device-way" d={`M${x(least)} 10H${x(most)}`} />}
        {moved && <circle class="device-mark" cx={x(pad.axes[widest] ?? 0)} cy="10" r="5" />}
      </svg>
      <button class="button quiet" type="button" disabled={!moved} onClick={done}>Done</button>
    </div>
  );
}

const Travel = ({ part, begins }: { part: number; begins: string }) => (
  <svg class="device-travel" viewBox="0 0 120 20" width="120" height="20" role="img" aria-label={`${Math.round(part * 100)} % from ${begins.replace(/^at /, '')}`}>
    <path class="device-rule" d="M6 10H114M6 5V15" /><path class="device-way" d={`M6 10H${6 + part * 108}`} /><circle class="device-mark" cx={6 + part * 108} cy="10" r="5" />
  </svg>
);
