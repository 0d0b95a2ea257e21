/** The keys as they stand, before a run and in its pause: those of the drive at once, the others on a press. */
import type { House, KeyLine } from '../house.js';
import { fragmentOf } from '../route.js';
import { bindings, letters } from '../settings.js';

const Line = ({ keys, does, held }: KeyLine) => (
  <div>
    <dt>{keys.map((key) => <kbd key={key}>{key}</kbd>)}</dt>
    <dd>{does}{held && <em> hold</em>}</dd>
  </div>
);

const Lines = ({ lines, kind }: { lines: readonly KeyLine[]; kind: string }) => <dl class={`keys ${kind}`}>{lines.map((line) => <Line key={line.does} {...line} />)}</dl>;

/** @param asked questions will come: the keys that answer them are shown at once, too */
export function KeyCard({ house, asked }: { house: House; asked: boolean }) {
  const card = house.keyCard(bindings.value);
  return (
    <section aria-labelledby="keys-title">
      <h2 id="keys-title" class="ruled">Keys</h2>
      <Lines lines={card} kind="keys-drive" />
      <OtherKeys house={house} card={card} open={asked} />
      <p class="small">Mouse and touch: press what is drawn, and keep pressing the switch. Everything is also reached by Tab; on the switch, hold the space bar. Another key for any of them: <a href={fragmentOf({ page: 'settings' })}>set-up</a>.</p>
      <label class="check"><input type="checkbox" checked={letters.value} onChange={({ currentTarget }) => { letters.value = currentTarget.checked; }} /> Letter keys act</label>
    </section>
  );
}

/** Answers first, the horn last: as the summary names them. */
const order = ({ intent }: KeyLine): number => (intent.startsWith('answer') ? 0 : intent.startsWith('silence') ? 2 : 1);

function OtherKeys({ house, card, open }: { house: House; card: readonly KeyLine[]; open: boolean }) {
  const shown = new Set(card.map(({ intent }) => intent));
  const others = house.keys.groups(bindings.value).flatMap(({ lines }) => lines).filter(({ intent }) => !shown.has(intent)).sort((a, b) => order(a) - order(b));
  return <details class="keys-more" open={open}><summary>Answers, flying, horn</summary><Lines lines={others} kind="keys-other" /></details>;
}

/** For the pause of a run: every key, folded, with no way to another page. */
export function AllKeys({ house }: { house: House }) {
  const lines = house.keys.groups(bindings.value).flatMap((group) => group.lines);
  return <details class="keys-more"><summary>{letters.value ? 'Keys' : 'Keys (letter keys are off)'}</summary><Lines lines={lines} kind="keys-other" /></details>;
}
