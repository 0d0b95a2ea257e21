/** The pause of a run: why it stands, and the two ways on. The instruments behind it are blanked. */
import { useEffect, useRef } from 'preact/hooks';
import type { House } from '../house.js';
import { AllKeys } from './keycard.js';

export type Why = 'pause' | 'focusLost' | 'hidden' | 'resized';

const WHYS: Readonly<Record<Why, string>> = {
  pause: 'You paused the run.',
  focusLost: 'The window or the device lost your hand. The switch was let go.',
  hidden: 'The page was hidden. The switch was let go.',
  resized: 'The window or its zoom changed, and the gauge with it. The switch was let go.',
};

interface Props {
  readonly house: House;
  readonly why: Why;
  /** Both take the stamp of the press, ms of the page's clock. */
  readonly resume: (stampMs: number) => void;
  readonly leave: (stampMs: number) => void;
}

export function Paused({ house, why, resume, leave }: Props) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  return (
    <section class="paused" data-own-keys="" role="dialog" aria-labelledby="paused-title">
      <h2 id="paused-title">Paused</h2>
      <p>{WHYS[why]} The instruments are blanked, and a scored run no longer counts.</p>
      <button ref={first} class="button" type="button" onClick={({ timeStamp }) => resume(timeStamp)}>Go on</button>
      <button class="button quiet" type="button" onClick={({ timeStamp }) => leave(timeStamp)}>End the run</button>
      <AllKeys house={house} />
    </section>
  );
}
