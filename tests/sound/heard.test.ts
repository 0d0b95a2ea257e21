// From a picture to what is heard.
import { expect, test } from 'vitest';
import { heardOf } from '../../src/sound/heard.js';

test('the horn whether or not it can be silenced, the autopilot by its absence, nothing while the clock stands', () => {
  const seen = { blank: false, frozen: false, horn: 'silent', autopilot: true } as const;
  expect(heardOf(seen)).toEqual({ horn: false, autopilotOff: false });
  expect(heardOf({ ...seen, horn: 'sounds' })).toEqual({ horn: true, autopilotOff: false });
  expect(heardOf({ ...seen, horn: 'insists', autopilot: false })).toEqual({ horn: true, autopilotOff: true });
  expect(heardOf({ ...seen, horn: 'insists', blank: true })).toBeNull();
  expect(heardOf({ ...seen, horn: 'insists', frozen: true })).toBeNull();
});
