/** Everything that is wrong with the document, at once, each with its place; a press leads there. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Problem } from '../../text/index.js';
import type { BenchProps } from './bench.js';
import { KINDS } from './kinds.js';
import { wrongWords } from './wrong.js';

/** How long a hand rests before the count is told, ms. */
const REST_MS = 800;

interface Props extends BenchProps {
  /** Leads to the place of a problem in the text. */
  readonly lead: (problem: Problem) => void;
}

export function Problems({ draft, lead }: Props) {
  const { problems, more } = draft.read.value;
  const count = problems.length + more;
  const { can } = KINDS[draft.kind.value];
  const words = count === 0 ? `No problem: it can ${can} as it stands.` : `${count === 1 ? 'One problem' : `${count} problems`}: it cannot ${can} as it stands.`;
  const said = useSignal(words);
  useEffect(() => {
    // Whoever hears the page is told once the hand rests, not at every letter.
    const timer = setTimeout(() => { said.value = words; }, REST_MS);
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <section class={count === 0 ? 'bench-problems' : 'bench-problems wrong'} aria-label="Problems">
      <p class="unseen" role="status">{said.value}</p>
      <p aria-hidden="true">{words}</p>
      {count > 0 && (
        <ol>
          {problems.map((problem) => {
            const { line, column, path, found, allowed } = problem;
            return (
              <li key={`${line}:${column} ${path} ${allowed}`}>
                <button class="problem" type="button" onClick={() => lead(problem)}>
                  <span class="at"><span class="unseen">line </span>{line}:{column}</span>
                  <span class="path">{path === '' ? 'the file' : path}</span>
                  <span class="what">{wrongWords({ found, allowed })}</span>
                </button>
              </li>
            );
          })}
          {more > 0 && <li class="small">and {more} more</li>}
        </ol>
      )}
    </section>
  );
}
