/** The release budget of an airframe, fault by fault: the drive itself is run, so it comes a little later than the rest. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Airframe } from '../../../../sim/files/index.js';
import { BUDGET_FAULTS, type Budget, type BudgetFault, type BudgetRequest } from '../../../../sim/index.js';
import { FAULT_NAMES } from '../../person/margintable.js';

interface Props {
  readonly airframe: Airframe;
  readonly massT: number;
  readonly altitudeFt: number;
  /** Where the fault comes, and at what speed. */
  readonly flapDeg: number;
  readonly speedKt: number;
  /** Works one out apart from the page. */
  readonly work: (request: BudgetRequest) => Promise<Budget>;
}

/** Releases that are told, s behind one degree. */
const TOLD = [1, 2, 5];

export function BudgetTable({ airframe, massT, altitudeFt, flapDeg, speedKt, work }: Props) {
  const made = useSignal<ReadonlyMap<BudgetFault, Budget>>(new Map());
  const failed = useSignal(false);
  useEffect(() => {
    let over = false;
    made.value = new Map();
    failed.value = false;
    void (async () => {
      for (const fault of BUDGET_FAULTS) {
        const budget = await work({ airframe, massT, altitudeFt, flapDeg, speedKt, fault, ratio: 0.5 });
        if (over) return;
        made.value = new Map([...made.value, [fault, budget]]);
      }
    })().catch(() => { if (!over) failed.value = true; });
    return () => { over = true; };
  }, [airframe, massT, altitudeFt, flapDeg, speedKt, work]);
  const after = (budget: Budget, pct: number): string => {
    const level = budget.levels.find(({ rollAuthorityPct }) => rollAuthorityPct === pct);
    return level?.afterS === null || level === undefined ? 'not reached' : `${level.afterS.toFixed(0)} s`;
  };
  return (
    <>
      <div class="wide" tabIndex={0} role="region" aria-label="Release budget">
        <table>
          <thead><tr>{['fault', 'one degree', '25 % used', '50 % used', ...TOLD.map((s) => `let go ${s} s behind`)].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
          <tbody>{BUDGET_FAULTS.map((fault) => {
            const budget = made.value.get(fault);
            return (
              <tr key={fault}>
                <th scope="row">{FAULT_NAMES[fault]}</th>
                {budget === undefined ? <td colSpan={3 + TOLD.length} class="small">{failed.value ? 'could not be worked out' : 'working …'}</td> : (
                  <>
                    <td>{budget.oneDegreeS === null ? 'never' : `${budget.oneDegreeS.toFixed(1)} s`}</td><td>{after(budget, 25)}</td><td>{after(budget, 50)}</td>
                    {TOLD.map((s) => <td key={s}>{told(budget, s)}</td>)}
                  </>
                )}
              </tr>
            );
          })}</tbody>
        </table>
      </div>
      <p class="small">Fault at {flapDeg}°, {speedKt.toFixed(0)} kt, level, {altitudeFt} ft, {massT} t; lag and slip at half the rate. Held on: seconds from the fault to one degree, and until that part of the roll authority is used. Let go so long behind one degree: the final split and what it uses.</p>
    </>
  );
}

function told({ releases }: Budget, latencyS: number): string {
  const one = releases.find((release) => release.latencyS === latencyS);
  return one === undefined ? '–' : `${one.splitDeg.toFixed(1)}°, ${one.rollAuthorityPct.toFixed(0)} %`;
}
