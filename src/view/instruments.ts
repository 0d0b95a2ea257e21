/**
 * The one list of what the drill shows and of what it lets a hand do. The canvas draws it, the twins say it, and the
 * tests walk it: an instrument that is not here does not exist.
 */
import { alertWords } from './alertList.js';
import type { Area, Target } from './place.js';
import type { Panel, Picture } from './picture.js';
import { anglesInWords, bankWords, controlWords, feet, GEAR_WORDS, headingFigures, knots, PATH_WORDS, spokenDeg } from './words.js';

/** Something that is seen and not touched; its twin says the same in words. */
export interface Reading {
  readonly id: string;
  readonly name: string;
  readonly place: Area | Target;
  /** The reading as words; a blanked instrument says so. */
  readonly say: (now: Picture, panel: Panel) => string;
}

/** Something that a hand works; its twin is what key and screen reader meet. */
export interface Control {
  /** Its place has the same name. */
  readonly id: Target;
  readonly name: string;
  readonly role: 'press' | 'hold' | 'slide';
  /** State as words; empty for a control that has none. */
  readonly say: (now: Picture, panel: Panel) => string;
  /** Whether it stands in its other place; null for a control that keeps no place. */
  readonly on: (now: Picture, panel: Panel) => boolean | null;
}

const shown = (say: Reading['say']): Reading['say'] => (now, panel) => (now.blank ? 'blank' : say(now, panel));

export const READINGS: readonly Reading[] = [
  { id: 'speed', name: 'Speed', place: 'speed', say: shown((now) => knots(now.speedKt)) },
  {
    id: 'selected', name: 'Selected speed', place: 'speed',
    say: shown((now) => `${knots(now.selectedKt)}, speed hold ${now.speedHold ? 'on' : 'off'}`),
  },
  { id: 'limit', name: 'Limit speed', place: 'speed', say: shown((now) => (Number.isFinite(now.limitKt) ? `${knots(now.limitKt)}, ${now.limitOf}` : 'none')) },
  {
    id: 'manoeuvre', name: 'Manoeuvre speed', place: 'speed',
    say: shown((now) => `${knots(now.manoeuvreKt)}${now.manoeuvreHollow ? ', once both sides are there' : ''}`),
  },
  { id: 'lowest', name: 'Stall warning', place: 'speed', say: shown((now) => knots(now.lowestKt)) },
  { id: 'altitude', name: 'Height', place: 'altitude', say: shown((now) => `${feet(Math.round(now.altitudeFt / 10) * 10)} feet, ${PATH_WORDS[now.path]}`) },
  { id: 'heading', name: 'Heading', place: 'bank', say: shown((now) => `${headingFigures(now.headingDeg)} degrees`) },
  { id: 'bank', name: 'Bank', place: 'bank', say: shown((now) => bankWords(now.bankDeg)) },
  { id: 'control', name: 'Control deflection', place: 'bank', say: shown((now) => controlWords(now.control)) },
  { id: 'gearState', name: 'Gear', place: 'gearState', say: shown((now) => GEAR_WORDS[now.gear]) },
  {
    id: 'thrust', name: 'Thrust-lever angle', place: 'thrustState',
    say: shown((now) => `${anglesInWords(now)}${now.hornTlaDeg === null ? '' : `; horn below ${now.hornTlaDeg} degrees`}`),
  },
  { id: 'alerts', name: 'Alerts', place: 'alerts', say: shown((now) => alertWords(now) || 'none') },
  { id: 'leftPointer', name: 'Left flap pointer', place: 'flaps', say: shown((now) => spokenDeg(now.leftPointerDeg)) },
  { id: 'rightPointer', name: 'Right flap pointer', place: 'flaps', say: shown((now) => spokenDeg(now.rightPointerDeg)) },
  { id: 'leadingEdge', name: 'Leading edge', place: 'leadingEdge', say: shown((now) => now.leadingEdge) },
];

