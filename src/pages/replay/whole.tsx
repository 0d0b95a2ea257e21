/** The replay over the whole window: every instrument where it stood, the pointers as long as they were when it was flown. */
import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import type { Layout } from '../../view/place.js';
import { laidAgain, type Length } from '../size/again.js';
import { pxPerMm } from '../size/screen.js';

const SAID: Readonly<Record<Length, string>> = {
  same: 'Pointers as long as flown', shorter: 'Pointers shorter than flown: this window has less room', longer: 'Pointers longer than flown',
  none: 'Flown by a script, in no window',
};

interface Props {
  readonly run: RunRecord;
  /** Draws the instruments as laid out for the room they get. */
  readonly instruments: (layoutOf: (width: number, height: number) => Layout) => ComponentChildren;
  readonly close: () => void;
  /** What stood to be read. */
  readonly heard: ComponentChildren;
  /** What plays it. */
  readonly children: ComponentChildren;
}

export function Whole({ run, instruments, heard, close, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const length = useSignal<Length>('same');
  useEffect(() => { dialog.current?.showModal(); }, []);
  const layoutOf = (width: number, height: number): Layout => {
    const again = laidAgain(run, width, height, pxPerMm.peek());
    length.value = again.length;
    return again.at;
  };
  return (
    <dialog ref={dialog} class="replay-whole" aria-label="Replay, as flown" onClose={close}>
      {/* Where a run has its head: nothing of the instruments stands there. */}
      <div class="replay-head">
        {heard}
        <span class="replay-length" role="status">{SAID[length.value]}</span>
        <button class="plain" type="button" onClick={() => dialog.current?.close()}>Close</button>
      </div>
      {instruments(layoutOf)}
      <div class="replay-bar">{children}</div>
    </dialog>
  );
}
