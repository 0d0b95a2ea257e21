// What `verify` must refuse: every alteration of a record, digested anew, unless the replay gives the very same result.
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { type Airframe, digestOf, type Inputs, ready, recordSchema, type RunRecord, scriptedRecord, tryAs, verify, composeRecord } from '../../sim/files/index.js';
import { flyInputs, flyTrainee, MODEL_VERSION, replay, TRAINEES, type Flown } from '../../sim/index.js';
import { readRecord } from '../../src/text/index.js';
import { airframeFor, changed, drill, drillNames } from './shipped.js';

vi.setConfig({ testTimeout: 60_000 }); // whole runs, on a machine that may be busy

function recordOf(name: string, seed: number, fly: (scenario: ReturnType<typeof ready>, airframe: Airframe) => Flown): RunRecord {
  const airframe = airframeFor(drill(name));
  const scenario = ready(drill(name), airframe);
  const { commands, flight } = fly(scenario, airframe);
  const { end, hash, outcome, score } = flight;
  const record = scriptedRecord({ model: MODEL_VERSION, app: 'evenhand test', seed, airframe, scenario, commands, end, hash, outcome, score });
  return JSON.parse(JSON.stringify(record)) as RunRecord; // as it comes back from a file
}
const byTrainee = (name: string, seed: number, trainee: (typeof TRAINEES)[number]) => recordOf(name, seed, (scenario, airframe) => flyTrainee(scenario, airframe, seed, trainee));
const hands: Inputs = [
  { atS: 1, do: 'openGuard' }, { atS: 1.5, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }, { atS: 30, do: 'releaseDrive' },
  { atS: 31, do: 'callSplit' }, { atS: 32, do: 'selectSpeed', speedKt: 160 }, { atS: 3599, do: 'disarm' },
];

/** Altered and digested anew. */
const altered = (record: RunRecord, path: (string | number)[], to: unknown): RunRecord => {
  const copy = changed(record, path, to);
  return { ...copy, digest: digestOf(copy) };
};
const codes = (record: RunRecord): string[] => [...new Set(verify(record).refused.map(({ code }) => code))];

const base = byTrainee('set-16-from-4', 3, 'slow');

test('a flap lever at no setting is told at its place, and nothing of such a record is used', () => {
  const lever = recordOf('set-16-from-4', 3, (scenario, airframe) => flyInputs(scenario, airframe, 3, [{ atS: 2, do: 'setFlapLever', settingDeg: 9 }]));
  const at = lever.commands.findIndex(({ do: what }) => what === 'setFlapLever');
  expect(verify(lever).ok).toBe(true);
  const record = altered(lever, ['commands', at, 'settingDeg'], 7.5);
  expect(verify(record).refused[0]).toMatchObject({ code: 'fit', path: `commands.${at}.settingDeg` });
  const read = readRecord(JSON.stringify(record), 'r.json');
  expect(read.ok ? [] : read.problems).toMatchObject([{ path: `commands[${at}].settingDeg`, found: '7.5', allowed: expect.stringContaining('a setting of the airframe: ') }]);
});

describe('an honest record is taken', () => {
  const SEEDS = [1, 2, 4294967295];
  test.each(drillNames.flatMap((name, at) => TRAINEES.map((trainee, of) => [name, trainee, SEEDS[(at + of) % 3] as number] as const)))(
    '%s by %s, seed %i', (name, trainee, seed) => {
      const record = byTrainee(name, seed, trainee);
      expect(tryAs(recordSchema, record).ok).toBe(true);
      expect(verify(record)).toMatchObject({ ok: true, replayable: true, refused: [] });
    });
  test('of an inputs file, which lasts its whole time', () => {
    const record = recordOf('set-16-from-4', 7, (scenario, airframe) => flyInputs(scenario, airframe, 7, hands));
    expect(record.commands).toHaveLength(6); // the act behind the end is not in it
    expect(verify(record)).toMatchObject({ ok: true, refused: [] });
  });
  test('whose clock stood still for a while', () => {
    // The clock starts at 1000 ms, stops after tick 500 and goes on 4 s later; stamps moved with it.
    const stamp = (tick: number) => 1000 + tick * 10 + (tick >= 500 ? 4000 : 0) + 3;
    const parts = { ...base, clock: [{ tick: 0, stampMs: 1000 }, { tick: 500, stampMs: 10000 }], commands: base.commands.map((one) => ({ ...one, stampMs: stamp(one.tick) })) };
    const record = composeRecord({ ...parts, score: replay(parts).score });
    expect(verify(record)).toMatchObject({ ok: true, refused: [] });
  });
});