/** Controls of whoever flies: another pilot's, where the trainee only drives. */
const FLYING: readonly Target[] = ['gear', 'leftThrust', 'bothThrust', 'rightThrust', 'speedHold', 'goAround', 'selectSpeed', 'speedDown5', 'speedDown', 'speedUp', 'speedUp5'];
export const isOfFlying = (id: Target): boolean => FLYING.includes(id);

export const settingName = (panel: Panel, deg: number): string => panel.settings.find((setting) => setting.deg === deg)?.name ?? `${deg}`;

/** Where the switch stands for the eye. The clock has stopped while it is blanked, but no hand is on a sprung place. */
export function driveShown({ drive, blank }: Pick<Picture, 'drive' | 'blank'>, panel: Panel): Picture['drive'] {
  if (!blank || drive === 'off') return drive;
  return (drive === 'extend' ? panel.extendSwitch : panel.retractSwitch) === 'latched' ? drive : 'off';
}

const stays = (panel: Panel, way: 'extend' | 'retract'): string => {
  const kind = way === 'extend' ? panel.extendSwitch : panel.retractSwitch;
  return kind === 'sprung' ? 'springs back when let go' : 'stays where it is put';
};

/** A speed step or a call: a press without a state of its own. */
const plain = (id: Target, name: string): Control => ({ id, name, role: 'press', say: () => '', on: () => null });
const slide = (id: Target, name: string, say: Control['say']): Control => ({ id, name, role: 'slide', say, on: () => null });

export const CONTROLS: readonly Control[] = [
  { id: 'gear', name: 'Gear lever', role: 'press', say: (now) => now.gearLever, on: (now) => now.gearLever === 'down' },
  slide('leftThrust', 'Left thrust lever', shown((now) => `${Math.round(now.leftTlaDeg)} degrees`)),
  slide('bothThrust', 'Both thrust levers', shown(anglesInWords)),
  slide('rightThrust', 'Right thrust lever', shown((now) => `${Math.round(now.rightTlaDeg)} degrees`)),
  { id: 'speedHold', name: 'Speed hold', role: 'press', say: (now) => (now.speedHold ? 'on' : 'off'), on: (now) => now.speedHold },
  plain('goAround', 'Go around'),
  slide('lever', 'Flap lever', (now, panel) => settingName(panel, now.flapLeverDeg)),
  slide('selectSpeed', 'Select speed', (now) => knots(now.selectedKt)),
  plain('speedDown5', 'Selected speed, 5 knots lower'), plain('speedDown', 'Selected speed, 1 knot lower'),
  plain('speedUp', 'Selected speed, 1 knot higher'), plain('speedUp5', 'Selected speed, 5 knots higher'),
  slide('roll', 'Roll control by hand', shown((now) => (now.autopilot ? 'the autopilot has it' : controlWords(now.handControl)))),
  { id: 'guard', name: 'Guard', role: 'press', say: (now) => (now.guardOpen ? 'open' : 'closed'), on: (now) => now.guardOpen },
  { id: 'arm', name: 'Arm', role: 'press', say: (now) => (now.armed ? 'armed' : 'not armed'), on: (now) => now.armed },
  { id: 'retract', name: 'Drive switch, retract', role: 'hold', say: (_, panel) => stays(panel, 'retract'), on: (now, panel) => driveShown(now, panel) === 'retract' },
  { id: 'off', name: 'Drive switch, off', role: 'press', say: () => '', on: (now, panel) => driveShown(now, panel) === 'off' },
  { id: 'extend', name: 'Drive switch, extend', role: 'hold', say: (_, panel) => stays(panel, 'extend'), on: (now, panel) => driveShown(now, panel) === 'extend' },
  plain('call', 'Call split'), plain('callClear', 'Call clear, going on'), plain('callFailed', 'Call drive failed'), plain('callMoving', 'Call still moving'),
  { id: 'silenceCover', name: 'Cover of the horn silence', role: 'press', say: (now) => (now.coverOpen ? 'lifted' : 'shut'), on: (now) => now.coverOpen },
  {
    id: 'silence', name: 'Silence gear horn', role: 'press', on: () => null,
    say: (now) => (now.blank ? '' : now.hornSilenced ? 'silenced' : now.coverOpen ? '' : 'under its cover'),
  },
];
