/** A file that was not taken: why, and every problem with its place. */
import type { Opened } from './opened.js';

export const Refusal = ({ of: { name, why, problems, more } }: { readonly of: Extract<Opened, { ok: false }> }) => (
  <div class="refused" role="alert">
    <h3>{name} was not opened</h3>
    <p>{why}</p>
    {problems.length > 0 && (
      <ul>
        {problems.map(({ line, column, path, found, allowed }) => (
          <li key={`${line}:${column}:${path}:${found}:${allowed}`}><span class="place">line {line}, column {column}</span> {path !== '' && <code>{path}</code>} <span>found {found}; allowed: {allowed}</span></li>
        ))}
      </ul>
    )}
    {more > 0 && <p>{more} more.</p>}
  </div>
);
