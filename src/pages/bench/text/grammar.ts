/** JSON with comments for the editor: what each sign is, and how deep a line stands. A comment is no mistake here. */
import { HighlightStyle, StreamLanguage, syntaxHighlighting, type StreamParser, type StringStream } from '@codemirror/language';
import type { Extension } from '@codemirror/state';
import { tags } from '@lezer/highlight';

interface State {
  /** Open lists and objects. */
  depth: number;
  /** Inside a comment of several lines. */
  comment: boolean;
}

const parser: StreamParser<State> = {
  name: 'json with comments',
  startState: () => ({ depth: 0, comment: false }),
  copyState: (state) => ({ ...state }),
  token(stream, state) {
    if (state.comment) return comment(stream, state);
    if (stream.eatSpace()) return null;
    if (stream.match('//')) { stream.skipToEnd(); return 'comment'; }
    if (stream.match('/*')) { state.comment = true; return comment(stream, state); }
    if (stream.match(/^"(?:\\.|[^"\\])*"?/)) return stream.match(/^\s*:/, false) ? 'propertyName' : 'string';
    if (stream.match(/^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/)) return 'number';
    if (stream.match(/^(?:true|false|null)\b/)) return 'atom';
    const sign = stream.next();
    if (sign === '{' || sign === '[') state.depth += 1;
    if (sign === '}' || sign === ']') state.depth = Math.max(0, state.depth - 1);
    return 'punctuation';
  },
  indent: ({ depth }, behind, { unit }) => Math.max(0, depth - (/^\s*[}\]]/.test(behind) ? 1 : 0)) * unit,
  languageData: { commentTokens: { line: '//', block: { open: '/*', close: '*/' } }, closeBrackets: { brackets: ['{', '[', '"'] }, indentOnInput: /^\s*[}\]]$/ },
};

function comment(stream: StringStream, state: State): string {
  if (stream.skipTo('*/')) {
    stream.match('*/');
    state.comment = false;
  } else {
    stream.skipToEnd();
  }
  return 'comment';
}

const inks = HighlightStyle.define([
  { tag: tags.propertyName, color: 'var(--ink)', fontWeight: '600' },
  { tag: [tags.string, tags.number, tags.atom], color: 'var(--accent)' },
  { tag: tags.comment, color: 'var(--soft)', fontStyle: 'italic' },
  { tag: tags.punctuation, color: 'var(--soft)' },
]);

export const grammar: Extension = [StreamLanguage.define(parser), syntaxHighlighting(inks)];
