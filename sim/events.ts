/** What the outside does, as changes of the state. Words for people (messages, callouts) change nothing in it. */
import type { DrawnEvent } from './entry.js';
import { sin } from './portable.js';
import { latch, type State } from './state.js';
import { FT, RAD } from './units.js';

/** Selects a height, ft, and starts down to it along a straight path; a go-around goes on climbing to one above. */
export function startPath(s: State, toFt: number, pathDeg: number): void {
  latch(s, 'levelAtM', toFt * FT);
  if (s.latched.goAround === 1 && s.latched.levelAtM > s.heightM) return;
  latch(s, 'goAround', 0);
  s.pathSin = s.heightM > s.latched.levelAtM ? sin(pathDeg * RAD) : 0;
}

export function levelOff(s: State): void {
  latch(s, 'goAround', 0);
  s.pathSin = 0;
  latch(s, 'levelAtM', s.heightM);
}

/** One event. `clearFault` acts in the agenda, which knows the fault. */
export function actEvent(s: State, event: DrawnEvent): void {
  switch (event.do) {
    case 'descend': startPath(s, event.toFt, event.pathDeg); return;
    case 'level': levelOff(s); return;
    case 'selectSpeed': latch(s, 'selectedKt', event.speedKt); return;
    case 'failEngine': latch(s, event.side === 'left' ? 'leftLive' : 'rightLive', 0); return;
    case 'setGear': latch(s, 'gearLever', event.to === 'down' ? 1 : 0); return;
    case 'returnMainDrive': latch(s, 'mainDrive', 1); return;
    case 'loseMainDrive': latch(s, 'mainDrive', 0); return;
    case 'message': case 'callout': case 'tellGoAround': case 'clearHeading': case 'clearAltitude': case 'caution': case 'freeze': case 'clearFault': return;
  }
}
