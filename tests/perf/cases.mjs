// Which case measures which rows, in the order in which they are run, and how each is spoilt for the self-test.
import { bytes } from './bytes.mjs';
import { start, sweep } from './commands.mjs';
import { engines } from './engines.mjs';
import { first, heap, script } from './frames.mjs';
import { logbook } from './logbook.mjs';
import { reaction } from './reaction.mjs';
import { step } from './step.mjs';
import { stream, ticks } from './stream.mjs';
import { twin } from './twin.mjs';
import { weight } from './weight.mjs';

export const CASES = {
  step: { measure: step, rows: ['step', 'step100'] },
  twin: { measure: twin, rows: ['twin'], spoils: ['spoil', 'wrong'] },
  stream: { measure: stream, rows: ['stream'] },
  bytes: { measure: bytes, rows: ['bytes'] },
  ticks: { measure: ticks, rows: ['ticks'], spoils: ['wrong'] },
  sweep: { measure: sweep, rows: ['sweep'], spoils: ['spoil', 'wrong'] },
  start: { measure: start, rows: ['start'] },
  engines: { measure: engines, rows: ['engines'], spoils: ['wrong'] },
  reaction: { measure: reaction, rows: ['bias', 'spread'] },
  weight: { measure: weight, rows: ['weight'] },
  first: { measure: first, rows: ['first'] },
  script: { measure: script, rows: ['script'] },
  logbook: { measure: logbook, rows: ['logbook'] },
  heap: { measure: heap, rows: ['heap'] },
};
