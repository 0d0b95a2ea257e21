/** Files as text: from what an instructor typed to data, or to every problem with its place. Knows neither page nor machine. */
export { readTrials, TRIAL_COLUMNS } from './trials.js';
export { looksLikeSet, readAirframe, readAny, readCourse, readInputs, readRecord, readScenario, readSet, readTrainee, setProblems } from './files.js';
export { type Path, pathText, type Problem, type Read, type Refused } from './problem.js';
export { duplicated, edited, moved, parsedValue } from './edit.js';
export { type Json } from './values.js';
export { MOST_BYTES } from './scan.js';
export { parametersOf, type Values } from './settle.js';
export { nearest } from './near.js';
export { suggest, tellAt, type Names, type Suggested, type Told } from './suggest.js';
