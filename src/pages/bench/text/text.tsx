/** The text of the document, as it is written. */
import type { BenchProps } from '../bench.js';

export function Text({ draft }: BenchProps) {
  return <textarea aria-label="Text" rows={30} value={draft.text.value} onInput={({ currentTarget: { value } }) => draft.edit(value, 'typing')} />;
}
