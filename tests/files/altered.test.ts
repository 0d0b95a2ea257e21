// Any one alteration of a record, digested anew: a leaf, an act, a mark or a piece of clock changed, moved, doubled, taken
// out or put in. It is refused, unless the run played again gives the very same result, and then the place is one that
// `verify` itself lists as not provable.
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import {
  composeRecord, digestOf, NOT_PROVABLE, ready, recordSchema, scriptedRecord, tryAs, verify, type RunRecord,
} from '../../sim/files/index.js';
import { drawSet, flyInputs, flyTrainee, MODEL_VERSION, replay, watcherFor, type Flown } from '../../sim/index.js';
import { shippedSet } from '../set/shipped.js';
import { airframeFor, drill } from './shipped.js';

vi.setConfig({ testTimeout: 240_000 }); // hundreds of runs, on a machine that may be busy

type Path = (string | number)[];

const recorded = (scenario: ReturnType<typeof ready>, airframe: Parameters<typeof flyTrainee>[1], seed: number, { commands, flight }: Flown): RunRecord => {
  const { end, hash, outcome, score } = flight;
  return JSON.parse(JSON.stringify(scriptedRecord({ model: MODEL_VERSION, app: 'test', seed, airframe, scenario, commands, end, hash, outcome, score }))) as RunRecord;
};
const A = airframeFor(drill('set-16-from-4'));
const scenarioOf = (name: string) => ready(drill(name), A);

/** The same run as a person would have flown it: stamps inside their ticks, a clock that stood still, marks of the page. */
function asFlown(from: RunRecord): RunRecord {
  const stamp = (tick: number) => 1000 + tick * 10 + (tick >= 700 ? 5000 : 0);
  const parts = {
    ...from, source: 'flown' as const,
    clock: [{ tick: 0, stampMs: 1000 }, { tick: 700, stampMs: stamp(700) }],
    commands: from.commands.map((one, at) => ({ ...one, stampMs: stamp(one.tick) + (at * 3.7) % 10 })),
    marks: [{ tick: 0, stampMs: 1000, what: 'start' as const }, { tick: 1710, stampMs: stamp(1710) + 4, what: 'firstFrame' as const }],
  };
  const { outcome, score } = replay(parts);
  return composeRecord({ ...parts, outcome, score });
}

const caught = recorded(scenarioOf('set-16-from-4'), A, 3, flyTrainee(scenarioOf('set-16-from-4'), A, 3, 'slow'));
const set = shippedSet('short');
const run = drawSet(set, 2).find(({ onsetHeldS }) => onsetHeldS !== null)!;
const BASES: Record<string, RunRecord> = {
  scripted: caught,
  flown: asFlown(caught),
  'by inputs': recorded(scenarioOf('set-16-from-4'), A, 5, flyInputs(scenarioOf('set-16-from-4'), A, 5, [
    { atS: 1, do: 'openGuard' }, { atS: 1.5, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }, { atS: 30, do: 'releaseDrive' }, { atS: 31, do: 'callSplit' },
  ])),
  'of a set': recorded(set.scenarios[run.rate]!, set.airframe, run.seed, flyTrainee(set.scenarios[run.rate]!, set.airframe, run.seed, watcherFor('steady', 2))),
};

function leaves(value: unknown, path: Path = []): Path[] {
  if (value === null || typeof value !== 'object') return [path];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, Array.isArray(value) ? Number(key) : key]));
}
const at = (of: unknown, path: Path): unknown => path.reduce<unknown>((inner, part) => (inner as Record<string | number, unknown>)[part], of);

/** What was altered, and the record after it. */
interface Alteration { what: string; path: Path; record: RunRecord }

const nudges = fc.constantFrom<(x: number) => number>((x) => x + 1, (x) => x - 1, (x) => x * (1 + 2 ** -52) + 2 ** -1060, (x) => x * 1.01 + 0.001, (x) => -x, () => 0, (x) => x + 10);
const WORDS = ['caught', 'late', 'held', 'done', 'stopped', 'timeUp', 'left', 'right', 'extend', 'off', 'closeGuard', 'level', 'down', 'live', 'flown', '0123456789abcdef'];

