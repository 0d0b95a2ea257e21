/** What the form of a forecast takes for one. */
import { expect, it } from 'vitest';
import { forecastOf } from '../../../src/pages/set/forecast.js';

it('all three figures, whole of ten, the lesser split first; ends hit exactly', () => {
  expect(forecastOf({ caught: '9', from: '0.8', to: '1.4' })).toEqual({ caughtOf10: 9, fromDeg: 0.8, toDeg: 1.4 });
  expect(forecastOf({ caught: '0', from: '0', to: '0' })).toEqual({ caughtOf10: 0, fromDeg: 0, toDeg: 0 });
  expect(forecastOf({ caught: '10', from: '40', to: '40' })).not.toBeNull();
  for (const [caught, from, to] of [['', '1', '2'], ['9', '', '2'], ['9', '1', ''], ['9.5', '1', '2'], ['11', '1', '2'], ['-1', '1', '2'], ['9', '2', '1'], ['9', '1', '40.1'], ['9', '-1', '1'], ['a', '1', '2']] as const) {
    expect(forecastOf({ caught, from, to }), `${caught} ${from} ${to}`).toBeNull();
  }
});
