// The command line as it is typed: what stands on which stream, and the exit code (0 done, 1 failed, 2 wrong usage or file).
import { chmodSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { checkOutput, replayOutput, runOutput, troubleOutput, verifyOutput, type RunOutput, type RunRecord } from '../../sim/files/index.js';
import { TRAINEES } from '../../sim/index.js';
import { MOST_BYTES } from '../../src/text/index.js';
import { drillNames, drillText } from '../files/shipped.js';
import { asksForHelp } from '../../src/cli/help.js';
import { json, type } from './typed.js';

vi.setConfig({ testTimeout: 60_000 }); // whole runs, on a machine that may be busy

const folder = mkdtempSync(join(tmpdir(), 'evenhand-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));
const path = (name: string) => join(folder, name);
const file = (name: string, text: string | Uint8Array): string => { writeFileSync(path(name), text); return path(name); };

const good = file('good.json', drillText('set-16-from-4'));
const wrong = file('wrong.json', drillText('set-16-from-4').replace('"speedKt": 167', '"speedKt": "fast"'));
const hands = file('hands.json', JSON.stringify([
  { atS: 1, do: 'openGuard' }, { atS: 1.5, do: 'arm' }, { atS: 2, do: 'holdDrive', way: 'extend' }, { atS: 30, do: 'releaseDrive' }, { atS: 31, do: 'callSplit' },
]));

describe('check', () => {
  test('right files: 0, one line a file and a count', async () => {
    const { code, out, err } = await type('check', good, hands);
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n').map((line) => line.replace(/ +/g, ' '))).toEqual([`${good} scenario, no problem`, `${hands} inputs, no problem`, '2 files, no problem', '']);
  });
  test('a wrong file: 1, file:line:column, path, found and allowed', async () => {
    const { code, out } = await type('check', good, wrong);
    expect(code).toBe(1);
    expect(out).toMatch(/wrong\.json:\d+:\d+ {2}start\.speedKt {2}found "fast"; allowed: a number from 60 to 400 kt\n2 files, 1 problem\n$/);
  });
  test('as JSON', async () => {
    expect(await json(checkOutput, 'check', good)).toMatchObject({ code: 0, value: { ok: true, problems: [], more: 0 } });
    const { code, value } = await json(checkOutput, 'check', wrong, path('none.json'), good);
    expect(code).toBe(2);
    expect(value.ok).toBe(false);
    expect(value.problems.map(({ file: named, found }) => [named, found])).toEqual([[wrong, '"fast"'], [path('none.json'), 'no such file']]);
  });
  test('a list that was cut says so', async () => {
    const many = file('many.json', `{ "task": 1, ${Array.from({ length: 300 }, (_, at) => `"k${at}": 1`).join(',')} }`);
    const { value } = await json(checkOutput, 'check', many);
    expect(value.problems).toHaveLength(200);
    expect((await type('check', many)).out).toContain(`... and ${value.more} more\n1 file, ${200 + value.more} problems`);
  });
});

describe('files that cannot be used: 2, a sentence, nothing on standard output', () => {
  symlinkSync(path('round.json'), path('round.json'));
  const closed = file('closed.json', '{}');
  chmodSync(closed, 0);
  const isRoot = process.getuid?.() === 0;
  test.each<[string, string, string]>([
    ['not there', path('none.json'), 'no such file'],
    ['a folder', folder, 'a folder, not a file'],
    ['below a file', join(good, 'x.json'), 'no such file'],
    ['a binary', file('binary.json', new Uint8Array([0x7b, 0, 1, 2])), 'a binary file'],
    ['not UTF-8', file('latin.json', new Uint8Array([0x7b, 0xe9, 0x7d])), 'a file that is not in UTF-8'],
    ['half a surrogate pair in UTF-8', file('half.json', new Uint8Array([0x22, 0xed, 0xa0, 0x80, 0x22])), 'a file that is not in UTF-8'],
    ['too large', file('large.json', 'x'.repeat(MOST_BYTES + 1)), `a file of more than ${MOST_BYTES} bytes`],
    ['links in a circle', path('round.json'), 'links that go round in a circle'],
    ['a name too long', path('x'.repeat(300)), 'a name that is too long'],
    ['a name with a zero', `${path('a')}\0`, 'a name with a character no file name may hold'],
    ...(isRoot ? [] : [['closed to this user', closed, 'a file this user may not open'] as [string, string, string]]),
  ])('%s', async (_, named, reason) => {
    for (const words of [['run', named], ['run', good, '--inputs', named], ['replay', named], ['verify', named]]) {
      const { code, out, err } = await type(...words);
      expect([code, out, err]).toEqual([2, '', `evenhand: ${named}: ${reason}\n`]);
    }
    expect((await json(troubleOutput, 'run', named)).value).toEqual({ ok: false, error: `${named}: ${reason}`, problems: [], more: 0 });
    expect((await json(checkOutput, 'check', named)).value.problems).toEqual([{ file: named, line: 1, column: 1, path: '', found: reason, allowed: 'a text file that can be read' }]);
  });
  test('a file with problems: all of them, and nothing is flown', async () => {
    const { code, out, err } = await type('run', wrong);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/has 1 problem; nothing of it is used\.\n.*start\.speedKt {2}found "fast"/);
    expect((await json(troubleOutput, 'run', wrong)).value.problems).toHaveLength(1);
  });
  test('an empty file and a byte-order mark', async () => {
    expect((await type('check', file('empty.json', ''))).code).toBe(1);
    expect((await type('check', file('mark.json', `\uFEFF${drillText('set-16-from-4')}`))).code).toBe(0);
  });
  test('a record over a file that the run reads', async () => {
    for (const words of [['run', good, '--record', good], ['run', good, '--inputs', hands, '--record', hands]]) {
      expect(await type(...words)).toMatchObject({ code: 2, out: '', err: expect.stringContaining('a file of its own') as string });
    }
    expect(readFileSync(good, 'utf8')).toBe(drillText('set-16-from-4'));
  });
  test('a record that cannot be written', async () => {
    for (const where of [folder, join(folder, 'none', 'x.json'), join(good, 'x')]) {
      const { code, out, err } = await type('run', good, '--record', where);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain(`${where} was not written: `);
    }
  });
});

describe('wrong usage: 2', () => {
  test.each<[string[], string]>([
    [[], 'Usage: evenhand'], [['fly'], 'unknown command'], [['chek', 'x'], 'Did you mean check?'], [['check'], "missing required argument 'file'"],
    [['run'], "missing required argument 'scenario'"], [['run', 'set-16-from-4', 'x'], 'too many arguments'], [['run', 'set-16-from-4', '--seeed', '1'], 'Did you mean --seed?'],
    [['run', 'set-16-from-4', '--trainee', 'slow', '--inputs', 'x'], 'cannot be used with'],
    [['run', 'set-16-from-3'], 'There is no shipped drill "set-16-from-3". Did you mean set-16-from-4?'],
    [['run', 'zzzzzzzzzzzz'], `Shipped: ${drillNames.join(', ')}.`],
    ...['-1', '4294967296', '1.5', '1e3', '', ' 1', 'x', '99999999999999999999'].map((seed): [string[], string] => [['run', 'set-16-from-4', `--seed=${seed}`], 'a whole number from 0 to 4294967295']),
    ...['0', '-1', '0.001', '0.015', 'x', '', '1e1', '3600.01', 'Infinity'].map((step): [string[], string] => [['run', 'set-16-from-4', `--trace=${step}`], 'a multiple of 0.01 s']),
    ...['65536', '-1', 'x'].map((port): [string[], string] => [['serve', `--port=${port}`], 'a whole number from 0 to 65535']),
    [['run', 'set-16-from-4', '--trainee', 'promt'], 'Did you mean prompt?'],
  ])('%j', async (words, said) => {
    const { code, out, err } = await type(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
    if (words.length > 0) expect((await json(troubleOutput, ...words)).value.error).not.toBe('');
  });
});

describe('run', () => {
  test('without a trainee: prompt, seed 1, said on standard error', async () => {
    const { code, value, err } = await json(runOutput, 'run', 'set-16-from-4');
    expect([code, value.seed]).toEqual([0, 1]);
    expect(err).toContain('"prompt"');
    expect(value).toEqual((await json(runOutput, 'run', 'set-16-from-4', '--trainee', 'prompt', '--seed', '1')).value);
    expect(value).toEqual({ ...(await json(runOutput, 'run', good)).value, scenario: 'set-16-from-4' });
  });
  // Every drill and every trainee, not every pair of them.
  test.each(drillNames.map((name, at) => [name, TRAINEES[at % TRAINEES.length] as string]))('%s by %s: twice the same', async (name, trainee) => {
    const { value, err } = await json(runOutput, 'run', name, '--trainee', trainee);
    expect(err).toBe('');
    expect((await json(runOutput, 'run', name, '--trainee', trainee)).value).toEqual(value);
    expect((await json(runOutput, 'run', name, '--trainee', trainee, '--seed', '2')).value.hash).not.toBe(value.hash);
  });
  test('by a trainee file: its numbers, and every problem of a wrong one', async () => {
    const quick = file('quick.json', '{ "format": 1, "trainee": "prompt", "reactionS": 0.25 }');
    const byName = await json(runOutput, 'run', 'set-16-from-4');
    const { value } = await json(runOutput, 'run', 'set-16-from-4', '--trainee', quick);
    expect((byName.value.releaseS ?? 0) - (value.releaseS ?? 0)).toBeCloseTo(0.75, 9);
    const { code, value: trouble } = await json(troubleOutput, 'run', 'set-16-from-4', '--trainee', file('odd.json', '{ "format": 1, "trainee": "prompt", "lapse": 2 }'));
    expect([code, trouble.problems.map(({ path: where }) => where)]).toEqual([2, ['lapse']]);
  });
  test('a trace holds both ends, and rows between them at the step', async () => {
    const { value } = await json(runOutput, 'run', 'set-16-from-4', '--trace', '7.13');
    const times = value.trace!.map(({ atS }) => atS);
    const last = value.ticks / 100;
    expect(times).toEqual([...Array.from({ length: Math.ceil(last / 7.13) }, (_, at) => Math.round(at * 713) / 100), last]);
    expect('trace' in (await json(runOutput, 'run', 'set-16-from-4')).value).toBe(false);
  });
  test('an inputs file with the lever at a place that this airframe has not', async () => {
    const nowhere = file('nowhere.json', '[{ "atS": 1, "do": "setFlapLever", "settingDeg": 7.5 }]');
    const { code, err } = await type('run', good, '--inputs', nowhere);
    expect(code).toBe(2);
    expect(err).toMatch(/nowhere\.json:1:\d+ .*\[0\]\.settingDeg.*7\.5.*a setting of the airframe/);
  });

  test('an inputs file: the whole limitS, its acts among the events', async () => {
    const { value } = await json(runOutput, 'run', good, '--inputs', hands);
    const limitS = Number(/"limitS": (\d+)/.exec(drillText('set-16-from-4'))![1]);
    expect(value.ticks).toBe(limitS * 100);
    expect(value.events.filter(({ what }) => ['guardOpen', 'armed', 'extend', 'release', 'splitCall'].includes(what)).map(({ atS, what }) => [atS, what]))
      .toEqual([[1, 'guardOpen'], [1.5, 'armed'], [2, 'extend'], [30, 'release'], [31, 'splitCall']]);
  });
  test('words for people: a sentence, the figures, the events; the same figures as in the JSON', async () => {
    const { out } = await type('run', 'set-16-from-4', '--trace', '10');
    const { value } = await json(runOutput, 'run', 'set-16-from-4');
    expect(out.split('\n')[0]).toMatch(/^Caught\. The sides began to part at .* growth \(limit .* deg\)\.$/);
    expect(out).toContain(`growth at release       ${value.growthAtReleaseDeg!.toFixed(2)} deg`);
    expect(out).toContain(value.hash);
    expect(out).toMatch(/time s +left deg/);
  });
  const words = (outcome: RunOutput['outcome']) => new RegExp(`outcome +${outcome}`);
  test('the sentence of an outcome that is none of caught', async () => {
    const { out } = await type('run', 'set-16-from-4', '--trainee', 'never');
    expect(out).toMatch(words('missed'));
    expect(out).toMatch(/^Missed\. /);
  });
});

describe('record, replay, verify', () => {
  const record = path('record.json');
  test('a record replays to what was flown, and verifies', async () => {
    const flown = await json(runOutput, 'run', 'set-16-from-4', '--seed', '5', '--trainee', 'slow', '--trace', '5', '--record', record);
    const played = await json(replayOutput, 'replay', record, '--trace', '5');
    const title = (JSON.parse(readFileSync(record, 'utf8')) as RunRecord).scenario.title;
    expect(played.value).toEqual({ ...flown.value, scenario: title, agrees: true });
    expect(await json(verifyOutput, 'verify', record)).toMatchObject({ code: 0, value: { ok: true, records: [{ file: record, ok: true, replayable: true, outcome: flown.value.outcome }] } });
    expect((await type('verify', record)).out).toMatch(/follows from its inputs; .*\n {2}not provable: .*assessment/);
    expect((await type('check', record)).out).toContain('record, no problem');
  });
  test('an inputs run as well', async () => {
    await type('run', good, '--inputs', hands, '--record', record);
    expect((await type('verify', record)).code).toBe(0);
  });
  test('an altered one is refused: 1, and where', async () => {
    await type('run', 'set-16-from-4', '--record', record);
    const altered = file('altered.json', readFileSync(record, 'utf8').replace('"outcome":"caught"', '"outcome":"late"'));
    const { code, out } = await type('verify', record, altered);
    expect(code).toBe(1);
    expect(out).toMatch(/altered\.json: refused; it says late\n {2}digest/);
    expect(out).toMatch(/2 records, 1 failure\n$/);
    expect((await json(replayOutput, 'replay', altered)).value).toMatchObject({ agrees: false, outcome: 'caught' });
    expect((await type('replay', altered)).code).toBe(1);
  });
  test('a record with a default left out is not the one that was digested', async () => {
    await type('run', 'set-16-from-4', '--record', record);
    const shorter = file('shorter.json', readFileSync(record, 'utf8').replace('"speedHold":true,', ''));
    const { code, value } = await json(verifyOutput, 'verify', shorter);
    expect([code, value.records[0]!.problems[0]!.found]).toEqual([1, 'a record with keys left out']);
  });
  test('another model: not replayable here, the stored outcome is shown', async () => {
    await type('run', 'set-16-from-4', '--record', record);
    const later = file('later.json', readFileSync(record, 'utf8').replace(/"model":\d+/, '"model":999'));
    expect((await json(verifyOutput, 'verify', later)).value.records[0]).toMatchObject({ ok: false, replayable: false, outcome: 'caught' });
    expect(await type('replay', later)).toMatchObject({ code: 2, out: '', err: expect.stringContaining('not replayable here') as string });
  });
  test('a file that is no record', async () => {
    expect((await type('verify', good)).out).toMatch(/good\.json: no record\n/);
    expect((await type('verify', good)).code).toBe(1);
  });
});

describe('--help', () => {
  test.each([['check'], ['run'], ['replay'], ['verify'], ['serve']])('%s has an example and the keys of its JSON', async (command) => {
    const { code, out, err } = await type(command, '--help');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain(`Example:\n  evenhand ${command === 'replay' ? 'run' : command} `);
    if (command === 'serve') return;
    expect(out).toContain('With --json one object on standard output:');
    const schema = { check: checkOutput, run: runOutput, replay: replayOutput, verify: verifyOutput }[command]!;
    for (const key of Object.keys(schema._zod.def.shape)) expect(out).toMatch(new RegExp(`^  ${key} +`, 'm'));
  });
  test('asked for in a word of any kind it is the same', async () => {
    const { out } = await type('speeds', '--help');
    for (const words of [['speeds', '-h'], ['help', 'speeds']]) expect(await type(...words), words.join(' ')).toEqual({ code: 0, out, err: '' });
    expect(asksForHelp(['run', 'my-help.json', '--json', '-V'])).toBe(false);
  });
  test('the worked examples work', async () => {
    const { out } = await type('run', '--help');
    const example = /Example:\n {2}evenhand (.*)\n/.exec(out)![1]!;
    expect((await type(...example.split(' '))).code).toBe(0);
  });
  test('the whole', async () => {
    const { code, out } = await type('--help');
    expect(code).toBe(0);
    for (const word of ['check', 'run', 'replay', 'verify', 'serve', 'Exit code', 'practice aid']) expect(out).toContain(word);
    expect((await type('--version')).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
