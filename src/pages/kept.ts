/** What a choice is kept in. A store may be closed to us (private windows); then a choice lasts as long as the page. */

export function read(key: string): string | null {
  try {
    return localStorage.getItem(`evenhand.${key}`);
  } catch {
    return null;
  }
}

export function write(key: string, value: string): void {
  try {
    localStorage.setItem(`evenhand.${key}`, value);
  } catch {
    // Not kept; see read.
  }
}
