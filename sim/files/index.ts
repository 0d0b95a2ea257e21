/** The doors of the files: schemas, types, and what is checked beyond one key. The only part of `sim` that knows zod. */
export { airframeSchema, type Airframe } from './airframe.js';
export { scenarioSchema, type Scenario } from './scenario.js';
export { ready, type ReadyScenario } from '../ready.js';
export { type Parameter } from './parameter.js';
export { readyFor, settled, valueAt, valuesCount, type OpenParameter } from '../settle.js';
export { airframeOf, misfitsOf, type Lookup } from './resolve.js';
export { leverMisfits, misfits } from './fit.js';
export { type Misfit } from './misfit.js';
export { type DeskFault, type Fault } from './fault.js';
export { deskActSchema, gradesSchema, type DeskAct, type Grades } from './desk-act.js';
export { type ScenarioEvent } from './event.js';
export { kindOfTrigger, type Trigger } from './trigger.js';
export { inputsSchema, type Inputs } from './inputs.js';
export { numbersOf, traineeSchema, type TraineeFile } from './trainee.js';
export { type Planned } from './plan.js';
export { type Act } from './act.js';
export { OUTCOMES, recordSchema, type Outcome, type RunRecord, type Score } from './record.js';
export { shapeOf, type ChoiceShape, type Key, type ListShape, type ObjectShape, type Shape } from './shape.js';
export { allowedBy, oneOf } from './allowed.js';
export { tryAs, type Issue, type Schema } from './door.js';
export { FILE_SCHEMAS, jsonSchemas, type FileKind } from './json-schema.js';
export { keysOutput, type KeysOutput } from './keys-output.js';
export { keysOf, keyTable, keyTableMarkdown, type KeyRow } from './key-table.js';
export { canonical } from './canonical.js';
export { digestOf, sha256Hex } from './digest.js';
export { composeRecord, scriptedRecord, type RecordParts, type ScriptedRun } from './compose.js';
export {
  checkOutput, replayOutput, runOutput, troubleOutput, verifyOutput,
  type CheckOutput, type ReplayOutput, type RunOutput, type TroubleOutput, type VerifyOutput,
} from './output.js';
export { abandonedRecord, flownRecord, type FlownDraft, type FlownSetting } from './flown.js';
export { setSchema, type SetFile } from './set.js';
export { baseOf, setMisfits, type ScenarioLookup } from './set-fit.js';
export { courseSchema, type AskKey, type CourseFile, type CourseStep, type GateFile } from './course.js';
export { courseMisfits, withFirstLook, type SetLookup, type Shelves } from './course-fit.js';
export { readyCourse } from './course-ready.js';
export { recordMisfits } from './record-fit.js';
export { differences, NOT_PROVABLE, verify, type Refusal, type Verdict } from './verify.js';
export { setFigures, setOutput, type SetCheck, type SetOutput } from './set-output.js';
export { INSTRUCTORS, sealed } from './sealed.js';
export { sweepOutput, type SweepOutput } from './sweep-output.js';
export { sweptOutput, type Swept } from './swept.js';
export { budgetOutput, deriveOutput, hornOutput, speedsOutput, type BudgetOutput, type DeriveOutput, type HornOutput, type SpeedsOutput } from './advice.js';
export { planOutput, type PlanOutput } from './plan-output.js';
export { measureOutput, type MeasureOutput } from './measure-output.js';
export { lobbySchema, roomSchema, type LobbyMessage, type RoomMessage } from './message.js';
