/** The commands for the trade's tables. */
import { Argument, type Command, Option } from 'commander';
import type { FileKind } from '../../sim/files/index.js';
import { BUDGET_FAULTS } from '../../sim/index.js';
import type { BudgetOptions, HornOptions, SpeedsOptions } from './advice.js';
import type { DeriveOptions } from './derive.js';
import { helpEnd } from './help.js';
import type { Io } from './io.js';
import type { PlanOptions } from './plan.js';
import { DEFAULT_SEED, figure, figures, gathered, liveEngines, seed, settings } from './values.js';

/** The kinds of files that are written by hand: all but records. A test holds them to the schemas. */
export const WRITTEN_KINDS = ['airframe', 'scenario', 'inputs', 'trainee', 'set', 'course'] as const satisfies readonly FileKind[];

/** Adds `keys`, `speeds`, `horn`, `budget`, `derive` and `plan` to the program. */
export function addTables(program: Command, io: Io, json: readonly [string, string], ended: (code: number) => void): void {
  const airframe = ['--airframe <name>', 'a shipped airframe by name, or a file'] as const;

  program.command('keys').description('Every key of a kind of file: what may be written, and what it means. The page #/help has examples beside them.')
    .addArgument(new Argument('[kind]', 'kind of file').choices(WRITTEN_KINDS).default('scenario')).option(...json)
    .addHelpText('after', helpEnd(['evenhand keys scenario', 'evenhand keys trainee --json'], 'keys'))
    .action(async (kind: FileKind, options: { json?: boolean }) => ended((await import('./keys.js')).keys(io, kind, options.json ?? false)));

  program.command('speeds').description('Speeds of every setting, with the sums.')
    .requiredOption(...airframe).requiredOption('--mass <t>', 'mass in tonnes', figure).option('--ice', 'with the ice additive').option(...json)
    .addHelpText('after', helpEnd(['evenhand speeds --airframe airframe-a --mass 48 --ice'], 'speeds'))
    .action(async (options: SpeedsOptions) => ended((await import('./advice.js')).speeds(io, options)));

  program.command('horn').description('Does the gear horn sound, may it be silenced, and why?')
    .requiredOption(...airframe)
    .requiredOption('--tla <deg>', 'lever angle, once for each live engine', gathered)
    .requiredOption('--live-engines <n>', 'engines that run, 1 or 2', liveEngines)
    .requiredOption('--flap <deg>', 'flap position, or left and right: 9,16', figures)
    .addOption(new Option('--gear <place>', 'place of the gear').choices(['up', 'moving', 'down']).makeOptionMandatory())
    .requiredOption('--height <ft>', 'height above ground', figure)
    .option('--silenced', 'the horn has been silenced').option(...json)
    .addHelpText('after', helpEnd(['evenhand horn --airframe airframe-a --tla 12 --live-engines 2 --flap 16 --gear up --height 2000'], 'horn'))
    .action(async (options: HornOptions) => ended((await import('./advice.js')).horn(io, options)));

  program.command('budget').description('From a fault to one degree and to parts of the roll authority, and what each second of holding on costs.')
    .requiredOption(...airframe).requiredOption('--mass <t>', 'mass in tonnes', figure)
    .requiredOption('--speed <kt>', 'calibrated airspeed', figure).requiredOption('--flap <deg>', 'position at the fault', figure)
    .addOption(new Option('--fault <kind>', 'the fault, on one side').choices(BUDGET_FAULTS).makeOptionMandatory())
    .option('--ratio <r>', 'rate of a lagging or slipping side over the rate of the drive', figure, 0.5)
    .option('--altitude <ft>', 'height above sea level', figure, 3500).option(...json)
    .addHelpText('after', helpEnd(['evenhand budget --airframe airframe-a --mass 48 --speed 154 --flap 6.4 --fault disconnect'], 'budget'))
    .action(async (options: BudgetOptions) => ended((await import('./advice.js')).budget(io, options)));

  program.command('derive').description('Roll constants and flap areas from the wing’s geometry, to be pasted into an airframe file.')
    .argument('<airframe>', 'a shipped airframe by name, or a file').option(...json)
    .addHelpText('after', helpEnd(['evenhand derive airframe-a'], 'derive'))
    .action(async (typed: string, options: DeriveOptions) => ended((await import('./derive.js')).derive(io, typed, options)));

  program.command('plan').argument('<scenario>', 'a file, or a shipped drill by name')
    .description('The approach plan of a scenario: speeds, steps, times, heat, fuel, distances, and the gear horn in each order, with the sums.')
    .option('--seed <n>', 'seed of the dice, for parameters that are drawn', seed, DEFAULT_SEED)
    .option('--set <name=number>', 'the number of a parameter of the scenario; may stand more than once', settings).option(...json)
    .addHelpText('after', helpEnd(['evenhand plan first-touch', 'evenhand plan my-drill.json --json'], 'plan'))
    .action(async (typed: string, options: PlanOptions) => ended((await import('./plan.js')).plan(io, typed, options)));
}
