/** What the pages need, put together from every folder; each part is fetched when it is first asked for. */
import type { RunRecord } from '../../sim/files/index.js';
import type { House } from '../pages/house.js';
import { endSample, playSample } from '../sound/sample.js';
import { bench } from './bench.js';
import { desk } from './desk.js';
import { fly, speaker, warm } from './cabin.js';
import { classHouse } from './class.js';
import { courseHouse } from './course.js';
import { practiceSet, sets, shelf } from './flown.js';
import { keeper } from './keeper.js';
import { card, keys } from './keys.js';
import { plan } from './plan.js';
import { own } from './own.js';
import { switches } from './switches.js';
import { timing } from './timing.js';

const APP = 'evenhand 0.1.0';

const keeping = keeper(APP);

/** The digest covers what the trainee said, so it is made anew. */
async function assess(record: RunRecord, said: RunRecord['assessment']): Promise<RunRecord> {
  const { composeRecord } = await import('../../sim/files/index.js');
  const { format: _format, digest: _digest, ...parts } = record;
  const whole = composeRecord({ ...parts, assessment: said });
  keeping.again(record, whole);
  return whole;
}

export const house: House = {
  keyCard: card,
  keys,
  switches,
  timing,
  unlock() {
    endSample();
    speaker.unlock();
  },
  trySound: playSample,
  isolated: crossOriginIsolated,
  drills: async () => {
    const [all, { cardOf }] = await Promise.all([shelf(), import('../pages/drill/card.js')]);
    return all.map((one, index) => cardOf(one, index + 1));
  },
  own,
  desk,
  sets: async () => {
    const [all, { setCard }] = await Promise.all([sets(), import('../pages/set/card.js')]);
    return all.map(({ of }, index) => setCard(of, index + 1));
  },
  setName: async (number) => (await sets())[number - 1]?.name ?? '',
  async flownSet(number, attempt) {
    const [all, book, { flownSet }] = await Promise.all([sets(), keeping.book(), import('../../sim/index.js')]);
    const records = (await Promise.all(attempt.done.map(({ entry }) => book.record(entry)))).filter((record) => record !== null);
    const set = all[number - 1];
    return set === undefined || records.length === 0 ? null : flownSet(set.of, records);
  },
  async lockOf(number, attempt) {
    const [all, book] = await Promise.all([sets(), keeping.book()]);
    const gauge = all[number - 1]?.of.airframe.gauge;
    if (gauge === undefined) return null;
    for (const { entry } of attempt.done) {
      const record = await book.record(entry);
      // A run in which the gauge changed its size says nothing certain; the first that was of one size does.
      if (record !== null && record.gauge.changed !== true) return { first: record.gauge, gauge };
    }
    return null;
  },
  async nextPractice(now) {
    const [{ stopDegPerS }, { firstPractice, nextPracticeRun }] = await Promise.all([practiceSet(), import('../../sim/index.js')]);
    const at = now ?? { practice: firstPractice(stopDegPerS), seed: crypto.getRandomValues(new Uint32Array(1))[0] as number, runs: [] };
    return { run: nextPracticeRun(at.practice, at.seed), at };
  },
  practised: async (practice, run, outcome) => (await import('../../sim/index.js')).practiceAfter(practice, run, outcome),
  async history(person) {
    const [all, book, { historyIn }] = await Promise.all([sets(), keeping.book(), import('../records/history.js')]);
    return historyIn(book, all, person);
  },
  margin: async (...about) => (await import('../pages/person/marginplace.js')).marginAt(...about),
  airframes: async () => [...(await import('../records/shelf.js')).airframesOnShelf().values()],
  warm,
  fly: (cabin) => fly(cabin, keeping, APP),
  assess,
  async debrief(record) {
    const { debriefOf, MODEL_VERSION } = await import('../../sim/index.js');
    return record.model === MODEL_VERSION ? debriefOf(record) : null;
  },
  replay: async (record) => (await import('../run/replayed.js')).replayedOf(record),
  instruments: async (host) => (await import('../view/stage.js')).openStage(host),
  logbook: keeping.book,
  exportLogbook: keeping.exportAll,
  importLogbook: keeping.importFrom,
  save: async (record) => (await import('../records/file.js')).saveRecord(record),
  saveFile: async (file, name) => (await import('../records/file.js')).download(file, name),
  open: async (file) => (await import('../records/file.js')).openRecord(file),
  course: courseHouse(keeping.book, sets),
  class: classHouse(sets),
  bench,
  plan,
};
