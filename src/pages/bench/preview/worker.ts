/** A worker of the bench: flies what it is sent, and sends back what came of it. It knows no page. */
import { flyPart, type Part, type Preview, type SweepOrder, type SweepRow } from '../../../../sim/index.js';
import { flyOrder } from './fly-order.js';
import { glanceOf, type Glance } from './glance.js';
import type { FlightOrder } from './order.js';

/** An order is sent once, then its parts. */
export type Asked =
  | { readonly do: 'preview'; readonly of: FlightOrder }
  | { readonly do: 'glance'; readonly of: FlightOrder }
  | { readonly do: 'sweep'; readonly of: SweepOrder }
  | { readonly do: 'part'; readonly part: Part };
export type Answer =
  | { readonly is: 'preview'; readonly preview: Preview }
  | { readonly is: 'glance'; readonly glance: Glance }
  | { readonly is: 'part'; readonly part: Part; readonly rows: SweepRow[] }
  | { readonly is: 'failed'; readonly why: string };

let sweep: SweepOrder | null = null;

function answer(asked: Asked): Answer | null {
  switch (asked.do) {
    case 'preview': return { is: 'preview', preview: flyOrder(asked.of) };
    case 'glance': return { is: 'glance', glance: glanceOf(asked.of) };
    case 'sweep': sweep = asked.of; return null;
    case 'part': return sweep === null ? { is: 'failed', why: 'no order' } : { is: 'part', part: asked.part, rows: flyPart(sweep, asked.part) };
  }
}

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  try {
    const back = answer(data);
    if (back !== null) postMessage(back);
  } catch (problem) {
    postMessage({ is: 'failed', why: problem instanceof Error ? problem.message : String(problem) } satisfies Answer);
  }
});
