/** Another run of the same task beside this one: chosen from the logbook or a file, dashed in the charts, figures side by side. */
import { useSignal, type Signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import { EVERY_RUN } from '../../records/logbook/filter.js';
import type { Cursor, Entry } from '../../records/logbook/index.js';
import { besideOf, sideBySide, taskOf, whyNot, type Other } from './beside.js';
import type { Facts } from './facts.js';
import type { House } from '../house.js';
import { OUTCOME_WORDS, seconds } from '../words.js';

interface Props {
  readonly house: House;
  readonly facts: Facts;
  readonly run: RunRecord;
  readonly other: Signal<Other | null>;
}

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
/** As many as a list can be chosen from. */
const MOST = 100;

export function Compare({ house, facts, run, other }: Props) {
  /** null: not read yet; 'closed': this browser has no logbook for us. */
  const entries = useSignal<readonly Entry[] | 'closed' | null>(null);
  const told = useSignal<string | null>(null);
  useEffect(() => { void sameTask(house, run).then((all) => { entries.value = all; }, () => { entries.value = 'closed'; }); }, [house, run]);
  const take = async (next: RunRecord): Promise<void> => {
    const why = whyNot(run, next);
    const played = why === null ? await house.debrief(next) : null;
    told.value = why ?? (played === null ? 'That run was flown on another version of the model, and cannot be played again here.' : null);
    if (played !== null) other.value = besideOf(facts, played, next);
  };
  const fromBook = async (id: string): Promise<void> => {
    const next = await (await house.logbook()).record(id);
    if (next === null) told.value = 'That run is not in the logbook any more.';
    else await take(next);
  };
  const openFile = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const opened = await house.open(file);
    if (opened.ok) await take(opened.record);
    else told.value = `${opened.name} is no record that holds. Opened by itself, it is told where it is wrong.`;
  };
  const failed = (): void => { told.value = 'That run could not be read.'; };
  const choose = (): void => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = '.json,application/json';
    input.addEventListener('change', () => { openFile(input.files?.[0]).catch(failed); });
    input.click();
  };
  const all = entries.value;
  return (
    <section class={other.value === null ? 'compare none' : 'compare'} aria-labelledby="compare-title">
      <h2 id="compare-title" class="ruled">Beside another run of this task</h2>
      {other.value !== null && <SideBySide facts={facts} run={run} other={other.value} />}
      <div class="compare-choice">
        {Array.isArray(all) && all.length > 0 && (
          <label>From the logbook
            <select
              value={all.find(({ digest }) => digest === other.value?.run.digest)?.id ?? ''}
              onChange={({ currentTarget: { value } }) => { if (value === '') other.value = null; else fromBook(value).catch(failed); }}
            >
              <option value="">none</option>
              {all.map((entry) => <option key={entry.id} value={entry.id}>{lineOf(entry)}</option>)}
            </select>
          </label>
        )}
        {Array.isArray(all) && all.length === 0 && <p>The logbook has no other run of this task.</p>}
        {all === 'closed' && <p>The logbook cannot be read in this browser.</p>}
        <button class="plain" type="button" onClick={choose}>From a file</button>
        {other.value !== null && <button class="plain" type="button" onClick={() => { other.value = null; told.value = null; }}>Take it away</button>}
      </div>
      {told.value !== null && <p class="small" role="alert">{told.value}</p>}
    </section>
  );
}

const lineOf = ({ atMs, outcome, afterOnsetS, person }: Entry): string =>
  [WHEN.format(atMs), OUTCOME_WORDS[outcome], ...(afterOnsetS === null ? [] : [seconds(Math.max(0, afterOnsetS))]), ...(person === '' ? [] : [person])].join(', ');

/** Runs of the logbook with the same task, the latest first, without this one. */
async function sameTask(house: House, run: RunRecord): Promise<Entry[]> {
  const book = await house.logbook();
  const task = taskOf(run);
  const found: Entry[] = [];
  let after: Cursor | null = null;
  do {
    const { entries, next } = await book.list(EVERY_RUN, after);
    found.push(...entries.filter((entry) => entry.task === task && entry.digest !== run.digest));
    after = next;
  } while (after !== null && found.length < MOST);
  return found.slice(0, MOST);
}

function SideBySide({ facts, run, other }: { facts: Facts; run: RunRecord; other: Other }) {
  return (
    <table>
      <caption>{other.aligned === 'onset' ? 'Aligned at onset.' : 'Aligned at the start: not both runs have an onset.'}</caption>
      <thead><tr><td /><th scope="col">this run</th><th scope="col">the other, dashed</th></tr></thead>
      <tbody>{sideBySide(facts, run, other).map(([what, here, there]) => <tr key={what}><th scope="row">{what}</th><td>{here}</td><td>{there}</td></tr>)}</tbody>
    </table>
  );
}
