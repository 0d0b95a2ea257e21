/** The places that every page leads to, in the order in which the head of a page names them. */
export interface Place {
  /** As the frame of that page calls itself. */
  readonly kinds: readonly string[];
  readonly href: string;
  readonly name: string;
}

/** A group for each of those who come: who flies, who teaches, and what serves both. */
export const PLACES: readonly (readonly Place[])[] = [
  [
    { kinds: ['choose', 'brief', 'set', 'practice'], href: '#/', name: 'Drills' },
    { kinds: ['plan'], href: '#/plan', name: 'Plan' },
    { kinds: ['course'], href: '#/course', name: 'Course' },
    { kinds: ['logbook'], href: '#/logbook', name: 'Logbook' },
    { kinds: ['person'], href: '#/person', name: 'Progress' },
  ],
  [
    { kinds: ['bench'], href: '#/bench', name: 'Bench' },
    { kinds: ['desk'], href: '#/desk', name: 'Desk' },
    { kinds: ['class'], href: '#/class', name: 'Class' },
  ],
  [
    { kinds: ['help'], href: '#/help', name: 'Help' },
    { kinds: ['setup'], href: '#/settings', name: 'Set-up' },
  ],
];
