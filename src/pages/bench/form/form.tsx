/** Not written yet. */
import type { BenchProps } from '../bench.js';

export function Form(_props: BenchProps) {
  return <p class="waiting">Form is not here yet.</p>;
}
