/** All that help can show, by section: the keys of every kind of file from the schemas themselves, and what is said beside them. */
import { type FileKind, type KeyRow, keyTable } from '../../../sim/files/index.js';
import { EVENT_EXAMPLES, FAULT_EXAMPLES, KEY_EXAMPLES, TRIGGER_EXAMPLES, type Example } from './examples.js';
import { COMMANDS, FIGURES, PAGES } from './guide.js';
import { HOW, PAGE_KEYS } from './how.js';
import { IS_NOT, SCORES, WORDS, type Said } from './words.js';

export interface Entry {
  /** Its place in an address: `faults.when.hazardPerS`, `set.runs`, `word.split`. */
  readonly id: string;
  readonly name: string;
  /** What may be written, and what holds where nothing is; null for what is no key. */
  readonly allowed: string | null;
  readonly fallback: string;
  readonly text: string;
  readonly example: Example | null;
  /** Where it is done; null for what is told and no more. */
  readonly href: string | null;
}

export interface Section {
  readonly id: string;
  readonly title: string;
  /** One sentence about it. */
  readonly about: string;
  readonly entries: readonly Entry[];
}

const said = (prefix: string, list: readonly Said[]): Entry[] => list.map(({ name, text, href }) =>
  ({ id: `${prefix}.${name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/-$/, '')}`, name, allowed: null, fallback: '', text, example: null, href: href ?? null }));

/** Files whose keys are told, each with the prefix of its ids and what is told elsewhere. */
const FILES: readonly { readonly kind: FileKind; readonly title: string; readonly about: string; readonly elsewhere?: RegExp }[] = [
  { kind: 'scenario', title: 'Scenario file', about: 'One run: where it starts, what is to be reached, what goes wrong and when, what is scored.', elsewhere: /^events\[\]\.(when|times|everyS)\b/ },
  { kind: 'set', title: 'Set file', about: 'Many short runs of one scenario, drawn from one seed, to measure how soon somebody lets go.' },
  { kind: 'course', title: 'Course file', about: 'Drills and sets in order, with what each needs and when it is done.', elsewhere: /^(steps\[\]\.(set|drill)\.|firstLook\.fault\.)/ },
  { kind: 'trainee', title: 'Trainee file', about: 'A scripted trainee with some of its numbers changed.' },
  { kind: 'airframe', title: 'Airframe file', about: 'Every number of the drive, the wing, the engines and the warnings. Yours come from your own manuals.' },
  { kind: 'inputs', title: 'Inputs file', about: 'What hands do in a run without a page, in rising time.' },
];

/** The id of a key: its path without brackets, with the kinds that have it behind. */
function idOf(kind: FileKind, row: KeyRow): string {
  const [path = '', kinds] = row.path.replaceAll('[]', '').split(' ');
  const word = /\.(kind|do)$/.test(path) && row.allowed.startsWith('"') ? `.${JSON.parse(row.allowed) as string}` : '';
  const of = kinds === undefined ? '' : `.${row.path.replace(/^.*\(|\)$/g, '').split(', ').join('-')}`;
  return `${kind === 'scenario' ? '' : `${kind}.`}${path.replace(/^\./, '')}${word}${of}`;
}

function exampleOf(id: string): Example | null {
  const last = id.split('.').at(-1) ?? '';
  if (id.startsWith('faults.kind.')) return FAULT_EXAMPLES[last] ?? null;
  if (id.startsWith('events.do.')) return EVENT_EXAMPLES[last] ?? null;
  if (id.startsWith('faults.when.')) return TRIGGER_EXAMPLES[last] ?? null;
  return KEY_EXAMPLES[id] ?? null;
}

function keysOf(kind: FileKind, elsewhere: RegExp | undefined): Entry[] {
  return keyTable(kind).filter(({ path }) => elsewhere?.test(path) !== true).map((row) => {
    const id = idOf(kind, row);
    return { id, name: /\.(kind|do)$/.test(row.path) ? `${row.path}: ${row.allowed}` : row.path, allowed: row.allowed, fallback: row.default, text: row.meaning.replace(/`([^`]*)`/g, '“$1”'), example: exampleOf(id), href: null };
  });
}

let made: readonly Section[] | null = null;

/** Every section but the keys of the drill, which are the hand's own. */
export const sections = (): readonly Section[] => (made ??= [
  { id: 'first', title: 'What it is not', about: 'Before anything else.', entries: said('first', IS_NOT) },
  { id: 'how', title: 'How to', about: 'What people come to do, and where.', entries: said('how', HOW) },
  { id: 'pages', title: 'Pages', about: 'What is done where.', entries: said('page', PAGES) },
  { id: 'scores', title: 'Scores', about: 'What a run comes to, and from which figures.', entries: said('score', SCORES) },
  { id: 'figures', title: 'Figures', about: 'What debrief, sets and progress show, with units.', entries: said('figure', FIGURES) },
  { id: 'words', title: 'Words', about: 'One word for one thing, here and in every file.', entries: said('word', WORDS) },
  { id: 'page-keys', title: 'Keys of the pages', about: 'Tab, Enter and Escape do everywhere what they always do. Letters act where letter keys are on in set-up.', entries: said('key', PAGE_KEYS) },
  ...FILES.map(({ kind, title, about, elsewhere }): Section => ({ id: `${kind}-file`, title, about, entries: keysOf(kind, elsewhere) })),
  { id: 'commands', title: 'Commands', about: 'Without a page: npx evenhand, then one of these. Each says with --help what it takes and gives.', entries: said('command', COMMANDS) },
]);

/** Whether an entry has all the words that were typed, in whatever order. */
export function hasWords({ name, text, allowed, example }: Entry, typed: string): boolean {
  const all = `${name} ${text} ${allowed ?? ''} ${example?.does ?? ''}`.toLowerCase();
  return typed.toLowerCase().split(/\s+/).every((word) => all.includes(word));
}

/** The section of an address, and the entry in it where one is named. */
export function placeOf(all: readonly Section[], key: string | null): { readonly section: Section; readonly entry: string | null } | null {
  const section = all.find(({ id }) => id === key);
  if (section !== undefined) return { section, entry: null };
  const holding = all.find(({ entries }) => entries.some(({ id }) => id === key));
  return holding === undefined ? null : { section: holding, entry: key };
}
