/** Composes the house: pages in front; engine, canvas, hands and files behind, each fetched when it is first needed. */
import { signal } from '@preact/signals';
import { render } from 'preact';
import type { RunRecord } from '../sim/files/index.js';
import type { Shelved } from './records/shelf.js';
import { readBoard } from './input/board.js';
import { keyCard, keyGroups, type Printed } from './input/card.js';
import { bindingsOf } from './input/keys.js';
import { isBindable, rebind, rebindToDefault } from './input/rebind.js';
import { App } from './pages/app.js';
import { keeper } from './keeper.js';
import type { Cabin, Flying, House, Keys } from './pages/house.js';
import './pages/look/index.css';
import { heardOf } from './sound/heard.js';
import { endSample, playSample } from './sound/sample.js';
import { openSpeaker } from './sound/speaker.js';
import { pxPerDeg } from './view/dial.js';

const APP = 'evenhand 0.1.0';

let shelved: Promise<Shelved[]> | null = null;
const shelf = (): Promise<Shelved[]> => (shelved ??= import('./records/shelf.js').then((module) => module.shelf()));

/** What a run needs beside its scenario: fetched while the brief is read. */
let kit: ReturnType<typeof fetchKit> | null = null;
const fetchKit = () => Promise.all([import('./run/start.js'), import('./view/stage.js'), import('./input/hands.js')]);

/** The loudspeaker of whichever run is flown. */
const speaker = openSpeaker();

async function fly(cabin: Cabin): Promise<Flying> {
  const [all, [{ startDrill }, { openStage, RENDERER }, { bindHands }]] = await Promise.all([shelf(), (kit ??= fetchKit())]);
  const drill = all[cabin.number - 1];
  if (drill === undefined) throw new RangeError(`there is no drill ${cabin.number}`);
  const stage = await openStage(cabin.host);
  const running = startDrill({
    ...drill, app: APP, training: cabin.training === true,
    seed: cabin.seed ?? (crypto.getRandomValues(new Uint32Array(1))[0] as number),
    device: { isolated: crossOriginIsolated, clockGrainMs: grainMs(), renderer: RENDERER, input: '', ...(cabin.assisted.length > 0 ? { assisted: [...cabin.assisted] } : {}) },
    gauge: { pxPerDeg: pxPerDeg(drill.airframe.gauge.dial, cabin.at.gauge.radius), pixelRatio: devicePixelRatio, mmPerPx: null },
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
  keeping.follow({ drill: cabin.number }, running);
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
  warm: () => void (kit ??= fetchKit()),
  fly,
  assess,
  async debrief(record) {
    const { debriefOf, MODEL_VERSION } = await import('../sim/index.js');
    return record.model === MODEL_VERSION ? debriefOf(record) : null;
  },
  logbook: keeping.book,
  exportLogbook: keeping.exportAll,
  importLogbook: keeping.importFrom,
  save: async (record) => (await import('./records/file.js')).saveRecord(record),
  open: async (file) => (await import('./records/file.js')).openRecord(file),
};

render(<App house={house} />, document.getElementById('app') as HTMLElement);
