/** What the file did, as marks on the charts of the preview: each once, under the file's own name where it has one. */
import { expect, test } from 'vitest';
import { actedMoments } from '../../../../src/pages/bench/preview/moments.js';
import { scenario } from '../../../sim/bench.js';

const when = { atS: 10 };
const marks = (events: object[]): (string | undefined)[] => {
  const made = scenario({ events });
  return actedMoments(made, { faults: [], events: made.events.map(() => 10) }).map(({ word }) => word);
};

test('what asks is marked by the charts themselves, and so is what is told under no name', () => {
  expect(marks([{ do: 'clearHeading', text: 'heading 220', toDeg: 220, withinS: 20, when }, { do: 'caution', name: 'door', text: 'door', withinS: 20, when }])).toEqual([]);
  expect(marks([{ do: 'message', text: 'cloud', when }, { do: 'message', name: 'cloud', text: 'cloud', when }])).toEqual(['cloud']);
});

test('the rest in words', () => {
  expect(marks([{ do: 'level', when }, { do: 'loseMainDrive', when }, { do: 'setGear', name: 'gear', to: 'down', when }])).toEqual(['levels off', 'normal drive lost', 'gear']);
});
