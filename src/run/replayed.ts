/** A record for looking about in it: the picture and the row of any of its ticks. */
import { ready, type RunRecord } from '../../sim/files/index.js';
import { commandsOfRecord, timelineOf } from '../../sim/index.js';
import type { Picture } from '../view/picture.js';
import { holdHasLetGo } from './cautions.js';
import { heardIn } from './heard.js';
import { panelOf, pictureOf } from './picture.js';

/** Ticks may be asked for in any order; a picture is the caller's own. */
export function replayedOf(record: RunRecord) {
  const { airframe } = record;
  const scenario = ready(record.scenario, airframe);
  const timeline = timelineOf(record);
  const log = commandsOfRecord(record);
  const heard = heardIn(timeline.at, log, scenario.procedure.list ?? false);
  return {
    endTick: timeline.endTick,
    panel: panelOf(airframe, timeline.at(0)),
    rowAt: timeline.rowAt,
    /** What the instruments showed at a tick. @param truth the pointers stand at the true sides instead */
    pictureAt(tick: number, truth: boolean): Picture {
      const world = timeline.at(tick);
      const picture = pictureOf(world, airframe, scenario, {
        blank: false, frozen: false, coverOpen: false, talk: heard(tick), training: false, holdLetGo: holdHasLetGo(log, scenario.speedHold, world.state.tick),
      });
      // Behind the run, the angle that decides may be seen.
      const shown = { ...picture, hornTlaDeg: timeline.rowAt(tick).hornTlaDeg };
      return truth ? { ...shown, leftPointerDeg: world.state.leftDeg, rightPointerDeg: world.state.rightDeg } : shown;
    },
  };
}
