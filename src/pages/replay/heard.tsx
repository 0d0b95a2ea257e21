/** Under the instruments of a replay: what stood to be read or answered at the cursor, and what came of it. */
import type { Talk } from '../../view/picture.js';
import type { Facts } from '../debrief/facts.js';
import { SIGNS } from '../debrief/moments.js';
import { seconds, tight } from '../words.js';

/** Whether anything was said in a run, or a list read: only then is a line kept free for it. */
export const isHeard = ({ callouts, told }: Pick<Facts, 'callouts' | 'told'>, list: boolean | undefined): boolean => callouts.length > 0 || told.length > 0 || list === true;

/** What came of a question that is up; null for what asked nothing. @param atS where the replay stands, s */
export function replyWords({ callouts }: Pick<Facts, 'callouts'>, { text }: Pick<Talk, 'text'>, atS: number): string | null {
  const asked = callouts.findLast((one) => one.atS <= atS + 1e-6 && text.endsWith(one.text));
  if (asked === undefined) return null;
  const { answer, answeredS, right, ok } = asked;
  if (answer === null || answeredS === null) return ok === null ? 'open when the run ended' : `no answer; right was ${right}`;
  return `${answer} after ${seconds(answeredS)}${answer === right ? '' : `; right was ${right}`}`;
}

export function Heard({ facts, talk, atS }: { facts: Facts; talk: Talk | null; atS: number }) {
  const reply = talk === null || talk.answers.length === 0 ? null : replyWords(facts, talk, atS);
  return (
    <p class="heard">
      {talk !== null && <><svg viewBox="-8 -8 16 16" width="16" height="16" aria-hidden="true"><path class="moment-sign" d={SIGNS.callout} /></svg><span>{talk.text}</span></>}
      {reply !== null && <span class="reply">{tight(reply)}</span>}
    </p>
  );
}
