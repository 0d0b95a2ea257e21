/** What else fails with the pressure: the airframe's own list, or an invented one. */
import type { Airframe } from '../../files/airframe.js';

/** One system that hangs on the lost pressure: what is left of it, and what does its work instead. */
export type PressureSystem = NonNullable<Airframe['pressure']>['systems'][number];

/** For an airframe whose file says nothing. Invented: no aeroplane's list. */
const INVENTED: NonNullable<Airframe['pressure']> = {
  source: 'invented',
  systems: [
    { name: 'flap drive', state: 'lost', instead: 'standby drive, by hand' },
    { name: 'leading edge', state: 'reduced', instead: 'goes out on the first touch, and does not come back' },
    { name: 'nose-wheel steering', state: 'lost', instead: 'rudder, then brakes' },
    { name: 'wheel brakes', state: 'reduced', instead: 'stored pressure, for a few presses' },
    { name: 'ground spoilers', state: 'reduced', instead: 'the inner pair' },
    { name: 'gear extension', state: 'kept', instead: 'other pressure' },
    { name: 'thrust reversers', state: 'kept', instead: 'other pressure' },
    { name: 'autopilot', state: 'kept', instead: 'electric' },
  ],
};

export const systemsOf = ({ pressure }: Airframe): NonNullable<Airframe['pressure']> => pressure ?? INVENTED;
