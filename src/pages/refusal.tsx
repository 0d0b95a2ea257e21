/** A file that was not taken: why, and every problem with its place. */
import type { Problem } from '../text/index.js';

interface Props {
  readonly name: string;
  /** What became of it. */
  readonly said?: string;
  readonly why?: string;
  /** Line 0 stands for none: the problem is of the whole file. */
  readonly problems: readonly Pick<Problem, 'line' | 'column' | 'path' | 'found' | 'allowed'>[];
  /** Further problems that are not listed. */
  readonly more: number;
  /** Its heading within the page. */
  readonly heading?: 'h2' | 'h3';
}

export const Refusal = ({ name, said = 'was not opened', why, problems, more, heading: Heading = 'h2' }: Props) => (
  <div class="refused" role="alert">
    <Heading>{name} {said}</Heading>
    {why !== undefined && <p>{why}</p>}
    {problems.length > 0 && (
      <ul>
        {problems.map(({ line, column, path, found, allowed }) => (
          <li key={`${line}:${column}:${path}:${found}:${allowed}`}>
            {line > 0 && <span class="place">line {line}, column {column}</span>}
            {path !== '' && <code>{path}</code>} <span>found {found}; {line > 0 ? 'allowed: ' : 'expected '}{allowed}</span>
          </li>
        ))}
      </ul>
    )}
    {more > 0 && <p>{more} more.</p>}
  </div>
);
