/** What a desk is told, in words: what is due, what was done, what came of it. */
import type { DeskAct } from '../../../sim/files/index.js';
import type { Command, DueRow, Wait } from '../../../sim/index.js';

const side = ({ side: of }: { side: string }): string => (of === 'drawn' ? 'a' : of);

type Named = Pick<NonNullable<DueRow['fault']>, 'kind'> & { readonly side?: string; readonly ratio?: number; readonly mode?: string };

/** A fault as its subject and what becomes of it. */
function faultWords(fault: Named): string {
  const of = { side: fault.side ?? '' };
  switch (fault.kind) {
    case 'disconnect': return `${side(of)} side stops`;
    case 'lag': return (fault.ratio ?? 0) < 0 ? `${side(of)} side is driven back` : (fault.ratio ?? 0) === 0 ? `${side(of)} side stands still` : `${side(of)} side lags, ${Math.round((fault.ratio ?? 0) * 100)} % of the rate`;
    case 'jam': return `${side(of)} side jams`;
    case 'slip': return `${side(of)} side slips`;
    case 'blowback': return `${side(of)} side is blown back`;
    case 'pointer': return `${side(of)} pointer ${fault.mode === 'stuck' ? 'sticks' : fault.mode === 'bias' ? 'jumps' : 'drifts'}`;
    case 'dead': return 'drive dead';
    case 'quits': return 'drive quits';
    case 'slow': return 'drive slow';
    case 'runsOn': return 'drive runs on';
    case 'leadingEdge': return 'leading edge stops short';
  }
}

/** What an act asks of the run: the same for one sent, one taken and one of another desk. */
export function actWords(act: DeskAct): string {
  switch (act.do) {
    case 'injectFault': return `${faultWords(act.fault)}${act.fault.when === undefined ? ', now' : ', armed'}`;
    case 'disarmFault': return `disarm ${act.name}`;
    case 'clearFault': return `clear ${act.name}`;
    case 'clearFaults': return 'clear all';
    case 'failEngine': return `${act.side} engine stops`;
    case 'loseMainDrive': return 'normal drive lost';
    case 'returnMainDrive': return 'normal drive back';
    case 'message': return `message: ${act.text}`;
    case 'callout': return `question: ${act.text}`;
    case 'tellGoAround': case 'clearHeading': case 'clearAltitude': return `to do: ${act.text}`;
    case 'caution': return `caution: ${act.text}`;
    case 'say': return `${act.from === 'controller' ? 'controller' : 'other pilot'}: ${act.text}`;
    case 'remark': return `remark: ${act.label}`;
    case 'saveMoment': return `moment saved: ${act.label}`;
    case 'prompted': return 'prompted';
    case 'freeze': return 'freeze';
    case 'goOn': return 'go on';
    case 'reposition': return `back to ${clock(act.toTick)}`;
    case 'voidRun': return `ended and void: ${act.reason}`;
    case 'descend': return `descend to ${act.toFt} ft`;
    case 'level': return 'level off';
    case 'selectSpeed': return `speed ${act.speedKt} kt`;
    case 'setGear': return `gear ${act.to}`;
  }
}

/** Of what a hand does, that which a desk wants to see pass by; null for the rest. */
export function handWords(command: Command): string | null {
  switch (command.do) {
    case 'holdDrive': return command.way === 'extend' ? 'holds to extend' : 'holds to retract';
    case 'releaseDrive': return 'lets go';
    case 'setDrive': return `switch to ${command.to}`;
    case 'openGuard': return 'guard open';
    case 'closeGuard': return 'guard closed';
    case 'arm': return 'armed';
    case 'disarm': return 'disarmed';
    case 'setFlapLever': return `lever to ${command.settingDeg}`;
    case 'setGear': return `gear ${command.to}`;
    case 'silenceHorn': return 'silences the horn';
    case 'callSplit': return 'calls a split';
    case 'callClear': return 'calls clear';
    case 'callDriveFailed': return 'calls the drive failed';
    case 'callStillMoving': return 'calls still moving';
    case 'goAround': return 'goes around';
    case 'selectHeading': return `selects heading ${command.toDeg}`;
    case 'descend': return `selects ${command.toFt} ft`;
    case 'answer': return `answers ${command.text}`;
    case 'selectSpeed': return `selects ${command.speedKt} kt`;
    default: return null;
  }
}

/** A tick as minutes and seconds: 1:04.3. */
export function clock(tick: number): string {
  const tenths = Math.floor(tick / 10);
  return `${Math.floor(tenths / 600)}:${String(Math.floor(tenths / 10) % 60).padStart(2, '0')}.${tenths % 10}`;
}

/** Seconds a desk counts down in: whole from ten on, so that they can be read. */
const short = (value: number): string => (value >= 10 ? String(Math.round(value)) : value.toFixed(1));

/** What something waits for, counting: "at 6.0° · 1.3° to go". */
export function waitWords(wait: Wait): string {
  switch (wait.of) {
    case 's': return `in ${short(wait.left)} s`;
    case 'heldS': return `in ${short(wait.left)} s held`;
    case 'flapDeg': return `at ${wait.at.toFixed(1)}° · ${short(wait.left)}° to go`;
    case 'speedKt': return `at ${Math.round(wait.at)} kt · ${short(wait.left)} kt to go`;
    case 'altitudeFt': return `at ${Math.round(wait.at)} ft · ${Math.round(wait.left)} ft to go`;
    case 'another': return wait.left === 0 ? 'behind another' : `${short(wait.left)} s behind another`;
    case 'all': return wait.waits.map(waitWords).join(' and ');
    case 'any': return wait.waits.map(waitWords).join(' or ');
  }
}

/** An entry of the agenda: what it does. */
export function dueWords({ fault, event }: Pick<DueRow, 'fault' | 'event'>): string {
  if (fault !== null) return faultWords(fault);
  if (event === null) return '';
  switch (event.do) {
    case 'failEngine': return `${event.side} engine stops`;
    case 'message': return `${event.from === undefined ? 'message' : event.from === 'controller' ? 'controller' : event.from === 'otherPilot' ? 'other pilot' : 'cabin'}: ${event.text}`;
    case 'callout': return `question: ${event.text}`;
    case 'tellGoAround': case 'clearHeading': case 'clearAltitude': return `to do: ${event.text}`;
    case 'caution': return `caution: ${event.text}`;
    case 'clearFault': return `${event.fault} ends`;
    case 'descend': return `descends to ${event.toFt} ft`;
    case 'level': return 'levels off';
    case 'selectSpeed': return `speed ${event.speedKt} kt`;
    case 'setGear': return `gear ${event.to}`;
    case 'loseMainDrive': return 'normal drive lost';
    case 'returnMainDrive': return 'normal drive back';
    case 'freeze': return 'freeze';
  }
}

export const STATES: Readonly<Record<DueRow['state'], string>> = { waits: 'waits', acted: 'has acted', ended: 'has ended', disarmed: 'will not come' };

/** Whether an act of a desk told already that this has happened: what it plays, and a fault put in at once on a side that it named. */
export const toldByAct = (row: DueRow, acts: readonly DeskAct[]): boolean =>
  row.byDesk && (row.fault === null || acts.some((act) => act.do === 'injectFault' && act.fault.name === row.name && actWords(act) === `${dueWords(row)}, now`));
