/** What a new fault, event or trigger begins with: sound values that suit the scenario, to be changed from there. */
import type { kindOfTrigger, ObjectShape, Shape } from '../../../../sim/files/index.js';
import { CLEARABLE } from '../../../../sim/index.js';
import type { Json } from '../../../text/index.js';
import { isWritten, type Written } from '../words.js';

type Start = Written;

const FAULTS: Readonly<Record<string, Written>> = {
  lag: { ratio: 0.5 }, slip: { ratio: 0, periodS: 4, onS: 2 }, pointer: { mode: 'stuck' }, slow: { factor: 0.5 }, leadingEdge: { stopsAt: 0.5 },
};

const number = (value: Json | undefined, otherwise: number): number => (typeof value === 'number' ? value : otherwise);

const EVENTS: Readonly<Record<string, (start: Start, faults: readonly string[]) => Written>> = {
  descend: ({ altitudeFt, groundFt }) => ({ toFt: Math.max(number(groundFt, 0) + 1000, number(altitudeFt, 5000) - 2000), pathDeg: -3 }),
  selectSpeed: ({ speedKt }) => ({ speedKt: number(speedKt, 160) - 10 }),
  failEngine: () => ({ side: 'right' }),
  message: () => ({ text: 'Sandray Radio: cloud base one thousand feet.' }),
  callout: () => ({ text: 'Heron four one, Talmere Approach, say altitude.', answers: ['5600 ft', '6500 ft', 'not level'], right: '5600 ft', withinS: 12 }),
  setGear: () => ({ to: 'down' }),
  clearFault: (_, [fault]) => ({ fault: fault ?? 'none-yet' }),
};

/** Keys that every fault or event has, kept when its kind is changed. */
const COMMON = ['name', 'when', 'side'] as const;

/** A fault or an event of another kind: what both kinds have stays. */
export function ofKind(shape: ObjectShape, by: 'kind' | 'do', kind: string, before: Written, json: Json): { [key: string]: Json } {
  const { start = {}, faults = [] } = isWritten(json) ? json : {};
  const endable = Array.isArray(faults) ? faults.flatMap((one) => (isWritten(one) && typeof one['name'] === 'string' && CLEARABLE.some((kind) => kind === one['kind']) ? [one['name']] : [])) : [];
  const begins: Written = by === 'kind' ? (FAULTS[kind] ?? {}) : (EVENTS[kind]?.(isWritten(start) ? start : {}, endable) ?? {});
  const made: { [key: string]: Json } = {};
  for (const [key, { required, shape: inner }] of shape.keys) {
    const kept = COMMON.find((one) => one === key) !== undefined || ['text', 'ratio'].includes(key) ? before[key] : undefined;
    const value = key === by ? kind : (kept ?? begins[key] ?? (required ? beginOf(inner) : undefined));
    if (value !== undefined) made[key] = value;
  }
  return made;
}

/** A value of a shape for which nothing better is known. */
export function beginOf(shape: Shape): Json {
  switch (shape.kind) {
    case 'number': return Math.min(shape.max, Math.max(shape.min, 0));
    case 'word': return shape.words[0] ?? '';
    case 'flag': return false;
    case 'text': return '';
    case 'list': return Array.from({ length: shape.min }, () => beginOf(shape.item));
    case 'either': return beginOf(shape.options.find(({ kind }) => kind !== 'object') ?? shape.options[0] as Shape);
    case 'object': return Object.fromEntries([...shape.keys].filter(([, { required }]) => required).map(([key, { shape: inner }]) => [key, beginOf(inner)]));
    case 'choice': return beginOf([...shape.options.values()][0] as Shape);
  }
}

export type TriggerKind = ReturnType<typeof kindOfTrigger>;

/** Kinds of triggers with what each begins as. */
export const TRIGGERS = {
  atS: 'at a time', flapDeg: 'the drive passes', speedKt: 'the speed passes', altitudeFt: 'the height passes', heldS: 'drive held for',
  after: 'behind another', hazardPerS: 'by chance', all: 'all of', any: 'one of',
} as const satisfies Readonly<Record<TriggerKind, string>>;

export const kindIn = (when: Written): TriggerKind | null => (Object.keys(TRIGGERS) as TriggerKind[]).find((kind) => when[kind] !== undefined) ?? null;

/** A trigger of a kind, in the middle of what the scenario passes through. `before`: what stood there, kept inside a group. */
export function triggerOf(kind: TriggerKind, before: Written, json: Json, other: string): { [key: string]: Json } {
  const { start = {}, task = {} } = isWritten(json) ? json : {};
  const begin: Start = isWritten(start) ? start : {};
  const settings = isWritten(task) && Array.isArray(task['settings']) ? task['settings'] : [];
  const flap = number(begin['flapDeg'], 0);
  const rising = number(settings.at(-1), flap + 1) >= flap;
  switch (kind) {
    case 'atS': return { atS: 20 };
    case 'flapDeg': return { flapDeg: Math.round(flap + (number(settings[0], flap) - flap) / 2), edge: rising ? 'rising' : 'falling' };
    case 'speedKt': return { speedKt: number(begin['speedKt'], 160) - 5, edge: 'falling' };
    case 'altitudeFt': return { altitudeFt: number(begin['altitudeFt'], 5000) - 1000, edge: 'falling' };
    case 'heldS': return { heldS: 10 };
    case 'after': return { after: other, delayS: 2 };
    case 'hazardPerS': return { hazardPerS: 0.05 };
    case 'all': case 'any': {
      const inner = before['all'] ?? before['any'];
      return { [kind]: Array.isArray(inner) ? inner : [{ ...before } as { [key: string]: Json }] };
    }
  }
}

/** A name that no other fault or event has: `lag`, `lag-2`. */
export function freshName(word: string, json: Json): string {
  const base = word.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  const taken = new Set(namesIn(json));
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? base : `${base}-${count}`;
    if (!taken.has(name)) return name;
  }
}

/** Names of the faults and events that stand in a text. */
export function namesIn(json: Json): string[] {
  if (!isWritten(json)) return [];
  return ['faults', 'events'].flatMap((list) => {
    const things = json[list];
    return Array.isArray(things) ? things.flatMap((one) => (isWritten(one) && typeof one['name'] === 'string' ? [one['name']] : [])) : [];
  });
}
