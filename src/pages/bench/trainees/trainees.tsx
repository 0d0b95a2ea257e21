/** Not written yet. */
import type { BenchProps } from '../bench.js';

export function TraineePanel(_props: BenchProps) {
  return <p class="waiting">TraineePanel is not here yet.</p>;
}
