/** What the outside does, as changes of the state. Words for people (messages, callouts) change nothing in it. */
import type { DrawnEvent } from './entry.js';
import { sin } from './portable.js';
import type { State } from './state.js';
import { FT, RAD } from './units.js';

/** Puts the aeroplane on a straight path to a height, ft; up or down by the sign of `pathDeg`. */
export function startPath(s: State, toFt: number, pathDeg: number): void {
  s.goAround = 0;
  s.levelAtM = toFt * FT;
  s.pathSin = s.heightM > s.levelAtM ? sin(pathDeg * RAD) : 0;
}

export function levelOff(s: State): void {
  s.goAround = 0;
  s.pathSin = 0;
}

/** One event. `clearFault` acts in the agenda, which knows the fault. */
export function actEvent(s: State, event: DrawnEvent): void {
  switch (event.do) {
    case 'descend': startPath(s, event.toFt, event.pathDeg); return;
    case 'level': levelOff(s); return;
    case 'selectSpeed': s.selectedKt = event.speedKt; return;
    case 'failEngine': s[event.side === 'left' ? 'leftLive' : 'rightLive'] = 0; return;
    case 'setGear': s.gearLever = event.to === 'down' ? 1 : 0; return;
    case 'returnMainDrive': s.mainDrive = 1; return;
    case 'message': case 'callout': case 'freeze': case 'clearFault': return;
  }
}
