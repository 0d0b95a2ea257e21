/** The editor: text in, edits out. It keeps no history of its own; the document has the one there is. */
import { acceptCompletion, autocompletion, closeBrackets, closeBracketsKeymap, completionKeymap, type Completion, type CompletionSource } from '@codemirror/autocomplete';
import { defaultKeymap } from '@codemirror/commands';
import { bracketMatching, indentOnInput, indentUnit } from '@codemirror/language';
import { lintGutter, lintKeymap, setDiagnostics, type Diagnostic } from '@codemirror/lint';
import { Annotation, EditorSelection, EditorState, type Text } from '@codemirror/state';
import { EditorView, highlightActiveLineGutter, hoverTooltip, keymap, lineNumbers } from '@codemirror/view';
import type { Problem, Suggested, Told } from '../../../text/index.js';
import { wrongWords } from '../wrong.js';
import type { FoundAt } from './find.js';
import { foundMarks, placesOf, showFound, stepTo } from './found.js';
import { grammar } from './grammar.js';
import { theme } from './theme.js';

export interface Wiring {
  /** What the text has become by a hand, and what the edit is called: edits of one name are undone together. */
  typed(text: string, step: string): void;
  /** The caret went elsewhere, or the hand rested: the next edit is a step of its own. */
  rested(): void;
  suggest(text: string, offset: number): Suggested | null;
  tell(text: string, offset: number): Told | null;
  /** What stands at the caret. */
  at(told: Told | null): void;
  /** Words are to be looked for. */
  find(): void;
}

export interface Editor {
  setText(text: string): void;
  setProblems(problems: readonly Problem[]): void;
  /** Leads caret, eye and focus to a place, both from 1. */
  go(line: number, column: number): void;
  /** Marks the words everywhere and brings one into sight; the focus stays. No words: no marks. */
  find(words: string, way: 1 | -1 | 0): FoundAt;
  focus(): void;
  close(): void;
}

/** An edit that came from outside is not told back. */
const outside = Annotation.define<boolean>();
/** A hand that rests so long has finished a step, ms. */
const REST_MS = 900;

/** @param host stands outside the rules of the page's style policy: it has a root of its own, which takes sheets from script */
export function openEditor(host: HTMLElement, text: string, wiring: Wiring): Editor {
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  const state = EditorState.create({
    doc: text,
    extensions: [
      lineNumbers(), highlightActiveLineGutter(), indentUnit.of('  '), EditorState.tabSize.of(2), indentOnInput(), bracketMatching({ brackets: '{}[]' }), closeBrackets(),
      autocompletion({ override: [completing(wiring)], activateOnTyping: true, interactionDelay: 0, icons: false, defaultKeymap: false }),
      lintGutter(), telling(wiring), grammar, theme, foundMarks, EditorView.lineWrapping,
      keymap.of([{ key: 'Mod-f', run: () => (wiring.find(), true) }, ...closeBracketsKeymap, ...completionKeymap, { key: 'Tab', run: acceptCompletion }, ...lintKeymap, ...defaultKeymap]),
      EditorView.contentAttributes.of({ 'aria-label': 'Text', spellcheck: 'false' }),
      watching(wiring),
    ],
  });
  const view = new EditorView({ state, parent: root, root });
  return {
    setText(next) {
      const now = view.state.doc.toString();
      if (next === now) return;
      const change = difference(now, next);
      const end = change.from + change.insert.length;
      view.dispatch({ changes: change, annotations: outside.of(true), ...(view.hasFocus ? { selection: { anchor: end }, scrollIntoView: true } : {}) });
    },
    setProblems: (problems) => view.dispatch(setDiagnostics(view.state, problems.flatMap((problem) => diagnostic(view.state.doc, problem)))),
    go(line, column) {
      const offset = offsetAt(view.state.doc, line, column);
      view.dispatch({ selection: EditorSelection.cursor(offset), effects: EditorView.scrollIntoView(offset, { y: 'center' }) });
      view.focus();
    },
    find(words, way) {
      const { main } = view.state.selection;
      const all = placesOf(view.state.doc.toString(), words);
      const at = stepTo(all, way === 0 ? { from: main.from, to: main.from } : main, way === -1 ? -1 : 1);
      const span = all[at];
      view.dispatch({
        effects: [showFound.of({ all, at }), ...(span === undefined ? [] : [EditorView.scrollIntoView(span.from, { y: 'center' })])],
        ...(span === undefined ? {} : { selection: EditorSelection.single(span.from, span.to) }),
      });
      return { count: all.length, at: at + 1 };
    },
    focus: () => view.focus(),
    close: () => view.destroy(),
  };
}

