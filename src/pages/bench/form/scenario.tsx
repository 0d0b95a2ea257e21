/** A scenario as a form: words, start, task, faults, events, what is scored; then whatever else a scenario may hold. */
import type { Airframe, ChoiceShape, ListShape, ObjectShape, Scenario } from '../../../../sim/files/index.js';
import type { BenchKit } from '../house.js';
import { isWritten } from '../words.js';
import { valueAt } from './at.js';
import { Auto } from './auto.js';
import { Expected } from './expected.js';
import { Field, Fields, Segments } from './fields.js';
import type { FormProps } from './form.js';
import { keyIn } from './key-in.js';
import { SettingsField } from './settings.js';
import { Things } from './things.js';

interface Props extends FormProps {
  readonly kit: BenchKit;
  readonly shape: ObjectShape;
}

const START = ['massT', 'altitudeFt', 'groundFt', 'speedKt', 'flapDeg', 'flapLeverDeg', 'leadingEdge', 'gear', 'liveEngines', 'motorHeat', 'guard'] as const;
const OUTSIDE = ['windKt', 'icing', 'fuelKg', 'distanceNm'] as const;
/** Keys that have a place of their own; any other is shown at the end. */
const PLACED = [
  '$schema', 'format', 'order', 'group', 'title', 'brief', 'notes', 'skill', 'airframe', 'start', 'speedHold', 'role', 'training', 'mainDrive', 'pointerNoise', 'task', 'faults', 'events', 'recognition', 'procedure', 'passes', 'fails',
];

export function ScenarioForm({ draft, kit, shape }: Props) {
  const field = (path: readonly string[], more: { label?: string; aside?: string } = {}) => <Field key={path.join('.')} draft={draft} path={path} of={keyIn(shape, ...path)} {...more} />;
  const list = (name: 'faults' | 'events') => <Things draft={draft} list={name} shape={(keyIn(shape, name).shape as ListShape).item as ChoiceShape} />;
  const startKeys = keyIn(shape, 'start').shape as ObjectShape;
  const airframe = airframeIn(draft.json.value, kit);
  return (
    <>
      <section aria-labelledby="form-words">
        <h2 id="form-words" class="ruled">Words</h2>
        {field(['title'], { aside: 'the trainee never sees this' })}
        {field(['brief'], { aside: 'the trainee reads this' })}
        <details>
          <summary>Notes and skill</summary>
          {field(['notes'], { aside: 'the trainee never sees this' })}
          {field(['skill'])}
          {field(['group'])}
        </details>
      </section>
      <section aria-labelledby="form-start">
        <h2 id="form-start" class="ruled">Start</h2>
        <Fields>
          <AirframeField draft={draft} kit={kit} />
          {START.map((key) => field(['start', key]))}
          {field(['role'])}
          {field(['speedHold'], { label: 'Speed hold on' })}
        </Fields>
        <details>
          <summary>Wind, ice, fuel, distance</summary>
          <Fields>{OUTSIDE.map((key) => field(['start', key]))}</Fields>
          <Auto draft={draft} path={['start']} shape={startKeys} but={[...START, ...OUTSIDE]} />
        </details>
      </section>
      <section aria-labelledby="form-task">
        <h2 id="form-task" class="ruled">Task</h2>
        <Fields>
          <SettingsField draft={draft} path={['task', 'settings']} of={keyIn(shape, 'task', 'settings')} airframe={airframe} />
          {field(['task', 'limitS'])}
          {field(['mainDrive'])}
        </Fields>
        <details>
          <summary>Other ways to end, helps and noise</summary>
          <Fields>{[['task', 'afterS'], ['task', 'legS'], ['pointerNoise'], ['training']].map((path) => field(path))}</Fields>
          <Auto draft={draft} path={['task']} shape={keyIn(shape, 'task').shape as ObjectShape} but={['settings', 'limitS', 'afterS', 'legS']} />
        </details>
      </section>
      <section aria-labelledby="form-faults">
        <h2 id="form-faults" class="ruled">Faults</h2>
        {list('faults')}
      </section>
      <section aria-labelledby="form-events">
        <h2 id="form-events" class="ruled">Events</h2>
        {list('events')}
      </section>
      <section aria-labelledby="form-scored">
        <h2 id="form-scored" class="ruled">What is scored</h2>
        <Scored draft={draft} shape={shape} />
        <details>
          <summary>What the scripted trainees should do</summary>
          <Expected draft={draft} />
        </details>
      </section>
      <details>
        <summary>Lesson sheet, parameters and whatever else a scenario may hold</summary>
        <Auto draft={draft} path={[]} shape={shape} but={PLACED} />
      </details>
    </>
  );
}

/** The airframe that is written, or that of the name that is written. */
export function airframeIn(json: Parameters<typeof valueAt>[0], { airframes }: BenchKit): Airframe | null {
  const written = valueAt(json, ['airframe']);
  if (typeof written === 'string') return airframes.get(written) ?? null;
  const list = valueAt(written, ['settings']);
  return isWritten(written) && Array.isArray(list) && list.every((one) => isWritten(one) && typeof one['deg'] === 'number' && typeof one['name'] === 'string') ? (written as unknown as Exclude<Scenario['airframe'], string>) : null;
}

function AirframeField({ draft, kit }: Omit<Props, 'shape'>) {
  const value = valueAt(draft.json.value, ['airframe']);
  const name = typeof value === 'string' ? value : '';
  return (
    <div class="field field-wide">
      <span class="field-name" aria-hidden="true">Airframe</span>
      <select aria-label="Airframe" value={name} onChange={({ currentTarget: { value: to } }) => draft.put(['airframe'], to)}>
        {!kit.airframes.has(name) && <option value={name}>{name === '' ? 'written in full' : name}</option>}
        {[...kit.airframes].map(([key, { title }]) => <option key={key} value={key}>{title}</option>)}
      </select>
    </div>
  );
}

function Scored({ draft, shape }: Omit<Props, 'kit'>) {
  const isScored = isWritten(valueAt(draft.json.value, ['recognition']));
  return (
    <>
      <div role="radiogroup" aria-label="What is scored" class="field">
        <Segments name="scored" choices={[['drill', 'the call: a release is a pause'], ['scored', 'the first release']] as const} chosen={isScored ? 'scored' : 'drill'} choose={(to) => draft.put(['recognition'], to === 'drill' ? undefined : {})} />
      </div>
      {isScored && <Fields>{['limitDeg', 'seenDeg', 'measuring'].map((key) => <Field key={key} draft={draft} path={['recognition', key]} of={keyIn(shape, 'recognition', key)} />)}</Fields>}
      <Fields>{[...(keyIn(shape, 'procedure').shape as ObjectShape).keys].map(([key, of]) => <Field key={key} draft={draft} path={['procedure', key]} of={of} />)}</Fields>
    </>
  );
}
