/**
 * What the outside wants of the trainee beside the flaps: an answer, a heading or a height to select, a caution to note.
 * Each comes with choices; what a choice files is an act like any other, so that a heading chosen is a heading flown.
 */
import type { Command } from '../command.js';
import type { DrawnEvent, Entry } from '../entry.js';
import type { Act } from '../files/act.js';
import { FT } from '../units.js';

const ASKING = ['callout', 'clearHeading', 'clearAltitude', 'caution'] as const satisfies readonly DrawnEvent['do'][];

/** An event that wants a reply of the trainee within its `withinS` seconds. */
export type Asking = Extract<DrawnEvent, { do: (typeof ASKING)[number] }>;

/** Whether an event of this kind wants something of the trainee, as its file has it. */
export const asks = (event: { readonly do: string }): boolean => ASKING.some((one) => one === event.do);

/** Whether an entry of the agenda is an event that wants an answer. */
export const isAsking = (event: Entry['event']): event is Asking => event !== null && asks(event);

export interface Choice {
  readonly text: string;
  readonly act: Act;
}

/** Path on which a cleared height is flown down to, deg. */
const PATH_DEG = -3;
/** The other choices lie this far from the right one, deg and ft. */
const HEADING_STEP_DEG = 20;
const HEIGHT_STEP_FT = 500;

/** A heading in words: three figures, 001 to 360. */
export const headingWords = (deg: number): string => `heading ${String(((Math.floor(deg + 0.5) + 359) % 360) + 1).padStart(3, '0')}`;
const heightWords = (ft: number): string => `${Math.floor(ft + 0.5)} ft`;
const NOTED = 'noted';

const heading = (deg: number): Choice => {
  const toDeg = ((deg + 359) % 360) + 1;
  return { text: headingWords(toDeg), act: { do: 'selectHeading', toDeg } };
};
const height = (toFt: number): Choice => ({ text: heightWords(toFt), act: { do: 'descend', toFt, pathDeg: PATH_DEG } });

/** A step below, or two above where that would be at the ground or under it. */
const otherBelow = (toFt: number, groundM: number): number => (toFt - HEIGHT_STEP_FT > groundM / FT ? toFt - HEIGHT_STEP_FT : toFt + 2 * HEIGHT_STEP_FT);

/** Three of a kind, the right one not always first. @param place of the entry in its file: the same in every run */
const three = (place: number, [right, low, high]: readonly [Choice, Choice, Choice]): Choice[] =>
  [[right, low, high], [low, right, high], [low, high, right]][place % 3] as Choice[];

/**
 * The choices of an event. A wrong height is flown like the right one, and so none lies in the ground.
 * @param place of its entry
 * @param groundM height of the ground above sea level, m
 */
export function choicesOf(event: Asking, place: number, groundM: number): readonly Choice[] {
  switch (event.do) {
    case 'callout': return event.answers.map((text) => ({ text, act: { do: 'answer', text } }));
    case 'clearHeading': return three(place, [heading(event.toDeg), heading(event.toDeg - HEADING_STEP_DEG), heading(event.toDeg + HEADING_STEP_DEG)]);
    case 'clearAltitude': return three(place, [height(event.toFt), height(otherBelow(event.toFt, groundM)), height(event.toFt + HEIGHT_STEP_FT)]);
    case 'caution': return [{ text: NOTED, act: { do: 'answer', text: NOTED } }];
  }
}

/** The right one of its choices, in words. */
export function rightOf(event: Asking): string {
  switch (event.do) {
    case 'callout': return event.right;
    case 'clearHeading': return headingWords(event.toDeg);
    case 'clearAltitude': return heightWords(event.toFt);
    case 'caution': return NOTED;
  }
}

/** What a command says to an event; null where it is about something else. A heading or height of any figure is a reply. */
export function replyTo(event: Asking, command: Pick<Command, 'do'> & { readonly text?: string | undefined; readonly toDeg?: number | undefined; readonly toFt?: number | undefined }): string | null {
  if (event.do === 'clearHeading') return command.do === 'selectHeading' && command.toDeg !== undefined ? headingWords(command.toDeg) : null;
  if (event.do === 'clearAltitude') return command.do === 'descend' && command.toFt !== undefined ? heightWords(command.toFt) : null;
  if (command.do !== 'answer' || command.text === undefined) return null;
  return (event.do === 'caution' ? command.text === NOTED : event.answers.includes(command.text)) ? command.text : null;
}
