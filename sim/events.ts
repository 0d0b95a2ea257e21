/** What the outside does, as changes of the state. Words for people (messages, callouts) change nothing in it. */
import type { DrawnEvent } from './entry.js';
import { sin } from './portable.js';
import type { State } from './state.js';
import { FT, RAD } from './units.js';

/** Selects a height, ft, and starts down to it along a straight path; a go-around goes on climbing to one above. */
export function startPath(s: State, toFt: number, pathDeg: number): void {
  s.levelAtM = toFt * FT;
  if (s.goAround === 1 && s.levelAtM > s.heightM) return;
  s.goAround = 0;
  s.pathSin = s.heightM > s.levelAtM ? sin(pathDeg * RAD) : 0;
}

export function levelOff(s: State): void {
  s.goAround = 0;
  s.pathSin = 0;
  s.levelAtM = s.heightM;
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
    case 'loseMainDrive': s.mainDrive = 0; return;
    case 'message': case 'callout': case 'tellGoAround': case 'clearHeading': case 'clearAltitude': case 'caution': case 'freeze': case 'clearFault': return;
  }
}
