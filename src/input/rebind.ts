/** Changing a key: whether it is free, whose it is otherwise, and what exchanging the two comes to. Pure. */
import { BINDABLE, changesOf, DEFAULT_BINDINGS, intentOn, mayHave, type Bindable, type Bindings, type Stroke } from './keys.js';

type Changes = Readonly<Record<string, Stroke>>;

/** What a change of a key comes to. `changes` are all that differ from the keys it came with. */
export type Rebound =
  | { readonly what: 'put'; readonly changes: Changes }
  /** Another intent has it. `exchanged` gives that one the old key; null where it may not have that. */
  | { readonly what: 'taken'; readonly by: Bindable; readonly exchanged: Changes | null }
  | { readonly what: 'refused'; readonly why: string };

export function rebind(bindings: Bindings, intent: Bindable, stroke: Stroke): Rebound {
  const why = whyNot(intent, stroke);
  if (why !== null) return { what: 'refused', why };
  const by = intentOn(stroke, bindings);
  if (by === null || by === intent) return { what: 'put', changes: changesOf({ ...bindings, [intent]: stroke }) };
  const old = bindings[intent];
  return { what: 'taken', by, exchanged: mayHave(by, old) ? changesOf({ ...bindings, [intent]: stroke, [by]: old }) : null };
}

/** The key it came with; as any other change, that may be another's by now. */
export const rebindToDefault = (bindings: Bindings, intent: Bindable): Rebound => rebind(bindings, intent, DEFAULT_BINDINGS[intent]);

export const isBindable = (intent: string): intent is Bindable => (BINDABLE as readonly string[]).includes(intent);

/** Why an intent may not have a key, as a sentence; null where it may. */
function whyNot(intent: Bindable, stroke: Stroke): string | null {
  if (mayHave(intent, stroke)) return null;
  if (stroke.code === 'ArrowUp' || stroke.code === 'ArrowDown') return 'Arrow up and down always move the flap lever.';
  if (stroke.code === 'Space' || stroke.code === 'Enter' || stroke.code === 'NumpadEnter') return 'Space and Enter press what has the focus.';
  if (stroke.shift && mayHave(intent, { ...stroke, shift: false })) return 'A switch that is held takes no Shift.';
  return 'That key belongs to the browser or the page.';
}
