/** Words looked for in the text: where they stand, and how they are marked. */
import { StateEffect, StateField, type Extension } from '@codemirror/state';
import { Decoration, EditorView, type DecorationSet } from '@codemirror/view';

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** More are not counted. */
export const MOST_FOUND = 999;

/** Every place of the words, in either case, none over another. */
export function placesOf(text: string, words: string): Span[] {
  const found: Span[] = [];
  const [all, wanted] = [text.toLowerCase(), words.toLowerCase()];
  if (wanted === '' || all.length !== text.length) return found;
  for (let from = all.indexOf(wanted); from >= 0 && found.length < MOST_FOUND; from = all.indexOf(wanted, from + wanted.length)) found.push({ from, to: from + wanted.length });
  return found;
}

/** The one to go to: the first behind the caret, or the last ahead of it, and round. @returns its place in the list; -1 for an empty one */
export function stepTo(found: readonly Span[], { from, to }: Span, way: 1 | -1): number {
  if (way === 1) {
    const next = found.findIndex((one) => one.from >= to);
    return next < 0 && found.length > 0 ? 0 : next;
  }
  const before = found.findLastIndex((one) => one.to <= from);
  return before < 0 ? found.length - 1 : before;
}

interface Found {
  readonly all: readonly Span[];
  /** Which of them one stands at. */
  readonly at: number;
}

export const showFound = StateEffect.define<Found>();

const every = Decoration.mark({ class: 'cm-found' });
const here = Decoration.mark({ class: 'cm-found cm-found-here' });

/** Marks go with the text as it is changed, until others are shown. */
export const foundMarks: Extension = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update: (marks, transaction) => transaction.effects.reduce(
    (now, effect) => (effect.is(showFound) ? Decoration.set(effect.value.all.map(({ from, to }, index) => (index === effect.value.at ? here : every).range(from, to))) : now),
    marks.map(transaction.changes),
  ),
  provide: (field) => EditorView.decorations.from(field),
});
