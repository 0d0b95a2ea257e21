/** Not written yet. */
import type { BenchProps } from '../bench.js';

export function Picture(_props: BenchProps) {
  return <p class="waiting">Picture is not here yet.</p>;
}
