/** What the outside can do at the hand of a desk: the kinds to choose from, the fields of each, and the act that comes of them. */
import type { DeskAct } from '../../../sim/files/index.js';

export type Kind = 'say' | 'callout' | 'clearHeading' | 'clearAltitude' | 'tellGoAround' | 'caution' | 'selectSpeed' | 'descend' | 'level' | 'gearDown' | 'gearUp'
  | 'returnMainDrive' | 'loseMainDrive' | 'leftEngine' | 'rightEngine';

export const KINDS: readonly (readonly [group: string, readonly (readonly [Kind, string])[]])[] = [
  ['Words', [['say', 'says'], ['callout', 'asks a question']]],
  ['For the trainee to do', [['clearHeading', 'clears to a heading'], ['clearAltitude', 'clears to a height'], ['tellGoAround', 'tells to go around'], ['caution', 'a caution comes on']]],
  ['The other pilot does', [['selectSpeed', 'selects a speed'], ['descend', 'descends at 3°'], ['level', 'levels off'], ['gearDown', 'gear down'], ['gearUp', 'gear up']]],
  ['The aeroplane', [['loseMainDrive', 'normal drive lost'], ['returnMainDrive', 'normal drive back'], ['leftEngine', 'left engine stops'], ['rightEngine', 'right engine stops']]],
];

export type From = 'controller' | 'otherPilot' | 'cabin' | 'nobody';

/** What stands in the form; figures as they were typed. */
export interface Fields {
  readonly from: From;
  readonly text: string;
  /** Two or three answers; an empty third is none. */
  readonly answers: readonly [string, string, string];
  /** Which of them is right. */
  readonly right: 0 | 1 | 2;
  readonly withinS: string;
  readonly deg: string;
  readonly ft: string;
  readonly kt: string;
}

export const FRESH: Fields = { from: 'controller', text: '', answers: ['', '', ''], right: 0, withinS: '20', deg: '90', ft: '3000', kt: '160' };

const SPOKEN: readonly Kind[] = ['say', 'callout', 'clearHeading', 'clearAltitude', 'tellGoAround'];
/** Whether somebody speaks. */
export const isSpoken = (kind: Kind): boolean => SPOKEN.includes(kind);
export const isTimed = (kind: Kind): boolean => (isSpoken(kind) && kind !== 'say') || kind === 'caution';
export const hasText = (kind: Kind): boolean => isSpoken(kind) || kind === 'caution';

/** Longest text of a kind; what a file may hold. */
export const longest = (kind: Kind): number => (kind === 'caution' ? 80 : 400);

/** A figure inside its bounds; null for none. */
function figure(typed: string, low: number, high: number): number | null {
  const value = typed.trim() === '' ? NaN : Number(typed);
  return value >= low && value <= high ? value : null;
}

/** What is said where no words are given; empty where there must be some. */
export function usualWords(kind: Kind, { deg, ft }: Pick<Fields, 'deg' | 'ft'>): string {
  const [toDeg, toFt] = [figure(deg, 1, 360), figure(ft, -2000, 26000)];
  if (kind === 'clearHeading') return toDeg === null ? '' : `Fly heading ${String(toDeg).padStart(3, '0')}.`;
  if (kind === 'clearAltitude') return toFt === null ? '' : `Descend to ${toFt} ft.`;
  return kind === 'tellGoAround' ? 'Go around.' : '';
}

/** The act of a form, or what is missing in it. */
export function outsideAct(kind: Kind, fields: Fields): DeskAct | { readonly missing: string } {
  const text = fields.text.trim() || usualWords(kind, fields);
  const from = fields.from === 'nobody' ? {} : { from: fields.from };
  const withinS = figure(fields.withinS, 1, 120);
  if (isTimed(kind) && withinS === null) return { missing: 'A time allowed from 1 to 120 s.' };
  const said = { ...from, text, withinS: Math.round((withinS ?? 1) * 100) / 100 };
  switch (kind) {
    case 'say':
      if (text === '') return { missing: 'Words to say.' };
      return fields.from === 'controller' || fields.from === 'otherPilot' ? { do: 'say', from: fields.from, text } : { do: 'message', text: fields.from === 'cabin' ? `Cabin: ${text}` : text };
    case 'callout': {
      const answers = fields.answers.map((one) => one.trim()).filter((one) => one !== '');
      const right = fields.answers[fields.right].trim();
      if (text === '') return { missing: 'A question.' };
      if (answers.length < 2) return { missing: 'Two answers, or three.' };
      if (new Set(answers).size < answers.length) return { missing: 'Answers that differ.' };
      if (right === '') return { missing: 'Which of the answers is right.' };
      return { do: 'callout', ...said, answers, right };
    }
    case 'clearHeading': {
      const toDeg = figure(fields.deg, 1, 360);
      return toDeg === null ? { missing: 'A heading from 1 to 360.' } : { do: 'clearHeading', ...said, toDeg };
    }
    case 'clearAltitude': {
      const toFt = figure(fields.ft, -2000, 26000);
      return toFt === null ? { missing: 'A height from -2000 to 26000 ft.' } : { do: 'clearAltitude', ...said, toFt };
    }
    case 'tellGoAround': return { do: 'tellGoAround', ...said };
    case 'caution': return text === '' ? { missing: 'The words of the caution.' } : { do: 'caution', text, withinS: said.withinS };
    case 'selectSpeed': {
      const speedKt = figure(fields.kt, 60, 400);
      return speedKt === null ? { missing: 'A speed from 60 to 400 kt.' } : { do: 'selectSpeed', speedKt };
    }
    case 'descend': {
      const toFt = figure(fields.ft, -2000, 26000);
      return toFt === null ? { missing: 'A height from -2000 to 26000 ft.' } : { do: 'descend', toFt, pathDeg: -3 };
    }
    case 'level': return { do: 'level' };
    case 'gearDown': return { do: 'setGear', to: 'down' };
    case 'gearUp': return { do: 'setGear', to: 'up' };
    case 'returnMainDrive': return { do: 'returnMainDrive' };
    case 'loseMainDrive': return { do: 'loseMainDrive' };
    case 'leftEngine': return { do: 'failEngine', side: 'left' };
    case 'rightEngine': return { do: 'failEngine', side: 'right' };
  }
}
