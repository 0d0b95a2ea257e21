/** The study as data: what is flown, what is asked of it, and the page it is written on. */
import type { Coverage, Held } from './coverage.js';
import { PLANS, WATCHERS } from './watcher.js';

export interface Part {
  readonly plan: string;
  /** null: drawn from the prior of the fit, each set another. */
  readonly watcher: string | null;
  readonly sets: number;
  /** Coverage that is asked for. */
  readonly least: number;
  readonly most: number;
}

/** @param drawn sets from the prior @param known sets of each known watcher */
export const parts = (drawn: number, known: number): Part[] => PLANS.flatMap(({ name }) => [
  { plan: name, watcher: null, sets: drawn, least: 0.93, most: 0.97 },
  ...Object.keys(WATCHERS).map((watcher) => ({ plan: name, watcher, sets: known, least: 0.9, most: 1 })),
]);

/** Of a known watcher the figures that are shown are asked about; threshold, time and spread apart are told. */
const isAsked = ({ watcher }: Part, name: string): boolean => watcher === null || name.includes(' at ');
const coverageOf = ({ n, held }: Held): number => held / n;

/** Names of the intervals that do not cover as asked. */
export const failures = (part: Part, { found }: Coverage): string[] =>
  Object.entries(found).filter(([name, held]) => isAsked(part, name) && (coverageOf(held) < part.least || coverageOf(held) > part.most)).map(([name]) => name);

const figure = (value: number, digits: number): string => value.toFixed(digits).replace(/^(-?)0\./, '$1.');

function table(part: Part, all: Coverage): string[] {
  const bad = failures(part, all);
  const rows = Object.entries(all.found).map(([name, held]) => {
    const share = coverageOf(held);
    const off = held.off / held.n;
    const spread = Math.sqrt(Math.max(0, held.off2 / held.n - off * off));
    const about = name.startsWith('before') ? ['', ''] : [figure(off, 3), figure(spread, 3)];
    const verdict = !isAsked(part, name) ? 'not asked' : bad.includes(name) ? '**no**' : 'yes';
    return `| ${name} | ${figure(share, 4)} | ${figure(Math.sqrt(share * (1 - share) / held.n), 4)} | ${figure(held.below / held.n, 3)} | ${figure(held.above / held.n, 3)} | ${about.join(' | ')} | ${verdict} |`;
  });
  return ['| interval | covers | Monte Carlo error | truth below | truth above | bias, log | spread, log | as asked |', '|---|---|---|---|---|---|---|---|', ...rows];
}

const MEANS = ['caught', 'late', 'missed', 'undecided', 'falseRelease', 'held'];

function section(part: Part, all: Coverage): string[] {
  const known = part.watcher === null ? null : WATCHERS[part.watcher];
  const who = known === null || known === undefined
    ? 'drawn from the prior for each set; lapse .02; releases without cause evenly between .06 and .36 a minute'
    : `theta ${known.thetaDeg} deg, t0 ${known.t0S} s, sigma ${known.sigma}; lapse ${known.lapse}; releases without cause ${known.falsePerMin} a minute`;
  return [
    `## ${part.plan}, ${part.watcher ?? 'drawn'}`, '',
    `${all.sets} sets. Watcher: ${who}. Asked: ${part.least === 0.9 ? 'at least .90' : '.93 to .97'}.`,
    `Mean of a set of 30: ${MEANS.map((what) => `${what} ${((all.outcomes[what] ?? 0) / all.sets).toFixed(1)}`).join(', ')}. Sets with 20 decided runs or more: ${(100 * all.fitShown / all.sets).toFixed(0)} %.`, '',
    ...table(part, all), '',
  ];
}

/** The interval that covers least of all that are asked about. */
function least(done: readonly { readonly part: Part; readonly all: Coverage }[]): string {
  const asked = done.flatMap(({ part, all }) => Object.entries(all.found).filter(([name]) => isAsked(part, name)).map(([name, held]) => ({ part, name, held })));
  const worst = asked.sort((a, b) => coverageOf(a.held) - coverageOf(b.held))[0];
  return worst === undefined ? 'none' : `${figure(coverageOf(worst.held), 4)} (${worst.part.plan}, ${worst.part.watcher ?? 'drawn'}: ${worst.name})`;
}

/** The page. */
export function page(done: readonly { readonly part: Part; readonly all: Coverage }[]): string {
  const bad = done.flatMap(({ part, all }) => failures(part, all).map((name) => `${part.plan}, ${part.watcher ?? 'drawn'}: ${name}`));
  return [
    '# Does the fit find what was there?', '',
    'Simulated sets, fitted as a person\'s are; written by `npm run study`. A set is 30 runs at the set\'s rates in equal numbers, shuffled; onset by a flat hazard from 3 s over 36 s,',
    'a third of the runs quiet, drawn again until 18 to 22 onsets and 4 at each rate; the leg ends at 76 s, a run at twice the limit of 2.5 deg; growth below .1 deg cannot be seen. What comes first',
    'of detection, release without cause and end is what happened; in a lapse nothing is detected. The fit takes a lapse of .02 for given, whatever the watcher\'s is. No person was measured.', '',
    'Covers: the part of the sets whose 95 % interval holds the truth. Monte Carlo error: of that part, one standard deviation. Bias and spread: of ln(posterior median / truth).', '',
    bad.length === 0 ? 'Every interval covers as asked.' : `Not as asked: ${bad.join('; ')}.`,
    `Least of those drawn from the prior: ${least(done.filter(({ part }) => part.watcher === null))}. Least of the known watchers: ${least(done.filter(({ part }) => part.watcher !== null))}.`, '',
    ...done.flatMap(({ part, all }) => section(part, all)),
  ].join('\n');
}
