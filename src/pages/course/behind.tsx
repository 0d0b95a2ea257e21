/** Behind a run of a course: what is said of a first look, and the ways on. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import type { House } from '../house.js';
import { fragmentOf } from '../route.js';
import type { lastStep } from '../session.js';

/** Said of the run that nobody had announced, and of no other. */
export function FirstLookNote({ house, run }: { house: House; run: RunRecord }) {
  const is = useSignal(false);
  useEffect(() => {
    is.value = false;
    // A debrief without courses at hand is a debrief all the same.
    house.course.isFirstLook(run).then((found) => { is.value = found; }, () => undefined);
  }, [house, run]);
  if (!is.value) return null;
  return <p class="note"><span><strong>First look.</strong> Nobody had announced this fault. What you did counts for no step and for no figure: one run says nothing about a person.</span></p>;
}

export const StepNext = ({ step }: { step: NonNullable<typeof lastStep.value> }) => (
  <p class="small next">
    <a href={fragmentOf({ page: 'course', course: step.course })}>Back to the course</a> <a href={fragmentOf({ page: 'step', ...step })}>Fly the step again</a> <a href="#/logbook">Logbook</a>
    <span>The logbook keeps the run on this machine; its saved record can be opened anywhere.</span>
  </p>
);
