/** A run as it is flown: its instruments, the truth beside them, what is due, and everything that a desk can do in it. */
import { useComputed, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { DeskAct } from '../../../sim/files/index.js';
import type { House } from '../house.js';
import { Instruments } from '../replay/instruments.js';
import { letters } from '../settings.js';
import { REMARKS } from './anchors.js';
import { Due } from './due.js';
import { Grades } from './grades.js';
import { Happened } from './happened.js';
import type { DeskLink, DeskLive, DeskNow } from './house.js';
import { Inject } from './inject.js';
import { useDeskKeys } from './keys.js';
import { Others } from './others.js';
import { Remarks } from './remarks.js';
import { Sides } from './sides.js';
import { clock } from './words.js';

interface Props {
  readonly house: House;
  readonly now: DeskNow;
  readonly live: DeskLive;
  readonly link: DeskLink;
  /** The run answers. */
  readonly here: boolean;
}

const STANDS = { runs: 'runs', frozen: 'frozen', paused: 'paused by the trainee' } as const;

export function Live({ house, now, live, link, here }: Props) {
  const { stands, tick, moments, prompted, title } = live;
  const act = (one: DeskAct): void => { if (here) link.act(one); };
  const freeze = (): void => act({ do: stands === 'frozen' ? 'goOn' : 'freeze' });
  const save = (): void => act({ do: 'saveMoment', label: `moment ${moments.length + 1}` });
  const last = moments[moments.length - 1];
  const back = (): void => { if (last !== undefined) act({ do: 'reposition', toTick: last.tick }); };
  const voiding = useSignal(false);
  const remarked = Object.fromEntries(REMARKS.map((label, at) => [String(at + 1), () => act({ do: 'remark', label })]));
  useDeskKeys({
    f: freeze, m: save, b: back, p: () => { if (!prompted) act({ do: 'prompted' }); }, c: () => act({ do: 'clearFaults' }),
    i: () => document.getElementById('desk-put')?.focus(), o: () => document.getElementById('desk-outside')?.focus(), x: () => { voiding.value = !voiding.value; }, ...remarked,
  });
  return (
    <>
      <div class="desk-head">
        <h1>{title}</h1>
        <p class="desk-clock" data-stands={stands}><strong>{clock(tick)}</strong> {here ? STANDS[stands] : 'gone'}</p>
        <div class="desk-acts" role="group" aria-label="The run">
          <Key of="F" disabled={!here || stands === 'paused'} press={freeze}>{stands === 'frozen' ? 'Go on' : 'Freeze'}</Key>
          <Key of="M" disabled={!here} press={save}>Save moment</Key>
          <Key of="B" disabled={!here || last === undefined} press={back}>{last === undefined ? 'Back' : `Back to ${clock(last.tick)}`}</Key>
          <Key of="P" disabled={!here || prompted} press={() => act({ do: 'prompted' })}>{prompted ? 'Prompted: enters no estimate' : 'I prompted'}</Key>
          <Key of="X" disabled={!here} pressed={voiding.value} press={() => { voiding.value = !voiding.value; }}>End and void</Key>
        </div>
      </div>
      {voiding.value && <Void act={(reason) => { act({ do: 'voidRun', reason }); voiding.value = false; }} cancel={() => { voiding.value = false; }} />}
      <Mirrored house={house} live={live} />
      <div class="desk-grid">
        <Sides live={live} />
        <Due due={live.due} act={act} here={here} />
        <Inject live={live} act={act} here={here} />
      </div>
      <div class="desk-grid">
        <Remarks moments={moments} act={act} here={here} />
        <Others act={act} here={here} />
        <Happened now={now} live={live} />
      </div>
      <Grades now={now} link={link} />
      <p class="small desk-leave"><button class="plain" type="button" onClick={() => link.leave()}>Leave this run</button> {letters.value ? 'Keys act while this window has the focus and no field is being filled in.' : 'Letter keys are off in set-up.'}</p>
    </>
  );
}

interface KeyProps {
  readonly of: string;
  readonly disabled: boolean;
  readonly pressed?: boolean;
  readonly press: () => void;
  readonly children: string;
}

/** A button with the key that presses it. */
const Key = ({ of, disabled, pressed, press, children }: KeyProps) => (
  <button class="plain desk-key" type="button" disabled={disabled} onClick={press} {...(pressed === undefined ? {} : { 'aria-expanded': pressed })} aria-keyshortcuts={of.toLowerCase()}>{letters.value && <kbd>{of}</kbd>}{children}</button>
);

function Void({ act, cancel }: { act: (reason: string) => void; cancel: () => void }) {
  const reason = useSignal('');
  return (
    <form class="note desk-void" onSubmit={(event) => { event.preventDefault(); act(reason.value.trim()); }}>
      <label>Why does it not count? <input type="text" maxLength={200} value={reason.value} ref={(field) => field?.focus()} onInput={({ currentTarget }) => { reason.value = currentTarget.value; }} /></label>
      <button class="button" type="submit" disabled={reason.value.trim() === ''}>End now</button>
      <button class="button quiet" type="button" onClick={cancel}>Keep flying</button>
    </form>
  );
}

/** The trainee's instruments, drawn from the same pictures. */
function Mirrored({ house, live }: { house: House; live: DeskLive }) {
  const latest = useSignal(live);
  latest.value = live;
  const truth = useSignal(false);
  const at = useComputed(() => latest.value.tick / 100);
  const replayed = useRef({ panel: live.panel, pictureAt: () => latest.value.picture });
  return (
    <div class={live.stands === 'paused' ? 'desk-mirror desk-dim' : 'desk-mirror'}>
      <Instruments house={house} replayed={replayed.current} cursor={at} truth={truth} />
      {live.picture.talk !== null && <p class="desk-talk"><span class="unseen">The trainee reads: </span>{live.picture.talk.text}</p>}
    </div>
  );
}
