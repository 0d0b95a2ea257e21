/** Every door of the product through which something from outside comes, what is brought to it, and what it owes. */
import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import './no-page.js';
import { bindingsOf } from '../../src/input/keys.js';
import { padBindingsOf } from '../../src/input/padBindings.js';
import { keptOf } from '../../src/pages/bench/keep.js';
import { ongoingOf } from '../../src/pages/practice/ongoing.js';
import { fragmentOf, routeOf } from '../../src/pages/route.js';
import { keyChangesOf, padChangesOf, volumeOf } from '../../src/pages/settings.js';
import { sizeChoicesOf } from '../../src/pages/size/choices.js';
import { timingOf } from '../../src/pages/timing/kept.js';
import { linkCode, textOfLink } from '../../src/records/link.js';
import {
  duplicated, edited, moved, parsedValue, readAirframe, readAny, readCourse, readInputs, readRecord, readScenario, readSet, readTrainee, readTrials, suggest, tellAt, type Read,
} from '../../src/text/index.js';
import { FILE_SCHEMAS, shapeOf } from '../../sim/files/index.js';
import { lookup } from '../files/shipped.js';
import { bookDoors } from './books.js';
import { door, type Door } from './door.js';
import { deskDoor } from './messages.js';
import { must } from './promises.js';
import { shippedDrills, shippedSets } from './shelves.js';
import { taken } from './taken.js';
import { typedDoor } from './typed.js';
import { anyText, cut, damagedFrom, hostileText, ODD, SHIPPED, valueOfShape } from './texts.js';
import { readTwice, untouched, watched } from './watched.js';

let counted: (what: string) => void = () => undefined;
export const countingDoors = (to: typeof counted): void => { counted = to; };

const drills = (name: string) => shippedDrills.get(name);
const shelves = { airframes: lookup, drills, sets: (name: string) => shippedSets.get(name) };

/** A text at the door for any file, at that of its own kind, and at one that was not meant. */
function files([text, other]: readonly [string, number]): void {
  let kind = '';
  const any = readTwice('readAny', text, (one) => {
    const read = readAny(one, 'x.json', lookup, drills, shelves.sets);
    if (!read.ok) return read;
    ({ kind } = read.value);
    return { ok: true, value: read.value.value };
  });
  if (any !== null) counted('files taken');
  OWN.forEach(([name, look], at) => { if (name === kind || at === other) look(text); });
}

const own = <T>(name: string, read: (text: string) => Read<T>, then: (value: T, text: string) => void): readonly [string, (text: string) => void] => [name, (text) => {
  const value = readTwice(name, text, read);
  if (value === null) return;
  counted(`taken as ${name}`);
  watched(`what is made of a ${name}`, () => then(value, text));
}];
const OWN = [
  own('scenario', (text) => readScenario(text, 'x', lookup), taken.scenario), own('airframe', (text) => readAirframe(text, 'x'), taken.airframe),
  own('inputs', (text) => readInputs(text, 'x', lookup('airframe-a')), taken.inputs), own('record', (text) => readRecord(text, 'x'), taken.record),
  own('trainee', (text) => readTrainee(text, 'x'), taken.trainee), own('set', (text) => readSet(text, 'x', lookup, drills), taken.set),
  own('course', (text) => readCourse(text, 'x', shelves), taken.course),
];

/** The editor: what it does to a text keeps the text whole, and what it tells of a place is told. */
function editor([text, at, path, odd]: readonly [string, number, readonly (string | number)[], string]): void {
  for (const schema of [FILE_SCHEMAS.scenario, FILE_SCHEMAS.airframe]) {
    watched('suggest', () => suggest(text, at % (text.length + 1), shapeOf(schema), () => ['a']));
    watched('tellAt', () => tellAt(text, at % (text.length + 1), shapeOf(schema)));
  }
  const value = parsedValue(odd);
  const next = watched('edited', () => edited(text, path, value));
  if (parsedValue(text) !== undefined) must(parsedValue(next) !== undefined, `an edit at ${path.join('.')} broke the text`);
  watched('moved', () => moved(text, path, at % 4, (at >> 2) % 4));
  watched('duplicated', () => duplicated(text, path, at % 4));
}
const step = fc.oneof(fc.constantFrom('faults', 'events', 'start', 'task', 'when', 'all', 'settings', 'massT', '__proto__', 'x'), fc.nat(3));

