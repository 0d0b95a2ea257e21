/** An outcome as a sign and a word: no outcome is told by colour. */
import type { RunRecord } from '../../../sim/files/index.js';
import { OUTCOME_WORDS } from '../words.js';

export function OutcomeSign({ outcome }: { outcome: RunRecord['outcome'] }) {
  const good = ['caught', 'held', 'completed'].includes(outcome);
  const open = ['void', 'undecided', 'timeUp'].includes(outcome);
  const shape = good ? 'M3 9.5L7 13.5L15 4.5' : open ? 'M3 9H15' : 'M9 2.5L16 15H2Z';
  return <span class="outcome"><svg class="sign" viewBox="0 0 18 18" width="18" height="18" aria-hidden="true"><path class="sign-line" d={shape} /></svg>{OUTCOME_WORDS[outcome]}</span>;
}
