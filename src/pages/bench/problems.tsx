/** Everything that is wrong with the document, at once, each with its place. */
import type { BenchProps } from './bench.js';

export function Problems({ draft }: BenchProps) {
  const { problems, more } = draft.read.value;
  const count = problems.length + more;
  return (
    <section class="bench-problems" aria-label="Problems">
      <p role="status">{count === 0 ? 'No problem.' : count === 1 ? 'One problem.' : `${count} problems.`}</p>
      <ol>
        {problems.map(({ line, column, path, found, allowed }) => (
          <li key={`${line}:${column} ${path} ${allowed}`}>{line}:{column} {path} found {found}, allowed {allowed}</li>
        ))}
      </ol>
    </section>
  );
}
