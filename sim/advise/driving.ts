/** The drive running through the point of a fault, held on: what budget and margin both begin with. */
import type { Command } from '../command.js';
import { expand } from '../expand.js';
import type { Fault } from '../files/fault.js';
import type { World } from '../fixed.js';
import { ready } from '../ready.js';
import type { BudgetRequest } from './budget.js';

const LONGEST_S = 300;
/** The run-up before the fault lets the rate settle, deg. */
const RUN_UP_DEG = 0.4;

function faultOf({ fault, ratio, flapDeg }: BudgetRequest): Fault {
  const common = { name: 'fault', side: 'right' as const, when: { flapDeg } };
  if (fault === 'lag') return { ...common, kind: fault, ratio };
  if (fault === 'slip') return { ...common, kind: fault, ratio, periodS: 6, onS: 3 };
  return { ...common, kind: fault };
}

/** Armed and held, outward. */
export const HELD: readonly Command[] = [
  { do: 'arm', tick: 0, rank: 2, seq: 0 }, { do: 'holdDrive', way: 'extend', tick: 0, rank: 2, seq: 1 },
];

/** Level flight under speed hold, the drive a moment short of the fault. */
export function start(request: BudgetRequest): World {
  const { airframe, massT, speedKt, flapDeg, altitudeFt } = request;
  const top = airframe.settings[airframe.settings.length - 1]?.deg ?? airframe.drive.stopDeg;
  return expand(ready({
    format: 1, title: 'budget', brief: '', airframe, speedHold: true, role: 'flying', mainDrive: 'lost', pointerNoise: false,
    start: {
      massT, altitudeFt, groundFt: -1500, speedKt, flapDeg: Math.max(0, flapDeg - RUN_UP_DEG), leadingEdge: 'out',
      gear: 'up', liveEngines: 2, motorHeat: 0, guard: 'open', windKt: 0, icing: false,
    },
    task: { settings: [top], limitS: LONGEST_S }, faults: [faultOf(request)], events: [],
    procedure: { leverFirst: true, leaveAlone: true, call: true },
  }, airframe), airframe, 1);
}

/** How far the sides are truly apart, deg. */
export const splitOf = ({ state }: World): number => Math.abs(state.leftDeg - state.rightDeg);
