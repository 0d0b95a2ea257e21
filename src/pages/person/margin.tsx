/** The personal margin: where it is drawn from, where it holds, the picture, its sums, and what it does not say. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Airframe } from '../../../sim/files/index.js';
import type { MarginPlace } from '../../../sim/index.js';
import type { MarginBasis } from '../../records/history.js';
import type { House } from '../house.js';
import { MarginFigure } from './marginfigure.js';
import type { Margin } from './marginplace.js';
import { MarginTable } from './margintable.js';
import { fragmentOf } from '../route.js';

interface Props {
  readonly house: House;
  readonly basis: MarginBasis;
  readonly airframes: readonly Airframe[];
}

const NEEDED = 20;

export function PersonMargin({ house, basis, airframes }: Props) {
  const { group, set, calmOnly } = basis;
  const trials = group?.flights.flatMap((flight) => flight.trials) ?? [];
  const count = (...outcomes: string[]): number => trials.filter(({ outcome }) => outcomes.includes(outcome)).length;
  const decided = count('caught', 'late', 'missed');
  const missed = count('missed');
  const wish = useSignal<MarginPlace>(basis.place);
  const margin = useSignal<Margin | null>(null);
  const isEnough = decided >= NEEDED;
  const flownOn = group?.condition?.airframe ?? '';
  useEffect(() => {
    if (!isEnough) return;
    let over = false;
    void house.margin(trials, basis.seenDeg, flownOn, wish.value).then((made) => { if (!over) margin.value = made; });
    return () => { over = true; };
  }, [house, basis, isEnough, wish.value]);
  const fly = <a href={fragmentOf({ page: 'set', number: set })}>Fly set {set}</a>;
  const now = margin.value;
  return (
    <section class="margin" aria-labelledby="margin-title">
      <h2 id="margin-title" class="ruled">Your margin: the room left when you let go</h2>
      {!isEnough && (
        <p class="empty">
          {calmOnly && 'The true drive was flown calm only. Calm, nearly every split is caught, and a margin drawn from that would flatter; so it is not drawn. It takes the same drive with questions to answer. '}
          {!calmOnly && group === null && 'It is drawn from the true drive with questions to answer, which is not flown yet. '}
          {group !== null && `It is drawn from 20 decided runs on: ${decided} ${decided === 1 ? 'is' : 'are'} here, ${NEEDED - decided} more to go. `}
          {fly}
        </p>
      )}
      {isEnough && now === null && <p class="waiting">Working out the room …</p>}
      {isEnough && now !== null && now.rows !== null && group !== null && (
        <>
          <Sentence margin={now} />
          <p class="large">
            From {decided} decided runs with questions to answer, in {group.flights.length === 1 ? 'one flight' : `${group.flights.length} flights`} of set {set}{missed > 0 && `; ${missed} ${missed === 1 ? 'was' : 'were'} never let go and ${missed === 1 ? 'has' : 'have'} no dot`}.
          </p>
          <Place margin={now} airframes={airframes} change={(to) => { wish.value = to; }} />
          <MarginFigure rows={now.rows} where={whereOf(now.place)} />
          <MarginTable rows={now.rows} />
          <ul class="small margin-says">
            <li>The airframes are invented. What is true for yours stands in its own papers.</li>
            <li>You knew that splits would come. One that nobody expects is met later; by how much, no drill can say.</li>
            <li>Who looks in bursts is flattered here: now and then a release will come later than nine in ten suggests. And the bars are for runs that are watched: where nothing is noticed at all, the wedge runs to its end.</li>
            <li>Dots are releases that were flown. Rows without dots are expected by the same fit; outside the flown rates, or on another airframe, it leans on what is believed beforehand.</li>
          </ul>
        </>
      )}
    </section>
  );
}

const whereOf = ({ airframe, massT, speedKt, flapDeg, altitudeFt }: MarginPlace): string =>
  `${airframe.title}, ${massT} t, level at ${altitudeFt} ft and ${speedKt} kt, the fault as the drive passes ${flapDeg}° on its way out.`;

/** The one thing to remember. */
function Sentence({ margin: { rows, place } }: { margin: Margin }) {
  const stops = rows?.find(({ fault }) => fault === 'disconnect');
  const { median, q90 } = stops?.at ?? {};
  const lets = stops?.basis === 'beyond' ? 'you are expected to let go' : 'you let go';
  if (median === undefined || median === null) return <p class="sentence">When one side stops here, the drive ends before you would let go.</p>;
  const left = (pct: number): string => `${Math.round(100 - pct)} %`;
  return (
    <p class="sentence">
      When one side stops at {place.speedKt} kt, {lets} with {left(median.usedPct)} of roll authority left{q90 ? `; nine times in ten, by these runs, with ${left(q90.usedPct)} or more` : ''}.
    </p>
  );
}

function Place({ margin: { place, fromKt, toKt }, airframes, change }: { margin: Margin; airframes: readonly Airframe[]; change: (to: MarginPlace) => void }) {
  const { airframe, massT, speedKt, flapDeg } = place;
  const settings = airframe.settings.slice(1, -1);
  const another = (name: string): void => {
    const found = airframes.find((one) => one.name === name);
    if (found !== undefined) change({ ...place, airframe: found, massT: found.mass.landingT, flapDeg: found.settings[1]?.deg ?? flapDeg });
  };
  return (
    <form class="filters margin-place" aria-label="Where the fault comes" onSubmit={(event) => event.preventDefault()}>
      <label>Airframe
        <select value={airframe.name} onChange={({ currentTarget: { value } }) => another(value)}>{airframes.map(({ name, title }) => <option key={name} value={name}>{title}</option>)}</select>
      </label>
      <label>Flaps at
        <select value={String(flapDeg)} onChange={({ currentTarget: { value } }) => change({ ...place, flapDeg: Number(value) })}>{settings.map(({ deg, name }) => <option key={deg} value={String(deg)}>{name}</option>)}</select>
      </label>
      <Figure name="Weight, t" value={massT} from={airframe.mass.emptyT} to={airframe.mass.takeOffT} step={0.5} change={(to) => change({ ...place, massT: to })} />
      <Figure name={`Speed, kt (${fromKt} to ${toKt})`} value={speedKt} from={fromKt} to={toKt} step={1} change={(to) => change({ ...place, speedKt: to })} />
    </form>
  );
}

/** A figure between two ends; what is outside is brought to the nearer end. */
function Figure({ name, value, from, to, step, change }: { name: string; value: number; from: number; to: number; step: number; change: (to: number) => void }) {
  return (
    <label>{name}
      <input
        type="number" value={value} min={from} max={to} step={step} inputMode="decimal"
        onChange={({ currentTarget }) => {
          const typed = currentTarget.valueAsNumber;
          const inside = Number.isFinite(typed) ? Math.min(to, Math.max(from, typed)) : value;
          currentTarget.value = String(inside);
          if (inside !== value) change(inside);
        }}
      />
    </label>
  );
}
