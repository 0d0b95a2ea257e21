/** Everything that is wrong with the document, at once, each with its place; a press leads there. */
import type { Problem } from '../../text/index.js';
import type { BenchProps } from './bench.js';
import { wrongWords } from './wrong.js';

interface Props extends BenchProps {
  /** Leads to the place of a problem in the text. */
  readonly lead: (problem: Problem) => void;
}

export function Problems({ draft, lead }: Props) {
  const { problems, more } = draft.read.value;
  const count = problems.length + more;
  return (
    <section class={count === 0 ? 'bench-problems' : 'bench-problems wrong'} aria-label="Problems">
      <p role="status">{count === 0 ? 'No problem: it can be flown as it stands.' : count === 1 ? 'One problem: it cannot be flown as it stands.' : `${count} problems: it cannot be flown as it stands.`}</p>
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
