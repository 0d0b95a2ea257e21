/** Which page stands for which address. */
import { useEffect } from 'preact/hooks';
import { Brief } from './drill/brief.js';
import { StepBrief, StepFlight, StepPlan, StepSay } from './course/step.js';
import { Choose } from './front/choose.js';
import { Debrief } from './debrief/debrief.js';
import { Drill } from './drill/drill.js';
import { Logbook } from './logbook/logbook.js';
import type { House } from './house.js';
import { Later } from './later.js';
import { Missing } from './missing.js';
import type { PlanOf } from './plan/house.js';
import type { Route } from './route.js';
import { PersonPage } from './person/person.js';
import { Practice, PracticeFlight } from './practice/practice.js';
import { Say } from './debrief/say.js';
import { OwnBrief, OwnLink, OwnRun, OwnSay } from './own/own.js';
import { goInstead, lastDrill, left, route, started } from './session.js';
import { SetPage } from './set/page.js';
import { SetRun, SetSay } from './set/run.js';
import { Setup } from './setup/setup.js';

export function App({ house }: { house: House }) {
  const now = route.value;
  switch (now.page) {
    case 'choose': return <Choose house={house} />;
    case 'brief': return <Brief key={now.number} house={house} number={now.number} seed={now.seed} />;
    case 'run': return started.value ? <DrillRun key={now.number} house={house} number={now.number} seed={now.seed} /> : <NotStarted number={now.number} seed={now.seed} />;
    case 'say': return <Say house={house} back={{ page: 'brief', number: now.number, seed: now.seed }} flewIt={() => lastDrill.value === now.number} />;
    case 'debrief': return <Debrief house={house} />;
    case 'settings': return <Setup house={house} />;
    case 'size': return <Later title="True size" kind="setup" fetch={async () => (await import('./size/page.js')).SizePage} props={{ house }} />;
    case 'switches': return <Later title="Switches and levers" kind="setup" fetch={async () => (await import('./switches/page.js')).SwitchesPage} props={{ house }} />;
    case 'timing': return <Later title="Timing check" kind="setup" fetch={async () => (await import('./timing/page.js')).TimingPage} props={{ house }} />;
    case 'set': return <SetPage key={now.number} house={house} number={now.number} />;
    case 'set-run': return <SetRun key={now.number} house={house} number={now.number} />;
    case 'set-say': return <SetSay key={now.number} house={house} number={now.number} />;
    case 'practice': return <Practice house={house} />;
    case 'practice-run': return <PracticeFlight house={house} />;
    case 'logbook': return <Logbook house={house} />;
    case 'person': return <PersonPage house={house} />;
    case 'own': return <OwnBrief key={now.id} house={house} id={now.id} />;
    case 'own-run': return <OwnRun key={now.id} house={house} id={now.id} />;
    case 'own-say': return <OwnSay house={house} id={now.id} />;
    case 'own-link': return <OwnLink key={now.code} house={house} code={now.code} />;
    case 'plan': return <Plan key="free" house={house} of={{ free: true }} name="" back={null} />;
    case 'drill-plan': return <Plan key={now.number} house={house} of={{ drill: now.number }} name={`drill ${now.number}`} back={{ page: 'brief', number: now.number, seed: now.seed }} />;
    case 'own-plan': return <Plan key={now.id} house={house} of={{ own: now.id }} name="the run from the bench" back={{ page: 'own', id: now.id }} />;
    case 'courses': return <Later title="Course" kind="course" fetch={() => import('./course/list.js').then(({ CourseList }) => CourseList)} props={{ house }} />;
    case 'course': return <Later key={now.course} title="Course" kind="course" fetch={() => import('./course/syllabus.js').then(({ Syllabus }) => Syllabus)} props={{ house, number: now.course }} />;
    case 'class': return <Later title="Class" kind="class" fetch={() => import('./class/class.js').then(({ ClassPage }) => ClassPage)} props={{ house }} />;
    case 'step': return <StepBrief key={`${now.course}/${now.step}`} house={house} course={now.course} step={now.step} />;
    case 'step-run': return <StepFlight key={`${now.course}/${now.step}`} house={house} course={now.course} step={now.step} />;
    case 'step-say': return <StepSay house={house} course={now.course} step={now.step} />;
    case 'step-plan': return <StepPlan key={`${now.course}/${now.step}`} house={house} course={now.course} step={now.step} />;
    case 'desk': return <Later title="Desk" kind="desk" fetch={() => import('./desk/desk.js').then(({ Desk }) => Desk)} props={{ house }} />;
    case 'bench': return <Later title="Bench" kind="bench" fetch={() => import('./bench/bench.js').then(({ Bench }) => Bench)} props={{ house, link: now.link }} />;
    case 'help': return <Later title="Help" kind="help" fetch={() => import('./help/help.js').then(({ Help }) => Help)} props={{ house, at: now.at }} />;
    case 'nowhere': return <Nowhere />;
  }
}

const Plan = (props: { house: House; of: PlanOf; name: string; back: Exclude<Route, { page: 'nowhere' }> | null }) =>
  <Later title={props.name === '' ? 'Plan' : `Plan for ${props.name}`} kind="plan" fetch={() => import('./plan/plan.js').then(({ PlanPage }) => PlanPage)} props={props} />;

/** A drill from its start to the trainee's own judgement. */
function DrillRun({ house, number, seed }: { house: House; number: number; seed: number | null }) {
  return (
    <Drill
      house={house} of={{ drill: number, seed }} name={`Drill ${number}`}
      over={() => {
        lastDrill.value = number;
        goInstead({ page: 'say', number, seed });
      }}
      left={(run) => {
        lastDrill.value = number;
        left.value = run;
      }}
    />
  );
}

/** A run begins by Start and by nothing else: an address, a reload or Forward leads to the brief. */
function NotStarted({ number, seed }: { number: number; seed: number | null }) {
  useEffect(() => goInstead({ page: 'brief', number, seed }), []);
  return null;
}

const Nowhere = () => <Missing title="No such page" kind="nowhere" says="There is no such page" />;
