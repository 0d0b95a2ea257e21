/** Many runs of the document: how they come out, how far the sides part, and how hard it is. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { sweptOutput, type SweepOutput } from '../../../../sim/files/index.js';
import { seedsOf } from '../../../../sim/index.js';
import { seconds } from '../../words.js';
import type { BenchProps } from '../bench.js';
import { nameOf, who, seed } from './chosen.js';
import { flySweep, runsOf, workersHere } from './crew.js';
import { orderOf, type FlightOrder } from './order.js';
import { Swept } from './swept.js';

const COUNTS = [100, 1000, 10_000] as const;

interface Work { readonly done: number; readonly all: number; readonly fromMs: number; readonly stop: AbortController }
interface Came { readonly output: SweepOutput; readonly of: FlightOrder; readonly tookS: number }

export function Sweep(props: BenchProps) {
  const { house, draft } = props;
  const count = useSignal<number>(COUNTS[0]);
  const work = useSignal<Work | null>(null);
  const came = useSignal<Came | null>(null);
  const failed = useSignal<string | null>(null);
  const order = orderOf(props);
  useEffect(() => () => work.peek()?.stop.abort(new Error('left')), []);
  const start = async (of: FlightOrder): Promise<void> => {
    const stop = new AbortController();
    const fromMs = performance.now();
    const runs = count.value;
    const names = { scenario: draft.name.value, trainee: nameOf(who.value), seed: of.seed };
    work.value = { done: 0, all: runsOf(runs), fromMs, stop };
    failed.value = null;
    try {
      const { scenario, airframe, trainee } = of;
      const rows = await flySweep({ scenario, airframe, trainee, seeds: seedsOf(of.seed, runs) }, workersHere(), (done) => {
        if (work.value !== null) work.value = { ...work.value, done };
      }, stop.signal);
      came.value = { output: sweptOutput(names, scenario, airframe, rows), of, tookS: (performance.now() - fromMs) / 1000 };
    } catch (problem) {
      if (!stop.signal.aborted) failed.value = problem instanceof Error ? problem.message : String(problem);
    }
    work.value = null;
  };
  const stale = came.value !== null && (order === null || JSON.stringify(order) !== JSON.stringify(came.value.of));
  return (
    <section class="sweep" aria-labelledby="sweep-title">
      <h2 id="sweep-title" class="ruled">Many runs</h2>
      <div class="sweep-tools">
        <label>Runs
          <select value={count.value} disabled={work.value !== null} onChange={({ currentTarget: { value } }) => { count.value = Number(value); }}>
            {COUNTS.map((one) => <option key={one} value={one}>{one === 10_000 ? '10 000' : one === 1000 ? '1 000' : one}</option>)}
          </select>
        </label>
        <button class="button quiet" type="button" disabled={order === null || work.value !== null} onClick={() => { if (order !== null) void start(order); }}>Sweep<span class="unseen">: fly many runs by {nameOf(who.value)} from seed {seed.value}</span></button>
        {work.value !== null && <Progress of={work.value} />}
      </div>
      {failed.value !== null && <p class="note" role="alert"><span>The sweep broke off: {failed.value}.</span></p>}
      <div role="status">{stale && <p class="note waits"><span>The scenario or who flies it has changed since. These are the figures from before; sweep again.</span></p>}</div>
      {came.value !== null && <Swept output={came.value.output} airframe={came.value.of.airframe} tookS={came.value.tookS} stale={stale} save={(file, name) => void house.saveFile(file, name)} />}
    </section>
  );
}

function Progress({ of: { done, all, fromMs, stop } }: { readonly of: Work }) {
  const spentS = (performance.now() - fromMs) / 1000;
  const leftS = done === 0 ? null : (spentS * (all - done)) / done;
  return (
    <span class="sweep-progress">
      <progress aria-label="Runs flown" value={done} max={all} />
      <span>{done} of {all}{leftS === null ? '' : `, ${seconds(leftS)} left`}</span>
      <button class="plain" type="button" onClick={() => stop.abort(new Error('stopped'))}>Stop</button>
    </span>
  );
}
