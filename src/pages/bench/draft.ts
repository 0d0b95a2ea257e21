/**
 * The one document being written. Its text is the truth: form and picture change the text, and everything else is read
 * from it. One history serves text, form and picture alike.
 */
import { batch, computed, effect, signal, type ReadonlySignal } from '@preact/signals';
import { edited, type Json, parsedValue, type Path, type Problem } from '../../text/index.js';
import { advance, back, begin, forth, part, type History } from './history.js';
import { keep, kept, type Kept } from './keep.js';
import { readKind, type BenchKind, type BenchValue, type Known } from './kinds.js';

/** A moment of the history. */
interface Moment extends Kept {
  /** Which of the documents opened one after the other. */
  readonly document: number;
}

/** What the text comes to at this moment. */
interface Reading {
  /** In the order of the text. */
  readonly problems: readonly Problem[];
  /** Further problems that are not listed. */
  readonly more: number;
  /** null while anything is wrong. */
  readonly value: BenchValue | null;
  /** What stands in the text, right or wrong; null while its grammar is broken. */
  readonly json: Json | null;
}

/** A document as it is opened. */
interface Document {
  readonly kind: BenchKind;
  /** Name of its file, without ending. */
  readonly name: string;
  readonly text: string;
  /** Its place on the own shelf; null for one that was never put there. */
  readonly own: string | null;
}

export interface Draft {
  readonly kind: ReadonlySignal<BenchKind>;
  readonly name: ReadonlySignal<string>;
  readonly own: ReadonlySignal<string | null>;
  readonly text: ReadonlySignal<string>;
  readonly read: ReadonlySignal<Reading>;
  /** The last value that was sound; null where there was none since the document was opened. */
  readonly sound: ReadonlySignal<BenchValue | null>;
  /** What stood in the text when its grammar was last right. */
  readonly json: ReadonlySignal<Json>;
  /** Whether anything was written since it was opened or saved. */
  readonly unsaved: ReadonlySignal<boolean>;
  /** The text becomes another. Edits of one step, called alike and one after the other, are undone together. */
  edit(text: string, step?: string): void;
  /** A value is written at a path; undefined takes it away. */
  put(path: Path, value: Json | undefined, step?: string): void;
  rename(name: string): void;
  undo(): void;
  redo(): void;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** Another document takes its place. A step like any other: undo brings back what was there. */
  open(document: Document): void;
  /** It is on the own shelf now, as it stands. */
  saved(own: string): void;
  /** The next edit begins a step of its own. */
  part(): void;
  /** What was being written when the page went away is here again, and nothing was written since. */
  readonly found: ReadonlySignal<boolean>;
  /** Leaves an empty bench. A step like any other. */
  discard(): void;
}

/** The draft of this tab; made at the first look at the bench, and there for as long as the tab. */
let draft: Draft | null = null;

/** @param known what files may refer to by name */
export const theDraft = (known: Known): Draft => (draft ??= makeDraft(known, kept()));

/** An empty bench. */
const NOTHING: Kept = { kind: 'scenario', name: '', text: '', own: null, base: '' };

/** @param from what was being written when the page went away; null where nothing was */
export function makeDraft(known: Known, from: Kept | null): Draft {
  const history = signal<History<Moment>>(begin({ ...(from ?? NOTHING), document: 0 }));
  const first = history.peek().now;
  const now = computed(() => history.value.now);
  const kind = computed(() => now.value.kind);
  const text = computed(() => now.value.text);
  const name = computed(() => now.value.name);
  const read = computed((): Reading => {
    const read = readKind(kind.value, text.value, name.value, known);
    const json = parsedValue(text.value) ?? null;
    return read.ok ? { problems: [], more: 0, value: read.value, json } : { problems: read.problems, more: read.more, value: null, json };
  });
  const lastSound = signal<BenchValue | null>(null);
  const lastJson = signal<Json>({});
  effect(() => {
    const { value, json } = read.value;
    batch(() => {
      if (value !== null) lastSound.value = value;
      if (json !== null) lastJson.value = json;
    });
  });
  effect(() => {
    const { document: _, ...whole } = now.value;
    keep(whole);
  });
  const step = (change: Partial<Moment>, called: string | null = null): void => {
    history.value = advance(history.value, { ...history.value.now, ...change }, called);
  };
  const edit = (next: string, called?: string): void => {
    if (next !== text.peek()) step({ text: next }, called ?? null);
  };
  return {
    kind, name, text, read, edit,
    own: computed(() => now.value.own),
    sound: computed(() => (lastSound.value?.kind === kind.value ? lastSound.value : null)),
    json: lastJson,
    unsaved: computed(() => now.value.text !== now.value.base),
    put: (path, value, called) => edit(edited(text.peek(), path, value), called),
    rename: (to) => step({ name: to }, 'rename'),
    undo: () => { history.value = back(history.value); },
    redo: () => { history.value = forth(history.value); },
    canUndo: computed(() => history.value.past.length > 0),
    canRedo: computed(() => history.value.future.length > 0),
    open(document) {
      batch(() => {
        lastSound.value = null;
        // One kind of line end, as the editor has it; places of problems are the same in both.
        const text = document.text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
        step({ ...document, text, base: document.own === null ? '' : text, document: history.value.now.document + 1 });
        // The same document again changes no reading, and nobody else would tell that it is sound.
        lastSound.value = read.peek().value;
      });
    },
    saved(own) {
      // Its other moments belong to the same place on the shelf: saved from one of them, it is not there twice.
      const { past, now: { document, text: base }, future } = history.value;
      const kept = (moment: Moment): Moment => (moment.document === document ? { ...moment, own, base } : moment);
      history.value = { ...history.value, past: past.map(kept), now: kept(history.value.now), future: future.map(kept) };
    },
    part: () => { history.value = part(history.value); },
    found: computed(() => from !== null && from.text !== '' && history.value.past.length === 0 && history.value.now === first),
    discard: () => step({ ...NOTHING, document: history.value.now.document + 1 }),
  };
}