test('a byte changed and not digested anew is refused by the digest', () => {
  expect(codes(changed(base, ['seed'], 4))).toContain('digest');
  expect(codes(changed(base, ['score', 'finalSplitDeg'], base.score.finalSplitDeg + 1e-12))).toEqual(['digest']);
  expect(codes(changed(base, ['device', 'renderer'], 'other'))).toEqual(['digest']);
});

describe('altered and digested anew', () => {
  const last = base.commands.length - 1;
  test.each<[string, (string | number)[], unknown, string]>([
    ['another model', ['model'], MODEL_VERSION + 1, 'model'],
    ['the seed', ['seed'], 4, 'hash'],
    ['the outcome', ['outcome'], 'late', 'outcome'],
    ['a figure of the score in its last bit', ['score', 'growthAtReleaseDeg'], base.score.growthAtReleaseDeg! * (1 + 2 ** -52), 'score'],
    ['the hash', ['hash'], base.hash.replace(/^./, (digit) => (digit === '0' ? '1' : '0')), 'hash'],
    ['the end, later', ['end', 'tick'], base.end.tick + 1, 'end'],
    ['why it ended', ['end', 'why'], 'done', 'end'],
    ['an act', ['commands', 0, 'do'], 'closeGuard', 'hash'],
    ['the tick of an act', ['commands', last, 'tick'], base.commands[last]!.tick - 1, 'stamp'],
    ['the stamp of an act', ['commands', last, 'stampMs'], base.commands[last]!.stampMs + 10, 'stamp'],
    ['the stamp of an act before the clock', ['commands', 0, 'stampMs'], -1, 'stamp'],
    ['an act twice', ['commands', 1, 'seq'], base.commands[0]!.seq, 'order'],
    ['a clock that starts late', ['clock', 0, 'tick'], 1, 'clock'],
    ['a clock that runs ahead', ['clock'], [{ tick: 0, stampMs: 0 }, { tick: 200, stampMs: 1000 }], 'clock'],
    ['a clock that runs back', ['clock'], [{ tick: 0, stampMs: 0 }, { tick: 100, stampMs: 0 }], 'clock'],
    ['a clock that stands twice at a tick', ['clock'], [{ tick: 0, stampMs: 0 }, { tick: 0, stampMs: 900 }], 'clock'],
    ['a mark two ticks off', ['marks'], [{ tick: 100, stampMs: 1020, what: 'firstFrame' }], 'mark'],
    ['a mark behind the end', ['marks'], [{ tick: base.end.tick + 2, stampMs: (base.end.tick + 2) * 10, what: 'end' }], 'behindEnd'],
    ['an act behind the end', ['commands'], [...base.commands, { ...base.commands[last]!, tick: base.end.tick, stampMs: base.end.tick * 10, seq: 999 }], 'behindEnd'],
    ['acts out of order', ['commands'], [...base.commands].reverse(), 'order'],
    ['an act left out', ['commands'], base.commands.slice(1), 'hash'],
    ['the mass', ['scenario', 'start', 'massT'], base.scenario.start.massT + 0.001, 'hash'],
    ['a number of the airframe', ['airframe', 'roll', 'control'], 0.0333, 'hash'],
    ['the airframe of the scenario', ['scenario', 'airframe'], 'airframe-b', 'fit'],
    ['a setting that is none', ['scenario', 'task', 'settings'], [17], 'fit'],
    ['a disturbed run', ['marks'], [{ tick: 100, stampMs: 1000, what: 'focusLost' }], 'outcome'],
  ])('%s', (_, path, to, code) => {
    const verdict = verify(altered(base, path, to));
    expect(verdict.ok).toBe(false);
    expect(verdict.refused.map((refused) => refused.code)).toContain(code);
  });

  test('a mark one tick off is a frame between two ticks', () =>
    expect(verify(altered(base, ['marks'], [{ tick: 100, stampMs: 1010, what: 'start' }])).ok).toBe(true));

  test('a late act is taken where a mark says so, and voids the run', () => {
    const late = { ...base.commands[last]!, stampMs: base.commands[last]!.stampMs - 500 };
    const parts = { ...base, commands: [...base.commands.slice(0, last), late] };
    expect(codes({ ...parts, digest: digestOf(parts) })).toContain('stamp');
    const marked = { ...parts, marks: [{ tick: late.tick, stampMs: late.stampMs, what: 'late' as const }] };
    const flight = replay(marked);
    expect(flight.outcome).toBe('void');
    expect(verify(composeRecord({ ...marked, outcome: flight.outcome, score: flight.score }))).toMatchObject({ ok: true });
  });

  test('no mark excuses an act that stands before its stamp', () => {
    const soon = { ...base.commands[last]!, stampMs: base.commands[last]!.stampMs + 500 };
    const parts = { ...base, commands: [...base.commands.slice(0, last), soon], marks: [{ tick: soon.tick, stampMs: soon.stampMs, what: 'late' as const }] };
    expect(codes({ ...parts, digest: digestOf(parts) })).toContain('stamp');
  });

  test('an act from before the clock belongs to the first tick, and to no other', () => {
    // A page that stalls before its first tick starts its clock anew; what a hand did meanwhile acts in tick 0.
    const early = (tick: number) => {
      const first = { do: 'level' as const, tick, rank: 2 as const, seq: 9999, stampMs: 999 };
      const moved = { ...base, clock: [{ tick: 0, stampMs: 1000 }], commands: [first, ...base.commands.map((one) => ({ ...one, stampMs: one.stampMs + 1000 }))] };
      return verify({ ...moved, digest: digestOf(moved) }).refused.filter(({ code }) => code === 'stamp');
    };
    expect(early(0)).toEqual([]);
    expect(early(1)).toMatchObject([{ path: 'commands[0].tick' }]);
  });

  test('a clock whose stamps do not rise is told at the stamp', () => {
    const { refused } = verify(altered(base, ['clock'], [{ tick: 0, stampMs: 5 }, { tick: 100, stampMs: 5 }]));
    expect(refused.map(({ path }) => path)).toContain('clock[1].stampMs');
  });

  test('what nothing can prove is listed, and taken', () => {
    for (const [path, to] of [[['assessment'], { split: 'yes', growthDeg: 1 }], [['device', 'renderer'], 'x'], [['app'], 'y'], [['scenario', 'title'], 'z']] as const) {
      expect(verify(altered(base, [...path], to)).ok).toBe(true);
    }
    expect(verify(base).notProvable).toEqual(expect.arrayContaining(['assessment', 'device', 'commands[].stampMs within its tick']));
  });

  test('another model is not replayable here, and nothing is replayed', () => {
    expect(verify(altered(base, ['model'], MODEL_VERSION - 1))).toMatchObject({ ok: false, replayable: false, refused: [{ code: 'model' }] });
  });
});

