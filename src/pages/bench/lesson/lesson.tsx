/** Not written yet. */
import type { BenchProps } from '../bench.js';

export function Lesson(_props: BenchProps) {
  return <p class="waiting">Lesson is not here yet.</p>;
}
