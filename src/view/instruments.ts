/**
 * The one list of what the drill shows and of what it lets a hand do. The canvas draws it, the twins say it, and the
 * tests walk it: an instrument that is not here does not exist.
 */
import type { Layout, Rect, TARGETS } from './place.js';
import type { Panel, Picture } from './picture.js';
import { grouped, knots, spokenDeg } from './words.js';

export interface Reading {
  readonly id: string;
  readonly name: string;
  readonly place: (at: Layout) => Rect;
  /** The reading as words; a blanked instrument says so. */
  readonly say: (now: Picture, panel: Panel) => string;
}

export interface Control {
  readonly id: (typeof TARGETS)[number];
  readonly name: string;
  readonly role: 'press' | 'hold' | 'slide';
  readonly place: (at: Layout) => Rect;
  /** State as words; empty for a control that has none. */
  readonly say: (now: Picture, panel: Panel) => string;
  /** Whether it stands in its other place; null for a control that keeps no place. */
  readonly on: (now: Picture, panel: Panel) => boolean | null;
}

const shown = (say: Reading['say']): Reading['say'] => (now, panel) => (now.blank ? 'blank' : say(now, panel));

export const READINGS: readonly Reading[] = [
  { id: 'speed', name: 'Speed', place: (at) => at.speed, say: shown((now) => knots(now.speedKt)) },
  {
    id: 'selected', name: 'Selected speed', place: (at) => at.speed,
    say: shown((now) => `${knots(now.selectedKt)}, speed hold ${now.speedHold ? 'on' : 'off'}`),
  },
  { id: 'limit', name: 'Limit speed', place: (at) => at.speed, say: shown((now) => `${knots(now.limitKt)}, ${now.limitOf}`) },
  {
    id: 'manoeuvre', name: 'Manoeuvre speed', place: (at) => at.speed,
    say: shown((now) => `${knots(now.manoeuvreKt)}${now.manoeuvreHollow ? ', once both sides are there' : ''}`),
  },
  { id: 'lowest', name: 'Lowest speed', place: (at) => at.speed, say: shown((now) => knots(now.lowestKt)) },
  { id: 'altitude', name: 'Height', place: (at) => at.altitude, say: shown((now) => `${grouped(Math.round(now.altitudeFt / 10) * 10)} feet`) },
  {
    id: 'thrust', name: 'Thrust-lever angle', place: (at) => at.thrust,
    say: shown((now) => `left ${Math.round(now.leftTlaDeg)}, right ${Math.round(now.rightTlaDeg)} degrees`),
  },
  { id: 'leftPointer', name: 'Left flap pointer', place: (at) => at.flaps, say: shown((now) => spokenDeg(now.leftPointerDeg)) },
  { id: 'rightPointer', name: 'Right flap pointer', place: (at) => at.flaps, say: shown((now) => spokenDeg(now.rightPointerDeg)) },
  { id: 'leadingEdge', name: 'Leading edge', place: (at) => at.leadingEdge, say: shown((now) => now.leadingEdge) },
];

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

export const CONTROLS: readonly Control[] = [
  {
    id: 'lever', name: 'Flap lever', role: 'slide', place: (at) => at.lever,
    say: (now, panel) => settingName(panel, now.flapLeverDeg), on: () => null,
  },
  { id: 'guard', name: 'Guard', role: 'press', place: (at) => at.guard, say: (now) => (now.guardOpen ? 'open' : 'closed'), on: (now) => now.guardOpen },
  { id: 'arm', name: 'Arm', role: 'press', place: (at) => at.arm, say: (now) => (now.armed ? 'armed' : 'not armed'), on: (now) => now.armed },
  { id: 'retract', name: 'Drive switch, retract', role: 'hold', place: (at) => at.retract, say: (_, panel) => stays(panel, 'retract'), on: (now, panel) => driveShown(now, panel) === 'retract' },
  { id: 'off', name: 'Drive switch, off', role: 'press', place: (at) => at.off, say: () => '', on: (now, panel) => driveShown(now, panel) === 'off' },
  { id: 'extend', name: 'Drive switch, extend', role: 'hold', place: (at) => at.extend, say: (_, panel) => stays(panel, 'extend'), on: (now, panel) => driveShown(now, panel) === 'extend' },
  { id: 'call', name: 'Call split', role: 'press', place: (at) => at.call, say: () => '', on: () => null },
];
