/** The plan: what it is made for, worked out by a worker, and laid beside the run that was flown by it. */
import type { Plan, PlanRequest } from '../../sim/index.js';
import type { PlanHouse } from '../pages/plan/house.js';
import { shelf } from './flown.js';
import { flightOf } from './own.js';

type Answer = { readonly id: number; readonly plan: Plan } | { readonly id: number; readonly problem: string };

let worker: Worker | null = null;
let last = 0;
/** Only the youngest is waited for: a figure changed meanwhile makes the one before it pointless. */
let waiting: { readonly id: number; readonly done: (plan: Plan) => void; readonly failed: (why: Error) => void } | null = null;

function start(): Worker {
  const made = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
  made.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
    if (waiting?.id !== data.id) return;
    const asked = waiting;
    waiting = null;
    if ('plan' in data) asked.done(data.plan);
    else asked.failed(new Error(data.problem));
  });
  made.addEventListener('error', () => {
    waiting?.failed(new Error('the worker has stopped'));
    waiting = null;
    worker = null; // asked again, it is started again
  });
  return made;
}

/** An approach of one's own: from clean in the hold, made up. */
async function free(): Promise<PlanRequest> {
  const [{ airframesOnShelf }, { PLAN_DEFAULTS, settingsOf }] = await Promise.all([import('../records/shelf.js'), import('../../sim/index.js')]);
  const airframe = airframesOnShelf().get('airframe-a') ?? [...airframesOnShelf().values()][0];
  if (airframe === undefined) throw new Error('no airframe is shipped');
  return {
    airframe, massT: 48, altitudeFt: 5600, groundFt: 700, speedKt: 212, fromDeg: 0, settings: settingsOf(airframe, 0, []), leadingEdge: 'in', gear: 'up', liveEngines: 2,
    motorHeat: 0, windKt: 12, icing: false, fuelKg: 4200, distanceNm: 38, ...PLAN_DEFAULTS, runwayM: 2300, landingM: 1350,
  };
}

export const plan: PlanHouse = {
  async request(of) {
    if ('free' in of) return free();
    const [found, { planRequestOf }, { ready }] = await Promise.all(['drill' in of ? shelf().then((all) => all[of.drill - 1] ?? null) : flightOf(of.own), import('../../sim/index.js'), import('../../sim/files/index.js')]);
    return found === null ? null : planRequestOf(ready(found.scenario, found.airframe), found.airframe);
  },
  workOut(request) {
    worker ??= start();
    const id = (last += 1);
    waiting?.failed(new Error('another plan was asked for'));
    return new Promise((done, failed) => {
      waiting = { id, done, failed };
      worker?.postMessage({ id, request });
    });
  },
  async flown(record) {
    const { MODEL_VERSION, plannedAndFlown } = await import('../../sim/index.js');
    return record.model === MODEL_VERSION ? plannedAndFlown(record) : null;
  },
};
