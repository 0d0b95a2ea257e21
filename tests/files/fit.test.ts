// Each relation between scenario and airframe broken once: the problem stands at the key.
import { describe, expect, test } from 'vitest';
import { airframeOf, misfits, misfitsOf, oneOf, type Scenario, scenarioSchema, tryAs } from '../../sim/files/index.js';
import { TRAINEES } from '../../sim/index.js';
import { MOST_CONDITIONS } from '../../sim/files/repeated.js';
import { MOST_MEMOS } from '../../sim/entry.js';
import { airframeA, airframeFor, changed, drill, drillNames, lookup } from './shipped.js';

const base: Scenario = drill('set-16-from-4');
const said = (scenario: Scenario): string[] => misfits(scenario, airframeA).map(({ path, allowed }) => `${path.join('.')}: ${allowed}`);
const dead = (when: object, name = 'x') => ({ name, kind: 'dead', when });

test.each(drillNames)('%s fits', (name) => expect(misfits(drill(name), airframeFor(drill(name)))).toEqual([]));

describe('refused', () => {
  test.each<[(string | number)[], unknown, string]>([
    [['start', 'massT'], 33.4, 'start.massT: a mass of this airframe: from 33.5 to 60 t'],
    [['start', 'massT'], 60.1, 'start.massT: a mass of this airframe: from 33.5 to 60 t'],
    [['start', 'flapDeg'], 38.1, "start.flapDeg: at most the airframe's stop (38 deg)"],
    [['start', 'flapLeverDeg'], 10, 'start.flapLeverDeg: a setting of the airframe: 0, 4, 9, 16, 26, 36'],
    [['start', 'fuelKg'], 14501, "start.fuelKg: at most massT less the airframe's emptyT (33.5 t)"],
    [['start', 'speedKt'], 231, 'start.speedKt: at most the limit at flap 4 (230 kt)'],
    [['start', 'flapDeg'], 36.1, 'start.speedKt: at most the limit at flap 36.1 (195 kt)'],
    [['start', 'speedKt'], 100, 'start.speedKt: above the stall at this mass and flap (about 118 kt)'],
    [['task', 'settings'], [16, 17], 'task.settings.1: a setting of the airframe: 0, 4, 9, 16, 26, 36'],
    [['task', 'settings'], [16, 16], 'task.settings.1: another setting than the one before it'],
    [['faults', 0, 'when'], { flapDeg: 38.5 }, "faults.0.when.flapDeg: at most the airframe's stop (38 deg)"],
    [['faults', 0, 'when'], { atS: 999 }, 'faults.0.when.atS: at most limitS of the task (180 s)'],
    [['faults', 0, 'when'], { any: [{ atS: 1 }, { all: [{ heldS: 999 }] }] }, 'faults.0.when.any.1.all.0.heldS: at most limitS of the task (180 s)'],
    [['events'], [{ when: { atS: 1 }, do: 'descend', toFt: 700, pathDeg: -3 }], 'events.0.toFt: above the ground (groundFt is 700 ft)'],
    [['events'], [{ when: { atS: 1 }, do: 'clearAltitude', text: 'Down.', toFt: 700, withinS: 9 }], 'events.0.toFt: above the ground (groundFt is 700 ft)'],
    [['recognition'], { seenDeg: 2, limitDeg: 2, measuring: false }, 'recognition.seenDeg: below limitDeg (2 deg)'],
    [['events'], [{ when: { atS: 1 }, do: 'level' }, { when: { atS: 2 }, do: 'freeze' }], 'events.1.do: no freeze in a scenario with recognition'],
    [['passes'], ['slow'], 'fails.0: a trainee that is not among passes'],
    [['passes'], ['prompt', 'patient'], `passes.1: a scripted trainee: ${oneOf(TRAINEES)}`],
  ])('%j as %j', (path, to, problem) => {
    const start = path[1] === 'flapDeg' && to === 36.1 ? changed(base, ['start', 'speedKt'], 196) : base;
    const scenario = changed({ ...start, task: { ...start.task, limitS: 180 }, fails: ['slow', 'never'] }, path, to);
    expect(said(scenario)).toContain(problem);
  });

  // Heading and height are not the trainee's there (sim/command.ts); a caution and a question still are.
  test('a clearance where another pilot flies', () => {
    const events = [
      { when: { atS: 1 }, do: 'clearHeading', text: 'Turn.', toDeg: 120, withinS: 9 }, { when: { atS: 1 }, do: 'clearAltitude', text: 'Down.', toFt: 4000, withinS: 9 },
      { when: { atS: 1 }, do: 'caution', text: 'uneven', withinS: 9 },
    ];
    const free = changed(base, ['events'], events);
    const no = 'no clearance where another pilot flies (role is driving)';
    expect(said(free)).toEqual([]);
    expect(said(changed(free, ['role'], 'driving'))).toEqual([`events.0.do: ${no}`, `events.1.do: ${no}`]);
  });

  test('a freeze fits where nothing is scored by recognition', () => {
    const { recognition: _scored, ...free } = base;
    expect(said({ ...free, events: [{ when: { atS: 2 }, do: 'freeze' }] })).toEqual([]);
  });

  // 48 t, flap 4: lift coefficient 1.825 and 116 m2 give 0.514444 * 118 kt as the stall: sqrt(2 * 48000 * 9.80665 / (1.225 * 116 * 1.825)) = 60.25 m/s = 117.1 kt.
  test('the stall is hit from both sides', () => {
    expect(said(changed(base, ['start', 'speedKt'], 118))).toEqual([]);
    expect(said(changed(base, ['start', 'speedKt'], 117))).toHaveLength(1);
  });

  test('gear down beyond its speed, leading edge out beyond its speed', () => {
    const clean = changed(changed(base, ['start', 'flapDeg'], 0), ['start', 'flapLeverDeg'], 0);
    expect(said(changed(changed(clean, ['start', 'speedKt'], 241), ['start', 'leadingEdge'], 'out'))).toEqual(['start.speedKt: at most the limit with the leading edge out (240 kt)']);
    const down = changed(changed(clean, ['start', 'leadingEdge'], 'in'), ['start', 'gear'], 'down');
    expect(said(changed(down, ['start', 'speedKt'], 251))).toEqual(['start.speedKt: at most the limit with the gear down (250 kt)']);
    expect(said(changed(down, ['start', 'speedKt'], 250))).toEqual([]);
  });

  test('more conditions, crossings and names than the model holds', () => {
    const eight = { any: Array.from({ length: 8 }, () => ({ flapDeg: 5 })) };
    const many = { any: Array.from({ length: 8 }, () => eight) };
    expect(said({ ...base, faults: [dead(many)] as never })).toEqual(['faults: at most 60 conditions on flapDeg, speedKt or altitudeFt, not 64']);
    const held = { all: Array.from({ length: 8 }, () => ({ all: Array.from({ length: 8 }, () => ({ all: [{ heldS: 1 }, { heldS: 2 }, { heldS: 3 }] })) })) };
    expect(said({ ...base, faults: [dead(held)] as never })).toEqual([`faults: at most ${MOST_CONDITIONS} conditions in the triggers of a file, not ${1 + 8 + 64 + 192}`]);
    const names = Array.from({ length: MOST_MEMOS + 1 }, (_, at) => `n${at}`);
    const faults = [...names.map((name) => dead({ atS: 1 }, name)), ...names.map((after, at) => dead({ after }, `m${at}`))];
    expect(said({ ...base, faults: faults.slice(0, 18) as never })).toEqual([`faults: at most ${MOST_MEMOS} different names behind after, and things that act again after everyS, not ${MOST_MEMOS + 1}`]);
  });
});