/** Paths of all numbers, words and flags of a record, but its digest. */
function leaves(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (value === null || typeof value !== 'object') return [path];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, Array.isArray(value) ? Number(key) : key]));
}

test('any one leaf altered: refused, unless the replay gives the very same result', () => {
  const paths = leaves(base).filter(([first]) => first !== 'digest');
  const at = (path: (string | number)[]) => path.reduce<unknown>((inner, part) => (inner as Record<string | number, unknown>)[part], base);
  const other = (value: unknown, nudge: number): unknown =>
    typeof value === 'number' ? (Number.isInteger(value) && nudge > 0.5 ? value + 1 : value * (1 + nudge) + nudge)
      : typeof value === 'boolean' ? !value : value === null ? 1 : `${String(value)}x`;
  const taken = new Set<string>();
  fc.assert(fc.property(fc.constantFrom(...paths), fc.double({ min: 1e-9, max: 1, noNaN: true }), (path, nudge) => {
    const changedRecord = altered(base, path, other(at(path), nudge));
    const read = tryAs(recordSchema, changedRecord);
    if (!read.ok || !verify(changedRecord).ok) return;
    taken.add(String(path[0]));
    const { end, hash, outcome, score } = replay(read.value);
    expect({ end, hash, outcome, score }).toEqual({ end: base.end, hash: base.hash, outcome: base.outcome, score: base.score });
    // Of an act, only its place within its tick: less than a tick of stamp, or a number that keeps the order.
    if (path[0] === 'commands') expect(['stampMs', 'seq']).toContain(path.at(-1));
  }), { numRuns: 60 });
  // Of the inputs, only those that no moment of this run asked for may change unseen.
  expect([...taken].sort()).toEqual(expect.not.arrayContaining(['hash', 'outcome', 'score', 'seed', 'end', 'model']));
}, 60_000);
