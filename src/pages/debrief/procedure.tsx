/** What was kept and what was not: each item leads the cursor to the moment that proves it. */
import type { Signal } from '@preact/signals';
import type { RunRecord } from '../../../sim/files/index.js';
import type { ProcedureItem } from '../../../sim/index.js';
import type { Facts } from './facts.js';
import { assessed } from './judged.js';
import { figureOf, ITEM_WORDS, momentOf, proofOf } from './proofs.js';
import { seconds, tight } from '../words.js';

/** A sign of its own for kept, broken and open: nothing is told by colour. */
export const Sign = ({ ok }: { ok: boolean | null }) => (
  <svg class="sign" viewBox="0 0 18 18" width="18" height="18" aria-hidden="true">
    <path class="sign-line" d={ok === null ? 'M3 9H15' : ok ? 'M3 9.5L7 13.5L15 4.5' : 'M9 2.5L16 15H2Z'} />
  </svg>
);

export function Procedure({ facts, cursor }: { facts: Facts; cursor: Signal<number> }) {
  const asked = facts.flight.procedure.filter(({ ok }) => ok !== null);
  const open = facts.flight.procedure.filter(({ ok }) => ok === null);
  return (
    <section class="procedure procedure-own" aria-labelledby="procedure-title">
      <h2 id="procedure-title" class="ruled">Procedure{asked.length > 0 && <span class="tally"><span class="unseen">: </span>{asked.filter(({ ok }) => ok).length} of {asked.length} kept</span>}</h2>
      <ul>
        {asked.map((one) => (
          <li key={one.item}><Proved one={one} facts={facts} cursor={cursor} /></li>
        ))}
      </ul>
      {asked.length === 0 && <p class="small">Nothing was asked for in this run.</p>}
      {open.length > 0 && asked.length > 0 && (
        <details class="not-asked">
          <summary>{open.length} more, not asked for in this run</summary>
          <p class="small">{open.map(({ item }, index) => (index === 0 ? ITEM_WORDS[item] : lower(ITEM_WORDS[item]))).join('; ')}.</p>
        </details>
      )}
    </section>
  );
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function Proved({ one, facts, cursor }: { one: ProcedureItem; facts: Facts; cursor: Signal<number> }) {
  const moment = momentOf(one, facts);
  const figure = figureOf(one);
  const inside = (
    <>
      <Sign ok={one.ok} />
      <span class="item">{ITEM_WORDS[one.item]}<span class="unseen">: {one.ok ? 'kept' : 'broken'}, </span></span>
      <span class="proof">{proofOf(one, facts)}</span>
      {figure !== null && <span class="against"><span class="unseen">: </span>{tight(figure)}</span>}
    </>
  );
  if (moment === null) return <div class="proved">{inside}</div>;
  return <button class="proved" type="button" title="Show this moment" onClick={() => { cursor.value = moment; }}>{inside}</button>;
}

/** How the second task went, in one line. */
function besideWords({ callouts }: Pick<Facts, 'callouts'>): string {
  const due = callouts.filter(({ ok }) => ok !== null);
  if (due.length === 0) return 'Nothing was due before the run ended.';
  const right = due.filter(({ ok }) => ok === true);
  const wrong = due.filter(({ ok, answer }) => ok === false && answer !== null).length;
  const missed = due.length - right.length - wrong;
  const times = right.flatMap(({ answeredS }) => answeredS ?? []).sort((a, b) => a - b);
  const [low, high] = [times[Math.floor((times.length - 1) / 2)], times[Math.floor(times.length / 2)]];
  const within = low === undefined || high === undefined ? '' : `, half of them within ${seconds((low + high) / 2)}`;
  return `${right.length} of ${due.length} right and in time${within}; ${wrong} wrong, ${missed} missed.`;
}

export function Callouts({ facts, cursor }: { facts: Facts; cursor: Signal<number> }) {
  if (facts.callouts.length === 0) return null;
  return (
    <section class="procedure" aria-labelledby="callouts-title">
      <h2 id="callouts-title" class="ruled">Beside the flaps</h2>
      <p class="small">{besideWords(facts)}</p>
      <ul>
        {facts.callouts.map(({ atS, kind, text, right, answer, answeredS, ok }) => (
          <li key={atS}>
            <button class="proved" type="button" title="Show this moment" onClick={() => { cursor.value = atS; }}>
              <Sign ok={ok} />
              <span class="item">{kind === 'caution' ? `Caution: ${text}` : text}<span class="unseen">: </span></span>
              <span class="proof">at {seconds(atS)}: {
                answer === null || answeredS === null ? (ok === null ? 'the run ended before an answer was due' : `no answer; right was ${right}`)
                  : `${answer} after ${seconds(answeredS)}${answer === right ? '' : `; right was ${right}`}`
              }</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function Said({ facts, run }: { facts: Facts; run: RunRecord }) {
  if (run.assessment === null) return null;
  return (
    <table class="said">
      <caption>Your own judgement</caption>
      <thead><tr><td /><th scope="col">you said</th><th scope="col">it was</th></tr></thead>
      <tbody>{assessed(run.assessment, facts, run).map(({ what, said, was }) => <tr key={what}><th scope="row">{what}</th><td>{said}</td><td>{was}</td></tr>)}</tbody>
    </table>
  );
}
