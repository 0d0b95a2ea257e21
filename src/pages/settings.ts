/** Choices that are kept on this machine: day or night, letters on or off, and whether someone has been here before. */
import { effect, signal } from '@preact/signals';

export type Look = 'system' | 'day' | 'night';

/** A store may be closed to us (private windows); then a choice lasts as long as the page. */
function read(key: string): string | null {
  try {
    return localStorage.getItem(`evenhand.${key}`);
  } catch {
    return null;
  }
}

function write(key: string, value: string): void {
  try {
    localStorage.setItem(`evenhand.${key}`, value);
  } catch {
    // Not kept; see read.
  }
}

const lookOf = (text: string | null): Look => (text === 'day' || text === 'night' ? text : 'system');

export const look = signal<Look>(lookOf(read('look')));
export const letters = signal(read('letters') !== 'off');
export const firstVisit = read('seen') === null;

effect(() => {
  const root = document.documentElement;
  if (look.value === 'system') delete root.dataset['look'];
  else root.dataset['look'] = look.value;
  write('look', look.value);
});
effect(() => write('letters', letters.value ? 'on' : 'off'));
write('seen', 'yes');
