/** The lesson sheet beside a scenario, for the instructor or for the trainee; on paper it stands alone. */
import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { CAUTION } from '../../frame.js';
import '../../look/lesson.css';
import type { Json } from '../../../text/index.js';
import { parametersOf } from '../../../text/index.js';
import type { BenchProps } from '../bench.js';
import { drawsOf, type Draws } from './draws.js';
import { ALWAYS, instructorSheet, traineeSheet, type InstructorSheet, type Sheet } from './sheet.js';

/** Seeds that are told beforehand. */
const SEEDS = [1, 2, 3, 4, 5, 6];

export function Lesson({ draft, kit }: BenchProps) {
  const forTrainee = useSignal(false);
  const sound = draft.sound.value;
  if (sound?.kind !== 'scenario') return <p class="empty">A lesson sheet needs a sound scenario. Its problems stand in the list above.</p>;
  const scenario = sound.value;
  const airframe = typeof scenario.airframe === 'string' ? kit.airframes.get(scenario.airframe) : scenario.airframe;
  if (airframe === undefined) return null;
  const json = draft.json.value;
  const written = (json === null || typeof json !== 'object' || Array.isArray(json) ? {} : json) as { readonly [key: string]: Json | undefined };
  return (
    <div class="lesson">
      <div class="lesson-bar">
        <div class="lesson-forms" role="group" aria-label="Whose sheet">
          <button class="plain" type="button" aria-pressed={!forTrainee.value} onClick={() => { forTrainee.value = false; }}>Instructor</button>
          <button class="plain" type="button" aria-pressed={forTrainee.value} onClick={() => { forTrainee.value = true; }}>Trainee</button>
        </div>
        <button class="button quiet" type="button" onClick={() => print()}>Print</button>
      </div>
      {draft.read.value.value === null && <p class="note waits">The sheet is that of the last sound scenario; there are problems in what stands now.</p>}
      {forTrainee.value
        ? <Trainee sheet={traineeSheet(scenario, airframe)} />
        : <Instructor sheet={instructorSheet(scenario, airframe, written, parametersOf(json))} draws={drawsOf(scenario, airframe, SEEDS)} />}
    </div>
  );
}

const Block = ({ title, children }: { title: string; children: ComponentChildren }) => <section class="lesson-block"><h3 class="ruled">{title}</h3>{children}</section>;
const Lines = ({ of }: { of: readonly string[] }) => <ul class="lesson-lines">{of.map((line) => <li key={line}>{line}</li>)}</ul>;

function Common({ sheet: { objective, brief, conditions, standard } }: { sheet: Sheet }) {
  return (
    <>
      <Block title="Objective"><p class="large">{objective}</p></Block>
      <Block title="Brief"><p>{brief}</p></Block>
      <Block title="Conditions"><dl class="lesson-facts">{conditions.map(([what, value]) => <div key={what}><dt>{what}</dt><dd>{value}</dd></div>)}</dl></Block>
      <Block title="Standard"><Lines of={standard} /></Block>
    </>
  );
}

const Caution = () => <p class="lesson-caution">{CAUTION}</p>;

const Trainee = ({ sheet }: { sheet: Sheet }) => (
  <article class="lesson-sheet" aria-label="Lesson sheet for the trainee">
    <h2>Lesson sheet</h2>
    <Common sheet={sheet} />
    <Block title="Errors in every run"><Lines of={ALWAYS} /></Block>
    <Caution />
  </article>
);

function Instructor({ sheet, draws }: { sheet: InstructorSheet; draws: Draws }) {
  const { title, notes, faults, events, parameters, quiet, errors } = sheet;
  const shown = errors ?? [...new Set([...faults, ...(quiet === null ? [] : [quiet])].flatMap((one) => one.errors))];
  return (
    <article class="lesson-sheet" aria-label="Lesson sheet for the instructor">
      <h2>{title}</h2>
      <p class="small">For the instructor: it tells what comes. The trainee’s sheet does not.</p>
      <Common sheet={sheet} />
      <Block title="Faults">
        {faults.length === 0 && <p>None: the run stays quiet.</p>}
        {faults.map(({ name, does, actions }) => (
          <div key={name} class="lesson-fault">
            <p><strong>{name}</strong> {does}</p>
            <Lines of={actions} />
          </div>
        ))}
        {quiet !== null && <Lines of={quiet.actions} />}
      </Block>
      {events.length > 0 && <Block title="Events"><Lines of={events} /></Block>}
      {parameters.length > 0 && <Block title="Set beforehand"><Lines of={parameters} /></Block>}
      <Block title="Seeds"><Seeds draws={draws} /></Block>
      <Block title="Common errors"><Lines of={[...shown, ...ALWAYS]} /></Block>
      {notes !== '' && <Block title="Notes"><p>{notes}</p></Block>}
      <Block title="Flown">
        <dl class="lesson-flown">
          {['Trainee', 'Date', 'Seed', 'Outcome', 'Prompted: yes, no', 'Remarks'].map((what) => <div key={what}><dt>{what}</dt><dd /></div>)}
        </dl>
      </Block>
      <Caution />
    </article>
  );
}

function Seeds({ draws: { heads, rows } }: { draws: Draws }) {
  if (heads.length === 0) return <p>Nothing of the faults is drawn. A seed still draws rigging, wander and the natural disturbance, where they are on.</p>;
  return (
    <div class="wide"><table class="lesson-seeds">
      <thead><tr><th scope="col">seed</th>{heads.map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
      <tbody>{rows.map(({ seed, values }) => <tr key={seed}><th scope="row">{seed}</th>{values.map((value, at) => <td key={heads[at]}>{value}</td>)}</tr>)}</tbody>
    </table></div>
  );
}
