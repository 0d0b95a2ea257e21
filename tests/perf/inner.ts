// What the bench times and no page may have: the step itself, on a state of one's own.
export { copyState } from '../../sim/state.js';
export { firstAt, step } from '../../sim/world.js';
export * from '../../sim/index.js';
export { airframeSchema, ready, scenarioSchema } from '../../sim/files/index.js';
export { startDrill } from '../../src/run/start.js';
export { file, frame, startSession } from '../../src/run/session.js';
export { Observable } from 'rxjs';
