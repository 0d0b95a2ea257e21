// The bench's workers: whatever their number and whoever answers first, a sweep is the same; what is asked anew ends what was asked before.
import { describe, expect, it } from 'vitest';
import { sweptOutput } from '../../../../sim/files/index.js';
import { difficultyOf, flyPart, partsOf, seedsOf, shareOf, together, type Part, type SweepOrder, type SweepRow } from '../../../../sim/index.js';
import { flySweep, runsOf } from '../../../../src/pages/bench/preview/crew.js';
import { hardWords } from '../../../../src/pages/bench/preview/hard.js';
import { openHand } from '../../../../src/pages/bench/preview/hand.js';
import type { Answer, Asked } from '../../../../src/pages/bench/preview/worker.js';
import { fileStem, openedText, slug, titleOf } from '../../../../src/pages/bench/shelf/opened.js';
import { dice } from '../../../../sim/dice.js';
import { AIRFRAME, drill } from '../../../sim/bench.js';

/** A stand-in for a worker: answers when it is told to, and counts its end. */
class Stand extends EventTarget {
  waiting: Asked[] = [];
  ended = false;
  order: SweepOrder | null = null;
  terminate(): void { this.ended = true; }
  postMessage(asked: Asked): void {
    if (asked.do === 'sweep') this.order = asked.of;
    else this.waiting.push(asked);
  }
  say(data: Answer): void { if (!this.ended) this.dispatchEvent(new MessageEvent('message', { data })); }
  /** Answers the oldest that waits. @returns false where none does */
  work(): boolean {
    const asked = this.waiting.shift();
    if (asked?.do !== 'part' || this.order === null) return false;
    this.say({ is: 'part', part: asked.part, rows: rowsOf(this.order, asked.part) });
    return true;
  }
}

const scenario = drill('set-16-from-4');

/** A part is flown once: who flies it makes no difference, and that is for other tests to say. */
const flownParts = new Map<string, SweepRow[]>();
function rowsOf(of: SweepOrder, part: Part): SweepRow[] {
  const key = JSON.stringify(part);
  const rows = flownParts.get(key) ?? flyPart(of, part);
  flownParts.set(key, rows);
  return rows;
}
const order: SweepOrder = { scenario, airframe: AIRFRAME, trainee: 'steady', seeds: seedsOf(5, 20) };

/** Flies with so many stand-ins, answered in an order drawn by a seed. */
async function flown(workers: number, seed: number) {
  const stands: Stand[] = [];
  const told: number[] = [];
  const rows = flySweep(order, workers, (done) => told.push(done), new AbortController().signal, () => {
    const stand = new Stand();
    stands.push(stand);
    return stand as unknown as Worker;
  });
  const pick = dice(seed, 'who answers');
  while (stands.some(({ ended, waiting }) => !ended && waiting.length > 0)) stands[Math.floor(pick.uniform() * stands.length)]?.work();
  return { rows: await rows, told, stands };
}

describe('a sweep', () => {
  it('is the same for any number of workers and any order of their answers, and as flown in one go', async () => {
    const parts = partsOf(20, 7);
    const alone = together(parts.map((part) => ({ part, rows: flyPart(order, part) })));
    for (const [workers, seed] of [[1, 1], [2, 2], [3, 3], [7, 4], [64, 5]] as const) {
      const { rows, told, stands } = await flown(workers, seed);
      expect(rows).toEqual(alone);
      expect(told.at(-1)).toBe(runsOf(20));
      expect(told).toEqual([...told].sort((a, b) => a - b));
      expect(stands.every(({ ended }) => ended)).toBe(true);
    }
    expect(sweptOutput({ scenario: 's', trainee: 'steady', seed: 5 }, scenario, AIRFRAME, alone)).toMatchObject({ runs: 20, difficulty: { runs: 20, limitDeg: 2.5 } });
  });
  it('that is stopped ends its workers and tells nothing', async () => {
    const stop = new AbortController();
    const stand = new Stand();
    const rows = flySweep(order, 1, () => { stop.abort(new Error('enough')); }, stop.signal, () => stand as unknown as Worker);
    stand.work();
    await expect(rows).rejects.toThrow('enough');
    expect(stand.ended).toBe(true);
  });
  it('whose worker fails says why', async () => {
    const stand = new Stand();
    const rows = flySweep(order, 1, () => undefined, new AbortController().signal, () => stand as unknown as Worker);
    stand.say({ is: 'failed', why: 'no such thing' });
    await expect(rows).rejects.toThrow('no such thing');
    expect(stand.ended).toBe(true);
  });
});