function leafAltered(base: RunRecord, pick: number, nudge: (x: number) => number, word: string): Alteration {
  // Half of all picks fall outside the airframe, whose many numbers would else take them all.
  const all = leaves(base).filter(([first]) => first !== 'digest');
  const rest = all.filter(([first]) => first !== 'airframe');
  const path = pick % 2 === 0 ? all[pick % all.length]! : rest[pick % rest.length]!;
  const record = structuredClone(base);
  const owner = at(record, path.slice(0, -1)) as Record<string | number, unknown>;
  const value = owner[path.at(-1)!];
  owner[path.at(-1)!] = typeof value === 'number' ? nudge(value) : typeof value === 'boolean' ? !value : value === null ? 1 : word;
  return { what: 'leaf', path, record };
}

/** An act, a mark or a piece of clock taken out, doubled, moved with its stamp, exchanged with the next, or put in. */
function listAltered(base: RunRecord, pick: number, how: number): Alteration | null {
  const record = structuredClone(base);
  const name = (['commands', 'commands', 'marks', 'clock'] as const)[pick % 4]!;
  const list = record[name] as { tick: number; stampMs: number; seq?: number }[];
  if (list.length === 0) return null;
  const place = (pick >> 2) % list.length;
  const one = list[place]!;
  const what = ['out', 'doubled', 'later', 'sooner', 'exchanged', 'in'][how % 6]!;
  if (what === 'out') list.splice(place, 1);
  else if (what === 'doubled') list.splice(place + 1, 0, { ...one, ...(one.seq === undefined ? {} : { seq: 990_000 }) });
  else if (what === 'later' || what === 'sooner') {
    const ticks = (what === 'later' ? 1 : -1) * (1 + (pick >> 5) % 3);
    list[place] = { ...one, tick: one.tick + ticks, stampMs: one.stampMs + ticks * 10 };
  } else if (what === 'exchanged') list.splice(place, 2, ...list.slice(place, place + 2).reverse());
  else record.commands.splice(place, 0, { ...base.commands[place % base.commands.length]!, do: ACTS[(pick >> 6) % ACTS.length]!, seq: 990_001 } as RunRecord['commands'][number]);
  return { what, path: [name, place], record };
}
const ACTS = ['openGuard', 'closeGuard', 'arm', 'disarm', 'releaseDrive', 'silenceHorn', 'callSplit', 'callClear', 'level', 'goAround'] as const;

/** Which line of the list speaks of a place; null for a place that is proved. */
function listed({ what, path, record }: Alteration, base: RunRecord): string | null {
  const [first, place, key] = path;
  for (const word of ['source', 'app', 'device', 'gauge', 'assessment', 'plan', 'marks']) if (first === word) return word;
  if (first === 'scenario' || first === 'airframe') return typeof at(base, path) === 'string' ? 'texts of scenario and airframe' : 'what of scenario and airframe no moment of the run asked for';
  if (first === 'clock') return 'clock where no act stands beside it';
  if (first !== 'commands') return null;
  if (what !== 'leaf') return 'acts that change nothing in the run, such as answers';
  if (key === 'stampMs') return Math.abs(record.commands[place as number]!.stampMs - base.commands[place as number]!.stampMs) < 10 ? 'commands[].stampMs within its tick' : null;
  return key === 'seq' ? 'commands[].seq where the order stays' : null;
}

const taken = new Map<string, number>();
const refusedBy = new Map<string, number>();

