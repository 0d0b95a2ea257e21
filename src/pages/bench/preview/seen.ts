/** The previewed run: flown anew with every edit, at once where it is short, by a worker where it is long. */
import { effect, signal, type ReadonlySignal } from '@preact/signals';
import type { ReadyScenario } from '../../../../sim/files/index.js';
import type { Preview } from '../../../../sim/index.js';
import type { BenchProps } from '../bench.js';
import { flown, follows } from './acted.js';
import { flyOrder } from './fly-order.js';
import { cursor } from './chosen.js';
import { openHand } from './hand.js';
import { orderOf, readyOf, type FlightOrder } from './order.js';

/** A run of so many seconds at most is flown at once: about two hundredths of a second of work on a common machine. */
const AT_ONCE_S = 300;

export interface Seen {
  readonly order: FlightOrder;
  /** With its drawn parameters drawn. */
  readonly scenario: ReadyScenario;
  readonly preview: Preview;
}

export interface Previewing {
  readonly seen: ReadonlySignal<Seen | null>;
  /** A worker flies; what is shown is the run before. */
  readonly flying: ReadonlySignal<boolean>;
  /** Why the last edit could not be flown. */
  readonly failed: ReadonlySignal<string | null>;
  close(): void;
}

/** Follows the document until it is closed. */
export function openPreview(props: Pick<BenchProps, 'draft' | 'kit'>): Previewing {
  const seen = signal<Seen | null>(null);
  const flying = signal(false);
  const failed = signal<string | null>(null);
  const hand = openHand();
  follows.value = true;
  const show = (order: FlightOrder, preview: Preview): void => {
    seen.value = { order, scenario: readyOf(order), preview };
    flown.value = { acted: preview.acted, text: props.draft.text.peek() };
    // At first the cursor stands where the run was decided.
    if (cursor.peek() === 0) cursor.value = preview.flight.score.releaseS ?? preview.flight.score.onsetS ?? 0;
    failed.value = null;
    flying.value = false;
  };
  const tell = (problem: unknown): void => {
    failed.value = problem instanceof Error ? problem.message : String(problem);
    flying.value = false;
  };
  const unfollow = effect(() => {
    const order = orderOf(props);
    hand.drop();
    if (order === null) {
      seen.value = flown.value = null;
      flying.value = false;
      return;
    }
    if (order.scenario.task.limitS <= AT_ONCE_S) {
      try {
        show(order, flyOrder(order));
      } catch (problem) {
        tell(problem);
      }
      return;
    }
    flying.value = true;
    hand.ask({ do: 'preview', of: order }).then((back) => { if (back.is === 'preview') show(order, back.preview); }, tell);
  });
  return {
    seen, flying, failed,
    close() {
      unfollow();
      hand.close();
      follows.value = false;
    },
  };
}
