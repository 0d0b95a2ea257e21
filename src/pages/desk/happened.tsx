/** What happened, the latest first; and of what was done here, whether the run has taken it. */
import type { Sent } from '../../link/known.js';
import type { DeskLive, DeskNow } from './house.js';
import { actWords, clock } from './words.js';

const wordsOf = ({ what }: Sent): string => (what.do === 'grade' ? 'grades' : actWords(what));
const BY = { hand: 'trainee', desk: 'desk', run: 'run' } as const;

export function Happened({ now, live }: { now: DeskNow; live: DeskLive }) {
  const open = now.sent.filter(({ state }) => state !== 'taken').slice(-4);
  return (
    <section aria-labelledby="desk-happened">
      <h2 id="desk-happened" class="ruled">What happened</h2>
      <p class="unseen" role="status">{lastAnswer(now)}</p>
      <ol class="desk-happened" tabIndex={0} aria-label="What happened, the latest first">
        {open.toReversed().map((one) => (
          <li key={`s${one.number}`} class={`desk-sent desk-${one.state}`}><em>{one.state === 'sent' ? 'sent' : 'refused'}</em><span>{wordsOf(one)}{one.refused !== null && <small> {one.refused}</small>}</span></li>
        ))}
        {live.happened.map(({ key, tick, by, other, words }) => (
          <li key={key} class={`desk-by-${by}`}><em>{clock(tick)}</em><span><b>{other ?? BY[by]}</b> {words}</span></li>
        ))}
      </ol>
    </section>
  );
}

/** What came of the act done last, for those who hear the page. */
function lastAnswer({ sent }: DeskNow): string {
  const one = sent[sent.length - 1];
  if (one === undefined) return '';
  if (one.state === 'sent') return `${wordsOf(one)}: sent`;
  return one.state === 'taken' ? `${wordsOf(one)}: taken${one.tick === null ? '' : ` at ${clock(one.tick)}`}` : `${wordsOf(one)}: refused. ${one.refused ?? ''}`;
}
