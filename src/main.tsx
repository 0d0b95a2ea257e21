/** Composes the house: pages in front; engine, canvas, hands and files behind, each fetched when it is first needed. */
import { signal } from '@preact/signals';
import { render } from 'preact';
import type { RunRecord } from '../sim/files/index.js';
import type { Shelved } from './records/shelf.js';
import type { ShelvedSet } from './records/sets.js';
import { readBoard } from './input/board.js';
import { keyCard, keyGroups, type Printed } from './input/card.js';
import { bindingsOf } from './input/keys.js';
import { isBindable, rebind, rebindToDefault } from './input/rebind.js';
import { App } from './pages/app.js';
import { keeper } from './keeper.js';
import type { Cabin, Flown, Flying, House, Keys } from './pages/house.js';
import './pages/look/index.css';
import { heardOf } from './sound/heard.js';
import { endSample, playSample } from './sound/sample.js';
import { openSpeaker } from './sound/speaker.js';
import { pxPerDeg } from './view/dial.js';

const APP = 'evenhand 0.1.0';

let shelved: Promise<Shelved[]> | null = null;
const shelf = (): Promise<Shelved[]> => (shelved ??= import('./records/shelf.js').then((module) => module.shelf()));

let shelvedSets: Promise<ShelvedSet[]> | null = null;
const sets = (): Promise<ShelvedSet[]> => (shelvedSets ??= import('./records/sets.js').then((module) => module.sets()));

/** The set on whose run a practice is flown: the first calm one in which a side stops. */
let practising: Promise<{ of: ShelvedSet['of']; stopDegPerS: number }> | null = null;
const practiceSet = (): Promise<{ of: ShelvedSet['of']; stopDegPerS: number }> => (practising ??= Promise.all([sets(), import('../sim/index.js')]).then(([all, { realisedRates }]) => {
  for (const { of } of all) {
    if (of.set.load !== 'calm' || (of.scenarios[0]?.task.settings[0] ?? 0) < (of.scenarios[0]?.start.flapDeg ?? 0)) continue;
    const stop = realisedRates(of).find(({ ratio }) => ratio === 0);
    if (stop !== undefined) return { of, stopDegPerS: stop.degPerS };
  }
  throw new Error('no shipped set has a side that stops');
}));

/** The scenario that is flown, and its dice. */
async function flownOf(of: Flown): Promise<Shelved & { seed: number }> {
  if ('drill' in of) {
    const drill = (await shelf())[of.drill - 1];
    if (drill === undefined) throw new RangeError(`there is no drill ${of.drill}`);
    return { ...drill, seed: of.seed ?? (crypto.getRandomValues(new Uint32Array(1))[0] as number) };
  }
  if ('practice' in of) {
    const [{ of: set, stopDegPerS }, { practiceScenario }] = await Promise.all([practiceSet(), import('../sim/index.js')]);
    return { scenario: practiceScenario(set, stopDegPerS, of.practice), airframe: set.airframe, seed: crypto.getRandomValues(new Uint32Array(1))[0] as number };
  }
  const [all, { drawSet }] = await Promise.all([sets(), import('../sim/index.js')]);
  const set = all[of.set - 1]?.of;
  const run = set === undefined ? undefined : drawSet(set, of.attempt.seed)[of.place];
  const scenario = run === undefined ? undefined : set?.scenarios[run.rate];
  if (set === undefined || run === undefined || scenario === undefined) throw new RangeError('there is no such run');
  return { scenario, airframe: set.airframe, seed: run.seed };
}

/** What a run needs beside its scenario: fetched while the brief is read. */
let kit: ReturnType<typeof fetchKit> | null = null;
const fetchKit = () => Promise.all([import('./run/start.js'), import('./view/stage.js'), import('./input/hands.js')]);

/** The loudspeaker of whichever run is flown. */
const speaker = openSpeaker();

async function fly(cabin: Cabin): Promise<Flying> {
  const [flown, [{ startDrill }, { openStage, RENDERER }, { bindHands }]] = await Promise.all([flownOf(cabin.of), (kit ??= fetchKit())]);
  const stage = await openStage(cabin.host);
  const running = startDrill({
    ...flown, app: APP,
    device: { isolated: crossOriginIsolated, clockGrainMs: grainMs(), renderer: RENDERER, input: '', ...(cabin.assisted.length > 0 ? { assisted: [...cabin.assisted] } : {}) },
    gauge: { pxPerDeg: pxPerDeg(flown.airframe.gauge.dial, cabin.at.gauge.radius), pixelRatio: devicePixelRatio, mmPerPx: null },
  });
  const { panel } = running;
  speaker.begin();
  stage.set(cabin.at, panel);
  let now: Parameters<typeof stage.draw>[0] | null = null;
  const unwatch = running.onPicture((picture) => {
    // A freeze lets a held switch go; the hand that held it must take it anew.
    if (picture.frozen && now?.frozen !== true) hands.letGo(performance.now());
    now = picture;
    speaker.loudness(cabin.loudness());
    speaker.hear(heardOf(picture));
    stage.draw(picture);
  });
  const pause = (stampMs: number): void => {
    if (now?.frozen === true) return;
    hands.letGo(stampMs);
    running.pause(stampMs);
    cabin.onPause('pause');
  };
  const hands = bindHands(cabin.host, {
    panel, now: () => now, letters: cabin.letters, bindings: () => bindingsOf(cabin.bindings()), act: running.act, pause,
    latched: cabin.latched, cover: running.cover, mute: cabin.mute,
    lose(stampMs, loss) {
      if (now?.frozen === true) return;
      running.lose(stampMs, loss);
      cabin.onPause(loss);
    },
  });
  keeping.follow('set' in cabin.of ? { attempt: cabin.of.attempt.id } : { drill: 'drill' in cabin.of ? cabin.of.drill : null }, running);
  running.onEnd(cabin.onEnd);
  return {
    panel, onPicture: running.onPicture, pause, resume: running.resume, stop: running.stop,
    place: (at) => stage.set(at, panel),
    turn: stage.turn,
    close() {
      unwatch();
      hands.close();
      stage.close();
      speaker.close();
    },
  };
}

