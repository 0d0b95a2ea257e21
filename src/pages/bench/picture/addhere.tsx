/** What may be added at the place that was pressed. */
import { useEffect, useRef } from 'preact/hooks';
import type { ChoiceShape } from '../../../../sim/files/index.js';
import type { Draft } from '../draft.js';
import { addThing, choiceOf, LISTS, type ListName } from '../form/add.js';
import { by } from '../looked.js';
import type { Ruler } from './marks.js';
import { upper } from '../../../view/words.js';

interface Props {
  readonly draft: Draft;
  readonly ruler: Ruler;
  /** s or deg. */
  readonly value: number;
  /** Where on the ruler, px. */
  readonly x: number;
  readonly room: number;
  /** The flaps go out along the ruler. */
  readonly forwards: boolean;
  readonly close: () => void;
}

const WIDTH = 320;

export function AddHere({ draft, ruler, value, x, room, forwards, close }: Props) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.querySelector('select')?.focus();
    const outside = (event: PointerEvent): void => {
      if (event.target instanceof Node && box.current?.contains(event.target) === false) close();
    };
    addEventListener('pointerdown', outside);
    return () => removeEventListener('pointerdown', outside);
  }, [value]);
  const where = ruler === 'time' ? `at ${value} s` : `as the drive passes ${value}°`;
  const add = (list: ListName, shape: ChoiceShape, kind: string): void => {
    addThing(draft, list, shape, kind, ruler === 'time' ? { atS: value } : { flapDeg: value, edge: forwards ? 'rising' : 'falling' });
    by.value = 'form';
    close();
  };
  return (
    <div ref={box} class="add-here" role="dialog" aria-label={`Add ${where}`} style={{ left: `${Math.max(0, Math.min(room - WIDTH, x - WIDTH / 2))}px` }} onKeyDown={(event) => { if (event.key === 'Escape') close(); }}
      // It lies over other controls, so it goes when the focus goes on to them.
      onFocusOut={({ relatedTarget }) => { if (relatedTarget instanceof Node && box.current?.contains(relatedTarget) === false) close(); }}
    >
      <p>{upper(where)}</p>
      {(['faults', 'events'] as const).map((list) => (
        <div key={list} class="thing-add">
          <select aria-label={`Add ${LISTS[list].noun} here`} value="" onChange={({ currentTarget }) => add(list, choiceOf(list), currentTarget.value)}>
            <option value="">{list === 'faults' ? 'Add a fault …' : 'Add an event …'}</option>
            {[...choiceOf(list).options].map(([kind, option]) => <option key={kind} value={kind}>{kind} – {(option.keys.get(LISTS[list].by)?.shape.description ?? '').replace(/\.$/, '')}</option>)}
          </select>
        </div>
      ))}
      <button class="plain" type="button" onClick={close}>Add nothing</button>
    </div>
  );
}
