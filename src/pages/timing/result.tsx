/** What a timing check came to: median and spread, each release on one rule, and whether times by it mean anything. */
import { isFit, TIMING_LIMITS } from '../../../sim/stats/timing-check.js';
import { change } from '../changing.js';
import { timing, type KeptTiming } from './kept.js';

interface Props {
  readonly kept: KeptTiming;
  /** Times of the check that was just made; null: of an earlier day. */
  readonly times: readonly number[] | null;
  /** It was made on this screen. */
  readonly here: boolean;
}

export function TimingResult({ kept, times, here }: Props) {
  const { medianS, sdS, releases, input } = kept;
  const fit = isFit(kept);
  return (
    <section class="timing-result" aria-labelledby="timing-result">
      <h2 id="timing-result" class="ruled">{times === null ? 'The last check' : 'This check'}</h2>
      <p class="large"><strong>{fit ? 'Fit for timing.' : 'Not fit for timing.'}</strong> {fit
        ? 'Times and degrees at release mean what they say, within this spread.'
        : `${medianS > TIMING_LIMITS.medianS ? 'Hand and device together are slow' : 'Hand and device together are uneven'}: times by them mean little, and degrees at release come out larger than what you saw.`}{!here && ' It was made on another screen or zoom: records do not carry it here.'}</p>
      <dl class="figures three">
        <div><dt>Median</dt><dd><strong>{medianS.toFixed(2)} s</strong><span>fit up to {TIMING_LIMITS.medianS} s</span></dd></div>
        <div><dt>Spread (sd)</dt><dd><strong>{sdS.toFixed(2)} s</strong><span>fit up to {TIMING_LIMITS.sdS} s</span></dd></div>
        <div><dt>Releases</dt><dd><strong>{releases}</strong><span>by {input}</span></dd></div>
      </dl>
      {times !== null && <Times times={times} medianS={medianS} />}
      <button class="button quiet" type="button" onClick={() => change(() => { timing.value = null; return 'The check is forgotten'; })}>Forget it</button>
    </section>
  );
}

const [W, LEFT] = [560, 8];

/** A mark a release, the median under them, the limit as a stop. */
function Times({ times, medianS }: { times: readonly number[]; medianS: number }) {
  const most = Math.max(1, ...times);
  const x = (s: number): number => LEFT + (s / most) * (W - 2 * LEFT);
  return (
    <svg class="timing-times" viewBox={`0 0 ${W} 64`} width={W} height="64" role="img" aria-label={`${times.length} releases from ${Math.min(...times).toFixed(2)} to ${Math.max(...times).toFixed(2)} s, the median ${medianS.toFixed(2)} s`}>
      <path class="device-rule" d={`M${x(0)} 36H${x(most)}`} />
      {[0, 0.2, 0.4, 0.6, 0.8, 1].map((s) => <g key={s}><path class="device-rule" d={`M${x(s)} 32V40`} /><text x={x(s)} y="56" text-anchor={s === 0 ? 'start' : most === 1 && s === 1 ? 'end' : 'middle'}>{s === 0 ? '0 s' : s}</text></g>)}
      {times.map((s, at) => <circle key={at} class="timing-one" cx={x(s)} cy="22" r="5" />)}
      <path class="timing-median" d={`M${x(medianS)} 8V36`} />
      <path class="timing-limit" d={`M${x(TIMING_LIMITS.medianS)} 14V44`} />
    </svg>
  );
}
