/** Not written yet. */
import type { BenchProps } from '../bench.js';

export function Preview(_props: BenchProps) {
  return <p class="waiting">Preview is not here yet.</p>;
}
