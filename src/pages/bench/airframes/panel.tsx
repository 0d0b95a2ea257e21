/** The workshop beside an airframe that is being written: what it comes to on the drive, and beside another airframe. */
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Airframe } from '../../../../sim/files/index.js';
import { airframeFigures, type AirframeFigures } from '../../../../sim/index.js';
import type { BenchProps } from '../bench.js';
import { BudgetTable } from './budget.js';
import { Glance } from './glance.js';
import { holdOn } from './hold.js';
import { RateFigure } from './ratefigure.js';
import { Relations } from './relations.js';
import { DriveTable, HornTable, SpeedsTable, SplitTable } from './tables.js';
import '../../look/workshop.css';

const ALTITUDE_FT = 3500;

export function AirframePanel({ house, kit, draft }: BenchProps) {
  const sound = draft.sound.value;
  const airframe = sound?.kind === 'airframe' ? sound.value : null;
  if (airframe === null) return <p class="waiting">As soon as the file is sound, its figures stand here.</p>;
  return (
    <>
      {draft.read.value.value === null && <p class="note">These are the figures of the last sound state; the problems are listed above.</p>}
      <p class="workshop-fly"><button class="button quiet" type="button" onClick={() => draft.open({ kind: 'scenario', name: `hold-on-${airframe.name}`, text: holdOn(airframe), own: null })}>New scenario on this airframe</button> <span class="small">It carries the airframe in full. Undo leads back.</span></p>
      <Workshop airframe={airframe} others={kit.airframes} work={house.bench.budget} />
    </>
  );
}

interface Props {
  readonly airframe: Airframe;
  /** Airframes to lay beside it, by name. */
  readonly others: ReadonlyMap<string, Airframe>;
  readonly work: BenchProps['house']['bench']['budget'];
}

function Workshop({ airframe, others, work }: Props) {
  const mass = useSignal<number | null>(null);
  const altitude = useSignal(ALTITUDE_FT);
  const beside = useSignal('');
  const { emptyT, landingT, takeOffT } = airframe.mass;
  const massT = Math.min(takeOffT, Math.max(emptyT, mass.value ?? landingT));
  const altitudeFt = altitude.value;
  const figures = useMemo(() => airframeFigures(airframe, massT, altitudeFt), [airframe, massT, altitudeFt]);
  const compared = others.get(beside.value) ?? null;
  const other = useMemo(() => (compared === null ? null : { airframe: compared, figures: airframeFigures(compared, compared.mass.landingT, altitudeFt) }), [compared, altitudeFt]);
  const fault = faultAt(airframe, figures);
  return (
    <div class="workshop">
      <fieldset class="workshop-place">
        <legend class="unseen">At</legend>
        <label>Mass, t <input type="number" min={emptyT} max={takeOffT} step="0.5" value={massT} onInput={({ currentTarget: { valueAsNumber } }) => { if (Number.isFinite(valueAsNumber)) mass.value = valueAsNumber; }} /></label>
        <label>Altitude, ft <input type="number" min="0" max="20000" step="500" value={altitudeFt} onInput={({ currentTarget: { valueAsNumber } }) => { if (valueAsNumber >= 0 && valueAsNumber <= 20000) altitude.value = valueAsNumber; }} /></label>
        <label>Beside it <select value={beside.value} onChange={({ currentTarget: { value } }) => { beside.value = value; }}>
          <option value="">no other</option>
          {[...others.values()].filter((one) => one.title !== airframe.title).map(({ name, title }) => <option key={name} value={name}>{title}</option>)}
        </select></label>
      </fieldset>
      <Glance main={{ airframe, figures }} other={other} />
      <Relations relations={figures.relations} nameOf={(wanted) => airframe.settings.find(({ deg }) => deg === wanted)?.name ?? `${wanted}`} />
      <section aria-labelledby="drive-title">
        <h2 id="drive-title" class="ruled">The drive along its travel</h2>
        <RateFigure main={{ airframe, drive: figures.drive }} other={other === null ? null : { airframe: other.airframe, drive: other.figures.drive }} />
        <DriveTable airframe={airframe} figures={figures} />
      </section>
      <section aria-labelledby="parting-title">
        <h2 id="parting-title" class="ruled">How fast the sides part</h2>
        <SplitTable airframe={airframe} figures={figures} />
      </section>
      <section aria-labelledby="budget-title">
        <h2 id="budget-title" class="ruled">What holding on costs</h2>
        <BudgetTable airframe={airframe} massT={massT} altitudeFt={altitudeFt} {...fault} work={work} />
      </section>
      <section aria-labelledby="horn-title">
        <h2 id="horn-title" class="ruled">Gear horn</h2>
        <HornTable airframe={airframe} figures={figures} />
      </section>
      <section aria-labelledby="speed-title">
        <h2 id="speed-title" class="ruled">Speeds and margins</h2>
        <SpeedsTable airframe={airframe} figures={figures} />
      </section>
    </div>
  );
}

/** Halfway to the landing setting, at the manoeuvre speed of the setting that is out there. */
function faultAt({ landingDeg, limits }: Airframe, { speeds }: AirframeFigures): { flapDeg: number; speedKt: number } {
  const flapDeg = landingDeg / 2;
  const out = speeds.settings.findLast(({ settingDeg }) => settingDeg <= flapDeg) ?? speeds.settings[0];
  return { flapDeg, speedKt: Math.min(Math.round(out?.manoeuvreKt ?? 0), limits.standbyDriveKt) };
}
