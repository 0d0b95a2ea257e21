/** Figures and verdicts of a plan, in words. */
import type { NumberItem, PlanItem, Verdict } from '../../../sim/index.js';

/** A sum as the page sets it: signs of the trade instead of those of a typewriter. */
export const typeset = (sum: string): string => sum
  .replaceAll(' x ', ' × ').replaceAll('^2', '²').replace(/(\d) deg\b/g, '$1°')
  .replace(/(\d) (s|kt|ft|NM|kg|m|%|min)(?![\w])/g, '$1\u00a0$2');

export const valueWords = (item: PlanItem, value: number | string | readonly string[] | null): string => {
  if (value === null) return item.kind === 'number' ? 'never' : 'blank';
  if (item.kind === 'number') return `${typeof value === 'number' ? value.toFixed(item.decimals) : String(value)}\u00a0${item.unit}`;
  if (item.kind === 'choice') return item.choices.find(([one]) => one === value)?.[1] ?? String(value);
  const ticked = Array.isArray(value) ? (value as readonly string[]) : [];
  return ticked.length === 0 ? 'none' : ticked.join(', ');
};

/** How far off an entry is, as a phrase; empty for what is no number. */
export function offWords(item: PlanItem, entered: number | string | readonly string[] | null): string {
  if (item.kind === 'many' && Array.isArray(entered)) {
    const missed = item.right.filter((one) => !entered.includes(one));
    const extra = item.choices.filter((one) => entered.includes(one) && !item.right.includes(one));
    return [...(missed.length > 0 ? [`left out: ${missed.join(', ')}`] : []), ...(extra.length > 0 ? [`too many: ${extra.join(', ')}`] : [])].join('; ');
  }
  if (item.kind !== 'number' || typeof entered !== 'number' || item.right === null) return '';
  const off = entered - item.right;
  const figure = `${Math.abs(off).toFixed(item.decimals)}\u00a0${item.unit}`;
  if (Number(Math.abs(off).toFixed(item.decimals)) === 0) return '';
  if (item.id === 'startByNm') return off < 0 ? `${figure} too late` : `${figure} early`;
  return `${figure} too ${off > 0 ? 'much' : 'little'}`;
}

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = { right: 'right', near: 'near', off: 'off' };

/** What counts as right and as near, told beside the verdict. */
export const toleranceWords = ({ rightWithin, nearWithin, decimals, unit }: NumberItem): string => {
  const figure = (value: number): string => (value < 10 && decimals > 0 ? value.toFixed(1) : value.toFixed(0));
  return `right within ${figure(rightWithin)}, near within ${figure(nearWithin)}\u00a0${unit}`;
};
