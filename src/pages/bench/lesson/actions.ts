/** What is expected of the hand for each kind of fault, and the errors that are common with it; asked for by the model's own procedure. */
import type { Fault } from '../../../../sim/files/index.js';

export interface Expected {
  readonly actions: readonly string[];
  readonly errors: readonly string[];
}

/** How this scenario judges and how its switch lets go. */
export interface Judged {
  readonly scored: boolean;
  readonly limitDeg: number;
  /** The switch stays where it is put on the way that is driven. */
  readonly stays: boolean;
}

const letGo = ({ stays }: Judged): string => (stays ? 'Puts the switch to off' : 'Lets the switch go');
const late = ({ scored, limitDeg }: Judged): string => (scored ? `; late from ${limitDeg}° of growth` : '');

const SPLIT_ERRORS = [
  'Presses once more to see whether it comes right.',
  'Waits to find out which pointer is right: it changes nothing.',
  'Finishes another task first, and the hand stays on.',
];

const split = (of: Judged, more: readonly string[] = [], errors: readonly string[] = []): Expected => ({
  actions: [
    `${letGo(of)} as soon as the pointers part${late(of)}.`,
    'Calls the split within 5 s.',
    'Looks again within 5 s whether the pointers still move, and says so if they do.',
    'Leaves the switch alone; lever, guard and arm stay as they are.',
    ...more,
    'Flies: speed inside the limits of what is out; then the list, read.',
  ],
  errors: [...errors, ...SPLIT_ERRORS],
});

const failed = (first: string, errors: readonly string[]): Expected => ({ actions: [first, 'Calls the drive failed.', 'Leaves it, and flies on what is out.'], errors });

const BY_KIND: { readonly [K in Fault['kind']]: (of: Judged) => Expected } = {
  disconnect: (of) => split(of),
  lag: (of) => split(of, [], ['Takes a slow parting for rigging or wander, and waits for it to go away.']),
  jam: (of) => split(of, ['No second press, even if everything stands.'], ['Holds on against the jam, which winds the tube up and shears the link.']),
  slip: (of) => split(of, [], ['Trusts the pointers again when they stop parting for a moment.']),
  blowback: (of) => split(of, ['Calls: still moving.', 'Flies by hand when the autopilot lets go.'], ['Looks away once the hand is off: the side goes on by itself.']),
  pointer: (of) => split(of, [], ['Holds on because the aeroplane does not roll.']),
  dead: (of) => failed(`Held for 5 s with nothing moving: ${letGo(of).toLowerCase()}.`, ['Holds on and heats the motor.', 'Tries again and again.']),
  quits: (of) => failed(`Nothing has moved for 5 s: ${letGo(of).toLowerCase()}.`, ['Holds on and heats the motor.', 'Tries again and again.']),
  slow: () => ({
    actions: ['Goes on for as long as the pointers stay even: slow is no split.', 'Holds in steps, inside the duty of the motor.', 'Plans for the longer time.'],
    errors: ['Calls a failure that is none.', 'Holds through until the motor cuts out.'],
  }),
  runsOn: (of) => failed(`${letGo(of)}, looks once more, sees that it still runs: closes the guard, or takes the arm off.`, ['Does not look again behind a release.', 'Presses the other way against it.']),
  leadingEdge: () => ({
    actions: ['Sees that the leading edge is not out in its time.', 'Does not drive the flaps on.', 'Calls the drive failed.', 'Flies the speeds of what is really out.'],
    errors: ['Drives on without looking whether it is out.', 'Keeps the speeds of a leading edge that is out.'],
  }),
};

export const expectedOf = (kind: Fault['kind'], of: Judged): Expected => BY_KIND[kind](of);

/** Without any fault. */
export const quietOf = ({ scored }: Judged): Expected => ({
  actions: ['Holds to the setting, stops there, sees both pointers there.', 'Then the next: speed, lever, drive.'],
  errors: scored ? ['Lets go for wander of the pointers.'] : ['Calls a split that was never shown.'],
});
