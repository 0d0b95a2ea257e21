/** A fault or an event as a mark: kinds are told apart by shape, faults are filled and events open. */
import type { Fault, ScenarioEvent } from '../../../../sim/files/index.js';
import type { ListName } from '../form/add.js';

const SIDE = 'M0 -7L7 6H-7Z';
const POINTER = 'M-7 -5H2L8 0L2 5H-7Z';
const DRIVE = 'M-6 -6H6V6H-6Z';

type Kind = Fault['kind'] | ScenarioEvent['do'];

const SHAPES: Readonly<Record<Kind, string>> = {
  disconnect: SIDE, lag: 'M-8 6L0 -7V6Z', jam: 'M-6 -6H6L-6 6H6Z', slip: 'M-8 6L-4 -6L0 6L4 -6L8 6Z', blowback: 'M0 7L7 -6H-7Z', pointer: POINTER,
  dead: DRIVE, quits: DRIVE, slow: 'M-7 -4H7V4H-7Z', runsOn: 'M-7 -6L0 0L-7 6ZM0 -6L7 0L0 6Z', leadingEdge: 'M-7 6A13 13 0 0 1 7 -6V6Z',
  descend: 'M-7 -6L7 6M7 -1V6H0', level: 'M-8 0H8', selectSpeed: 'M-7 4A7.5 7.5 0 1 1 7 4M0 1L4 -4', failEngine: 'M-6 -6L6 6M6 -6L-6 6',
  message: 'M-7 -5H7V5H-7Z', callout: 'M-7 -6H7V3H0L-4 7V3H-7Z', setGear: 'M0 -7V1M-5 4A5 5 0 1 0 5 4A5 5 0 1 0 -5 4', loseMainDrive: 'M-7 -3A7 7 0 1 1 -7 3M-4 -4L4 4', clearFault: 'M-7 0L-2 6L8 -6', returnMainDrive: 'M6 -3A7 7 0 1 0 7 2M7 -7V-2H2', freeze: 'M-4 -6V6M4 -6V6',
  tellGoAround: 'M-7 5L0 -6L7 5M-7 0H7', clearHeading: 'M0 -8V-3M0 3A6 6 0 1 0 0 -9', clearAltitude: 'M-7 6H7M0 -7V3M-4 -1L0 3L4 -1', caution: 'M0 -7L8 6H-8ZM0 -2V2',
};

/** The outline of a kind, about the origin, some 16 px wide. */
export const outline = (kind: string): string => (Object.hasOwn(SHAPES, kind) ? SHAPES[kind as Kind] : 'M0 -7L7 0L0 7L-7 0Z');

export const Sign = ({ list, kind }: { readonly list: ListName; readonly kind: string }) => (
  <svg class={`thing-sign ${list}`} viewBox="-10 -10 20 20" width="20" height="20" aria-hidden="true"><path d={outline(kind)} /></svg>
);
