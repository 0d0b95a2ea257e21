/** A step of a course that is a drill: its brief, its run, the trainee's own judgement. What comes in it is told by nothing here. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Briefed } from '../drill/brief.js';
import { Drill } from '../drill/drill.js';
import { Page } from '../frame.js';
import { Missing } from '../missing.js';
import type { DrillCard, House } from '../house.js';
import { Later } from '../later.js';
import { Say } from '../debrief/say.js';
import { fragmentOf } from '../route.js';
import { go, goInstead, lastOwn, lastStep, left, started } from '../session.js';

interface Props {
  readonly house: House;
  readonly course: number;
  readonly step: number;
}

export function StepBrief({ house, course, step }: Props) {
  const card = useSignal<DrillCard | null | undefined>(undefined);
  const shipped = useSignal<number | null>(null);
  const failed = useSignal(false);
  useEffect(() => {
    house.warm();
    void shippedAs(house, course, step).then((number) => { shipped.value = number; });
    house.course.brief(course, step).then((one) => { card.value = one; }, () => { failed.value = true; });
  }, [house, course, step]);
  const title = `Step ${step}`;
  if (failed.value) return <Page title={title} kind="brief" within="course"><p class="note" role="alert">The brief could not be fetched. Load the page again; if that does not help, the server has gone.</p></Page>;
  if (card.value === undefined) return <Page title={title} kind="brief" within="course"><p class="waiting">Fetching the brief …</p></Page>;
  if (card.value === null) return <NoSuchStep course={course} />;
  const above = <><a href={fragmentOf({ page: 'course', course })}>The course</a><span>{card.value.group.name}</span></>;
  const plan = shipped.value === null ? {} : { plan: { of: { drill: shipped.value }, href: fragmentOf({ page: 'step-plan', course, step }) } };
  return <Briefed house={house} card={card.value} title={title} kind="brief" within="course" above={above} start={() => go({ page: 'step-run', course, step })} {...plan} />;
}

/** Number of the shipped drill that a step flies; null for one that stands in the course. */
const shippedAs = (house: House, course: number, step: number): Promise<number | null> =>
  house.course.courses().then((all) => all[course - 1]?.steps[step - 1]?.drill ?? null, () => null);

/** The plan of a step that flies a shipped drill, kept as that drill's; it leads back to the step. */
export function StepPlan({ house, course, step }: Props) {
  const shipped = useSignal<{ readonly number: number | null } | null>(null);
  useEffect(() => { void shippedAs(house, course, step).then((number) => { shipped.value = { number }; }); }, [house, course, step]);
  if (shipped.value === null) return <Page title={`Plan for step ${step}`} kind="plan"><p class="waiting">Fetching the course …</p></Page>;
  const { number } = shipped.value;
  if (number === null) return <NoSuchStep course={course} />;
  return <Later title={`Plan for step ${step}`} kind="plan" fetch={() => import('../plan/plan.js').then(({ PlanPage }) => PlanPage)} props={{ house, of: { drill: number }, name: `step ${step}`, back: { page: 'step' as const, course, step } }} />;
}

/** A run begins by Start and by nothing else: an address, a reload or Forward leads to the brief. */
export function StepFlight({ house, course, step }: Props) {
  const begins = useSignal(started.peek()).value;
  const shipped = useSignal<{ readonly number: number | null } | null>(null);
  useEffect(() => {
    if (!begins) return goInstead({ page: 'step', course, step });
    void shippedAs(house, course, step).then((number) => { shipped.value = { number }; });
  }, []);
  if (!begins || shipped.value === null) return null;
  const flew = (): void => {
    lastOwn.value = null;
    lastStep.value = { course, step };
  };
  return (
    <Drill
      house={house} of={{ course, step, shipped: shipped.value.number }} name={`Step ${step}`}
      over={() => {
        flew();
        goInstead({ page: 'step-say', course, step });
      }}
      left={(run) => {
        flew();
        left.value = run;
      }}
    />
  );
}

export const StepSay = ({ house, course, step }: Props) => (
  <Say house={house} back={{ page: 'step', course, step }} flewIt={() => lastStep.value?.course === course && lastStep.value.step === step} />
);

const NoSuchStep = ({ course }: { course: number }) => (
  <Missing title="No such step" kind="brief" within="course" says="There is no such step" ways={[['The course', { page: 'course', course }]]}>
    <p class="large">The course may have been changed, or the link cut short.</p>
  </Missing>
);
