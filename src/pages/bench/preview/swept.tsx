/** What a sweep came to: one sentence, the outcomes with their intervals, the spreads of its figures. */
import type { Airframe, SweepOutput } from '../../../../sim/files/index.js';
import { OutcomeSign } from '../../debrief/outcome.js';
import { percent, tight } from '../../words.js';
import { hardWords } from './hard.js';
import { Strip } from './strip.js';

interface Props {
  readonly output: SweepOutput;
  readonly airframe: Airframe;
  readonly tookS: number;
  readonly stale: boolean;
  readonly save: (file: Blob, name: string) => void;
}

/** Ends of an interval, told apart as far as it is narrow. */
const interval = (lo: number, hi: number): string => {
  const places = hi - lo < 0.02 ? 1 : 0;
  return `${(100 * lo).toFixed(places)}–${(100 * hi).toFixed(places)} %`;
};

export function Swept({ output, airframe, tookS, stale, save }: Props) {
  const { outcomes, runs, trainee, seed, difficulty, growthAtReleaseDeg, rollAuthorityPct, finalSplitDeg, onsets, overLimitRuns } = output;
  return (
    <div class={stale ? 'came stale' : 'came'} data-sweep={output.hash}>
      <p class="came-sentence">{tight(hardWords(difficulty))}</p>
      <table class="shares">
        <caption class="unseen">How the runs came out</caption>
        <thead><tr><th scope="col">came out</th><th scope="col">runs</th><th scope="col">share</th><th scope="col">95 % interval</th><td /></tr></thead>
        <tbody>
          {outcomes.map(({ outcome, k, n, lo, hi }) => (
            <tr key={outcome}>
              <th scope="row"><OutcomeSign outcome={outcome} /></th><td>{k}</td><td>{percent((100 * k) / n)}</td><td>{interval(lo, hi)}</td>
              <td class="share-bar"><svg viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true"><line class="strip-rule" x1="0" x2="100" y1="7" y2="7" /><rect class="strip-bin" x="0" y="3" width={(100 * k) / n} height="8" /><line class="share-interval" x1={100 * lo} x2={100 * hi} y1="7" y2="7" /></svg></td>
            </tr>
          ))}
        </tbody>
      </table>
      {growthAtReleaseDeg !== null && <Strip title="Growth at release" unit="°" places={2} of={growthAtReleaseDeg} limit={{ value: difficulty.limitDeg, word: 'late' }} />}
      {finalSplitDeg !== null && finalSplitDeg.most > 0.005 && <Strip title="Final split" unit="°" places={2} of={finalSplitDeg} />}
      {rollAuthorityPct !== null && rollAuthorityPct.most > 0.05 && <Strip title="Roll authority used" unit=" %" places={0} of={rollAuthorityPct} limit={{ value: airframe.roll.autopilotLimit * 100, word: 'autopilot' }} />}
      <p class="small">
        {runs} runs by {trainee}, seeds drawn from {seed}, in {tookS.toFixed(1)} s. Something parted in {onsets.k}; above a limit speed in {overLimitRuns.k}. The scripted trainees are assumed figures, not people.
        {' '}<button class="link" type="button" onClick={() => save(new Blob([`${JSON.stringify(output, null, 2)}\n`], { type: 'application/json' }), 'evenhand-sweep.json')}>Save these figures</button>
      </p>
    </div>
  );
}
