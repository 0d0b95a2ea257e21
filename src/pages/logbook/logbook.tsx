/** The logbook: every run that this browser keeps, by whom and how it came out; into its debrief, out in one file. */
import { useEffect } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import { EVERY_RUN } from '../../records/logbook/filter.js';
import type { Entry } from '../../records/logbook/index.js';
import { Carry } from './carry.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import { taskOf } from '../front/asks.js';
import { drills, entries, filter, next, people, places, readOn, refresh, removed, total, trouble, TROUBLES, withBook } from './logged.js';
import { People } from './people.js';
import { OutcomeSign } from '../debrief/outcome.js';
import { fromFile, go, lastDrill, lastOwn, record } from '../session.js';
import { degrees, OUTCOME_WORDS, percent, seconds } from '../words.js';

/** Times as this machine's language writes them. */
const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

export function Logbook({ house }: { house: House }) {
  useEffect(() => {
    removed.value = null;
    void refresh(house);
    void house.drills().then((all) => { drills.value = all.map(taskOf); }, () => undefined);
  }, [house]);
  const all = entries.value;
  const isFiltered = Object.values(filter.value).some((one) => one !== null);
  return (
    <Page title="Logbook" kind="logbook">
      <h1>Logbook</h1>
      {trouble.value !== null && <p class="note" role="alert">{TROUBLES[trouble.value]}</p>}
      {trouble.value === null && all === null && <p class="waiting">Opening the logbook …</p>}
      {all !== null && (
        <>
          <p class="large">{total.value === 0 ? 'Every run you fly is kept here, on this machine.' : `${total.value === 1 ? 'One run' : `${total.value} runs`}, kept by this browser on this machine.`}</p>
          <div class="log-head">
            {total.value > 0 && <Filters house={house} />}
            <People house={house} />
          </div>
          {total.value === 0 && <p class="empty">No run yet. <a href="#/">Choose a drill</a>, or import a logbook from its file.</p>}
          {total.value > 0 && all.length === 0 && isFiltered && <p class="empty row">No run fits. <button class="plain" type="button" onClick={() => narrow(house, EVERY_RUN)}>Show all runs</button></p>}
          {all.length > 0 && <List house={house} all={all} />}
          {next.value !== null && <button class="button quiet" type="button" onClick={() => void readOn(house)}>Earlier runs</button>}
          <Carry house={house} />
        </>
      )}
      <Removed house={house} />
    </Page>
  );
}

function narrow(house: House, to: typeof filter.value): void {
  filter.value = to;
  void refresh(house);
}

function Filters({ house }: { house: House }) {
  const now = filter.value;
  const { person, outcome, of } = now;
  return (
    <form class="filters" aria-label="Which runs" onSubmit={(event) => event.preventDefault()}>
      <label>Flown by
        <select value={person ?? '*'} onChange={({ currentTarget: { value } }) => narrow(house, { ...now, person: value === '*' ? null : value })}>
          <option value="*">everyone</option>
          <option value="">no name</option>
          {people.value.map((name) => <option key={name} value={name}>{name}</option>)}
        </select>
      </label>
      <label>Run
        <select value={of ?? '*'} onChange={({ currentTarget: { value } }) => narrow(house, { ...now, of: ofNamed(value) })}>
          <option value="*">any</option>
          <option value="sets">of a set</option>
          {drills.value.map((task, at) => <option key={at} value={at + 1}>Drill {at + 1}. {task}</option>)}
          <option value="other">neither drill nor set</option>
        </select>
      </label>
      <label>Outcome
        <select value={outcome ?? '*'} onChange={({ currentTarget: { value } }) => narrow(house, { ...now, outcome: value === '*' ? null : value as RunRecord['outcome'] })}>
          <option value="*">any</option>
          {Object.entries(OUTCOME_WORDS).map(([value, words]) => <option key={value} value={value}>{words}</option>)}
        </select>
      </label>
    </form>
  );
}

const ofNamed = (value: string): typeof filter.value.of => (value === '*' ? null : value === 'sets' || value === 'other' ? value : Number(value));

const List = ({ house, all }: { house: House; all: readonly Entry[] }) => (
  <div class="scroll">
    <table class="log">
      <thead><tr>{['Flown', 'By', 'Run', 'Outcome'].map((head) => <th key={head} class="text" scope="col">{head}</th>)}{['Growth', 'After onset', 'Roll used'].map((head) => <th key={head} scope="col">{head}</th>)}<td /></tr></thead>
      <tbody>{all.map((entry) => <Row key={entry.id} house={house} entry={entry} />)}</tbody>
    </table>
  </div>
);

function Row({ house, entry }: { house: House; entry: Entry }) {
  const { id, atMs, person, attempt, drill, task, outcome, growthAtReleaseDeg, afterOnsetS, rollAuthorityPct, imported, abandoned } = entry;
  const more = [imported ? 'from a file' : '', abandoned ? 'page left in mid-run' : ''].filter((one) => one !== '').join(', ');
  const open = (): void => {
    void withBook(house, async (book) => {
      const run = await book.record(id);
      if (run === null) return refresh(house);
      record.value = run;
      fromFile.value = false;
      lastDrill.value = drill;
      lastOwn.value = null;
      go({ page: 'debrief' });
    });
  };
  return (
    <tr>
      <th class="text when" scope="row">{WHEN.format(atMs)}</th>
      <td class="text by">{person === '' ? '–' : person}</td>
      <td class="text run"><button class="link" type="button" onClick={open}>{drill !== null ? `Drill ${drill}. ` : attempt == null ? '' : `${places.value.get(id) ?? 'Of a set'}. `}{task}</button>{more !== '' && <small>{more}</small>}</td>
      <td class="text"><OutcomeSign outcome={outcome} /></td>
      <td>{growthAtReleaseDeg === null ? '–' : degrees(growthAtReleaseDeg)}</td>
      <td class="after">{afterOnsetS === null ? '–' : seconds(afterOnsetS)}</td>
      <td class="roll">{percent(rollAuthorityPct)}</td>
      <td><button class="plain" type="button" aria-label={`Take off: ${task}, ${WHEN.format(atMs)}`} onClick={() => takeOff(house, entry)}>Take off</button></td>
    </tr>
  );
}

function takeOff(house: House, entry: Entry): void {
  void withBook(house, (book) => book.remove([entry.id], Date.now())).then(() => {
    removed.value = entry;
    return refresh(house);
  });
}

/** What was taken off can be put back for as long as the page is open, and is told to whoever hears the page. */
function Removed({ house }: { house: House }) {
  const entry = removed.value;
  const putBack = ({ id }: Entry): void => {
    void withBook(house, (book) => book.putBack([id])).then(() => {
      removed.value = null;
      return refresh(house);
    });
  };
  return (
    <div class="put-back" role="status">
      {entry !== null && <><span>Taken off: {entry.task}, {WHEN.format(entry.atMs)}.</span><button class="plain" type="button" onClick={() => putBack(entry)}>Put back</button></>}
    </div>
  );
}
