/** Not written yet. */
import type { FilesProps } from '../files.js';

export function Shelf(_props: FilesProps) {
  return <p class="waiting">Own files are not here yet.</p>;
}
