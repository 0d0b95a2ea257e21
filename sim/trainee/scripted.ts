/**
 * Scripted trainees: they fly a scenario's settings in order without a page, lever first, as the procedure asks.
 * They look at the pointers, as a person would, and at nothing that a person cannot see.
 */
import type { Fixed } from '../fixed.js';
import type { Pilot } from '../replay.js';
import type { State } from '../state.js';
import { answersOf } from './answers.js';
import { aroundOf } from './around.js';
import { openEye } from './eye.js';
import { openHand, PAUSE_TICKS, type Hand } from './hand.js';
import { holdingOf } from './holding.js';
import { pressingOf, type Leg } from './pressing.js';
import { readingOf } from './reading.js';
import { rollOf } from './roll.js';
import type { Sheet } from './sheet.js';
import { throttleOf } from './throttle.js';
import type { Watch } from './watcher.js';

/** A horn is met this long behind its start on the way down. */
const HORN_TICKS = 400;

/** A pilot that flies the task of a world. A fresh one is needed for every run. */
export function scriptedTrainee(watch: Watch, fixed: Fixed, sheet: Sheet): Pilot {
  const { hurries } = watch;
  const eye = openEye(fixed, watch);
  const hand = openHand();
  const leg: Leg = { target: 0, touching: false, touchTick: -1 };
  const answers = answersOf(fixed, hurries);
  const around = aroundOf(fixed, sheet.safeFt, hurries);
  const throttle = throttleOf();
  const roll = rollOf();
  const hold = holdingOf(leg, eye, hand, fixed, sheet, hurries);
  const press = pressingOf(leg, eye, hand, fixed, sheet, watch);
  const read = readingOf(eye, sheet.list && !hurries);
  let hornTicks = 0;

  return (s, push) => {
    hand.begin(s.tick, push);
    eye.look(s);
    answers(s, hand.file);
    throttle(s, hand.file);
    roll(s, hand.file);
    const flaps = around.step(s, hand.file);
    hornTicks = s.latched.horn !== 0 && s.pathSin < 0 && s.latched.gearLever === 0 ? hornTicks + 1 : 0;
    if (hornTicks === HORN_TICKS && !fixed.otherFlies && !hurries) hand.file({ do: 'setGear', to: 'down' });
    if (hand.off !== null) {
      finish(s, hand, hurries, read);
    } else if (s.latched.drive !== 0) {
      hold(s);
    } else if (eye.runsOn(s) && s.latched.guardOpen === 1) {
      hand.act({ do: 'closeGuard' });
      hand.comeOff({ do: 'callDriveFailed' });
    } else if (hand.isFree() && s.latched.contactor === 0) {
      press(s, flaps);
    }
  };
}

/** Behind the last release: the call, then the guard in a hurry, or the list. */
function finish(s: State, { off, act }: Hand, hurries: boolean, read: ReturnType<typeof readingOf>): void {
  if (off === null) return;
  const { tick, call } = off;
  if (call !== null && s.tick === tick + PAUSE_TICKS) act(call);
  else if (call?.do === 'callSplit' && hurries && s.tick === tick + 2 * PAUSE_TICKS) act({ do: 'closeGuard' });
  else if (call?.do === 'callSplit') read(s, s.tick - tick, act);
}
