/** The logbook out in one file, and in from one: with progress, a way to stop, and every refusal told. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Imported, Refused } from '../../records/logbook/index.js';
import type { House } from '../house.js';
import { lastExportMs, refresh, total, trouble, troubleIn } from './logged.js';

const DAY = new Intl.DateTimeFormat(undefined, { dateStyle: 'long' });

interface Work { readonly what: 'out' | 'in'; readonly done: number; readonly all: number }
type Came = ({ readonly ok: true } & Imported) | Refused;

export function Carry({ house }: { house: House }) {
  const work = useSignal<Work | null>(null);
  const came = useSignal<Came | null>(null);
  const stop = useSignal(false);
  const id = useId();
  const during = async <T,>(what: Work['what'], run: (progress: (done: number, all: number) => void, stopped: () => boolean) => Promise<T>): Promise<T | null> => {
    work.value = { what, done: 0, all: 0 };
    stop.value = false;
    came.value = null;
    try {
      return await run((done, all) => { work.value = { what, done, all }; }, () => stop.value);
    } catch (problem) {
      trouble.value = troubleIn(problem);
      return null;
    } finally {
      work.value = null;
      await refresh(house);
    }
  };
  const out = (): void => void during('out', house.exportLogbook);
  const take = (file: File | undefined): void => {
    if (file !== undefined) void during('in', (progress, stopped) => house.importLogbook(file, progress, stopped)).then((all) => { came.value = all; });
  };
  return (
    <section class="carry" aria-label="The logbook as a file">
      <h2 class="ruled">As a file</h2>
      <p>Browsers may throw away what they keep. Export the logbook now and then: {lastExportMs.value === null ? 'it has never been exported.' : `last exported on ${DAY.format(lastExportMs.value)}.`}</p>
      <div class="carry-tools">
        <button class="button quiet" type="button" disabled={work.value !== null || total.value === 0} onClick={out}>Export</button>
        <label class="button quiet" for={id} aria-disabled={work.value !== null}>
          Import
          <input id={id} class="unseen" type="file" accept=".gz,application/gzip" disabled={work.value !== null} onChange={({ currentTarget }) => { take(currentTarget.files?.[0]); currentTarget.value = ''; }} />
        </label>
        {work.value !== null && <Progress work={work.value} stop={() => { stop.value = true; }} />}
      </div>
      <div role="status">{came.value !== null && <Report came={came.value} />}</div>
    </section>
  );
}

const Progress = ({ work, stop }: { work: Work; stop: () => void }) => (
  <>
    <progress aria-label={work.what === 'out' ? 'Exporting' : 'Importing'} value={work.done} max={Math.max(work.all, work.done, 1)} />
    <span>{work.done} of {Math.max(work.all, work.done)}</span>
    <button class="plain" type="button" onClick={stop}>Stop</button>
  </>
);

const runs = (count: number): string => (count === 1 ? 'one run' : `${count} runs`);

function Report({ came }: { came: Came }) {
  if (!came.ok) return <p>{came.why} Nothing was taken from it.</p>;
  const refused = came.refused.length + came.more;
  return (
    <>
      <p>
        Imported: {runs(came.kept)}{came.known > 0 && `; here already: ${runs(came.known)}`}{refused > 0 && `; refused: ${runs(refused)}`}.
        {came.unproved > 0 && ` Of another model, and not proved: ${runs(came.unproved)}.`}{came.stopped && ' Stopped before the end of the file.'}
      </p>
      {came.refused.length > 0 && <ul class="refusals">{came.refused.map(({ line, why }) => <li key={line}>line {line}: {why}</li>)}</ul>}
      {came.more > 0 && <p>{came.more} more.</p>}
    </>
  );
}
