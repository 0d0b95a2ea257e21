/** The nominal run against the prototype's table (double precision, same equations, written apart from this code). */
import { readFileSync } from 'node:fs';
import { getNodeValue, parseTree } from 'jsonc-parser';
import { describe, expect, it } from 'vitest';
import { inputsSchema, scenarioSchema, ready } from '../../sim/files/index.js';
import { advance, expand, flyInputs, traceRows } from '../../sim/index.js';
import { AIRFRAME } from './bench.js';

const read = (name: string): unknown =>
  getNodeValue(parseTree(readFileSync(new URL(`../../scenarios/runs/${name}.json`, import.meta.url), 'utf8')) as never);
const scenario = ready(scenarioSchema.parse(read('nominal')), AIRFRAME);
const { commands, flight } = flyInputs(scenario, AIRFRAME, 1, inputsSchema.parse(read('nominal-inputs')));
const rows = traceRows({ scenario, airframe: AIRFRAME, seed: 1, whole: true }, commands, flight.ticks, 100);

/** Time s, CAS kt, height ft, both sides deg, rate deg/s, motor heat. */
const TABLE: [number, number, number, number, number, number][] = [
  [0, 212.0, 5600, 0.00, 0.0000, 0.000], [10, 211.9, 5600, 0.07, 0.0000, 0.004], [20, 211.3, 5600, 0.51, 0.1549, 0.015],
  [30, 204.8, 5600, 2.04, 0.1517, 0.042], [40, 197.1, 5600, 3.54, 0.1494, 0.072], [50, 189.8, 5600, 4.00, 0.0000, 0.081],
  [60, 182.2, 5600, 4.00, 0.0000, 0.080], [70, 174.6, 5600, 4.00, 0.0000, 0.078], [80, 168.2, 5600, 5.43, 0.1514, 0.107],
  [90, 166.3, 5600, 6.94, 0.1492, 0.136], [100, 166.2, 5600, 8.42, 0.1468, 0.166], [120, 156.4, 5600, 10.28, 0.1464, 0.208],
  [140, 154.2, 5600, 13.18, 0.1429, 0.272], [150, 154.2, 5600, 14.60, 0.1408, 0.307], [160, 154.2, 5600, 15.99, 0.1387, 0.343],
  [170, 147.5, 5600, 16.00, 0.0000, 0.338], [180, 143.6, 5600, 16.00, 0.0000, 0.334], [190, 143.1, 5600, 16.00, 0.0000, 0.329],
  [210, 143.2, 5600, 16.00, 0.0000, 0.320], [220, 146.5, 5460, 16.00, 0.0000, 0.315], [240, 144.8, 5182, 16.00, 0.0000, 0.306],
  [250, 143.4, 5045, 16.00, 0.0000, 0.302], [260, 143.1, 4909, 16.00, 0.0000, 0.298], [300, 143.4, 4367, 16.00, 0.0000, 0.281],
];

describe('nominal run', () => {
  it.each(TABLE)('at %d s', (atS, kt, ft, deg, rate, heat) => {
    const row = rows.find((one) => one.atS === atS);
    if (row === undefined) throw new Error(`no row at ${atS}`);
    expect(Math.abs(row.speedKt - kt)).toBeLessThan(0.3);
    expect(Math.abs(row.altitudeFt - ft)).toBeLessThan(1.5);
    expect(Math.abs(row.leftDeg - deg)).toBeLessThan(0.05);
    expect(row.rightDeg).toBe(row.leftDeg);
    if (atS !== 160) expect(Math.abs(row.rateDegPerS - rate)).toBeLessThan(0.0005); // at 160 s the drive is just let go
    expect(Math.abs(row.motorHeat - heat)).toBeLessThan(0.002);
  });
  it('sounds the horn when the prototype does', () => {
    const horn = flight.events.filter(({ what }) => what === 'horn' || what === 'hornStops').map(({ atS }) => atS);
    [159.75, 168.01, 211.16, 254.99].forEach((atS, index) => expect(Math.abs((horn[index] ?? 0) - atS)).toBeLessThan(0.3));
    expect(horn).toHaveLength(4);
  });
  it.each([[100, 34.7], [200, 90.1], [260, 111.7], [300, 127.3]])('has burnt the fuel of the table by %d s', (atS, kg) => {
    // 200 s is between two rows of the table, 83.0 at 190 s and 97.1 at 210 s.
    const { state } = advance(expand(scenario, AIRFRAME, 1, true), commands, atS * 100);
    expect(Math.abs(state.fuelKg - kg)).toBeLessThan(0.5);
  });
  it('is a completed run', () => expect(flight.outcome).toBe('completed'));
});
