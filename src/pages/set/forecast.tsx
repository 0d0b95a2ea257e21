/** Own forecast: said before the first run of a set, if one likes; scored afterwards, apart from flying. */
import { useSignal } from '@preact/signals';
import type { FlownSet, Forecast } from '../../../sim/index.js';
import { forecastScore, MOST_SPLIT_DEG } from '../../../sim/stats/forecast.js';
import { degrees } from '../words.js';

/** @param said called at every change; null while it is not whole */
export function ForecastForm({ said }: { said: (forecast: Forecast | null) => void }) {
  const typed = useSignal({ caught: '', from: '', to: '' });
  const change = (key: keyof typeof typed.value) => ({ currentTarget: { value } }: { currentTarget: HTMLInputElement }): void => {
    typed.value = { ...typed.value, [key]: value };
    said(forecastOf(typed.value));
  };
  const { caught, from, to } = typed.value;
  const isBegun = caught !== '' || from !== '' || to !== '';
  return (
    <fieldset class="forecast">
      <legend>Your own forecast, if you like</legend>
      <label>I catch, of 10 splits<input type="number" min="0" max="10" step="1" inputMode="numeric" value={caught} onInput={change('caught')} /></label>
      <label>My median split from (°)<input type="number" min="0" max={MOST_SPLIT_DEG} step="0.1" inputMode="decimal" value={from} onInput={change('from')} /></label>
      <label>to (°)<input type="number" min="0" max={MOST_SPLIT_DEG} step="0.1" inputMode="decimal" value={to} onInput={change('to')} /></label>
      <p class="small" role="status">{isBegun && forecastOf(typed.value) === null ? 'Not kept yet: it wants all three figures, the lesser split first.' : 'A range that you would trust four times in five. It is scored by itself and changes nothing in the set.'}</p>
    </fieldset>
  );
}

/** null where a figure is missing or out of its range. */
export function forecastOf({ caught, from, to }: { caught: string; from: string; to: string }): Forecast | null {
  const [caughtOf10, fromDeg, toDeg] = [caught, from, to].map((text) => (text.trim() === '' ? Number.NaN : Number(text))) as [number, number, number];
  const isWhole = Number.isInteger(caughtOf10) && caughtOf10 >= 0 && caughtOf10 <= 10;
  return isWhole && fromDeg >= 0 && toDeg >= fromDeg && toDeg <= MOST_SPLIT_DEG ? { caughtOf10, fromDeg, toDeg } : null;
}

export function ForecastResult({ forecast, result: { person } }: { forecast: Forecast; result: FlownSet }) {
  const { caughtOf10, fromDeg, toDeg } = forecast;
  const found = forecastScore(forecast, person);
  return (
    <section class="forecast-result">
      <h2 class="ruled">Your own forecast, apart from flying</h2>
      {found === null && <p class="small">You expected {caughtOf10} of 10 caught, and a median split between {degrees(fromDeg)} and {degrees(toDeg)}. It is scored from 8 decided runs on.</p>}
      {found !== null && (
        <>
          <p>You expected {caughtOf10} of 10 caught; {found.k} of {found.n} were. Score {found.brier.toFixed(2)}, and {found.bestBrier.toFixed(2)} for whoever had known the share.</p>
          <p>
            You expected the median between {degrees(fromDeg)} and {degrees(toDeg)}; {found.range === null
              ? 'it lies beyond what was seen, so the range is not scored.'
              : `it was ${degrees(found.range.medianDeg)}. Score ${found.range.score.toFixed(2)}: ${found.range.widthDeg.toFixed(2)} for the width of the range${found.range.fineDeg > 1e-9 ? ` and ${found.range.fineDeg.toFixed(2)} for missing it` : ''}.`}
          </p>
          <p class="small">Smaller is better, and the best way to a small score is to say what you believe.</p>
        </>
      )}
    </section>
  );
}
