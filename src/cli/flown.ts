/** A run as JSON and as words for people. */
import type { Flight, ProcedureItem, TraceRow } from '../../sim/index.js';
import type { RunOutput } from '../../sim/files/index.js';
import { columns } from './columns.js';

/** What `run` and `replay` print with --json. */
export function flownOutput(scenario: string, flight: Flight, trace: TraceRow[] | undefined): RunOutput {
  const { seed, ticks, hash, outcome, passed, score } = flight;
  return {
    scenario, seed, ticks, hash, outcome, passed,
    onsetS: score.onsetS, releaseS: score.releaseS,
    growthAtReleaseDeg: score.growthAtReleaseDeg, splitAtReleaseDeg: score.splitAtReleaseDeg,
    finalSplitDeg: score.finalSplitDeg, rollAuthorityPct: score.rollAuthorityPct,
    procedure: flight.procedure.map((one) => ({ ...one })),
    events: flight.events.map(({ atS, what, name, deg }) => ({ atS, what, name: name ?? null, deg: deg ?? null })),
    ...(trace === undefined ? {} : { trace: trace.map((row) => ({ ...row })) }),
  };
}

/** One sentence, then the figures, then what happened, then the trace. */
export function flownLines(output: RunOutput, limitDeg: number | null): string[] {
  const { procedure, events, trace } = output;
  return [
    sentence(output, limitDeg), '',
    ...columns(figures(output)), '',
    ...columns(procedure.map(({ item, ok, atS, value, limit, unit }) => [ITEMS[item], ok === null ? 'not asked for' : ok ? 'yes' : 'no', seconds(atS), against(value, limit, unit)])), '',
    ...columns(events.map(({ atS, what, name, deg }) => [seconds(atS), words(what), name ?? (deg === null ? '' : `${deg} deg`)]), [0]),
    ...(trace === undefined ? [] : ['', ...traceLines(trace)]),
  ];
}

const seconds = (atS: number | null): string => (atS === null ? '' : `${atS.toFixed(2)} s`);
const degrees = (deg: number | null): string => (deg === null ? 'none' : `${deg.toFixed(2)} deg`);
/** `splitCall` as "split call". */
const words = (camel: string): string => camel.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** A figure beside its limit, as "1.2, limit 5 s"; what is counted as "5 of 6". */
function against(value: number | null, limit: number | null, unit: RunOutput['procedure'][number]['unit']): string {
  if (limit === null || unit === null) return '';
  const figure = (of: number): string => (Number.isInteger(of) ? `${of}` : of.toFixed(unit === 'ft' ? 0 : unit === 'deg' ? 2 : 1));
  const found = value === null ? 'none' : figure(value);
  return unit === '1' ? `${found} of ${figure(limit)}` : `${found}, limit ${figure(limit)} ${unit}`;
}

const ITEMS: Readonly<Record<ProcedureItem['item'], string>> = {
  lossFound: 'loss found, lever back before arming', speedFirst: 'speed before the lever, retracting', speedKept: 'manoeuvre speed while driving',
  slowAfter: 'slow only once both are there', motorDuty: 'motor inside its duty', hornMet: 'gear horn met',
  aroundBegun: 'go-around begun when told', aroundGear: 'thrust, climb, then gear', aroundHeight: 'no flap switch below safe height',
  listRead: 'asymmetry list read', planRedone: 'landing plan redone by the right sides', returnHandled: 'lever where the flaps are, normal drive back',
  challengeAnswered: 'the other pilot answered',
  leverFirst: 'lever before drive', insideLimit: 'inside the limit speed', leadingEdgeOut: 'leading edge out before driving on',
  bothThere: 'both pointers there', splitCalled: 'split called in time', secondLook: 'second look, still moving called',
  leftAlone: 'drive left alone behind the split', leftAsIs: 'lever, guard and arm left as they are',
  failureCalled: 'drive called failed', driveStopped: 'drive that ran on stopped', noFalseCall: 'nothing called that was not there',
};

function sentence({ outcome, onsetS, releaseS, growthAtReleaseDeg, ticks }: RunOutput, limitDeg: number | null): string {
  const from = onsetS === null ? 'Nothing went wrong with the sides' : `The sides began to part at ${seconds(onsetS)}`;
  const letGo = releaseS === null ? 'the switch was not let go' : `the switch was let go at ${seconds(releaseS)}, with ${degrees(growthAtReleaseDeg)} of growth`;
  const limit = limitDeg === null ? '' : ` (limit ${limitDeg} deg)`;
  switch (outcome) {
    case 'caught': return `Caught. ${from}; ${letGo}${limit}.`;
    case 'late': return `Late. ${from}; ${letGo}${limit}.`;
    case 'missed': return `Missed. ${from}; ${releaseS === null ? letGo : `the drive was let go at ${seconds(releaseS)} and the split was not called`}${limit}.`;
    case 'falseRelease': return `False release. The switch was let go at ${seconds(releaseS)}; nothing called for it.`;
    case 'held': return `Held. ${from}, and the drive was held.`;
    case 'undecided': return `Undecided. ${from}, too late or too little to judge.`;
    case 'void': return 'Void. The run was stopped or disturbed and is not scored.';
    case 'completed': return `Completed after ${seconds(ticks / 100)}. ${from}.`;
    case 'lost': return `Control was lost at ${seconds(ticks / 100)}. ${from}.`;
    case 'timeUp': return `Time was up at ${seconds(ticks / 100)}. ${from}.`;
  }
}

const figures = (run: RunOutput): string[][] => [
  ['outcome', run.outcome],
  ['onset', run.onsetS === null ? 'none' : seconds(run.onsetS)],
  ['scored release', run.releaseS === null ? 'none' : seconds(run.releaseS)],
  ['growth at release', degrees(run.growthAtReleaseDeg)],
  ['split shown at release', degrees(run.splitAtReleaseDeg)],
  ['final split', degrees(run.finalSplitDeg)],
  ['roll authority used', `${run.rollAuthorityPct.toFixed(1)} %`],
  ['length', seconds(run.ticks / 100)],
  ['seed', String(run.seed)],
  ['hash', run.hash],
];

function traceLines(trace: NonNullable<RunOutput['trace']>): string[] {
  const head = ['time s', 'left deg', 'right deg', 'pointer L', 'pointer R', 'rate deg/s', 'speed kt', 'height ft', 'lever deg', 'horn', 'lead. edge', 'gear', 'heat', 'roll %', 'bank deg'];
  const rows = trace.map((row) => [
    row.atS.toFixed(2), row.leftDeg.toFixed(3), row.rightDeg.toFixed(3), row.leftPointerDeg.toFixed(3), row.rightPointerDeg.toFixed(3),
    row.rateDegPerS.toFixed(4), row.speedKt.toFixed(1), row.altitudeFt.toFixed(0), row.tlaDeg.toFixed(1), row.horn ? 'sounds' : '-',
    row.leadingEdge, row.gear, row.motorHeat.toFixed(3), row.rollAuthorityPct.toFixed(1), row.bankDeg.toFixed(2),
  ]);
  return columns([head, ...rows], head.map((_, at) => at));
}
