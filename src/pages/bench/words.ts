/** Triggers, faults and events as sentences. They read whatever stands in a text, right or wrong, so nothing is sure to be there. */
import type { Fault, ScenarioEvent } from '../../../sim/files/index.js';
import type { Json } from '../../text/index.js';

/** A part of a file as it is written. */
export type Written = { readonly [key: string]: Json | undefined };

export const isWritten = (value: Json | undefined): value is { [key: string]: Json } => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A figure as it is written: a parameter by its name. */
export function figure(value: Json | undefined): string {
  if (typeof value === 'number') return String(value);
  if (isWritten(value) && typeof value['parameter'] === 'string') return value['parameter'];
  return '…';
}
/** A word as it is written. */
export const word = (value: Json | undefined): string => (typeof value === 'string' && value !== '' ? value : '…');

const PASSES = { rising: 'rises through', falling: 'falls through', either: 'passes' } as const;
const passes = (edge: Json | undefined): string => PASSES[edge as keyof typeof PASSES] ?? PASSES.either;
const TRAVELS = { rising: ' extending', falling: ' retracting', either: '' } as const;

/** The clause behind "when"; null for what is said without it. */
function clause(when: Written): string | null {
  const { flapDeg, speedKt, altitudeFt, heldS, edge } = when;
  if (flapDeg !== undefined) return `the drive passes ${figure(flapDeg)} deg${TRAVELS[edge as keyof typeof TRAVELS] ?? ''}`;
  if (speedKt !== undefined) return `the speed ${passes(edge)} ${figure(speedKt)} kt`;
  if (altitudeFt !== undefined) return `the height ${passes(edge)} ${figure(altitudeFt)} ft`;
  if (heldS !== undefined) return `the drive has been held for ${figure(heldS)} s in all`;
  return null;
}

function chance({ hazardPerS, hazardFromS, hazardForS }: Written): string {
  const from = hazardFromS === undefined ? '' : ` from ${figure(hazardFromS)} s of holding on`;
  const long = hazardForS === undefined ? '' : ` for ${figure(hazardForS)} s`;
  return `by chance while the drive is held, ${figure(hazardPerS)} a second${from}${long}`;
}

const after = ({ after: name, delayS }: Written): string => (delayS === undefined || delayS === 0 ? `as soon as ${word(name)} has acted` : `${figure(delayS)} s after ${word(name)}`);

/** Inside a group every condition is a clause; a group inside a group stands in brackets. */
function inGroup(when: Written, around: 'all' | 'any'): string {
  for (const group of ['all', 'any'] as const) {
    const inner = when[group];
    if (inner !== undefined) return Array.isArray(inner) && inner.length > 1 && group !== around ? `(${joined(inner, group)})` : joined(inner, group);
  }
  const { atS, hazardPerS } = when;
  if (atS !== undefined) return `${figure(atS)} s have passed`;
  if (when['after'] !== undefined) return when['delayS'] === undefined || when['delayS'] === 0 ? `${word(when['after'])} has acted` : `${word(when['after'])} has acted ${figure(when['delayS'])} s ago`;
  if (hazardPerS !== undefined) return `it has come ${chance(when)}`;
  return clause(when) ?? '…';
}

const joined = (list: Json | undefined, group: 'all' | 'any'): string =>
  (Array.isArray(list) && list.length > 0 ? list.map((one) => (isWritten(one) ? inGroup(one, group) : '…')).join(group === 'all' ? ' and ' : ' or ') : '…');

/** When it acts: "when the drive passes 8 deg extending and the speed falls through 160 kt". */
export function triggerWords(when: Json | undefined): string {
  if (!isWritten(when)) return 'when …';
  const { atS, hazardPerS, all, any } = when as Written;
  if (atS !== undefined) return `at ${figure(atS)} s`;
  if (when['after'] !== undefined) return after(when);
  if (hazardPerS !== undefined) return chance(when);
  if (all !== undefined) return `when ${joined(all, 'all')}`;
  if (any !== undefined) return `when ${joined(any, 'any')}`;
  return `when ${clause(when) ?? '…'}`;
}

