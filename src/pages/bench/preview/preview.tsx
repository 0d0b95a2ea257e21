/** What the document comes to under a scripted trainee, as it is written. The instructor's own view: the truth may be told. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { BenchProps } from '../bench.js';
import { Figure } from '../../debrief/figure.js';
import { OutcomeSign } from '../../debrief/outcome.js';
import { cost, headline } from '../../debrief/sentences.js';
import { OUTCOME_MEANS, tight } from '../../words.js';
import { cursor, truth } from './chosen.js';
import { actedMoments } from './moments.js';
import { openPreview, type Previewing, type Seen } from './seen.js';
import { StartHereButton } from './start.js';
import { Sweep } from './sweep.js';
import { Variants } from './variants.js';
import { WhoFlies } from './who.js';

export function Preview(props: BenchProps) {
  const { draft, kit } = props;
  const previewing = useSignal<Previewing | null>(null);
  useEffect(() => {
    const opened = openPreview(props);
    previewing.value = opened;
    return () => opened.close();
  }, [draft, kit]);
  const now = previewing.value;
  const seen = now?.seen.value ?? null;
  const waits = draft.read.value.value === null;
  return (
    <div class="preview">
      <WhoFlies {...props} />
      {waits && <p class="note waits"><span>{seen === null ? 'Nothing to fly yet: the text has problems.' : 'The text has problems. This is what it came to before.'}</span></p>}
      {now?.failed.value != null && <p class="note" role="alert"><span>This could not be flown: {now.failed.value}.</span></p>}
      {now?.flying.value === true && <p class="waiting" role="status">Flying a long run …</p>}
      {seen !== null && <Told seen={seen} stale={waits || now?.flying.value === true} />}
      {seen !== null && <StartHereButton {...props} seen={seen} stale={waits || now?.flying.value === true} />}
      <Variants {...props} />
      <Sweep {...props} />
    </div>
  );
}

function Told({ seen: { order, scenario, preview }, stale }: { seen: Seen; stale: boolean }) {
  const { flight } = preview;
  const run = { scenario, airframe: order.airframe, source: 'scripted' as const };
  return (
    <div class={stale ? 'came stale' : 'came'} data-hash={flight.hash}>
      <p class="above"><OutcomeSign outcome={flight.outcome} /><span>{OUTCOME_MEANS[flight.outcome]}</span></p>
      <p class="came-sentence">{headline(preview, run).join(' ')}</p>
      <p class="small">{tight(cost(preview))}</p>
      <Figure facts={preview} run={run} cursor={cursor} truth={truth} other={null} also={actedMoments(scenario, preview.acted)} bare />
    </div>
  );
}
