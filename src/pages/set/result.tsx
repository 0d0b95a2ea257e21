/** What a set came to: three numbers side by side and never one, the curve of each rate, and what these runs do not say. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { FlownSet } from '../../../sim/index.js';
import type { Attempt } from '../../records/logbook/index.js';
import { Curves } from './curves.js';
import { ForecastResult } from './forecast.js';
import type { House } from '../house.js';
import type { SetCard } from './card.js';
import { setTask } from './task.js';
import { degrees } from '../words.js';

/** Of a number that so few runs do not give. */
const NOT_YET = 'not yet';
const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'long', timeStyle: 'short' });

export function SetResult({ house, set, one }: { house: House; set: SetCard; one: Attempt }) {
  const flown = useSignal<FlownSet | null | undefined>(undefined);
  useEffect(() => {
    flown.value = undefined;
    void house.flownSet(set.number, one).then((all) => { flown.value = all; }, () => { flown.value = null; });
  }, [house, one.id]);
  if (flown.value === undefined) return <p class="waiting">Counting …</p>;
  if (flown.value === null) return <p class="large">No run of this set is in the logbook any more.</p>;
  const result = flown.value;
  const { person: { caught, falseReleases, median, curves, needed }, counts } = result;
  const undone = one.runs - one.done.length;
  return (
    <>
      <p class="above"><span>{setTask(set)}, {set.loaded ? 'loaded' : 'calm'}; {one.name !== '' && <><strong>{one.name}</strong>, </>}flown {WHEN.format(one.startedMs)}{one.person !== '' && ` by ${one.person}`}{one.leftMs !== null && `, left off with ${undone} of ${one.runs} runs not flown`}</span></p>
      <dl class="figures three">
        <Number
          what="Caught" value={caught === null ? NOT_YET : `${caught.k} of ${caught.n}`}
          more={caught === null ? `shown from 8 decided runs on: ${needed.runsForCounts} more` : `decided runs; 95 % interval ${share(caught.lo)} to ${share(caught.hi)}`}
        />
        <Number
          what="False releases" value={falseReleases === null ? NOT_YET : `${falseReleases.perMin.toFixed(2)} a minute`}
          more={falseReleases === null ? 'shown together with the others' : `${falseReleases.count} in ${(falseReleases.quietS / 60).toFixed(1)} quiet minutes; ${falseReleases.lo.toFixed(2)} to ${falseReleases.hi.toFixed(2)}`}
        />
        <Number
          what="Median split at release" value={median === null ? NOT_YET : median.deg === null ? '–' : degrees(median.deg)}
          more={median === null ? 'shown together with the others' : median.deg === null ? 'beyond what was seen' : `95 % interval ${end(median.lo)} to ${end(median.hi)}`}
        />
      </dl>
      <Chances result={result} />
      {curves !== null && curves.length > 0 && <Curves curves={curves} limitDeg={result.limitDeg} />}
      {one.forecast !== undefined && <ForecastResult forecast={one.forecast} result={result} />}
      <section class="set-notes">
        <h2 class="ruled">What stands behind it</h2>
        <ul>
          {set.words.map((words) => <li key={words}><strong>{words}</strong></li>)}
          <li>{counts.runs} runs: {counts.caught} caught, {counts.late} late, {counts.missed} missed, {counts.undecided} undecided, {counts.falseRelease} false releases, {counts.held} quiet and held{result.void > 0 && `, ${result.void} void`}.</li>
          {result.assisted > 0 && <li>{result.assisted} of them were assisted. Compare them with assisted runs alone.</li>}
          {result.gaugeChanged && <li>The gauge changed its size within the set, so its runs are not one condition.</li>}
          {result.unfit > 0 && <li>{result.unfit} of them were flown with a hand and a device that the timing check found not fit: degrees at release come out larger than what was seen.</li>}
          <li>Points, for pace and not for skill: {Math.round(counts.points)} in all, {counts.meanPoints.toFixed(1)} a run.</li>
          <li>You knew that splits would come. A split that nobody expects is met later; by how much, no drill can say.</li>
          <li>The three numbers belong together: earlier releases with more false ones are a moved hand, not a better eye. Learning inside a set cannot be seen.</li>
        </ul>
      </section>
    </>
  );
}

const share = (part: number): string => `${Math.round(part * 100)} %`;
const end = (deg: number | null): string => (deg === null ? 'beyond what was seen' : degrees(deg));

const Number = ({ what, value, more }: { what: string; value: string; more: string }) => (
  <div><dt>{what}</dt><dd><strong>{value}</strong><span>{more}</span></dd></div>
);

/** The chance of letting go before the limit, at each flown rate: a dot on its interval. */
function Chances({ result: { person: { fit, needed }, limitDeg } }: { result: FlownSet }) {
  if (fit === null) return <p class="small">The chance of letting go before {limitDeg}° is worked out from 20 decided runs on: {needed.runsForFit} more.</p>;
  return (
    <section class="chances">
      <h2 class="ruled">Chance of letting go before {limitDeg}°, at each rate that was flown</h2>
      <table>
        <thead><tr><th class="text" scope="col">split opens by</th><th scope="col">chance</th><td /><th scope="col">half within</th><th scope="col">nine in ten within</th></tr></thead>
        <tbody>
          {fit.atRates.map(({ rateDegPerS, beforeLimit, medianDeg, q90Deg }) => (
            <tr key={rateDegPerS}>
              <th class="text" scope="row">{rateDegPerS.toFixed(2)}° a second</th>
              <td>{share(beforeLimit.median)}</td>
              <td class="range"><Range lo={beforeLimit.lo} mid={beforeLimit.median} hi={beforeLimit.hi} /></td>
              <td>{degrees(medianDeg.median)} <small>{degrees(medianDeg.lo)} to {degrees(medianDeg.hi)}</small></td>
              <td>{degrees(q90Deg.median)} <small>{degrees(q90Deg.lo)} to {degrees(q90Deg.hi)}</small></td>
            </tr>
          ))}
        </tbody>
      </table>
      {fit.thetaDeg !== null && fit.t0S !== null && (
        <p class="small">The eye needs about {degrees(fit.thetaDeg.median)} ({degrees(fit.thetaDeg.lo)} to {degrees(fit.thetaDeg.hi)}); attention, hand and device together about {fit.t0S.median.toFixed(1)} s ({fit.t0S.lo.toFixed(1)} to {fit.t0S.hi.toFixed(1)} s).</p>
      )}
      <p class="small">Intervals hold 95 of 100 such persons under the priors of the method (median threshold 1°, time 1.5 s); they are printed in the contributor’s guide.</p>
    </section>
  );
}

function Range({ lo, mid, hi }: { lo: number; mid: number; hi: number }) {
  const x = (part: number): number => 4 + part * 132;
  return (
    <svg viewBox="0 0 140 16" width="140" height="16" aria-hidden="true">
      <line class="way-rule" x1={x(0)} x2={x(1)} y1="8" y2="8" /><line class="way-tick" x1={x(0)} x2={x(0)} y1="4" y2="12" /><line class="way-tick" x1={x(1)} x2={x(1)} y1="4" y2="12" />
      <line class="way-run" x1={x(lo)} x2={x(hi)} y1="8" y2="8" /><circle class="way-from" cx={x(mid)} cy="8" r="4" />
    </svg>
  );
}
