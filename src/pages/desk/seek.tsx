/** Which runs are flown on this machine; and where there is none, how to open one. */
import type { Room } from '../../link/rooms.js';

export function Seek({ rooms, enter }: { rooms: readonly Room[]; enter: (id: string) => void }) {
  return (
    <>
      <h1>Desk</h1>
      {rooms.length === 0 ? <None /> : (
        <>
          <p class="large">Runs in other windows of this browser. The trainee’s window says that a desk is there, and nothing else.</p>
          <ul class="desk-rooms" aria-label="Runs on this machine">
            {rooms.map(({ id, title, stage, closed }) => (
              <li key={id}>
                <strong>{title}</strong>
                <span>{closed ?? (stage === 'over' ? 'over' : 'being flown')}</span>
                <button class={closed === null ? 'button' : 'button quiet'} type="button" disabled={closed !== null} onClick={() => enter(id)}>Follow<span class="unseen"> {title}</span></button>
              </li>
            ))}
          </ul>
          <div class="desk-none"><OneKeyboard /></div>
        </>
      )}
    </>
  );
}

const None = () => (
  <div class="columns desk-none">
    <div>
      <p class="large" role="status">No run on this machine.</p>
      <ol class="how-to">
        <li>Open a second window of this browser, not a tab, and put the two side by side: a run behind another tab stands still.</li>
        <li>There, let the trainee choose a drill and press Start.</li>
        <li>Here, follow it. What you do is stamped in the run and stands in its record.</li>
      </ol>
      <OneKeyboard />
      <p class="small">Sets and practice are flown alone; a trainee may close a window to desks in set-up.</p>
    </div>
    <TwoWindows />
  </div>
);

/** What it costs to take this window, and how to avoid it. */
const OneKeyboard = () => (
  <>
    <p class="small">One keyboard serves one window at a time: to follow, you take this one and the trainee’s run pauses, each time after that the trainee’s switch springs back and the run goes on, and both make a drill whose first release is scored void.</p>
    <p class="small desk-lead">To avoid it:</p>
    <ul class="desk-avoid">
      <li>Follow a drill that is not scored: its brief says that a release is a pause.</li>
      <li>Arm what you can before the hold, and let the trainee’s window keep the focus. A second screen or another browser does not help.</li>
      <li>With a scored drill, say your remarks before Start and behind its end.</li>
    </ul>
  </>
);

/** Two windows side by side: a gauge in one, its list in the other. */
const TwoWindows = () => (
  <figure>
    <svg class="desk-windows" viewBox="0 0 420 210" role="img" aria-label="Two windows side by side: the trainee’s with the gauge, the desk with what is due">
      <rect x="1" y="12" width="196" height="150" rx="6" /><path d="M1 34H197" />
      <rect x="223" y="12" width="196" height="150" rx="6" /><path d="M223 34H419" />
      <path d="M60 130A70 70 0 0 0 130 60" /><path class="desk-windows-ink" d="M60 60L118 96L112 104Z" /><path d="M60 60L110 112L102 118Z" />
      <circle cx="60" cy="60" r="4" />
      <path d="M243 58H330M243 82H306M243 106H338M243 130H292" /><path class="desk-windows-accent" d="M362 58H399M362 82H399M362 106H399M362 130H399" />
      <path class="desk-windows-accent" d="M199 88H221M215 82L221 88L215 94M205 82L199 88L205 94" />
      <text x="99" y="188">trainee</text><text x="321" y="188">desk</text>
    </svg>
  </figure>
);
