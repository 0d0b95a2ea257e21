/** The trainee's own judgement, asked before anything is told. The gauge is empty until they set it themselves. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import { Fan, gaugeOf } from '../fan.js';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import type { Route } from '../route.js';
import { goInstead, gone, record } from '../session.js';

type Said = NonNullable<RunRecord['assessment']>;

const ANSWERS = [['yes', 'Yes'], ['no', 'No'], ['unsure', 'Not sure']] as const;
const FAILED = [['yes', 'Yes'], ['no', 'No'], ['unsure', 'Cannot say']] as const;
const SIDES = [['left', 'Left'], ['right', 'Right'], ['unsure', 'Cannot say']] as const;
/** Farthest that the slider goes, deg. */
const MOST_DEG = 6;

interface Props {
  readonly house: House;
  /** The brief of what was flown. */
  readonly back: Exclude<Route, { page: 'nowhere' }>;
  /** Whether this tab flew it last. */
  readonly flewIt: () => boolean;
}

export function Say({ house, back, flewIt }: Props) {
  const split = useSignal<Said['split']>(null);
  const side = useSignal<NonNullable<Said['side']> | null>(null);
  const apart = useSignal<number | null>(null);
  const failed = useSignal<NonNullable<Said['driveFailed']> | null>(null);
  const sure = useSignal<number | null>(null);
  const run = record.value;
  useEffect(() => {
    if (run !== null) return;
    gone.value = flewIt();
    goInstead(back);
  }, [run]);
  if (run === null) return null;
  const none = split.value === 'no';
  const done = (): void => {
    const said: Said = {
      split: split.value, growthDeg: none ? null : apart.value,
      ...(side.value === null || none ? {} : { side: side.value }),
      ...(failed.value === null ? {} : { driveFailed: failed.value }),
      ...(sure.value === null || split.value === 'unsure' ? {} : { surePct: sure.value }),
    };
    void house.assess(run, said).then((whole) => {
      record.value = whole;
      goInstead({ page: 'debrief' });
    });
  };
  return (
    <Page title="Your own judgement" kind="say">
      <h1>Before you are told anything</h1>
      <form class="columns" onSubmit={(event) => { event.preventDefault(); done(); }}>
        <div class="questions">
          <Choice name="split" legend="Was there a split?" answers={ANSWERS} value={split.value} choose={(one) => { split.value = one; }} />
          <Slide
            legend="How sure are you of that?" none="Leave open" off={split.value === null || split.value === 'unsure'}
            value={sure.value} most={100} step={5} unit=" %" spoken="percent" set={(to) => { sure.value = to; }}
          />
          <Choice name="side" legend="Which side was ahead?" answers={SIDES} value={side.value} off={none} choose={(one) => { side.value = one; }} />
          <Slide
            legend="How far apart were the pointers when you let go?" none="I cannot say" off={none}
            value={apart.value} most={MOST_DEG} step={0.1} unit="°" spoken="degrees" set={(to) => { apart.value = to; }}
          />
          <Choice name="failed" legend="Did the drive itself fail?" answers={FAILED} value={failed.value} choose={(one) => { failed.value = one; }} />
          <p class="submit">
            <button class="button" type="submit" disabled={split.value === null}>Show the debrief</button>
            <span>{split.value === null ? 'Only the first question must be answered.' : 'What you said goes into the record beside what was.'}</span>
          </p>
        </div>
        <Remembered run={run} apart={none ? null : apart.value} side={side.value} />
      </form>
    </Page>
  );
}

/** The gauge as the trainee remembers it: how far apart, and which side ahead on the way of the task. */
function Remembered({ run, apart, side }: { run: RunRecord; apart: number | null; side: NonNullable<Said['side']> | null }) {
  const { start, task } = run.scenario;
  const way = (task.settings[task.settings.length - 1] ?? start.flapDeg) < start.flapDeg ? -1 : 1;
  const middle = run.airframe.drive.stopDeg * 0.3;
  const lean = apart === null ? 0 : (side === 'right' ? -1 : 1) * way * apart / 2;
  const known = side === 'left' || side === 'right';
  return (
    <figure>
      <Fan
        gauge={gaugeOf(run.airframe)} left={apart === null ? null : middle + lean} right={apart === null ? null : middle - lean} radius={280}
        title={apart === null ? 'The gauge, blanked' : `Two pointers ${apart.toFixed(1)} degrees apart${known ? `, the ${side} one ahead` : ''}, as you say`}
      />
      <figcaption>{apart === null ? 'Blanked. Your answers set it as you remember it.' : known ? 'As you remember it.' : 'As you remember it; which side was ahead is not said.'}</figcaption>
    </figure>
  );
}

interface ChoiceProps<T extends string> {
  readonly name: string;
  readonly legend: string;
  readonly answers: readonly (readonly [T, string])[];
  readonly value: T | null;
  readonly off?: boolean;
  readonly choose: (one: T) => void;
}

function Choice<T extends string>({ name, legend, answers, value, off = false, choose }: ChoiceProps<T>) {
  return (
    <fieldset class="answers" disabled={off}>
      <legend>{legend}</legend>
      {answers.map(([one, word]) => (
        <label key={one} class="answer"><input type="radio" name={name} value={one} checked={!off && value === one} onChange={() => choose(one)} /><span>{word}</span></label>
      ))}
    </fieldset>
  );
}

interface SlideProps {
  readonly legend: string;
  /** Takes the answer back. */
  readonly none: string;
  readonly off: boolean;
  readonly value: number | null;
  readonly most: number;
  readonly step: number;
  readonly unit: string;
  readonly spoken: string;
  readonly set: (to: number | null) => void;
}

function Slide({ legend, none, off, value, most, step, unit, spoken, set }: SlideProps) {
  const figures = step < 1 ? 1 : 0;
  return (
    <fieldset class="apart" disabled={off}>
      <legend>{legend}</legend>
      <div class="slide">
        <input
          class={value === null || off ? 'unsaid' : ''} type="range" min={0} max={most} step={step} value={value ?? (unit === '°' ? 0 : most / 2)} aria-label={legend}
          aria-valuetext={value === null ? 'not said' : `${value.toFixed(figures)} ${spoken}`}
          onInput={({ currentTarget }) => set(Number(currentTarget.value))}
        />
        <output>{value === null || off ? '–' : `${value.toFixed(figures)}${unit}`}</output>
        <button class="plain" type="button" onClick={() => set(null)}>{none}</button>
      </div>
    </fieldset>
  );
}
