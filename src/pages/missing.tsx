/** A page of which nothing is here: what is missing, why it may be, and where to go instead. */
import type { ComponentChildren } from 'preact';
import { Page } from './frame.js';
import { fragmentOf, type Route } from './route.js';

export type Way = readonly [name: string, to: Exclude<Route, { page: 'nowhere' }>];

export const ALL_DRILLS: Way = ['All drills', { page: 'choose' }];

interface Props {
  /** What the window is called. */
  readonly title: string;
  readonly kind: string;
  readonly within?: string;
  /** The heading. */
  readonly says: string;
  readonly ways?: readonly Way[];
  readonly children?: ComponentChildren;
}

export const Missing = ({ says, ways = [ALL_DRILLS], children, ...page }: Props) => (
  <Page {...page}>
    <h1>{says}</h1>
    {children}
    <p class="large ways">{ways.map(([name, to]) => <a key={name} href={fragmentOf(to)}>{name}</a>)}</p>
  </Page>
);
