/** The doors of the files: schemas, types, and what is checked beyond one key. The only part of `sim` that knows zod. */
export { airframeSchema, type Airframe } from './airframe.js';
export { scenarioSchema, type Scenario } from './scenario.js';
export { ready, type ReadyScenario } from './ready.js';
export { type Fault } from './fault.js';
export { type ScenarioEvent } from './event.js';
export { kindOfTrigger, type Trigger } from './trigger.js';
export { inputsSchema, type Inputs } from './inputs.js';
export { type Act } from './act.js';
export { OUTCOMES, recordSchema, type Outcome, type RunRecord, type Score } from './record.js';