function stored(text: string | null): void {
  const changes = watched('keys', () => keyChangesOf(text));
  bindingsOf(changes);
  padBindingsOf(watched('pads', () => padChangesOf(text)));
  const volume = volumeOf(text);
  must(volume >= 0 && volume <= 1, `a volume of ${volume}`);
  const size = sizeChoicesOf(text);
  must(Object.values(size.screens).every((one) => Number.isFinite(one) && one > 0), 'a screen of no size');
  timingOf(text);
  const practice = ongoingOf(text);
  must(practice === null || (practice.practice.degPerS > 0 && Number.isInteger(practice.seed)), 'a practice that is none');
  const draft = keptOf(text);
  must(draft === null || [draft.kind, draft.name, draft.text, draft.base].every((one) => typeof one === 'string'), 'a draft that is none');
}
const STORED = [
  '{"extend":{"code":"KeyQ","shift":false},"call":{"code":"KeyW","shift":true}}', '{"pad":[{"does":"extend","button":3,"stays":false},{"does":"roll","axis":0,"from":-1,"to":1,"dead":0.05}]}', '0.5', 'on',
  '{"screens":{"1920x1080@1":3.8},"distanceMm":700,"isTrue":true,"apartDeg":20}', '{"medianS":0.02,"sdS":0.004,"releases":20,"input":"key","screen":"s"}',
  '{"practice":{"degPerS":0.3,"runs":4},"seed":5,"runs":[{"degPerS":0.3,"easy":false,"outcome":"caught"}]}', '{"kind":"scenario","name":"n","text":"{}","own":null,"base":""}',
];

async function link(code: string): Promise<void> {
  const read = await textOfLink(code);
  untouched('textOfLink');
  must(read.ok || (read.why.startsWith('This link does not open') && read.why.length < 200), 'a link that is refused without a reason');
  if (!read.ok) return;
  const again = await textOfLink(await linkCode(read.text));
  must(again.ok && again.text === read.text, 'a text that a link changed');
}
const codeOf = (text: string): string => deflateRawSync(text).toString('base64url');
/** Opens to fifty megabytes. */
const BOMB = codeOf('0'.repeat(50_000_000));
const codes: fc.Arbitrary<string> = fc.oneof(
  fc.string({ maxLength: 60 }), fc.uint8Array({ maxLength: 300 }).map((bytes) => Buffer.from(bytes).toString('base64url')), { weight: 3, arbitrary: hostileText.map(codeOf) },
  fc.tuple(hostileText, fc.nat(), fc.nat(9), fc.string({ maxLength: 3 })).map(([text, at, length, put]) => cut(codeOf(text), at, length, put, 0)),
  { weight: 1, arbitrary: fc.constantFrom(BOMB, BOMB.slice(0, 900), 'AAAA', '____', 'A'.repeat(40_000), 'A'.repeat(1_500_000)) },
);

function address(text: string): void {
  const route = watched('routeOf', () => routeOf(text));
  if (route.page === 'nowhere') return;
  const fragment = fragmentOf(route);
  must(JSON.stringify(routeOf(fragment)) === JSON.stringify(route), `the address ${fragment} leads elsewhere than ${text}`);
}

function table(text: string): void {
  const trials = watched('readTrials', () => readTrials(text, 'x.csv'));
  if (!trials.ok) {
    must(trials.problems.length > 0 && trials.problems.every(({ found, path }) => !/\p{Cc}/u.test(found + path) && found.length < 900), 'a table that is refused without a reason');
    return;
  }
  counted('taken as table');
  watched('a report', () => taken.trials(trials.value));
}

const tables = SHIPPED.filter((text) => text.startsWith('id,'));

export const DOORS: readonly Door[] = [
  door('file', 60, fc.tuple(hostileText, fc.nat(6)), files),
  door('editor', 10, fc.tuple(hostileText, fc.nat(), fc.array(step, { maxLength: 4 }), fc.constantFrom(...ODD)), editor),
  door('store', 8, fc.oneof(fc.constant(null), anyText, damagedFrom(STORED), valueOfShape(shapeOf(FILE_SCHEMAS.trainee)).map((one) => JSON.stringify(one))), stored),
  door('link', 6, codes, link),
  door('address', 4, fc.oneof(fc.string({ unit: 'binary', maxLength: 60 }), fc.tuple(fc.constantFrom('#/drill/', '#/set/', '#/own/', '#/course/', '#/bench?s=', '#/own?s=', '#/help?k=', '#/practice/'), fc.string({ maxLength: 40 })).map((parts) => parts.join(''))), address),
  door('table', 6, fc.oneof(anyText, damagedFrom(tables), fc.array(fc.array(fc.oneof(fc.constantFrom('', 'x', '"', '1e308'), fc.double().map(String), fc.nat(99).map(String)), { maxLength: 8 }).map((row) => row.join(',')), { maxLength: 20 }).map((rows) => ['id,rate_deg_per_s,onset_s,release_s,end_s,limit_deg', ...rows].join('\n'))), table),
  ...bookDoors((what) => counted(what)),
  typedDoor(hostileText),
  deskDoor,
];