function watching(wiring: Wiring) {
  let lastMs = -Infinity;
  return EditorView.updateListener.of((update) => {
    const { state, docChanged, selectionSet, transactions } = update;
    const isOutside = transactions.some((one) => one.annotation(outside) === true);
    if (docChanged && !isOutside) {
      const nowMs = performance.now();
      if (nowMs - lastMs > REST_MS) wiring.rested();
      lastMs = nowMs;
      wiring.typed(state.doc.toString(), transactions.some((one) => one.isUserEvent('delete')) ? 'taking away' : 'typing');
    } else if (selectionSet && !docChanged && !isOutside) {
      wiring.rested();
    }
    if (docChanged || selectionSet) wiring.at(wiring.tell(state.doc.toString(), state.selection.main.head));
  });
}

/** The one stretch in which two texts differ. */
function difference(before: string, after: string): { from: number; to: number; insert: string } {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && before[start] === after[start]) start += 1;
  let end = 0;
  while (end < most - start && before[before.length - 1 - end] === after[after.length - 1 - end]) end += 1;
  return { from: start, to: before.length - end, insert: after.slice(start, after.length - end) };
}

const completing = (wiring: Wiring): CompletionSource => ({ state, pos, explicit }) => {
  const before = state.sliceDoc(Math.max(0, pos - 1), pos);
  if (!explicit && !/[\w"]/.test(before)) return null;
  const found = wiring.suggest(state.doc.toString(), pos);
  if (found === null || found.options.length === 0) return null;
  // Behind the opening quote: what is typed is held against the word alone.
  const quote = state.sliceDoc(found.from, found.from + 1) === '"' ? 1 : 0;
  const options = found.options.map((option): Completion => ({
    label: option.label, detail: option.detail, ...(option.meaning === '' ? {} : { info: option.meaning }),
    apply: (view) => {
      const now = wiring.suggest(view.state.doc.toString(), view.state.selection.main.head) ?? found;
      view.dispatch({ changes: { from: now.from, to: now.to, insert: option.write }, selection: { anchor: now.from + option.caret }, userEvent: 'input.complete', scrollIntoView: true });
    },
  }));
  return { from: Math.min(pos, found.from + quote), options, validFor: /^[\w.-]*$/ };
};

const telling = (wiring: Wiring) => hoverTooltip((view, pos) => {
  const told = wiring.tell(view.state.doc.toString(), pos);
  if (told === null || pos < told.from || pos > told.to) return null;
  return {
    pos: told.from, end: told.to, above: true,
    create: () => {
      const dom = document.createElement('div');
      dom.className = 'cm-told';
      const meaning = document.createElement('strong');
      meaning.textContent = told.meaning;
      const allowed = document.createElement('span');
      allowed.textContent = `${told.allowed}; ${told.otherwise}`;
      dom.append(meaning, allowed);
      return { dom };
    },
  };
});

/** @param column in characters, as problems count */
function offsetAt(doc: Text, line: number, column: number): number {
  const { from, text } = doc.line(Math.min(Math.max(1, line), doc.lines));
  return from + Array.from(text).slice(0, column - 1).join('').length;
}

function diagnostic(doc: Text, { line, column, path, ...problem }: Problem): Diagnostic[] {
  const from = offsetAt(doc, line, column);
  const rest = doc.lineAt(from).text.slice(from - doc.lineAt(from).from);
  const length = /^(?:"(?:\\.|[^"\\])*"?|[^\s,{}[\]"]+|.)/.exec(rest)?.[0].length ?? 0;
  return [{ from, to: Math.min(doc.length, from + length), severity: 'error', message: `${path} ${wrongWords(problem)}`.trim() }];
}
