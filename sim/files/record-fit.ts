/** Do the parts of a record belong together? Its airframe must be the one its scenario asks for, able to fly it, and have each setting its lever was moved to. */
import { canonical } from './canonical.js';
import { leverMisfits, misfits } from './fit.js';
import type { Misfit } from './misfit.js';
import type { RunRecord } from './record.js';

/** Everything that keeps the airframe of a record from being that of its scenario; empty when they belong together. */
export function recordMisfits({ scenario, airframe, commands }: Pick<RunRecord, 'scenario' | 'airframe' | 'commands'>): Misfit[] {
  const asked = scenario.airframe;
  const same = typeof asked === 'string' ? asked === airframe.name : canonical(asked) === canonical(airframe);
  return [
    ...(scenario.parameters === undefined ? [] : [{ path: ['scenario', 'parameters'], allowed: 'none: a record holds the numbers themselves' }]),
    ...(same ? [] : [{ path: ['scenario', 'airframe'], allowed: `the airframe of the record (${airframe.name})` }]),
    ...misfits(scenario, airframe).map(({ path, allowed }) => ({ path: ['scenario', ...path], allowed })),
    ...leverMisfits(commands, airframe).map(({ path, allowed }) => ({ path: ['commands', ...path], allowed })),
  ];
}
