/** How a part of a device is named: switches by number, levers by letter. */
import type { PadLine } from './house.js';

export const axisName = (axis: number): string => String.fromCodePoint(65 + axis % 26);
export const sourceOf = ({ is, source }: PadLine): string => (source === null ? 'none' : is === 'switch' ? `${source + 1}` : axisName(source));
