/** Do clock, commands and marks of a record agree with each other? All of this is known before anything is replayed. */
import type { Command } from '../command.js';
import { byOrder } from '../command.js';
import { tickInSegment, tickOfStamp } from '../stamp.js';
import type { RunRecord } from './record.js';
import type { Refusal } from './verify.js';

/** A frame is drawn between two ticks, so its tick may be off by one. */
const FRAME_TICKS = 1;

export function inconsistencies(record: RunRecord): Refusal[] {
  return [...clockRuns(record), ...commandsInOrder(record), ...deskOnlyLive(record), ...stampsAgree(record), ...marksAgree(record), ...nothingBehindTheEnd(record)];
}

const refusal = (code: string, path: string, found: unknown, expected: string): Refusal => ({ code, path, found: String(found), expected });

/** The clock starts at tick 0, goes on in tick and stamp, and only ever stands still: no segment is ahead of the one before. */
function clockRuns({ clock }: RunRecord): Refusal[] {
  return clock.flatMap((segment, index) => {
    const before = clock[index - 1];
    if (before === undefined) return segment.tick === 0 ? [] : [refusal('clock', 'clock[0].tick', segment.tick, '0')];
    const here = `clock[${index}]`;
    const latest = tickInSegment(before, segment.stampMs).tick;
    return [
      ...(segment.tick > before.tick ? [] : [refusal('clock', `${here}.tick`, segment.tick, `more than ${before.tick}`)]),
      ...(segment.stampMs > before.stampMs ? [] : [refusal('clock', `${here}.stampMs`, segment.stampMs, `more than ${before.stampMs}`)]),
      ...(segment.tick <= latest ? [] : [refusal('clock', `${here}.tick`, segment.tick, `at most ${latest}, where the clock before it stood`)]),
    ];
  });
}

function commandsInOrder({ commands }: RunRecord): Refusal[] {
  const seen = new Set<number>();
  return commands.flatMap((command, index) => {
    const before = commands[index - 1];
    const twice = seen.has(command.seq);
    seen.add(command.seq);
    const ordered = before === undefined || byOrder(before as Command, command as Command) < 0;
    return [
      ...(ordered ? [] : [refusal('order', `commands[${index}]`, orderOf(command), `behind ${orderOf(before)}`)]),
      ...(twice ? [refusal('order', `commands[${index}].seq`, command.seq, 'a number used once')] : []),
    ];
  });
}

/** Only a live run has a desk; elsewhere nothing of one may stand in a record. */
const deskOnlyLive = ({ source, commands, desk }: RunRecord): Refusal[] => (source === 'live' ? [] : [
  ...commands.flatMap(({ rank }, index) => (rank === 2 ? [] : [refusal('rank', `commands[${index}].rank`, rank, '2: only a live run has a desk')])),
  ...(desk === undefined ? [] : [refusal('rank', 'desk', 'a grade', 'none: only a live run has a desk')]),
]);

const orderOf = ({ tick, rank, seq }: { tick: number; rank: number; seq: number }): string => `tick ${tick}, rank ${rank}, seq ${seq}`;

/** Every command stands in the tick that holds its stamp. One that came too late stands later, and a mark says so. */
function stampsAgree({ clock, commands, marks }: RunRecord): Refusal[] {
  const late = new Set(marks.filter(({ what }) => what === 'late').map(({ tick, stampMs }) => `${tick} ${stampMs}`));
  return commands.flatMap(({ tick, stampMs }, index) => {
    const holds = tickOfStamp(clock, stampMs).tick;
    if (tick === holds || (tick > holds && late.has(`${tick} ${stampMs}`))) return [];
    return [refusal('stamp', `commands[${index}].tick`, tick, `${holds}, the tick that holds stamp ${stampMs}`)];
  });
}

function marksAgree({ clock, marks }: RunRecord): Refusal[] {
  return marks.flatMap(({ tick, stampMs, what }, index) => {
    if (what === 'late') return [];
    const holds = tickOfStamp(clock, stampMs).tick;
    return Math.abs(tick - holds) <= FRAME_TICKS ? [] : [refusal('mark', `marks[${index}].tick`, tick, `${holds}, or one more or less, by stamp ${stampMs}`)];
  });
}

/** A command in the tick of the end, or behind it, never acted. */
function nothingBehindTheEnd({ clock, commands, marks, end }: RunRecord): Refusal[] {
  const behind = (path: string, tick: number, most: number): Refusal[] =>
    (tick <= most ? [] : [refusal('behindEnd', path, tick, `at most ${most}; the run ended at tick ${end.tick}`)]);
  return [
    ...clock.flatMap(({ tick }, index) => behind(`clock[${index}].tick`, tick, end.tick)),
    ...commands.flatMap(({ tick }, index) => behind(`commands[${index}].tick`, tick, end.tick - 1)),
    ...marks.flatMap(({ tick }, index) => behind(`marks[${index}].tick`, tick, end.tick + FRAME_TICKS)),
  ];
}
