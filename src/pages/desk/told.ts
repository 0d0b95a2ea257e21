/** What a desk left in the record of a live run: its acts in order of time, and the instructor's grade beside what the machine found. */
import type { DeskAct, RunRecord } from '../../../sim/files/index.js';
import type { ProcedureItem } from '../../../sim/index.js';
import { asks } from '../../../sim/score/asking.js';
import type { Facts } from '../debrief/facts.js';
import type { Moment } from '../debrief/moments.js';
import { ITEM_WORDS } from '../debrief/proofs.js';
import { degrees, OUTCOME_WORDS, seconds } from '../words.js';
import { ANCHORS, GRADED } from './anchors.js';
import { actWords } from './words.js';

export interface DeskTold {
  readonly atS: number;
  /** Which desk. */
  readonly by: string;
  readonly words: string;
  /** The rest of a remark. */
  readonly more: string | null;
  readonly kind: 'remark' | 'prompted' | 'act';
  /** The run marks a callout itself, with its answer. */
  readonly isCallout: boolean;
}

/** Acts of desks, in the order in which they came into force. */
export const deskTold = ({ commands }: Pick<RunRecord, 'commands'>): DeskTold[] => commands.filter(({ rank }) => rank === 1).map((command): DeskTold => {
  const act = command as unknown as DeskAct & { readonly tick: number; readonly by?: string };
  return {
    atS: act.tick / 100, by: act.by ?? '', words: act.do === 'remark' ? act.label : actWords(act), more: act.do === 'remark' ? act.text ?? null : null,
    kind: act.do === 'remark' || act.do === 'prompted' ? act.do : 'act', isCallout: asks(act),
  };
}).sort((a, b) => a.atS - b.atS);

/** Longest word of a mark beside the charts. */
const MOST = 28;
const short = (words: string): string => (words.length > MOST ? `${words.slice(0, MOST - 1)}…` : words);

/** The same as marks on the axis of time: remarks and prompts before the rest where room is short. */
export const deskMoments = (run: Pick<RunRecord, 'commands'>): Moment[] => deskTold(run).filter(({ isCallout }) => !isCallout).map(({ atS, words, kind }) => ({
  atS, word: `${kind === 'act' ? 'desk: ' : ''}${short(words)}`, sign: kind === 'remark' ? 'remark' : 'desk', rank: kind === 'act' ? 2 : 1,
}));

export interface GradeRow {
  readonly item: string;
  /** 1 to 5; null: not seen. */
  readonly anchor: number | null;
  readonly name: string;
  readonly note: string | null;
  /** What the machine found of the same matter, in its own words; null where it looks at nothing of the kind. */
  readonly machine: string | null;
}

/** Every item that is graded, and those that this instructor named. The machine's marks stand beside it and change nothing in it. */
export function gradeRows(run: Pick<RunRecord, 'desk'>, facts: Facts): GradeRow[] {
  const given = run.desk?.grades ?? [];
  const items = [...GRADED, ...given.map(({ item }) => item).filter((item) => !(GRADED as readonly string[]).includes(item))];
  return items.map((item) => {
    const grade = given.find((one) => one.item === item);
    return { item, anchor: grade?.anchor ?? null, name: ANCHORS.find(({ anchor }) => anchor === grade?.anchor)?.name ?? 'not seen', note: grade?.note ?? null, machine: machineOf(item, facts) };
  });
}

type Item = ProcedureItem['item'];
const ITEMS: Readonly<Record<string, readonly Item[]>> = {
  'Call and second look': ['splitCalled', 'secondLook', 'failureCalled', 'noFalseCall', 'challengeAnswered'],
  'Lever, speed, limits': ['leverFirst', 'speedFirst', 'insideLimit', 'speedKept', 'slowAfter', 'leadingEdgeOut', 'motorDuty'],
  'Flying and plan': ['aroundBegun', 'aroundGear', 'aroundHeight', 'leftAlone', 'leftAsIs', 'listRead', 'planRedone', 'returnHandled'],
};

function machineOf(item: string, { flight: { score, outcome, procedure }, callouts }: Facts): string | null {
  if (item === 'Letting go') {
    const { afterOnsetS, growthAtReleaseDeg } = score;
    return `${OUTCOME_WORDS[outcome]}${afterOnsetS === null || growthAtReleaseDeg === null ? '' : `, ${seconds(afterOnsetS)} after onset, ${degrees(Math.abs(growthAtReleaseDeg))} further apart`}`;
  }
  if (item === 'Workload') return callouts.length === 0 ? 'no callout came' : `${callouts.filter(({ ok }) => ok).length} of ${callouts.length} callouts answered right and in time`;
  const own = ITEMS[item];
  if (own === undefined) return null;
  const asked = procedure.filter((one) => own.includes(one.item) && one.ok !== null);
  if (asked.length === 0) return 'nothing of it was asked for';
  const broken = asked.filter(({ ok }) => ok === false);
  return broken.length === 0 ? `${asked.length} of ${asked.length} items kept` : `broken: ${broken.map(({ item: one }) => ITEM_WORDS[one].toLowerCase()).join('; ')}`;
}
