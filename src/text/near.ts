/** The known word nearest to one that was mistyped. */

/** Longer words are no slips of the finger. */
const LONGEST = 40;

/** The word that needs the fewest single changes (insert, drop, replace, swap neighbours), or null if none is near. */
export function nearest(typed: string, known: readonly string[]): string | null {
  if (typed.length > LONGEST) return null;
  let best: string | null = null;
  let fewest = Math.min(3, Math.floor(typed.length / 3) + 1) + 1;
  for (const word of known) {
    const changes = distance(typed.toLowerCase(), word.toLowerCase());
    if (changes < fewest) [best, fewest] = [word, changes];
  }
  return best ?? startOf(typed, known);
}

/** A word of which the typed one is the beginning, or the other way round: `speed` for `speedKt`. */
function startOf(typed: string, known: readonly string[]): string | null {
  const small = typed.toLowerCase();
  if (small.length < 3) return null;
  return known.find((word) => word.toLowerCase().startsWith(small) || (word.length >= 3 && small.startsWith(word.toLowerCase()))) ?? null;
}

/** Optimal string alignment: edits with swaps of neighbours, each place changed once. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const now = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min((last[j] ?? 0) + 1, (now[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, (before[j - 2] ?? 0) + 1);
      now.push(least);
    }
    [before, last] = [last, now];
  }
  return last[b.length] ?? 0;
}
