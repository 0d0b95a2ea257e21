/** Pictures of a running drill, for whoever draws: made only where somebody does, and only when something can look different. */
import type { ReadyScenario } from '../../sim/files/index.js';
import type { World } from '../../sim/index.js';
import { holdHasLetGo } from './cautions.js';
import { coverIsOpen } from './cover.js';
import { talkNow } from './cues.js';
import type { DrillOptions, RunningDrill } from './drill.js';
import type { Live } from './live.js';
import { pictureOf } from './picture.js';
import { isFrozen } from './session.js';

type Draw = Parameters<RunningDrill['onPicture']>[0];

export interface Showing {
  /** @returns its undo */
  readonly on: (draw: Draw) => () => void;
  show(live: Live): void;
}

export function openShowing(scenario: ReadyScenario, airframe: DrillOptions['airframe']): Showing {
  const draws = new Set<Draw>();
  const training = scenario.training === true && scenario.recognition === undefined;
  let drawn: World | null = null;
  let running = true;
  let opened = false;
  return {
    on(draw) {
      draws.add(draw);
      return () => { draws.delete(draw); };
    },
    show({ session, cues, cover, stampMs }) {
      const coverOpen = coverIsOpen(cover, stampMs);
      // An act alone changes nothing that can be seen: the next frame steps it.
      if (draws.size === 0 || (session.world === drawn && session.running === running && coverOpen === opened)) return;
      drawn = session.world;
      running = session.running;
      opened = coverOpen;
      const frozen = isFrozen(session);
      const picture = pictureOf(session.world, airframe, scenario, {
        blank: !running && !frozen, frozen, coverOpen, training, talk: talkNow(cues, session.world, session.log, scenario.procedure.list),
        holdLetGo: holdHasLetGo(session.log, scenario.speedHold, session.world.state.tick),
      });
      for (const draw of draws) draw(picture);
    },
  };
}
