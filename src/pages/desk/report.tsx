/** The instructor's report of a live run: grades on five anchors apart from the machine's marks, prompts, and what the desk did and when. */
import type { Signal } from '@preact/signals';
import type { RunRecord } from '../../../sim/files/index.js';
import type { Facts } from '../debrief/facts.js';
import { seconds } from '../words.js';
import { ANCHORS } from './anchors.js';
import { deskTold, gradeRows, type DeskTold } from './told.js';

interface Props {
  readonly facts: Facts;
  readonly run: RunRecord;
  readonly cursor: Signal<number>;
}

export function DeskReport({ facts, run, cursor }: Props) {
  if (run.source !== 'live') return null;
  const told = deskTold(run);
  const prompts = told.filter(({ kind }) => kind === 'prompted');
  const desks = [...new Set(told.map(({ by }) => by))];
  return (
    <section class="desk-report" aria-labelledby="desk-report-title">
      <h2 id="desk-report-title" class="ruled">Instructor’s report</h2>
      <div class="desk-report-columns">
        <div>
          <h3>Grade, and what the machine found</h3>
          {run.desk === undefined ? <p class="small">No grade was written into this record.</p> : <Graded facts={facts} run={run} />}
          <p class="small">The grade is the instructor’s own and stands in the record as written: nothing proves it. Neither column is worked out from the other, and no sum is made of either.</p>
        </div>
        <div>
          <h3>{prompts.length === 0 ? 'No prompt was noted' : prompts.length === 1 ? 'Prompted once' : `Prompted ${prompts.length} times`}</h3>
          {prompts.length > 0 && <p class="prompts">{prompts.map(({ atS }) => <At key={atS} atS={atS} cursor={cursor} />)}</p>}
          <h3>What the desk did</h3>
          {told.length === 0 ? <p class="small">It looked on, and did nothing.</p> : <ol class="desk-told">{told.map((one, at) => <li key={at}><Told one={one} cursor={cursor} many={desks.length > 1} /></li>)}</ol>}
        </div>
      </div>
      <p class="small">A run under a desk enters no estimate of a person.</p>
    </section>
  );
}

function Graded({ facts, run }: Pick<Props, 'facts' | 'run'>) {
  return (
    <>
      <table class="desk-graded">
        <thead><tr><th class="text" scope="col">item</th><th class="text" scope="col">instructor</th><th class="text" scope="col">machine</th></tr></thead>
        <tbody>{gradeRows(run, facts).map(({ item, anchor, name, note, machine }) => (
          <tr key={item}>
            <th class="text" scope="row">{item}</th>
            <td class="text"><span class="anchor-cell"><Anchor anchor={anchor} /><span>{anchor !== null && <b>{anchor} </b>}{name}{note !== null && <em>{note}</em>}</span></span></td>
            <td class="text found">{machine ?? '–'}</td>
          </tr>
        ))}</tbody>
      </table>
      {run.desk?.note !== undefined && <p class="desk-note">{run.desk.note}</p>}
      <dl class="small anchor-words">{ANCHORS.map(({ anchor, name, means }) => <div key={anchor}><dt>{anchor} {name}</dt><dd>{means}</dd></div>)}</dl>
    </>
  );
}

/** Five places on a rule, the given one full; none where it was not seen. */
const Anchor = ({ anchor }: { anchor: number | null }) => (
  <svg viewBox="0 0 76 16" width="76" height="16" aria-hidden="true">
    <line class="way-rule" x1="8" x2="68" y1="8" y2="8" />
    {ANCHORS.map(({ anchor: at }) => <circle key={at} class={at === anchor ? 'anchor-given' : 'anchor-place'} cx={8 + (at - 1) * 15} cy="8" r={at === anchor ? 5.5 : 2.5} />)}
  </svg>
);

const At = ({ atS, cursor }: { atS: number; cursor: Signal<number> }) => (
  <button class="plain" type="button" title="Show this moment" onClick={() => { cursor.value = atS; }}>at {seconds(atS)}</button>
);

const Told = ({ one: { atS, by, words, more, kind }, cursor, many }: { one: DeskTold; cursor: Signal<number>; many: boolean }) => (
  <button class="desk-act" type="button" title="Show this moment" onClick={() => { cursor.value = atS; }}>
    <span class="told-at">{seconds(atS)}</span>
    <span>{kind === 'remark' ? <strong>{words}</strong> : words}{more !== null && `. ${more}`}{many && <span class="told-by"> {by}</span>}</span>
  </button>
);
