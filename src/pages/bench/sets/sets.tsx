/** Beside a set: what is drawn when, what a hand without eyes would make of it, and whether it measures anything. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { baseOf } from '../../../../sim/files/index.js';
import { readySet, wordsOf, type Gate, type ReadySet, type SetFigures } from '../../../../sim/index.js';
import type { Json } from '../../../text/index.js';
import '../../look/set-panel.css';
import type { BenchProps } from '../bench.js';
import { BlindStrip } from './blind.js';
import { flyFigures, type Came } from './figures.js';
import { RunPicture } from './run.js';
import { upper } from '../../../view/words.js';

const GATES: Readonly<Record<Gate['gate'], string>> = {
  blind: 'No hand without eyes gains by it', blindInClass: 'Nor if it knew the rate', decided: 'Every run with an onset is decided',
  steady: 'An ordinary watcher does far better', endsShort: 'The leg ends before the setting',
};

export function SetPanel({ draft, kit }: BenchProps) {
  const came = useSignal<Came>({ is: 'flying' });
  const sound = draft.sound.value;
  const set = sound?.kind === 'set' ? sound.value : null;
  const found = set === null ? null : baseOf(set, (name) => kit.airframes.get(name), (name) => kit.drills.get(name));
  const of = set !== null && found !== null && 'base' in found ? readySet(set, found.base, found.airframe) : null;
  const key = of === null ? '' : JSON.stringify(of.set);
  useEffect(() => {
    if (of === null) return undefined;
    came.value = { is: 'flying' };
    return flyFigures(of, (now) => { came.value = now; });
  }, [key]);
  if (set === null || of === null) return <p class="empty">Figures and gates need a sound set. Its problems stand in the list above.</p>;
  const now = came.value;
  const here = now.is === 'here' ? now : null;
  return (
    <div class="set-panel">
      {draft.read.value.value === null && <p class="note waits">These are the figures of the last sound set; there are problems in what stands now.</p>}
      <p class="small">{wordsOf(of).map((words) => `${upper(words)}.`).join(' ')}</p>
      <Drawn of={of} />
      <section aria-label="One run">
        <h2 class="ruled">One run, and how fast the pointers part</h2>
        <RunPicture of={of} figures={here?.figures ?? null} />
      </section>
      <section aria-labelledby="set-gates">
        <h2 class="ruled" id="set-gates">Gates</h2>
        <p class="small" role="status">{now.is === 'flying' ? 'Flying whole sets for the gates …' : now.is === 'failed' ? `The gates could not be flown: ${now.why}.` : here?.gates.every(({ ok }) => ok) === true ? 'All gates hold: this set measures.' : 'A gate does not hold: what this set gives is no measure of anybody.'}</p>
        {here !== null && <Gates gates={here.gates} />}
      </section>
      {here !== null && <Blinds of={of} figures={here.figures} />}
      <Base draft={draft} of={of} named={typeof set.scenario === 'string' ? set.scenario : null} base={found !== null && 'base' in found ? found.base as unknown as Json : null} />
    </div>
  );
}

function Drawn({ of: { set, hazardPerS, onsets } }: { of: ReadySet }) {
  const shares = set.rates.reduce((sum, { share }) => sum + share, 0);
  const facts = [
    ['Runs', `${set.runs}${set.blocks > 1 ? ` in ${set.blocks} blocks` : ''}`],
    ['Onsets drawn', `${onsets.from} to ${onsets.to}, ${onsets.perRate} or more at each rate`],
    ['Quiet runs', `about ${Math.round(set.quiet * set.runs)}`],
    ['Chance of an onset', `${(100 * hazardPerS).toFixed(1)} % a second, ${set.onsetFromS} to ${set.onsetFromS + set.onsetForS} s of holding`],
    ['Rates', set.rates.map(({ ratio, share }) => `${ratio} (${Math.round((100 * share) / shares)} %)`).join(', ')],
  ] as const;
  return <dl class="lesson-facts set-facts">{facts.map(([what, value]) => <div key={what}><dt>{what}</dt><dd>{value}</dd></div>)}</dl>;
}

const Gates = ({ gates }: { gates: readonly Gate[] }) => (
  <ul class="set-gates">
    {gates.map(({ gate, ok, found, asked }) => (
      <li key={gate} class={ok ? 'holds' : 'fails'}>
        <svg class="sign" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">{ok ? <path class="sign-line" d="M4 10.5L8.5 15L16 5.5" /> : <path class="sign-line" d="M5 5L15 15M15 5L5 15" />}</svg>
        <span><strong>{GATES[gate]}{ok ? '' : ': does not hold'}</strong><span class="small">{found}; asked: {asked}.</span></span>
      </li>
    ))}
  </ul>
);

function Blinds({ of, figures }: { of: ReadySet; figures: SetFigures }) {
  const { limit } = figures;
  return (
    <section aria-labelledby="set-blind">
      <h2 class="ruled" id="set-blind">Hands without eyes</h2>
      <BlindStrip figures={figures} />
      <p class="small">
        Mean points a run of a hand that goes by time alone, rates mixed and hidden. The limit of {limit.deg}° uses {limit.rollAuthorityPct.toFixed(0)} % of the roll authority
        {limit.deg === limit.tiedDeg ? ', which is what 20 % comes to' : `; what 20 % comes to would be ${limit.tiedDeg}°`}. Points are for play ({of.set.points.falseRelease} taken for a false release, {of.set.points.missed} for a split missed, {of.set.points.held} given for a quiet run held).
      </p>
    </section>
  );
}

/** The run without its fault: named, or in the file. */
function Base({ draft, of, named, base }: { draft: BenchProps['draft']; of: ReadySet; named: string | null; base: Json | null }) {
  const [first] = of.scenarios;
  return (
    <section aria-labelledby="set-base">
      <h2 class="ruled" id="set-base">Its run</h2>
      <p>{named === null ? 'The run stands in this file, under scenario.' : `The run is the drill ${named}.`} {first !== undefined && `From ${first.start.flapDeg} toward ${first.task.settings[0] ?? ''} deg at ${first.start.speedKt} kt on ${of.airframe.title}.`}</p>
      {named !== null && base !== null && <button class="button quiet" type="button" onClick={() => draft.put(['scenario'], base)}>Write the run into this file</button>}
    </section>
  );
}
