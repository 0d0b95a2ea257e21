/** The desk: an instructor follows a run that is flown on this machine, and acts in it. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { fromFile, go, record } from '../session.js';
import { Grades } from './grades.js';
import type { DeskLink, DeskNow } from './house.js';
import { Live } from './live.js';
import { Seek } from './seek.js';
import '../look/desk.css';

const NOTHING: DeskNow = { rooms: [], room: null, stage: 'seeking', live: null, sent: [], record: null };

export function Desk({ house }: { house: House }) {
  const now = useSignal<DeskNow>(NOTHING);
  const link = useRef<DeskLink | null>(null);
  const failed = useSignal(false);
  useEffect(() => {
    let gone = false;
    house.desk.open((next) => { now.value = next; }).then((made) => {
      if (gone) return made.close();
      link.current = made;
    }, () => { failed.value = true; });
    // A window that is closed says so; one that dies is missed.
    const leave = (): void => link.current?.close();
    addEventListener('pagehide', leave);
    return () => {
      gone = true;
      removeEventListener('pagehide', leave);
      leave();
    };
  }, [house]);
  const { room, stage, live, rooms } = now.value;
  const to = link.current;
  return (
    <Page title="Desk" kind="desk">
      {failed.value && <p class="note" role="alert">The desk could not be fetched. Load the page again.</p>}
      {(room === null || to === null) && <Seek rooms={rooms} enter={(id) => link.current?.enter(id)} />}
      {room !== null && to !== null && (
        <>
          {stage === 'joining' && <Waiting says="Asking the run for all it has …" leave={() => to.leave()} />}
          {stage === 'otherModel' && <Waiting says="That window runs another version of Evenhand. Load both windows again." leave={() => to.leave()} />}
          {(stage === 'live' || stage === 'gone') && live === null && <Waiting says="The run has left." leave={() => to.leave()} />}
          {stage === 'gone' && live !== null && (
            <p class="note" role="alert"><span><strong>The trainee’s window has gone.</strong> It was closed or loaded anew; the run is kept in the logbook as abandoned.</span> <button class="plain" type="button" onClick={() => to.leave()}>Runs on this machine</button></p>
          )}
          {stage === 'over' && <Over now={now.value} link={to} />}
          {live !== null && stage !== 'over' && <Live house={house} now={now.value} live={live} link={to} here={stage === 'live'} />}
        </>
      )}
    </Page>
  );
}

const Waiting = ({ says, leave }: { says: string; leave: () => void }) => (
  <>
    <h1>Desk</h1>
    <p class="large" role="status">{says}</p>
    <p><button class="button quiet" type="button" onClick={leave}>Runs on this machine</button></p>
  </>
);

/** The run is over: its record is here, and the grades go into it. */
function Over({ now, link }: { now: DeskNow; link: DeskLink }) {
  const run = now.record;
  return (
    <>
      <h1>The run is over</h1>
      <p class="large">{run?.source === 'live' ? 'All that was done at a desk is in its record, each act with its tick. A live run enters no estimate.' : 'No desk was there while it was flown.'}</p>
      <div class="start">
        {run !== null && <button class="button" type="button" onClick={() => { record.value = run; fromFile.value = false; go({ page: 'debrief' }); }}>Debrief</button>}
        <button class="button quiet" type="button" onClick={() => link.leave()}>Runs on this machine</button>
      </div>
      {run?.source === 'live' && <Grades now={now} link={link} />}
    </>
  );
}
