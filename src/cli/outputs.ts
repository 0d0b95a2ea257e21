/** What each command prints with --json, by the schema that its help is made from. Loaded for help alone: schemas take as long as the rest of a start. */
import {
  budgetOutput, checkOutput, deriveOutput, hornOutput, keysOf, keysOutput, measureOutput, planOutput, replayOutput, runOutput, setOutput, speedsOutput, sweepOutput, verifyOutput,
} from '../../sim/files/index.js';

const OUTPUTS = {
  budget: budgetOutput, check: checkOutput, derive: deriveOutput, horn: hornOutput, keys: keysOutput, measure: measureOutput, plan: planOutput,
  replay: replayOutput, run: runOutput, set: setOutput, speeds: speedsOutput, sweep: sweepOutput, verify: verifyOutput,
};
export type OutputName = keyof typeof OUTPUTS;

/** The keys of an output: path, what is allowed, meaning. */
export const outputRows = (name: OutputName): string[][] =>
  keysOf(OUTPUTS[name]).map(({ path, allowed, default: filled, meaning }) => [path, filled === 'required' ? allowed : `${allowed}, or left out`, meaning]);
