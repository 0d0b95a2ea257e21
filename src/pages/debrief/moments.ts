/** The moments of a run that its charts mark, each with a word and a sign of its own: shape and word, never colour. */
import { failures, isArrival, type Facts, type Failure } from './facts.js';
import { deskMoments } from '../desk/told.js';
import type { Airframe, RunRecord } from '../../../sim/files/index.js';
import type { RunEvent } from '../../../sim/index.js';

export interface Moment {
  readonly atS: number;
  readonly word: string;
  readonly sign: keyof typeof SIGNS;
  /** Lower is marked first where room is short. */
  readonly rank: number;
}

/** Outlines about their middle, about 12 px wide. */
export const SIGNS = {
  onset: 'M0 -6L6 0L0 6L-6 0Z',
  degree: 'M-5 0A5 5 0 1 1 5 0A5 5 0 1 1 -5 0Z',
  release: 'M-6 -5H6L0 6Z',
  call: 'M-5 6V-6L6 -2.5L-5 1',
  arrival: 'M-4.5 -4.5H4.5V4.5H-4.5Z',
  lever: 'M-6 0H6M3 -4V4',
  horn: 'M-5 -2H-2L4 -6V6L-2 2H-5Z',
  gear: 'M0 -6V0M-4 3A4 4 0 1 1 4 3A4 4 0 1 1 -4 3Z',
  callout: 'M-6 -5H6V3H0L-3 6V3H-6Z',
  failure: 'M-5 -5L5 5M5 -5L-5 5',
  remark: 'M-6 -5H6V2H1L-4 6V2H-6Z',
  desk: 'M-6 -1H6M-4 -1V5M4 -1V5M-3 -5H3V-1H-3Z',
  other: 'M0 -6V6',
} as const;

const WORDS: Readonly<Partial<Record<RunEvent['what'], Omit<Moment, 'atS'>>>> = {
  onset: { word: 'onset', sign: 'onset', rank: 0 },
  oneDegree: { word: '1° apart', sign: 'degree', rank: 1 },
  splitCall: { word: 'split called', sign: 'call', rank: 1 },
  failedCall: { word: 'failure called', sign: 'call', rank: 1 },
  movingCall: { word: 'still moving', sign: 'call', rank: 2 },
  clearCall: { word: 'clear', sign: 'call', rank: 3 },
  sheared: { word: 'link sheared', sign: 'failure', rank: 2 },
  cleared: { word: 'fault ends', sign: 'failure', rank: 2 },
  limiter: { word: 'limiter', sign: 'failure', rank: 2 },
  cutOut: { word: 'cut-out', sign: 'failure', rank: 2 },
  autopilotOff: { word: 'autopilot off', sign: 'other', rank: 2 },
  horn: { word: 'horn', sign: 'horn', rank: 2 },
  gearMoves: { word: 'gear moves', sign: 'gear', rank: 3 },
  gearDown: { word: 'gear down', sign: 'gear', rank: 3 },
  gearUp: { word: 'gear up', sign: 'gear', rank: 3 },
  leadingEdgeOut: { word: 'leading edge out', sign: 'other', rank: 4 },
};

const TOLD: Readonly<Record<Facts['told'][number]['kind'], Pick<Moment, 'word' | 'rank'>>> = { message: { word: 'message', rank: 3 }, tellGoAround: { word: 'told to go around', rank: 2 } };

const FAILED: Readonly<Record<Failure['kind'], string>> = { dead: 'drive dead', quits: 'drive quits', slow: 'drive slow', runsOn: 'runs on', leadingEdge: 'leading edge short' };

/** All of them in the order of time. */
export function momentsOf(facts: Facts, { scenario, airframe, commands = [] }: Pick<RunRecord, 'scenario' | 'airframe'> & Partial<Pick<RunRecord, 'commands'>>): Moment[] {
  const { releaseS, onsetS } = facts.flight.score;
  const name = nameIn(airframe);
  const moments: Moment[] = facts.flight.events.flatMap((event): Moment[] => {
    const { what, atS, deg } = event;
    if (what === 'lever' && deg !== undefined) return [{ atS, word: `lever ${name(deg)}`, sign: 'lever', rank: 3 }];
    if (what === 'setting' && deg !== undefined) return [{ atS, word: `at ${name(deg)}`, sign: 'arrival', rank: 2 }];
    const words = WORDS[what];
    return words === undefined ? [] : [{ atS, ...words }];
  });
  // The release that is judged; where nothing parted only a scored one is of note, and an arrival is marked as such.
  if (releaseS !== null && (onsetS !== null || (scenario.recognition !== undefined && !isArrival(facts, scenario)))) moments.push({ atS: releaseS, word: 'release', sign: 'release', rank: 0 });
  for (const { kind, showedS } of failures(facts, scenario)) if (showedS !== null) moments.push({ atS: showedS, word: FAILED[kind], sign: 'failure', rank: 1 });
  for (const { atS, answeredS } of facts.callouts) {
    moments.push({ atS, word: 'callout', sign: 'callout', rank: 3 });
    if (answeredS !== null) moments.push({ atS: atS + answeredS, word: 'answer', sign: 'callout', rank: 4 });
  }
  const ofDesk = deskMoments({ commands });
  // What a desk said is marked as the desk's.
  for (const { atS, kind } of facts.told.filter((one) => !ofDesk.some((act) => Math.abs(act.atS - one.atS) < 0.05))) moments.push({ atS, sign: 'callout', ...TOLD[kind] });
  const read = facts.flight.procedure.find(({ item }) => item === 'listRead')?.atS ?? null;
  if (read !== null) moments.push({ atS: read, word: 'list read', sign: 'other', rank: 2 });
  moments.push(...ofDesk);
  return moments.sort((a, b) => a.atS - b.atS);
}

/** Name of a setting on this airframe; its degrees where it has none. */
export const nameIn = ({ settings }: Pick<Airframe, 'settings'>) => (deg: number): string => settings.find((one) => one.deg === deg)?.name ?? `${deg}`;
