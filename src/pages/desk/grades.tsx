/** The instructor's own grade, on five anchors; kept apart from what the machine says, and blank where nothing was seen. */
import { useSignal } from '@preact/signals';
import type { Grades as Given } from '../../../sim/files/index.js';
import { ANCHORS, GRADED } from './anchors.js';
import type { DeskLink, DeskNow } from './house.js';

export function Grades({ now, link }: { now: DeskNow; link: DeskLink }) {
  const grades = useSignal<Readonly<Record<string, number>>>(Object.fromEntries((now.record?.desk?.grades ?? []).map(({ item, anchor }) => [item, anchor])));
  const note = useSignal(now.record?.desk?.note ?? '');
  const sent = now.sent.findLast(({ what }) => what.do === 'grade');
  const give = (event: Event): void => {
    event.preventDefault();
    const words = note.value.trim();
    const given: Given = {
      grades: GRADED.flatMap((item) => (grades.value[item] === undefined ? [] : [{ item, anchor: grades.value[item] }])),
      ...(words === '' ? {} : { note: words }),
    };
    link.grade(given);
  };
  return (
    <section class="desk-grades" aria-labelledby="desk-grades">
      <h2 id="desk-grades" class="ruled">Your grade</h2>
      <form onSubmit={give}>
        <dl class="desk-anchors">{ANCHORS.map(({ anchor, name, means }) => <div key={anchor}><dt><b>{anchor}</b> {name}</dt><dd>{means}</dd></div>)}</dl>
        <div class="desk-items">
          {GRADED.map((item) => (
            <fieldset key={item}>
              <legend>{item}</legend>
              <div class="segments">
                {ANCHORS.map(({ anchor, name }) => (
                  <label key={anchor}><input type="radio" name={`grade ${item}`} checked={grades.value[item] === anchor} onChange={() => { grades.value = { ...grades.value, [item]: anchor }; }} aria-label={`${anchor}, ${name}`} /><span aria-hidden="true">{anchor}</span></label>
                ))}
                <label><input type="radio" name={`grade ${item}`} checked={grades.value[item] === undefined} onChange={() => { grades.value = Object.fromEntries(Object.entries(grades.value).filter(([key]) => key !== item)); }} /><span>not seen</span></label>
              </div>
            </fieldset>
          ))}
        </div>
        <div class="desk-row">
          <input type="text" aria-label="A note on the whole run" maxLength={2000} placeholder="a note on the whole run" value={note.value} onInput={({ currentTarget }) => { note.value = currentTarget.value; }} />
          <button class="button quiet" type="submit">Write into the record</button>
        </div>
        <p class="small" role="status">{sent === undefined ? 'Kept apart from the machine’s marks. It may be changed for as long as the trainee’s window is open.' : sent.state === 'sent' ? 'Sent …' : sent.state === 'taken' ? 'It is in the record.' : sent.refused}</p>
      </form>
    </section>
  );
}
