/** The head of the drill: what is flown, whether a desk follows, the sound, and the way into the pause. */
import type { Layout } from '../../view/place.js';
import { muted } from '../settings.js';
import { keepFocus } from './tabs.js';

interface Props {
  readonly at: Layout;
  /** What the run is called, and its task. */
  readonly name: string;
  readonly task: string;
  /** Words that were put aside and still wait; null: there are none. */
  readonly put: 'Message' | 'Question' | null;
  readonly takeUp: () => void;
  /** How many desks follow. */
  readonly desks: number;
  readonly pause: (stampMs: number) => void;
}

export const Head = ({ at, name, task, put, takeUp, desks, pause }: Props) => (
  <header class="drill-head" style={{ ...sides(at), height: `${at.head.h}px` }}>
    <h1 style={{ maxWidth: `${at.head.w}px` }}>{name} <span class={put !== null ? 'unseen' : undefined}>{task}</span></h1>
    {put !== null && <button class="plain drill-put" type="button" onMouseDown={keepFocus} style={{ left: `${(name.length * 0.66 - 0.02).toFixed(2)}em` }} onClick={takeUp}>{put}</button>}
    <div class="drill-tools">
      {desks > 0 && <span class="drill-desk" role="status">{desks === 1 ? <><i>A </i>desk<i> follows</i></> : <>{desks} desks<i> follow</i></>}</span>}
      <button class="plain" type="button" aria-pressed={muted.value} onMouseDown={keepFocus} onClick={() => { muted.value = !muted.value; }}>{muted.value ? 'Sound off' : 'Sound on'}</button>
      <button class="plain" type="button" onClick={({ timeStamp }) => pause(timeStamp)}>Pause</button>
    </div>
  </header>
);

/** Head and foot share their margins with the drawing between them. */
export const sides = ({ head: { x } }: Layout) => ({ left: `${x}px`, right: `${x}px` });
