/** Switches and levers of devices, for their page and for the runs that are flown with them. */
import { isTravel, padBindingsOf, partOf, type PadBindings } from '../input/padBindings.js';
import { clear, padGroups, putLever, putSwitch, setDead, setStays, turnRound } from '../input/padCard.js';
import { hasPads } from '../input/pads.js';
import { watchPads } from '../input/padWatch.js';
import type { PadChanges, SwitchHouse } from '../pages/switches/house.js';

let known: { readonly of: PadChanges; readonly bindings: PadBindings } | null = null;
/** Asked for once a frame and more: worked out when they change. */
export function padsOf(of: PadChanges): PadBindings {
  if (known?.of !== of) known = { of, bindings: padBindingsOf(of) };
  return known.bindings;
}

export const switches: SwitchHouse = {
  has: hasPads(),
  watch: (see) => watchPads(see),
  groups: (changes, id) => padGroups(padsOf(changes)[id] ?? []),
  putSwitch: (changes, ...about) => putSwitch(padsOf(changes), ...about),
  putLever: (changes, ...about) => putLever(padsOf(changes), ...about),
  setStays: (changes, ...about) => setStays(padsOf(changes), ...about),
  setDead: (changes, ...about) => setDead(padsOf(changes), ...about),
  turnRound: (changes, ...about) => turnRound(padsOf(changes), ...about),
  clear: (changes, ...about) => clear(padsOf(changes), ...about),
  partOf(changes, id, does, axes) {
    const use = padsOf(changes)[id]?.find((one) => one.does === does);
    const value = use === undefined || !isTravel(use) ? undefined : axes[use.axis];
    return use === undefined || !isTravel(use) || value === undefined ? null : partOf(value, use);
  },
};
