/** The command line: what may be typed, and what is called for it. Each command is fetched when it is called: a start reads no more than it needs. */
import { availableParallelism } from 'node:os';
import { Command, CommanderError, Option } from 'commander';
import { TRAINEES } from '../../sim/index.js';
import { TRIAL_COLUMNS } from '../text/trials.js';
import { asksForHelp, helpEnd, loadHelp } from './help.js';
import { type Io, printTrouble, tell } from './io.js';
import type { MeasureOptions } from './measure.js';
import { drillNames, setNames, version } from './places.js';
import type { RunOptions } from './run.js';
import type { SweepOptions } from './sweep.js';
import { addTables } from './tables.js';
import { DONE, Trouble, WRONG } from './trouble.js';
import { DEFAULT_SEED, DEFAULT_TRAINEE, port, runs, seed, settings, stepTicks, trainee, within, workers } from './values.js';

interface Json { json?: boolean }

/** Runs one command line (without the program's name) and gives its exit code: 0 done, 1 failed, 2 wrong usage or file. */
export async function main(words: readonly string[], io: Io): Promise<number> {
  let code = DONE;
  const program = commands(io, (one) => { code = one; });
  if (asksForHelp(words)) await loadHelp();
  try {
    await program.parseAsync([...words], { from: 'user' });
    return code;
  } catch (problem) {
    const json = words.includes('--json');
    if (problem instanceof CommanderError) return problem.exitCode === 0 ? DONE : usage(io, problem, json);
    if (problem instanceof Trouble) return tell(io, problem, json);
    throw problem;
  }
}

/** The words are on standard error already. */
function usage(io: Io, { message }: CommanderError, json: boolean): number {
  if (json) printTrouble(io, message.replace(/^error: /, ''), null);
  return WRONG;
}

function commands(io: Io, ended: (code: number) => void): Command {
  const program = new Command('evenhand')
    .description('Practice seeing a flap split and letting go. A practice aid: the airframe is invented, your own approved manuals come first.')
    .version(version())
    .exitOverride()
    .showSuggestionAfterError()
    .configureOutput({ writeOut: (text) => io.out(text), writeErr: (text) => io.err(text) })
    .addHelpText('after', '\nExit code: 0 done, 1 the thing checked failed, 2 wrong usage or file.\nWith --json a wrong usage or file gives {"ok": false, "error": words, "problems": [as in check], "more": number}.');
  const json = ['--json', 'print one JSON object on standard output, all else on standard error'] as const;
  const set = ['--set <name=number>', 'the number of a parameter of the scenario; may stand more than once', settings] as const;
  const trace = ['--trace <s>', 'rows every so many seconds, both ends included', stepTicks] as const;

  program.command('check').argument('<file...>', 'scenarios, airframes, sets, courses, records, inputs')
    .description('Check files; every problem is told at once, with its place.').option(...json)
    .addHelpText('after', helpEnd(['evenhand check my-drill.json', 'evenhand check --json scenarios/drills/*.json', 'evenhand check scenarios/sets/*.json'], 'check'))
    .action(async (files: string[], options: Json) => ended((await import('./check.js')).check(io, files, options.json ?? false)));

  program.command('run').argument('<scenario>', 'a file, or a shipped drill or set by name')
    .description('Fly a scenario, or a whole set, without a page.')
    .option('--seed <n>', 'seed of the dice', seed, DEFAULT_SEED)
    .addOption(new Option('--trainee <name>', `who flies: ${TRAINEES.join(', ')}, or a trainee file by its path`).argParser(trainee).conflicts('inputs'))
    .option('--inputs <file>', 'fly the acts of an inputs file; the run lasts its whole limitS')
    .option(...set).option(...trace).option('--record <file>', 'write the record of the run; of a set a folder of records').option(...json)
    .addHelpText('after', () => ['', `Shipped drills: ${drillNames().join(', ')}`, `Shipped sets: ${setNames().join(', ')}`].join('\n'))
    .addHelpText('after', helpEnd(['evenhand run set-16-from-4 --trainee slow --seed 3', 'evenhand run my-drill.json --inputs hands.json --trace 0.5 --json', 'evenhand run standard-calm --trainee steady --seed 3 --record records'], 'run'))
    .addHelpText('after', helpEnd([], 'set', 'Of a set, with --json:'))
    .action(async (typed: string, options: RunOptions) => ended((await import('./run.js')).run(io, typed, options)));

  program.command('sweep').argument('<scenario>', 'a file, or a shipped drill by name')
    .description('Fly a scenario many times: outcomes with intervals, how the figures are spread, how hard it is. The same for any number of workers.')
    .option('--trainee <name>', `who flies: ${TRAINEES.join(', ')}, or a trainee file by its path`, trainee, DEFAULT_TRAINEE)
    .requiredOption('--runs <n>', 'how many runs', runs)
    .option('--seed <n>', 'seed from which the seeds of the runs are drawn', seed, DEFAULT_SEED)
    .option(...set)
    .option('--workers <n>', 'worker threads', workers, availableParallelism()).option(...json)
    .addHelpText('after', helpEnd(['evenhand sweep set-16-from-4 --trainee steady --runs 1000', 'evenhand sweep my-drill.json --trainee loaded --runs 10000 --workers 2 --json'], 'sweep'))
    .addHelpText('after', '\nProgress stands on standard error. Ctrl-C stops it: nothing is printed, exit code 130.')
    .action(async (typed: string, options: SweepOptions) => ended(await (await import('./sweep.js')).sweep(io, typed, options)));

  program.command('replay').argument('<record>', 'a record file').description('Play a record again.').option(...trace).option(...json)
    .addHelpText('after', helpEnd(['evenhand run set-16-from-4 --record flown.json', 'evenhand replay flown.json --trace 1'], 'replay'))
    .action(async (file: string, options: Json & { trace?: number }) => ended((await import('./replayed.js')).replay(io, file, options)));

  program.command('verify').argument('<record...>', 'record files')
    .description('Prove that hash, outcome and score of a record follow from its inputs. No signature: a forger who digests anew is not caught.').option(...json)
    .addHelpText('after', helpEnd(['evenhand verify flown.json', 'evenhand verify --json flown.json'], 'verify'))
    .action(async (files: string[], options: Json) => ended((await import('./replayed.js')).verify(io, files, options.json ?? false)));

  program.command('measure').argument('<trials.csv>', `a table of trials of one condition, with the columns ${TRIAL_COLUMNS.join(',')}`)
    .description('How soon does this person let go? An empty onset_s is a quiet run, an empty release_s is none; end_s is when the run ended or would have.')
    .option('--seen-deg <deg>', 'growth below which a release is no reaction', within(0, 2, ' deg'), 0)
    .option('--false-points <n>', 'points taken for a false release', within(0, 1000, ''), 75).option(...json)
    .addHelpText('after', helpEnd(['evenhand measure trials.csv', 'evenhand measure trials.csv --seen-deg 0.1 --json'], 'measure'))
    .action(async (file: string, options: MeasureOptions) => ended((await import('./measure.js')).measure(io, file, options)));

  addTables(program, io, json, ended);

  program.command('serve').description('Serve the built app.')
    .option('--port <n>', 'this port; without it the first free one from 4173', port).option('--lan', 'also for other machines of the local network')
    .addHelpText('after', helpEnd(['evenhand serve --port 8080'], null))
    .action(async (options: { port?: number; lan?: boolean }) => ended(await (await import('./serving.js')).serve(io, options)));
  return program;
}
