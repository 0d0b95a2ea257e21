// Words of a recorded run looked about in: at every tick the same as the run itself showed, whatever way it is come to.
import { expect, test } from 'vitest';
import { advance, commandsOfRecord, debriefOf, expand, flyInputs, MODEL_VERSION, type World } from '../../sim/index.js';
import { ready, scriptedRecord } from '../../sim/files/index.js';
import { replyWords } from '../../src/pages/replay/heard.js';
import { momentsOf } from '../../src/pages/debrief/moments.js';
import { cuesOf, talkNow, type Cue } from '../../src/run/cues.js';
import { heardIn } from '../../src/run/heard.js';
import { replayedOf } from '../../src/run/replayed.js';
import { AIRFRAME, scenario } from '../sim/bench.js';

const events = [
  { do: 'callout', text: 'Speed?', answers: ['150', '160'], right: '160', withinS: 4, when: { atS: 3 } },
  // A watcher: it comes when the drive has been held so long.
  { do: 'message', text: 'Wind calm.', from: 'controller', when: { heldS: 6 } },
  { do: 'tellGoAround', text: 'Go around.', withinS: 10, when: { atS: 20 } },
];
const made = ready(scenario({ task: { limitS: 30 }, start: { flapDeg: 4, flapLeverDeg: 16 }, events, faults: [{ name: 'x', kind: 'disconnect', side: 'left', when: { heldS: 8 } }], procedure: { list: true } }), AIRFRAME);
const { commands, flight: { end, hash, outcome, score } } = flyInputs(made, AIRFRAME, 1, [
  { atS: 1, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }, { atS: 5, do: 'answer', text: '160' },
  { atS: 17, do: 'releaseDrive' }, { atS: 17.8, do: 'callSplit' }, { atS: 18.5, do: 'answer', text: 'at off' }, { atS: 24, do: 'goAround' },
]);
const record = scriptedRecord({ model: MODEL_VERSION, app: 'test', seed: 1, airframe: AIRFRAME, scenario: made, commands, end, hash, outcome, score });
const log = commandsOfRecord(record);

/** Played once from its start, as the page plays a run. */
const worlds: World[] = [expand(made, AIRFRAME, 1)];
const shown: (string | null)[] = [null];
let cues: readonly Cue[] = [];
for (let tick = 1; tick <= record.end.tick; tick += 1) {
  const world = advance(worlds[tick - 1]!, log, 1);
  worlds.push(world);
  cues = cuesOf(cues, world);
  shown.push(talkNow(cues, world, log, true)?.text ?? null);
}

test('in any order of ticks the words are those of the run', () => {
  expect(new Set(shown.filter((one) => one !== null)).size).toBeGreaterThan(3);
  const heard = heardIn((tick) => worlds[tick]!, log, true);
  for (let step = 0; step < worlds.length; step += 1) {
    const tick = (step * 7919) % worlds.length;
    expect(heard(tick)?.text ?? null, `tick ${tick}`).toBe(shown[tick]);
  }
  const { pictureAt, endTick } = replayedOf(record);
  for (const tick of [endTick, 350, 1200, 0]) expect(pictureAt(tick, false).talk?.text ?? null).toBe(shown[tick]);
});

test('what was told stands in the debrief and is marked once; a question is told with what came of it', () => {
  const facts = debriefOf(record);
  expect(facts.told.map(({ kind, from, text }) => [kind, from, text])).toEqual([['message', 'controller', 'Wind calm.'], ['tellGoAround', null, 'Go around.']]);
  const first = shown.findIndex((text) => text === 'Controller: Wind calm.');
  expect(facts.told[0]!.atS).toBeCloseTo((first - 1) / 100, 6);
  const words = momentsOf(facts, record).map(({ word }) => word);
  expect(words.filter((word) => word === 'message').length).toBe(1);
  expect(words).toContain('told to go around');
  expect(replyWords(facts, { text: 'Speed?' }, 3.01)).toBe('160 after 2.0 s');
  expect(replyWords(facts, { text: 'Speed?' }, 2.9)).toBeNull();
  const wrong = { callouts: facts.callouts.map((one) => ({ ...one, answer: '150', ok: false })) };
  expect(replyWords(wrong, { text: 'Speed?' }, 4)).toBe('150 after 2.0 s; right was 160');
  expect(replyWords({ callouts: wrong.callouts.map((one) => ({ ...one, answer: null })) }, { text: 'Speed?' }, 4)).toBe('no answer; right was 160');
});
