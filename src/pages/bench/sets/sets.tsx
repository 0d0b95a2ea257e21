/** Not written yet. */
import type { BenchProps } from '../bench.js';

export function SetPanel(_props: BenchProps) {
  return <p class="waiting">SetPanel is not here yet.</p>;
}
