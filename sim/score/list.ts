/**
 * The asymmetry list: what is read behind a split that was called, line by line. Own words, of no manual; the operator's
 * approved list comes first. Each line is answered; two of them redo the landing plan.
 */
import type { Command } from '../command.js';

export interface ListLine {
  readonly text: string;
  readonly answers: readonly string[];
  /** The answer that is right wherever the sides stand; null: it depends on the run, or there is only one. */
  readonly right: string | null;
}

const [LESS, MORE] = ['the side less out', 'the side further out'] as const;

/** The list, in the order in which it is read. */
export const ASYMMETRY_LIST: readonly ListLine[] = [
  { text: 'Drive switch: at off, hand away.', answers: ['at off'], right: null },
  { text: 'Both pointers, watched for five seconds.', answers: ['both stand', 'one still moves'], right: null },
  { text: 'Flap lever, guard and arm: left as they are.', answers: ['left as they are'], right: null },
  { text: 'Slowest speed, and landing reference: which side sets them?', answers: [LESS, MORE], right: LESS },
  { text: 'Fastest speed: which side sets the limit?', answers: [`limit by ${LESS}`, `limit by ${MORE}`], right: `limit by ${MORE}` },
  { text: 'Landing distance, fuel and gear: worked again for what is out.', answers: ['worked again'], right: null },
];

/** Lines that redo the plan. */
export const PLAN_LINES = ASYMMETRY_LIST.filter(({ right }) => right !== null).length;

export interface ListReading {
  /** Lines read so far, in order. */
  readonly lines: number;
  /** Tick in which the last of all lines was read; -1 while any is left. */
  readonly doneTick: number;
  /** Plan lines answered, and answered rightly. */
  readonly planned: number;
  readonly plannedRight: number;
}

/** How far the list has been read. Answers before the call are to something else. @param log in order */
export function listReading(log: readonly Command[], splitCallTick: number, untilTick = Infinity): ListReading {
  let lines = 0;
  let doneTick = -1;
  let planned = 0;
  let plannedRight = 0;
  if (splitCallTick < 0) return { lines, doneTick, planned, plannedRight };
  for (const command of log) {
    if (command.do !== 'answer' || command.tick < splitCallTick || command.tick >= untilTick) continue;
    const line = ASYMMETRY_LIST[lines];
    if (line === undefined || !line.answers.includes(command.text)) continue;
    lines += 1;
    if (line.right !== null) {
      planned += 1;
      if (command.text === line.right) plannedRight += 1;
    }
    if (lines === ASYMMETRY_LIST.length) doneTick = command.tick;
  }
  return { lines, doneTick, planned, plannedRight };
}
