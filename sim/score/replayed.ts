/** A record played again: the same run, from its inputs alone. */
import type { Command } from '../command.js';
import type { RunRecord } from '../files/record.js';
import { ready } from '../ready.js';
import { tickOfStamp } from '../stamp.js';
import { ticksOf } from '../units.js';
import { fly, type Flight, type FlightRequest, type Timing } from './flight.js';

/** Marks that mean that something other than the hand disturbed the run. */
const DISTURBING: readonly RunRecord['marks'][number]['what'][] = ['focusLost', 'hidden', 'pause', 'stall', 'late'];

/** Whether marks void a scored run. */
export const isVoided = (marks: RunRecord['marks']): boolean => marks.some((mark) => DISTURBING.includes(mark.what));

/** What stamps and marks of a record say about timing. */
export function timingOf(record: Pick<RunRecord, 'clock' | 'commands' | 'marks'>): Timing {
  return {
    fractionAt: (tick) => {
      const release = record.commands.find((command) => command.tick === tick && command.rank === 2 && letsGo(command));
      return release === undefined ? 0 : tickOfStamp(record.clock, release.stampMs).fraction;
    },
    firstFrameS: (onsetTick) => {
      // Where a desk took an onset back there may be another, with its own.
      const frame = record.marks.find((mark) => mark.what === 'firstFrame' && mark.tick >= onsetTick);
      if (frame === undefined) return null;
      const { tick, fraction } = tickOfStamp(record.clock, frame.stampMs);
      return (tick + fraction) / 100;
    },
    voided: isVoided(record.marks),
  };
}

const letsGo = (command: RunRecord['commands'][number]): boolean =>
  command.do === 'releaseDrive' || command.do === 'closeGuard' || command.do === 'disarm' || command.do === 'setDrive';

/** What `fly` needs to play a record again. A scripted run that lasted its whole time ended by that, not by its rule. */
export function requestOf(record: RunRecord): FlightRequest {
  const scenario = ready(record.scenario, record.airframe);
  const wholeTicks = ticksOf(scenario.task.limitS);
  return {
    scenario, airframe: record.airframe, seed: record.seed, timing: timingOf(record),
    ...(record.source === 'scripted' && record.end.why === 'timeUp' && record.end.tick === wholeTicks ? { whole: true } : {}),
    ...(record.end.why === 'stopped' ? { stopTick: record.end.tick } : {}),
  };
}

/** Commands of a record without their stamps. */
export const commandsOfRecord = (record: Pick<RunRecord, 'commands'>): Command[] =>
  record.commands.map(({ stampMs: _stamp, ...command }) => command as Command);

/** Plays a record again. */
export const replay = (record: RunRecord): Flight => fly(requestOf(record), commandsOfRecord(record));
