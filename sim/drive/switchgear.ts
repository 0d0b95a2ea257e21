/**
 * Guard, arm, drive switch and contactor.
 *
 * The switch table, in full:
 * | act                  | needs            | does                                                        |
 * | open guard           | -                | guard open                                                  |
 * | close guard          | -                | guard closed, disarmed, switch to off                       |
 * | arm / disarm         | guard open / -   | armed / not armed                                           |
 * | hold extend, retract | guard open       | switch there; where it is sprung it must be held            |
 * | let go               | -                | a sprung place goes to off; a latched place stays           |
 * | set off              | -                | switch to off: in a latched place this is the release       |
 * | set extend, retract  | guard open, latched place | switch there and stays                             |
 * The motor is asked for when armed and the switch is away from off. A stuck contactor goes on until guard or arm ends it.
 */
import { latch, type State } from '../state.js';
import type { DriveNumbers } from './numbers.js';

type Way = 'extend' | 'retract';
const SIGN = { extend: 1, off: 0, retract: -1 } as const;

const isSprung = (n: DriveNumbers, place: number): boolean =>
  (place > 0 ? n.extendSwitch : n.retractSwitch) === 'sprung';

export function closeGuard(s: State): void {
  latch(s, 'guardOpen', 0);
  latch(s, 'armed', 0);
  latch(s, 'drive', 0);
}

export function arm(s: State): void {
  if (s.latched.guardOpen === 1) latch(s, 'armed', 1);
}

export function holdDrive(s: State, way: Way): void {
  if (s.latched.guardOpen === 1) latch(s, 'drive', SIGN[way]);
}

export function releaseDrive(s: State, n: DriveNumbers): void {
  if (s.latched.drive !== 0 && isSprung(n, s.latched.drive)) latch(s, 'drive', 0);
}

export function setDrive(s: State, n: DriveNumbers, to: Way | 'off'): void {
  if (to === 'off') latch(s, 'drive', 0);
  else if (s.latched.guardOpen === 1 && !isSprung(n, SIGN[to])) latch(s, 'drive', SIGN[to]);
}

/** Whether the hand holds the drive: armed and the switch away from off. */
export const isHeld = (s: State): boolean => s.latched.armed === 1 && s.latched.drive !== 0;

/** The contactor follows the wish after its pick-up or drop-out time. Writes contactor, contactorTicks, limiterTripped. */
export function stepContactor(s: State, n: DriveNumbers): void {
  let wish = s.latched.armed === 1 ? s.latched.drive : 0;
  if (s.latched.limiterTripped !== 0 && s.latched.drive === 0 && s.latched.contactor === 0) latch(s, 'limiterTripped', 0);
  if (s.latched.contactorStuck === 1 && s.latched.armed === 1 && s.latched.contactor !== 0 && wish === 0) wish = s.latched.contactor;
  if (s.latched.cutOutOpen === 1) wish = 0;
  if (wish === s.latched.contactor) {
    s.contactorTicks = 0;
    return;
  }
  // Away from the other way it drops out first, and picks up again only once the drive stands.
  const opening = s.latched.contactor !== 0;
  if (!opening && s.rateDegPerS !== 0 && (s.rateDegPerS > 0) !== (wish > 0)) {
    s.contactorTicks = 0;
    return;
  }
  if (s.contactorTicks < (opening ? n.dropOutTicks : n.pickUpTicks)) {
    s.contactorTicks += 1;
    return;
  }
  latch(s, 'contactor', opening ? 0 : wish);
  s.contactorTicks = 0;
}
