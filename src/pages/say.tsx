/** The trainee's own judgement, asked before anything is told. The gauge is empty until they set it themselves. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RunRecord } from '../../sim/files/index.js';
import { Fan, gaugeOf } from './fan.js';
import { Page } from './frame.js';
import type { House } from './house.js';
import { goInstead, record } from './session.js';

type Split = NonNullable<RunRecord['assessment']>['split'];

const ANSWERS = [['yes', 'Yes'], ['no', 'No'], ['unsure', 'Not sure']] as const;
/** Farthest that the slider goes, deg. */
const MOST_DEG = 6;

export function Say({ house, number, seed }: { house: House; number: number; seed: number | null }) {
  const split = useSignal<Split>(null);
  const apart = useSignal<number | null>(null);
  const run = record.value;
  useEffect(() => { if (run === null) goInstead({ page: 'brief', number, seed }); }, [run]);
  if (run === null) return null;
  const done = (): void => {
    const said = { split: split.value, growthDeg: split.value === 'no' ? null : apart.value };
    void house.assess(run, said).then((whole) => {
      record.value = whole;
      goInstead({ page: 'debrief' });
    });
  };
  const middle = 10;
  const shown = split.value !== 'no' && apart.value !== null ? apart.value : null;
  return (
    <Page title="Your own judgement" kind="say">
      <h1>Before you are told anything</h1>
      <form class="columns" onSubmit={(event) => { event.preventDefault(); done(); }}>
        <div>
          <fieldset class="answers">
            <legend>Was there a split?</legend>
            {ANSWERS.map(([value, word]) => (
              <label key={value} class="answer"><input type="radio" name="split" value={value} checked={split.value === value} onChange={() => { split.value = value; }} /><span>{word}</span></label>
            ))}
          </fieldset>
          <fieldset class="apart" disabled={split.value === 'no'}>
            <legend>How far apart were the pointers when you let go?</legend>
            <div class="slide">
              <input
                type="range" min={0} max={MOST_DEG} step={0.1} value={apart.value ?? 0} aria-label="Degrees apart"
                aria-valuetext={apart.value === null ? 'not said' : `${apart.value.toFixed(1)} degrees`}
                onInput={({ currentTarget }) => { apart.value = Number(currentTarget.value); }}
              />
              <output>{apart.value === null ? '–' : `${apart.value.toFixed(1)}°`}</output>
            </div>
            <button class="plain" type="button" onClick={() => { apart.value = null; }}>I cannot say</button>
          </fieldset>
          <button class="button" type="submit" disabled={split.value === null}>Show the debrief</button>
        </div>
        <figure>
          <Fan gauge={gaugeOf(run.airframe)} left={shown === null ? null : middle + shown / 2} right={shown === null ? null : middle - shown / 2} radius={280} title={shown === null ? 'The gauge, blanked' : `Two pointers ${shown.toFixed(1)} degrees apart, as you say`} />
          <figcaption>{shown === null ? 'Blanked. The slider sets it as you remember it.' : 'As you remember it; which side was ahead is not asked.'}</figcaption>
        </figure>
      </form>
    </Page>
  );
}
