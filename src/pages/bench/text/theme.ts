/** The editor in the colours of the house. */
import { EditorView } from '@codemirror/view';
import type { Extension } from '@codemirror/state';

const LIST = '.cm-tooltip.cm-tooltip-autocomplete > ul';

export const theme: Extension = EditorView.theme({
  '&': { color: 'var(--ink)', backgroundColor: 'transparent', fontSize: '0.875rem' },
  '&.cm-focused': { outline: 'none' },
  '.cm-scroller': { fontFamily: 'ui-monospace, "Cascadia Mono", "DejaVu Sans Mono", monospace', lineHeight: '1.6' },
  '.cm-content': { caretColor: 'var(--ink)', padding: '8px 0' },
  '.cm-gutters': { backgroundColor: 'transparent', color: 'var(--soft)', border: '0', fontVariantNumeric: 'tabular-nums' },
  '.cm-activeLine, .cm-activeLineGutter': { backgroundColor: 'transparent' },
  '.cm-activeLineGutter': { color: 'var(--ink)', fontWeight: '600' },
  '.cm-content ::selection, .cm-content::selection': { backgroundColor: 'color-mix(in srgb, var(--accent) 30%, transparent)' },
  '.cm-found': { backgroundColor: 'var(--wash)', outline: '1px solid var(--mark)' },
  '.cm-found-here': { outline: '2px solid var(--accent)' },
  '.cm-matchingBracket, &.cm-focused .cm-matchingBracket': { backgroundColor: 'transparent', outline: '1px solid var(--mark)' },
  '.cm-lintRange-error': { backgroundImage: 'none', textDecoration: 'underline wavy var(--ink) 1.5px', textUnderlineOffset: '4px' },
  '.cm-lint-marker': { width: '10px', height: '10px', content: 'none', backgroundColor: 'var(--ink)', clipPath: 'polygon(0 0, 100% 50%, 0 100%)', margin: '6px 0 0 4px' },
  '.cm-tooltip': { backgroundColor: 'var(--sheet)', color: 'var(--ink)', border: '1px solid var(--mark)', borderRadius: '6px', fontSize: '0.875rem', maxWidth: '30rem' },
  '.cm-tooltip-lint': { padding: '0' },
  '.cm-diagnostic': { padding: '8px 12px', margin: '0', border: '0' },
  '.cm-told': { padding: '8px 12px', fontFamily: "'Inter', system-ui, sans-serif" },
  '.cm-told strong': { display: 'block', fontWeight: '600' },
  '.cm-told span': { color: 'var(--soft)' },
  [LIST]: { fontFamily: 'inherit', maxHeight: '16rem' },
  [`${LIST} > li`]: { padding: '6px 12px', display: 'flex', gap: '14px', alignItems: 'baseline' },
  [`${LIST} > li[aria-selected]`]: { backgroundColor: 'var(--wash)', color: 'var(--ink)', boxShadow: 'inset 3px 0 0 var(--accent)' },
  '.cm-completionMatchedText': { textDecoration: 'none', fontWeight: '700' },
  '.cm-completionDetail': { fontStyle: 'normal', color: 'var(--soft)', marginLeft: 'auto', fontFamily: "'Inter', system-ui, sans-serif" },
  '.cm-tooltip.cm-completionInfo': { padding: '8px 12px', fontFamily: "'Inter', system-ui, sans-serif" },
});
