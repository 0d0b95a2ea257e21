/** How far a long command is, on standard error: one line that is written over on a screen, else a line now and then. */
import type { Io } from './io.js';

const ON_SCREEN_MS = 200;
const IN_A_FILE_MS = 5000;

export interface Progress {
  /** So many more are done. */
  add(count: number): void;
  /** Clears the line. */
  end(): void;
}

/** @param now a clock, ms */
export function progressOf(io: Io, total: number, what: string, now: () => number = () => performance.now()): Progress {
  const start = now();
  const every = io.screen === true ? ON_SCREEN_MS : IN_A_FILE_MS;
  let done = 0;
  let told = start;
  let length = 0;
  const show = (): void => {
    const text = progressText(done, total, what, (now() - start) / 1000);
    io.err(io.screen === true ? `\r${text.padEnd(length)}` : `${text}\n`);
    length = text.length;
  };
  return {
    add(count) {
      done += count;
      if (now() - told < every) return;
      told = now();
      show();
    },
    end() {
      if (io.screen === true && length > 0) io.err(`\r${' '.repeat(length)}\r`);
    },
  };
}

/** "42 %, 812 runs/s, 7 s left" */
export function progressText(done: number, total: number, what: string, seconds: number): string {
  const rate = seconds > 0 ? done / seconds : 0;
  const left = rate > 0 ? `, ${Math.ceil((total - done) / rate)} s left` : '';
  return `${Math.floor(100 * done / total)} %, ${rate >= 10 ? rate.toFixed(0) : rate.toFixed(1)} ${what}/s${left}`;
}
