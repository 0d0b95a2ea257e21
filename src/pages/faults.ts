/** Every kind of fault that a scenario can hold, in a trainee's words. A kind without words does not compile. */
import type { Fault } from '../../sim/files/index.js';

type Kind = Fault['kind'];

interface FaultWords {
  readonly of: 'A side' | 'A pointer' | 'The drive' | 'The leading edge';
  /** Behind "a side ...", "a pointer ...", before the run. */
  readonly may: string;
  /** Behind "The left side ...", after the run. */
  readonly did: string;
}

export const FAULT_WORDS: Readonly<Record<Kind, FaultWords>> = {
  disconnect: { of: 'A side', may: 'stops while the other goes on', did: 'stopped' },
  lag: { of: 'A side', may: 'lags, or is driven back', did: 'fell behind' },
  jam: { of: 'A side', may: 'jams, then its link shears', did: 'jammed' },
  slip: { of: 'A side', may: 'slips now and again', did: 'slipped' },
  blowback: { of: 'A side', may: 'is blown back by the air', did: 'was blown back' },
  pointer: { of: 'A pointer', may: 'lies while its side is whole', did: 'went false' },
  dead: { of: 'The drive', may: 'does not run', did: 'did not run' },
  quits: { of: 'The drive', may: 'stops for good', did: 'stopped for good' },
  slow: { of: 'The drive', may: 'runs slow', did: 'ran slow' },
  runsOn: { of: 'The drive', may: 'runs on when you let go', did: 'ran on after the switch was let go' },
  leadingEdge: { of: 'The leading edge', may: 'stops short', did: 'stopped short' },
};

/** The whole catalogue, the same before every run: part by part what it may do. */
export const CATALOGUE: readonly { readonly of: string; readonly may: readonly string[] }[] = [
  ...['A side', 'A pointer', 'The drive', 'The leading edge'].map((of) => ({
    of, may: Object.values(FAULT_WORDS).filter((words) => words.of === of).map(({ may }) => may),
  })),
  { of: 'Or nothing', may: ['at all: a run may stay quiet to its end'] },
];
