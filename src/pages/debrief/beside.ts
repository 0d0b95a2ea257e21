/** Two runs of one task on one time axis: which may lie beside each other, and where the other one stands. */
import type { RunRecord } from '../../../sim/files/index.js';
import { ends } from '../../charts/plot.js';
import { trulyApart, shownApart, type Facts } from './facts.js';
import type { Chart } from './figure.js';
import { figuresOf } from './figures.js';
import { nameIn } from './moments.js';
import { OUTCOME_WORDS } from '../words.js';

export interface Other {
  readonly run: RunRecord;
  /** Its rows stand on the time of the first run. */
  readonly facts: Facts;
  readonly aligned: 'onset' | 'start';
  /** When its hand came off, on the time of the first run, s; null for never. */
  readonly releaseS: number | null;
}

/** The task in words that give nothing away, as the logbook has it. */
export function taskOf({ airframe, scenario }: Pick<RunRecord, 'airframe' | 'scenario'>): string {
  const name = nameIn(airframe);
  return `Flaps from ${name(scenario.start.flapDeg)} to ${scenario.task.settings.map(name).join(', then ')}`;
}

/** Why a run cannot lie beside another; null where it can. */
export function whyNot(run: RunRecord, other: RunRecord): string | null {
  if (other.digest === run.digest) return 'That is this very run.';
  if (JSON.stringify(other.airframe) !== JSON.stringify(run.airframe)) return 'That run was flown on another airframe.';
  return taskOf(other) === taskOf(run) ? null : `That run had another task: ${taskOf(other).toLowerCase()}.`;
}

/** Onset lies over onset where both runs have one; else start over start. */
export function besideOf(first: Facts, facts: Facts, run: RunRecord): Other {
  const [here, there] = [first.flight.score.onsetS, facts.flight.score.onsetS];
  const byS = here === null || there === null ? 0 : here - there;
  const moved = (atS: number): number => Math.round((atS + byS) * 100) / 100;
  const { releaseS } = facts.flight.score;
  return {
    run, aligned: here === null || there === null ? 'start' : 'onset',
    facts: { ...facts, rows: facts.rows.map((row) => ({ ...row, atS: moved(row.atS) })) },
    releaseS: releaseS === null ? null : moved(releaseS),
  };
}

/** Figures of both, each under its name; what only one of them has is a dash for the other. */
export function sideBySide(facts: Facts, run: RunRecord, other: Other): (readonly [what: string, here: string, there: string])[] {
  const [here, there] = [figuresOf(facts, run), figuresOf(unmoved(other), other.run)];
  const names = [...new Set([...here, ...there].map(({ what }) => what))];
  const value = (all: typeof here, name: string): string => all.find(({ what }) => what === name)?.value ?? '–';
  return [['Outcome', OUTCOME_WORDS[run.outcome], OUTCOME_WORDS[other.run.outcome]], ...names.map((name) => [name, value(here, name), value(there, name)] as const)];
}

/** Its figures are those of its own time. */
function unmoved({ facts }: Other): Facts {
  const firstS = facts.rows[0]?.atS ?? 0;
  return { ...facts, rows: facts.rows.map((row) => ({ ...row, atS: row.atS - firstS })) };
}

/** Whole steps and least room of each chart, as for one run alone. */
const STEPS = [[1, 2], [0.5, 1], [10, 30], [10, 20], [10, 20]] as const;

/** The charts of a run with the other one's lines in dashes, each named; scales have room for both. */
export function overlaid(charts: readonly Chart[], { rows }: Pick<Facts, 'rows'>, truth: boolean): Chart[] {
  type Row = (typeof rows)[number];
  const added: readonly (readonly (readonly [name: string, value: (row: Row) => number])[])[] = [
    [['other right', (row) => (truth ? row.rightDeg : row.rightPointerDeg)], ['other left', (row) => (truth ? row.leftDeg : row.leftPointerDeg)]],
    [['other', (row) => (truth ? trulyApart(row) : shownApart(row))]],
    [['other', (row) => row.speedKt]], [['other', (row) => row.tlaDeg]], [['other', (row) => row.rollAuthorityPct]],
  ];
  return charts.map((chart, index) => {
    const lines = added[index] ?? [];
    const [step, least] = STEPS[index] ?? [1, 1];
    return {
      ...chart,
      range: ends([chart.range.from, chart.range.to, ...lines.flatMap(([, value]) => rows.map(value))], step, least),
      lines: [
        ...lines.map(([name, value]) => ({ name, look: name === 'other right' ? 'trace-other trace-other-right' : 'trace-other', points: rows.map((row) => [row.atS, value(row)] as const) })),
        ...chart.lines.map((line) => (line.name === '' ? { ...line, name: 'this run' } : line)),
      ],
    };
  });
}
