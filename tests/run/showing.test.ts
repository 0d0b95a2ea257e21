// When a running drill makes a picture: once for whatever can look different, and for nobody else.
import { Subject } from 'rxjs';
import { describe, expect, it } from 'vitest';
import { startDrill } from '../../src/run/start.js';
import { AIRFRAME, drill } from '../sim/bench.js';

function running() {
  const frame$ = new Subject<number>();
  const { recognition: _scored, ...free } = drill('set-16-from-4');
  const device = { isolated: true, clockGrainMs: 0.005, renderer: 'none', input: '' };
  const drilled = startDrill({ scenario: free, airframe: AIRFRAME, seed: 1, app: 'test', device, gauge: { pxPerDeg: 5, pixelRatio: 1, mmPerPx: null } }, frame$);
  return { drilled, frame: (ms: number): void => frame$.next(ms) };
}

/** Pictures made since it was asked last. */
function counted({ drilled }: ReturnType<typeof running>) {
  let count = 0;
  const undo = drilled.onPicture(() => { count += 1; });
  return { undo, since: (): number => { const made = count; count = 0; return made; } };
}

describe('a picture', () => {
  it('is made for a frame that steps, and not for an act alone, nor for a frame in the same tick', () => {
    const run = running();
    const { since } = counted(run);
    run.frame(0);
    expect(since()).toBe(1);
    run.drilled.act(3, { do: 'openGuard' }, 'key');
    run.frame(5);
    expect(since()).toBe(0);
    run.frame(20);
    expect(since()).toBe(1);
  });
  it('is made as the clock stops and goes on, and as the cover opens and falls shut', () => {
    const run = running();
    const { since } = counted(run);
    run.frame(0);
    run.frame(20);
    since();
    run.drilled.cover(21);
    expect(since()).toBe(1);
    run.drilled.cover(22);
    expect(since()).toBe(1);
    run.drilled.pause(25);
    expect(since()).toBe(1);
    run.drilled.resume(500);
    expect(since()).toBe(1);
  });
  it('is made for who comes later, though nothing has moved since; and for nobody who has gone', () => {
    const run = running();
    run.frame(0);
    run.frame(20);
    const { since, undo } = counted(run);
    run.frame(21);
    expect(since()).toBe(1);
    undo();
    run.frame(60);
    expect(since()).toBe(0);
  });
});