describe('one worker at a time', () => {
  const asked: Asked = { do: 'part', part: { of: 'sweep', from: 0, to: 1 } };
  const answer = (from: number): Answer => ({ is: 'part', part: { of: 'sweep', from, to: from + 1 }, rows: [] });
  it('ends the older work, and answers the newer alone', async () => {
    const stands: Stand[] = [];
    const hand = openHand(() => { const stand = new Stand(); stands.push(stand); return stand as unknown as Worker; });
    let older = 'waits';
    void hand.ask(asked).then(() => { older = 'answered'; });
    const newer = hand.ask(asked);
    expect(stands.map(({ ended }) => ended)).toEqual([true, false]);
    stands[0]!.say(answer(0));
    stands[1]!.say(answer(1));
    expect(await newer).toEqual(answer(1));
    expect(older).toBe('waits');
    // A free worker is kept for the next.
    void hand.ask(asked);
    expect(stands).toHaveLength(2);
    hand.close();
    expect(stands[1]!.ended).toBe(true);
  });
});

describe('how hard it is, in words', () => {
  const about = (k: number, n: number, s: number | null = 9.34, pct: number | null = 17.6) =>
    hardWords({ runs: 100, limitDeg: 2.5, withinLimit: shareOf(k, n), oneDegreeToLimitS: s, rollAuthorityAtLimitPct: pct, sentence: '' });
  it('at each band, and with nothing to catch', () => {
    expect(about(95, 100)).toBe('Easy: an ordinary watcher lets go before 2.5° in 95 % of the runs with a split (95 of 100). From 1° shown there are 9.3 s until 2.5°, where 18 % of the roll authority is used.');
    expect([about(94, 100), about(80, 100), about(79, 100), about(50, 100), about(49, 100), about(20, 100), about(19, 100), about(0, 100)].map((words) => words.split(':')[0]))
      .toEqual(['Fair', 'Fair', 'Hard', 'Hard', 'Very hard', 'Very hard', 'Hardly to be caught', 'Hardly to be caught']);
    expect(about(0, 0)).toBe('Nothing to catch: in none of 100 runs was a split decided.');
    expect(about(10, 10, null, null)).toMatch(/never comes that far\.$/);
  });
  it('says what the sweep’s own sentence says', () => {
    const rows = flyPart(order, { of: 'sweep', from: 0, to: 20 });
    const { withinLimit: { k, n }, sentence } = difficultyOf(rows, rows, 2.5);
    expect(sentence).toContain(`(${k} of ${n})`);
    expect(hardWords(difficultyOf(rows, rows, 2.5))).toContain(`(${k} of ${n})`);
  });
});

describe('a file from outside', () => {
  const known = { airframes: new Map([[AIRFRAME.name, AIRFRAME]]), drills: new Map(), setups: new Map() } as unknown as Parameters<typeof openedText>[2];
  const sound = '{ "format": 1, "title": "A \\"quoted\\" name", "brief": "", "airframe": "airframe-a", "start": { "massT": 48, "altitudeFt": 5600, "speedKt": 167, "flapDeg": 4 }, "task": { "settings": [16], "limitS": 60 } }';
  it('is taken for what it is, or refused with every problem', () => {
    expect(openedText(sound, 'x.json', known)).toEqual({ ok: true, kind: 'scenario', name: 'x', text: sound });
    expect(openedText('{ "format": 1, "trainee": "slow" }', 't.json', known)).toMatchObject({ ok: true, kind: 'trainee' });
    const wrong = openedText(sound.replace('48', '4800').replace('60 }', '4 }'), 'x.json', known);
    expect(wrong.ok ? [] : wrong.problems.map(({ path }) => path)).toEqual(['start.massT', 'task.limitS']);
    expect(openedText('[{ "atS": 1, "do": "arm" }]', 'i.json', known)).toMatchObject({ ok: false, why: expect.stringContaining('inputs') as string });
    for (const text of ['', '{', 'null', '7', '{"__proto__": {}}', '['.repeat(99)]) expect(openedText(text, 'y', known).ok, text).toBe(false);
  });
  it('has a name that a file can have', () => {
    expect(titleOf(sound)).toBe('a-quoted-name');
    expect(titleOf('{}')).toBe('untitled');
    expect(slug('  Ünder 16° — ok!  ')).toBe('under-16-ok');
    expect(slug('../../../../etc')).toBe('etc');
    expect(fileStem('a.b.jsonc')).toBe('a.b');
    expect(fileStem('.json')).toBe('untitled');
  });
});