describe('names inside a scenario', () => {
  const read = (faults: object[]) => {
    const found = tryAs(scenarioSchema, { ...base, faults });
    return found.ok ? [] : found.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  };
  test('a chain is fine', () => expect(read([dead({ atS: 1 }, 'a'), dead({ after: 'a' }, 'b'), dead({ any: [{ after: 'b' }, { after: 'a' }] }, 'c')])).toEqual([]));
  test('a circle is refused at the reference that closes it', () => {
    expect(read([dead({ after: 'c' }, 'a'), dead({ after: 'a' }, 'b'), dead({ all: [{ atS: 1 }, { after: 'b' }] }, 'c')]))
      .toEqual(['faults.1.when.after: no circle of after: a > c > b > a']);
  });
  test('a name after itself', () => expect(read([dead({ after: 'a' }, 'a')])).toEqual(['faults.0.when.after: no circle of after: a > a']));
  test('a name that is not there, and one that stands twice', () =>
    expect(read([dead({ after: 'z' }, 'a'), dead({ atS: 1 }, 'a')])).toEqual(['faults.1.name: a name used once', 'faults.0.when.after: the name of a fault or event in this file']));
});

test('an airframe by name or in full, never by path', () => {
  expect(airframeOf(base, lookup)).toBe(airframeA);
  expect(airframeOf({ ...base, airframe: airframeA }, () => undefined)).toBe(airframeA);
  expect(misfitsOf({ ...base, airframe: 'other' }, lookup)).toEqual([{ path: ['airframe'], allowed: 'the name of a shipped airframe, or an airframe in full' }]);
  for (const path of ['../airframe-a', 'airframes/airframe-a.json', '/etc/passwd']) expect(tryAs(scenarioSchema, { ...base, airframe: path }).ok).toBe(false);
});

test('the lever angle of the horn is drawn in no scored run', () => {
  const scored: Scenario = { ...base, recognition: { seenDeg: 0.1, measuring: false }, training: true };
  expect(said(scored)).toEqual(['training: false beside recognition: a scored run shows no such mark']);
  const { recognition: _none, ...free } = scored;
  expect(said(free)).toEqual([]);
});
