// A drill flown on another airframe: its stops become that airframe's settings in order, its speeds keep their share of the
// manoeuvre speed, its times of holding their share of the way. What does not fit is said to be null.
import { misfits, ready, type Airframe, type ReadyScenario, type Scenario } from '../../sim/files/index.js';
import { airframeFigures, speedsOf } from '../../sim/index.js';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** Flap positions of the drill's task, rising. */
const stopsOf = ({ start, task }: Scenario): number[] => [...new Set([start.flapDeg, ...task.settings])].sort((a, b) => a - b);

/** Settings of the other airframe for them, or null where it has too few. A landing setting stays one. */
function settingsFor(stops: readonly number[], from: Airframe, to: Airframe): number[] | null {
  const degs = to.settings.map(({ deg }) => deg);
  const landing = stops.indexOf(from.landingDeg);
  const first = stops[0] === 0 ? 0 : landing >= 0 ? degs.indexOf(to.landingDeg) - landing : 1;
  const found = degs.slice(Math.max(0, first), Math.max(0, first) + stops.length);
  return first >= 0 && found.length === stops.length ? found : null;
}

const manoeuvre = (airframe: Airframe, massT: number, deg: number): number =>
  speedsOf(airframe, massT, false).settings.filter(({ settingDeg }) => settingDeg <= deg).at(-1)?.manoeuvreKt ?? 0;

/** Straight between the stops, and alike beyond them. */
function along(value: number, stops: readonly number[], settings: readonly number[]): number {
  if (stops.length === 1) return value + (settings[0] ?? 0) - (stops[0] ?? 0);
  let at = 1;
  while (at < stops.length - 1 && value > (stops[at] ?? 0)) at += 1;
  const [a, b, c, d] = [stops[at - 1] ?? 0, stops[at] ?? 0, settings[at - 1] ?? 0, settings[at] ?? 0];
  return Math.max(0, c + (value - a) / (b - a) * (d - c));
}

/** null: the other airframe has no place for it. */
export function transposed(drill: Scenario, from: Airframe, to: Airframe): ReadyScenario | null {
  const stops = stopsOf(drill);
  const settings = settingsFor(stops, from, to);
  if (settings === null) return null;
  const massT = Math.round(drill.start.massT / from.mass.landingT * to.mass.landingT * 10) / 10;
  const deg = (value: number): number => Math.round(along(value, stops, settings) * 100) / 100;
  const top = Math.max(...stops);
  const kt = (value: number): number => Math.round(value * manoeuvre(to, massT, deg(drill.start.flapDeg)) / manoeuvre(from, drill.start.massT, drill.start.flapDeg));
  const way = (airframe: Airframe, mass: number): number => airframeFigures(airframe, mass, drill.start.altitudeFt).drive[0]?.toLandingS ?? 1;
  const share = way(to, massT) / to.landingDeg / (way(from, drill.start.massT) / from.landingDeg) * (deg(top) - deg(stops[0] ?? 0)) / Math.max(1, top - (stops[0] ?? 0));
  const held = (value: number): number => Math.max(0.01, Math.round(value * share * 100) / 100);
  const change = (key: string, value: Json): Json => {
    if (typeof value === 'number') {
      if (key === 'flapDeg' || key === 'flapLeverDeg') return deg(value);
      if (key === 'speedKt') return kt(value);
      if (key === 'heldS' || key === 'hazardFromS' || key === 'hazardForS' || key === 'legS') return held(value);
      if (key === 'hazardPerS') return Math.min(10, value / share);
      return value;
    }
    if (Array.isArray(value)) return value.map((one) => (key === 'settings' && typeof one === 'number' ? deg(one) : change('', one)));
    return value !== null && typeof value === 'object' ? Object.fromEntries(Object.entries(value).map(([inner, one]) => [inner, change(inner, one)])) : value;
  };
  const { airframe: _airframe, recognition, ...rest } = drill;
  const body = change('', rest as unknown as Json) as unknown as Scenario;
  const made: Scenario = {
    ...body, airframe: to, start: { ...body.start, massT },
    ...(recognition === undefined ? {} : { recognition: { ...recognition, limitDeg: to.recognition.limitDeg } }),
  };
  return misfits(made, to).length > 0 ? null : ready(made, to);
}