test.each(Object.keys(BASES))('%s: refused, or the very same run and a place that is listed', (name) => {
  const base = BASES[name]!;
  expect(verify(base)).toMatchObject({ ok: true });
  let tried = 0;
  fc.assert(fc.property(fc.boolean(), fc.nat(2 ** 24), nudges, fc.constantFrom(...WORDS), fc.nat(5), (leaf, pick, nudge, word, how) => {
    const alteration = leaf ? leafAltered(base, pick, nudge, word) : listAltered(base, pick, how);
    if (alteration === null || JSON.stringify(alteration.record) === JSON.stringify(base)) return;
    const record = { ...alteration.record, digest: digestOf(alteration.record) };
    if (!tryAs(recordSchema, record).ok) return;
    tried += 1;
    const verdict = verify(record);
    if (!verdict.ok) {
      for (const { code } of verdict.refused) refusedBy.set(code, (refusedBy.get(code) ?? 0) + 1);
      return;
    }
    const { end, hash, outcome, score } = replay(record);
    const told = `${alteration.what} ${alteration.path.join('.')}`;
    expect({ end, hash, outcome }, told).toEqual({ end: base.end, hash: base.hash, outcome: base.outcome });
    expect(score, told).toEqual(base.score);
    const line = listed(alteration, base);
    expect(NOT_PROVABLE, told).toContain(line);
    taken.set(line!, (taken.get(line!) ?? 0) + 1);
  }), { numRuns: 150 });
  expect(tried).toBeGreaterThan(40);
});

test('both happened: many ways to be refused, and most lines of the list', () => {
  for (const code of ['hash', 'stamp', 'order', 'outcome', 'end']) expect([...refusedBy.keys()]).toContain(code);
  for (const line of taken.keys()) expect(NOT_PROVABLE).toContain(line);
  expect(taken.size).toBeGreaterThan(3);
});

test('an act of a desk stands only in a live record', () => {
  const { tick, seq, stampMs } = caught.commands[0]!;
  const remark = { do: 'remark' as const, label: 'scan', tick, rank: 1, seq: seq + 1e5, stampMs, by: 'desk-1' };
  const with_ = (more: Partial<RunRecord>): RunRecord => {
    const record = { ...caught, commands: [remark, ...caught.commands], ...more };
    return { ...record, digest: digestOf(record) };
  };
  expect(verify(with_({})).refused).toEqual([{ code: 'rank', path: 'commands[0].rank', found: '1', expected: '2: only a live run has a desk' }]);
  expect(verify(with_({ commands: caught.commands, desk: { grades: [] } })).refused).toMatchObject([{ code: 'rank', path: 'desk' }]);
  const live = with_({ source: 'live', desk: { grades: [{ item: 'Letting go', anchor: 4 }], note: 'quick' } });
  expect(verify(live)).toMatchObject({ ok: true, refused: [] });
  expect(tryAs(recordSchema, live).ok).toBe(true);
});

test('a hand has no act of a desk, and a desk none of a hand', () => {
  const { tick, seq, stampMs } = caught.commands[0]!;
  const at = { tick, seq: seq + 1e5, stampMs };
  const ok = (command: object): boolean => tryAs(recordSchema, { ...caught, source: 'live', commands: [command] }).ok;
  expect(ok({ do: 'freeze', ...at, rank: 1, by: 'desk-1' })).toBe(true);
  expect(ok({ do: 'freeze', ...at, rank: 2 })).toBe(false);
  expect(ok({ do: 'freeze', ...at, rank: 1 })).toBe(false);
  expect(ok({ do: 'openGuard', ...at, rank: 2 })).toBe(true);
  expect(ok({ do: 'openGuard', ...at, rank: 1, by: 'desk-1' })).toBe(false);
  expect(ok({ do: 'level', ...at, rank: 1, by: 'desk-1' })).toBe(true);
  expect(ok({ do: 'level', ...at, rank: 2 })).toBe(true);
  expect(ok({ do: 'level', ...at, rank: 2, by: 'desk-1' })).toBe(false);
  expect(ok({ do: 'injectFault', ...at, rank: 1, by: 'desk-1', fault: { name: 'x', kind: 'dead' } })).toBe(true);
  expect(ok({ do: 'injectFault', ...at, rank: 1, by: 'desk-1', fault: { name: 'x', kind: 'dead', when: { after: 'y' } } })).toBe(false);
});

test('an answer, or a guard opened twice, changes nothing, is taken, and is listed', () => {
  const more = structuredClone(caught);
  more.commands.splice(1, 0, { ...caught.commands[0]!, seq: 990_002 });
  expect(verify({ ...more, digest: digestOf(more) }).ok).toBe(true);
  expect(verify(caught).notProvable).toContain('acts that change nothing in the run, such as answers');
});
