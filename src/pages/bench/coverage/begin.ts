/** A new scenario for an empty place of the matrix: sound from the first, with the fault on its leg. */
import type { Airframe, Fault } from '../../../../sim/files/index.js';
import { speedsOf } from '../../../../sim/index.js';
import type { Leg, Role, Row } from './matrix.js';

/** Written as it stands behind the kind; a side for those that have one. */
const REST: { readonly [K in Fault['kind']]: string } = {
  disconnect: ', "side": "drawn"', lag: ', "side": "drawn", "ratio": 0.5', jam: ', "side": "drawn"',
  slip: ', "side": "drawn", "ratio": 0.1, "periodS": 5, "onS": 2', blowback: ', "side": "drawn"', pointer: ', "side": "drawn", "mode": "stuck"',
  dead: '', quits: '', slow: ', "factor": 0.5', runsOn: '', leadingEdge: ', "stopsAt": 0.6',
};

/** Where on the leg a fault comes: from the start for what is wrong all along, else a third of the way on. */
function whenOf(kind: Fault['kind'], { fromDeg, toDeg }: Leg): string {
  if (kind === 'dead' || kind === 'leadingEdge' || kind === 'slow') return '{ "atS": 0 }';
  return `{ "flapDeg": ${Math.round((fromDeg + (toDeg - fromDeg) / 3) * 10) / 10} }`;
}

/** The name of the file, and its text. */
export function beginCell(row: Row, leg: Leg, role: Role, airframe: Airframe): { readonly name: string; readonly text: string } {
  const massT = Math.round((airframe.mass.emptyT + airframe.mass.landingT) * 5) / 10;
  const { settings } = speedsOf(airframe, massT, false);
  const of = (deg: number) => settings.find(({ settingDeg }) => settingDeg === deg);
  const nameOf = (deg: number): string => of(deg)?.name ?? `${deg}`;
  // Out: the manoeuvre speed of what is out. In: that of the setting to come, which is higher.
  const speed = Math.ceil(of(leg.way === 'out' ? leg.fromDeg : leg.toDeg)?.manoeuvreKt ?? 0);
  const limits = [leg.fromDeg, leg.toDeg].flatMap((deg) => of(deg)?.limitKt ?? []);
  const speedKt = Math.min(speed, ...limits, airframe.limits.standbyDriveKt, ...(leg.fromDeg > 0 ? [airframe.limits.leadingEdgeKt] : []));
  const way = leg.way === 'out' ? 'drive' : 'retract';
  const hands = role === 'driving' ? 'Another flies; the drive is yours.' : 'The speed hold keeps the speed.';
  const fault = row === 'none' ? '' : `\n    { "name": "${row.toLowerCase()}", "kind": "${row}"${REST[row]}, "when": ${whenOf(row, leg)} }\n  `;
  const text = `{
  "format": 1,
  "title": "${row === 'none' ? 'A quiet leg' : `${row} on the way`} ${leg.way === 'out' ? 'out' : 'in'} to ${nameOf(leg.toDeg)}",
  "brief": "Level at 5600 ft, flaps at ${nameOf(leg.fromDeg)}, ${speedKt} kt. ${hands} Guard open, arm; lever to ${nameOf(leg.toDeg)}, then ${way} to ${nameOf(leg.toDeg)}. A release is a pause here: in doubt let go, look, go on. Call a split, or a drive that fails.",
  "airframe": "${airframe.name}",
  "start": { "massT": ${massT}, "altitudeFt": 5600, "groundFt": 700, "speedKt": ${speedKt}, "flapDeg": ${leg.fromDeg} },${role === 'driving' ? '\n  "role": "driving",' : ''}
  "pointerNoise": true,
  "task": { "settings": [${leg.toDeg}], "limitS": 240 },
  "faults": [${fault}],
  "events": []
}
`;
  return { name: `${row.toLowerCase()}-${leg.way}-to-${leg.toDeg}`.replace(/[^a-z0-9-]/g, '-'), text };
}
