/** What the plan is made for: every figure can be changed, and a change begins the plan anew. */
import type { Airframe } from '../../../sim/files/index.js';
import { settingsOf, speedsOf, type PlanRequest } from '../../../sim/index.js';

interface Props {
  readonly request: PlanRequest;
  /** Where another may be chosen. */
  readonly airframes: readonly Airframe[] | null;
  readonly change: (to: PlanRequest) => void;
}

/** Figures that every plan has, and those that may be left out. */
const FIGURES = [
  ['massT', 'Mass, t', 0.5], ['speedKt', 'Speed, kt', 1], ['altitudeFt', 'Height, ft', 100], ['groundFt', 'Ground, ft', 50], ['windKt', 'Head wind, kt', 1],
  ['holdMin', 'Hold, min', 1], ['alternateNm', 'To the alternate, NM', 1], ['divertFt', 'Height of that way, ft', 500], ['additiveKt', 'Added for approach, kt', 1],
] as const;
const OPEN = [['distanceNm', 'Left to the runway, NM', 1], ['fuelKg', 'Fuel on board, kg', 50], ['runwayM', 'Runway, m', 10], ['landingM', 'Landing distance, last setting, m', 10]] as const;

const MOST: Readonly<Record<(typeof FIGURES)[number][0] | (typeof OPEN)[number][0], readonly [number, number]>> = {
  massT: [1, 700], speedKt: [60, 400], altitudeFt: [500, 25_000], groundFt: [-1500, 15_000], windKt: [-50, 100], holdMin: [0, 60], alternateNm: [0, 1000],
  divertFt: [0, 25_000], additiveKt: [0, 30], distanceNm: [0, 500], fuelKg: [0, 300_000], runwayM: [300, 6000], landingM: [200, 6000],
};

/** Brought inside what may be flown there. */
export function within(request: PlanRequest): PlanRequest {
  const { airframe, fromDeg, leadingEdge } = request;
  const { mass, limits, settings } = airframe;
  const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
  const flapLimit = settings.find(({ deg }) => deg >= fromDeg)?.limitKt ?? Infinity;
  const fast = Math.min(flapLimit, leadingEdge === 'out' ? limits.leadingEdgeKt : 400);
  const altitudeFt = clamp(request.altitudeFt, 500, 25_000);
  const massT = clamp(request.massT, mass.emptyT, mass.takeOffT);
  // Not below the stall warning of what is out.
  const slow = speedsOf(airframe, massT, false).settings.reduce((found, { settingDeg, warningKt }) => (settingDeg <= fromDeg ? warningKt : found), 60);
  return {
    ...request, massT, altitudeFt, groundFt: Math.min(request.groundFt, altitudeFt - 500),
    speedKt: clamp(request.speedKt, Math.ceil(slow), fast), leadingEdge: fromDeg > 0 ? 'out' : leadingEdge,
  };
}

export function GivenFigures({ request, airframes, change }: Props) {
  const { airframe, fromDeg, settings, leadingEdge, gear, liveEngines, icing } = request;
  const to = (part: Partial<PlanRequest>): void => change(within({ ...request, ...part }));
  const landing = settings[settings.length - 1];
  const another = (name: string): void => {
    const found = airframes?.find((one) => one.name === name);
    if (found === undefined) return;
    to({ airframe: found, massT: found.mass.landingT, fromDeg: 0, leadingEdge: 'in', settings: settingsOf(found, 0, []), speedKt: Math.min(request.speedKt, found.limits.standbyDriveKt) });
  };
  const rising = (low: number, high: number): number[] => airframe.settings.map(({ deg }) => deg).filter((deg) => deg > low && deg <= high);
  return (
    <form class="plan-given" aria-label="What the plan is made for" onSubmit={(event) => event.preventDefault()}>
      {airframes !== null && (
        <label>Airframe
          <select value={airframe.name} onChange={({ currentTarget: { value } }) => another(value)}>{airframes.map(({ name, title }) => <option key={name} value={name}>{title}</option>)}</select>
        </label>
      )}
      <label>Flaps stand at
        <select value={String(fromDeg)} onChange={({ currentTarget: { value } }) => to({ fromDeg: Number(value), leadingEdge: Number(value) > 0 ? 'out' : leadingEdge, settings: settingsOf(airframe, Number(value), rising(Number(value), landing ?? 0)) })}>
          {airframe.settings.slice(0, -1).map(({ deg, name }) => <option key={deg} value={String(deg)}>{name}</option>)}
          {!airframe.settings.some(({ deg }) => deg === fromDeg) && <option value={String(fromDeg)}>{fromDeg}°</option>}
        </select>
      </label>
      <label>Land with
        <select value={String(landing)} onChange={({ currentTarget: { value } }) => to({ settings: rising(fromDeg, Number(value)) })}>
          {airframe.settings.filter(({ deg }) => deg > fromDeg).map(({ deg, name }) => <option key={deg} value={String(deg)}>{name}</option>)}
        </select>
      </label>
      <label>Leading edge
        <select value={leadingEdge} disabled={fromDeg > 0} onChange={({ currentTarget: { value } }) => to({ leadingEdge: value === 'out' ? 'out' : 'in' })}><option value="in">in</option><option value="out">out</option></select>
      </label>
      <label>Gear
        <select value={gear} onChange={({ currentTarget: { value } }) => to({ gear: value === 'down' ? 'down' : 'up' })}><option value="up">up</option><option value="down">down</option></select>
      </label>
      <label>Engines
        <select value={String(liveEngines)} onChange={({ currentTarget: { value } }) => to({ liveEngines: Number(value) })}><option value="2">both run</option><option value="1">one runs</option></select>
      </label>
      <label>Ice
        <select value={icing ? 'yes' : 'no'} onChange={({ currentTarget: { value } }) => to({ icing: value === 'yes' })}><option value="no">none</option><option value="yes">on the aeroplane</option></select>
      </label>
      {FIGURES.map(([key, name, step]) => <Figure key={key} name={name} step={step} range={MOST[key]} value={request[key]} change={(value) => { if (value !== null) to({ [key]: value }); }} />)}
      {OPEN.map(([key, name, step]) => <Figure key={key} name={name} step={step} range={MOST[key]} value={request[key]} open change={(value) => to({ [key]: value })} />)}
    </form>
  );
}

/** A figure inside its range; one that is open may be blank. */
function Figure({ name, value, range: [from, most], step, open = false, change }: { name: string; value: number | null; range: readonly [number, number]; step: number; open?: boolean; change: (to: number | null) => void }) {
  return (
    <label>{name}
      <input
        type="number" value={value ?? ''} min={from} max={most} step={step} inputMode="decimal" {...(open ? { placeholder: 'not given' } : {})}
        onChange={({ currentTarget }) => {
          const typed = currentTarget.valueAsNumber;
          const inside = Number.isFinite(typed) ? Math.min(most, Math.max(from, typed)) : open ? null : value;
          currentTarget.value = inside === null ? '' : String(inside);
          if (inside !== value) change(inside);
        }}
      />
    </label>
  );
}
