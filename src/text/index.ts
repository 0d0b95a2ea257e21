/** Files as text: from what an instructor typed to data, or to every problem with its place. Knows neither page nor machine. */
export { type AnyFile, type Kind, readAirframe, readAny, readInputs, readRecord, readScenario, readTrainee } from './files.js';
export { readTrials, TRIAL_COLUMNS } from './trials.js';
export { type Problem, type Read, type Refused } from './problem.js';
export { MOST_BYTES } from './scan.js';
export { nearest } from './near.js';
