/** The keys as they stand, named as the board prints them. */
import { signal } from '@preact/signals';
import { readBoard } from '../input/board.js';
import { keyCard, keyGroups, type Printed } from '../input/card.js';
import { bindingsOf } from '../input/keys.js';
import { isBindable, rebind, rebindToDefault } from '../input/rebind.js';
import type { House, Keys } from '../pages/house.js';

const NO_KEY = { what: 'refused', why: 'That has no key.' } as const;
/** Read while a page is drawn, so that it is drawn anew once the board is known. */
const printed = signal<Printed | undefined>(undefined);
void readBoard().then((board) => { printed.value = board ?? undefined; });

export const keys: Keys = {
  groups: (changes) => keyGroups(bindingsOf(changes), printed.value),
  rebind: (changes, intent, stroke) => (isBindable(intent) ? rebind(bindingsOf(changes), intent, stroke) : NO_KEY),
  rebindToDefault: (changes, intent) => (isBindable(intent) ? rebindToDefault(bindingsOf(changes), intent) : NO_KEY),
};

export const card: House['keyCard'] = (changes) => keyCard(bindingsOf(changes), printed.value);
