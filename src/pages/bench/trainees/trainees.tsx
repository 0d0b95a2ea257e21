/** Beside a trainee file: its numbers with what they mean, what that trainee does, and one made from a person in the logbook. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { FILE_SCHEMAS, numbersOf, shapeOf } from '../../../../sim/files/index.js';
import { TRAINEE_NUMBERS, type TraineeNumbers } from '../../../../sim/index.js';
import '../../look/set-panel.css';
import type { BenchProps } from '../bench.js';
import { labelOf } from '../form/labels.js';
import { fittedPerson, traineeOfPerson, type Made } from './of-person.js';
import { ReleasePicture } from './picture.js';
import { falseWithin, releasesAt } from './releases.js';

/** Rates of growth that are told, deg/s: a slow lag, a side that stops, a side driven back. */
const RATES = [0.07, 0.15, 0.6];
/** Late from here in the picture, deg: the figure that most airframes here have. */
const LIMIT_DEG = 2.5;

const ORDER = ['sees', 'thresholdDeg', 'thresholdLogSd', 'reactionS', 'reactionLogSd', 'spread', 'lapse', 'falsePerMin'] as const satisfies readonly (keyof TraineeNumbers)[];

export function TraineePanel({ house, draft }: BenchProps) {
  const sound = draft.sound.value;
  if (sound?.kind !== 'trainee') return <p class="empty">The picture needs a sound trainee file. Its problems stand in the list above.</p>;
  const numbers = numbersOf(sound.value);
  const all = RATES.map((rate) => releasesAt(numbers, rate));
  return (
    <div class="set-panel">
      {draft.read.value.value === null && <p class="note waits">This is the last sound trainee; there are problems in what stands now.</p>}
      <section aria-labelledby="trainee-does">
        <h2 class="ruled" id="trainee-does">When it lets go</h2>
        <ReleasePicture all={all} limitDeg={LIMIT_DEG} />
        <p class="small">
          Two thousand people drawn from these numbers, one run each. In a minute of quiet holding {Math.round(100 * falseWithin(numbers, 60))} % let go without cause; {Math.round(100 * numbers.lapse)} % of runs pass unnoticed.
          The numbers of the scripted trainees are assumed ones: no human data stand behind them.
        </p>
      </section>
      <section aria-labelledby="trainee-numbers">
        <h2 class="ruled" id="trainee-numbers">Its numbers</h2>
        <Numbers numbers={numbers} base={TRAINEE_NUMBERS[sound.value.trainee]} name={sound.value.trainee} />
      </section>
      <FromPerson house={house} draft={draft} />
    </div>
  );
}

function Numbers({ numbers, base, name }: { numbers: TraineeNumbers; base: TraineeNumbers; name: string }) {
  const shape = shapeOf(FILE_SCHEMAS.trainee);
  const meaning = (key: string): string => (shape.kind === 'object' ? shape.keys.get(key)?.shape.description ?? '' : '');
  const unit = (key: string): string => {
    const of = shape.kind === 'object' ? shape.keys.get(key)?.shape : undefined;
    return of?.kind === 'number' && of.unit !== '1' ? ` ${of.unit}` : '';
  };
  return (
    <dl class="trainee-numbers">
      {ORDER.map((key) => (
        <div key={key}>
          <dt>{labelOf(key)}</dt>
          <dd><strong>{numbers[key]}{unit(key)}</strong>{numbers[key] === base[key] ? <span class="small"> as {name}</span> : <span class="small"> {name} has {base[key]}{unit(key)}</span>}<p class="small">{meaning(key)}</p></dd>
        </div>
      ))}
    </dl>
  );
}

function FromPerson({ house, draft }: Pick<BenchProps, 'house' | 'draft'>) {
  const people = useSignal<readonly string[] | null>(null);
  const made = useSignal<{ readonly name: string; readonly is: Made } | null>(null);
  const busy = useSignal(false);
  useEffect(() => { house.logbook().then((book) => book.people()).then((all) => { people.value = all; }, () => { people.value = []; }); }, [house]);
  const make = (name: string): void => {
    busy.value = true;
    house.history(name).then(({ groups, margin }) => {
      const is = traineeOfPerson(fittedPerson(groups, margin.seenDeg), name);
      made.value = { name, is };
      if (is.ok) draft.edit(is.text);
    }, () => { made.value = { name, is: { ok: false, why: 'The logbook could not be read.' } }; }).finally(() => { busy.value = false; });
  };
  const names = people.value ?? [];
  const found = made.value;
  return (
    <section aria-labelledby="trainee-person">
      <h2 class="ruled" id="trainee-person">From a person in the logbook</h2>
      <p class="small">Takes the middle of what is fitted from flown sets. The file here is overwritten; Undo brings it back.</p>
      <div class="trainee-people">
        {['', ...names.filter((name) => name !== '')].map((name) => <button key={name} class="button quiet" type="button" disabled={busy.value} onClick={() => make(name)}>{name === '' ? 'Runs without a name' : name}</button>)}
      </div>
      <div role="status">
        {found !== null && (found.is.ok
          ? <><p>Made from {found.name === '' ? 'runs without a name' : found.name}. What it cannot carry:</p><ul class="lesson-lines">{found.is.lost.map((line) => <li key={line}>{line}</li>)}</ul></>
          : <p class="note"><span>{found.is.why}</span></p>)}
      </div>
    </section>
  );
}