const sideOf = ({ side }: Written): string => (side === 'drawn' ? 'A side, drawn by the seed,' : `The ${word(side)} side`);
const pointerOf = ({ side }: Written): string => (side === 'drawn' ? 'A pointer, drawn by the seed,' : `The ${word(side)} pointer`);

const POINTERS: Readonly<Record<string, (fault: Written) => string>> = {
  stuck: () => 'sticks', bias: ({ biasDeg }) => `jumps by ${figure(biasDeg)} deg`, drift: ({ driftDegPerS }) => `drifts by ${figure(driftDegPerS)} deg/s`,
};

const FAULTS: Readonly<Record<Fault['kind'], (fault: Written) => string>> = {
  disconnect: (fault) => `${sideOf(fault)} stops while the other goes on`,
  lag: (fault) => (typeof fault['ratio'] === 'number' && fault['ratio'] < 0 ? `${sideOf(fault)} is driven back at ${-fault['ratio']} of the rate` : `${sideOf(fault)} lags at ${figure(fault['ratio'])} of the rate`),
  jam: (fault) => `${sideOf(fault)} jams, then its link shears`,
  slip: (fault) => `${sideOf(fault)} slips for ${figure(fault['onS'])} of every ${figure(fault['periodS'])} s`,
  blowback: (fault) => `${sideOf(fault)} is blown back by the air`,
  pointer: (fault) => `${pointerOf(fault)} ${POINTERS[word(fault['mode'])]?.(fault) ?? 'lies'}`,
  dead: () => 'The standby drive does not run',
  quits: () => 'The standby drive stops for good',
  slow: (fault) => `The standby drive runs at ${figure(fault['factor'])} of its speed`,
  runsOn: () => 'The drive runs on when let go',
  leadingEdge: (fault) => `The leading edge stops at ${figure(fault['stopsAt'])} of its travel`,
};

const EVENTS: Readonly<Record<ScenarioEvent['do'], (event: Written) => string>> = {
  descend: (event) => `Descends to ${figure(event['toFt'])} ft on ${figure(event['pathDeg'])} deg`,
  level: () => 'Levels off',
  selectSpeed: (event) => `Selects ${figure(event['speedKt'])} kt`,
  failEngine: (event) => (event['side'] === 'drawn' ? 'An engine, drawn by the seed, stops' : `The ${word(event['side'])} engine stops`),
  message: (event) => `Message: ${word(event['text'])}`,
  callout: (event) => `Callout: ${word(event['text'])}`,
  setGear: (event) => `Gear ${word(event['to'])}`,
  loseMainDrive: () => 'The normal flap drive is lost',
  tellGoAround: (event) => `Told to go around: ${word(event['text'])}`,
  clearHeading: (event) => `Cleared to heading ${figure(event['toDeg'])}`,
  clearAltitude: (event) => `Cleared to ${figure(event['toFt'])} ft`,
  caution: (event) => `Caution: ${word(event['text'])}`,
  returnMainDrive: () => 'The normal flap drive comes back',
  clearFault: ({ fault }) => `Ends the fault ${word(fault)}`,
  freeze: () => 'The clock stops, instruments stay',
};

/** How often it acts: empty for once. */
export function timesWords({ times, everyS }: Written): string {
  if (times === undefined) return '';
  return everyS === undefined ? `, ${figure(times)} times at most` : `, ${figure(times)} times at most, every ${figure(everyS)} s`;
}

const of = (all: Readonly<Record<string, (written: Written) => string>>, kind: string) => (Object.hasOwn(all, kind) ? all[kind] : undefined);

/** What a fault does, without its trigger. A kind without words of its own is named. */
export const faultWords = (fault: Written): string => of(FAULTS, word(fault['kind']))?.(fault) ?? word(fault['kind']);

/** What an event does, without its trigger. */
export const eventWords = (event: Written): string => of(EVENTS, word(event['do']))?.(event) ?? word(event['do']);