/** The smallest step that the page's clock shows, ms. */
function grainMs(): number {
  let grain = 1000;
  for (let round = 0, before = performance.now(); round < 2000; round += 1) {
    const now = performance.now();
    if (now > before) grain = Math.min(grain, now - before);
    before = now;
  }
  return grain;
}

/** The digest covers what the trainee said, so it is made anew. */
async function assess(record: RunRecord, said: RunRecord['assessment']): Promise<RunRecord> {
  const { composeRecord } = await import('../sim/files/index.js');
  const { format: _format, digest: _digest, ...parts } = record;
  const whole = composeRecord({ ...parts, assessment: said });
  keeping.again(record, whole);
  return whole;
}

const NO_KEY = { what: 'refused', why: 'That has no key.' } as const;
/** Read while a page is drawn, so that it is drawn anew once the board is known. */
const printed = signal<Printed | undefined>(undefined);
void readBoard().then((board) => { printed.value = board ?? undefined; });

const keys: Keys = {
  groups: (changes) => keyGroups(bindingsOf(changes), printed.value),
  rebind: (changes, intent, stroke) => (isBindable(intent) ? rebind(bindingsOf(changes), intent, stroke) : NO_KEY),
  rebindToDefault: (changes, intent) => (isBindable(intent) ? rebindToDefault(bindingsOf(changes), intent) : NO_KEY),
};

const keeping = keeper(APP);

const house: House = {
  keyCard: (changes) => keyCard(bindingsOf(changes), printed.value),
  keys,
  unlock() {
    endSample();
    speaker.unlock();
  },
  trySound: playSample,
  isolated: crossOriginIsolated,
  drills: async () => {
    const [all, { cardOf }] = await Promise.all([shelf(), import('./pages/card.js')]);
    return all.map((one, index) => cardOf(one, index + 1));
  },
  sets: async () => {
    const [all, { setCard }] = await Promise.all([sets(), import('./pages/setcard.js')]);
    return all.map(({ of }, index) => setCard(of, index + 1));
  },
  setName: async (number) => (await sets())[number - 1]?.name ?? '',
  async flownSet(number, attempt) {
    const [all, book, { flownSet }] = await Promise.all([sets(), keeping.book(), import('../sim/index.js')]);
    const records = (await Promise.all(attempt.done.map(({ entry }) => book.record(entry)))).filter((record) => record !== null);
    const set = all[number - 1];
    return set === undefined || records.length === 0 ? null : flownSet(set.of, records);
  },
  async nextPractice(now) {
    const [{ stopDegPerS }, { firstPractice, nextPracticeRun }] = await Promise.all([practiceSet(), import('../sim/index.js')]);
    const at = now ?? { practice: firstPractice(stopDegPerS), seed: crypto.getRandomValues(new Uint32Array(1))[0] as number, runs: [] };
    return { run: nextPracticeRun(at.practice, at.seed), at };
  },
  practised: async (practice, run, outcome) => (await import('../sim/index.js')).practiceAfter(practice, run, outcome),
  async history(person) {
    const [all, book, { historyIn }] = await Promise.all([sets(), keeping.book(), import('./records/history.js')]);
    return historyIn(book, all, person);
  },
  margin: async (...about) => (await import('./pages/marginplace.js')).marginAt(...about),
  airframes: async () => [...(await import('./records/shelf.js')).airframesOnShelf().values()],
  warm: () => void (kit ??= fetchKit()),
  fly,
  assess,
  async debrief(record) {
    const { debriefOf, MODEL_VERSION } = await import('../sim/index.js');
    return record.model === MODEL_VERSION ? debriefOf(record) : null;
  },
  replay: async (record) => (await import('./run/replayed.js')).replayedOf(record),
  instruments: async (host) => (await import('./view/stage.js')).openStage(host),
  logbook: keeping.book,
  exportLogbook: keeping.exportAll,
  importLogbook: keeping.importFrom,
  save: async (record) => (await import('./records/file.js')).saveRecord(record),
  saveFile: async (file, name) => (await import('./records/file.js')).download(file, name),
  open: async (file) => (await import('./records/file.js')).openRecord(file),
};

render(<App house={house} />, document.getElementById('app') as HTMLElement);
