/** The page's frames: asked for once however many listen, and not at all when nobody does. */
import { afterEach, expect, it, vi } from 'vitest';
import { frames } from '../../src/clock/frames.js';

afterEach(() => vi.unstubAllGlobals());

it('asks the browser once a frame for all who listen, in the order in which they came, and stops with the last', () => {
  let waiting: ((stampMs: number) => void)[] = [];
  let cancelled = 0;
  vi.stubGlobal('requestAnimationFrame', (call: (stampMs: number) => void) => waiting.push(call));
  vi.stubGlobal('cancelAnimationFrame', () => { cancelled += 1; });
  const draw = (stampMs: number): number => {
    const calls = waiting;
    waiting = [];
    for (const call of calls) call(stampMs);
    return calls.length;
  };
  const seen: string[] = [];
  const first = frames().subscribe((stampMs) => { seen.push(`a ${stampMs}`); });
  const second = frames().subscribe((stampMs) => { seen.push(`b ${stampMs}`); });
  expect(draw(16.5)).toBe(1);
  first.unsubscribe();
  expect(draw(33)).toBe(1);
  second.unsubscribe();
  expect(cancelled).toBe(1);
  expect(seen).toEqual(['a 16.5', 'b 16.5', 'b 33']);
  const again = frames().subscribe((stampMs) => { seen.push(`c ${stampMs}`); });
  waiting = waiting.slice(-1);
  draw(50);
  again.unsubscribe();
  expect(seen.at(-1)).toBe('c 50');
});
