/** Not written yet. */
import type { BenchProps } from '../bench.js';

export function Coverage(_props: BenchProps) {
  return <p class="waiting">Coverage is not here yet.</p>;
}
