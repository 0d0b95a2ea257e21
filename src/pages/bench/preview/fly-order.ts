/** Flies what was ordered once, drawn parameters drawn by its seed. For the page and for its workers alike. */
import { previewOf, readyFor, type Preview } from '../../../../sim/index.js';
import type { FlightOrder } from './order.js';

export const flyOrder = ({ scenario, airframe, seed, trainee }: FlightOrder): Preview => previewOf(readyFor(scenario, airframe, seed), airframe, seed, trainee);
