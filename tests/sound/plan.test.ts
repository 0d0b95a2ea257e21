/**
 * The sounds by their samples. Limits: MIL-STD-1472E (fundamental 500 to 3000 Hz; the first half second told apart), the
 * FAA's human-factors course for the air traffic organisation (four or more prominent components from 1000 to 4000 Hz,
 * harmonic; 1 to 3 changes a second); AMC 25.1322 (two frequencies or more), from memory. How far down a component may
 * be and still count as prominent is common practice, no source: 20 dB. The rendered sound is measured in a browser test.
 */
import { describe, expect, test } from 'vitest';
import { BY_URGENCY, PEAK, PLANS, samplesOf, type Plan } from '../../src/sound/plan.js';
import { levels, likeness, modulationHz, onsets, peaks, spectrum } from './spectrum.js';

const RATE = 48_000;
const played = (plan: Plan, lastsS: number, rate = RATE): Float32Array => {
  const one = samplesOf(plan, rate);
  return Float32Array.from({ length: Math.round(lastsS * rate) }, (_, at) => one[at % one.length]!);
};
const sine = (hz: number, lastsS: number): Float32Array => Float32Array.from({ length: lastsS * RATE }, (_, at) => Math.sin((2 * Math.PI * hz * at) / RATE));

describe('the measures themselves', () => {
  test('a spectrum of a cosine is half its length at its own line (definition of the transform)', () => {
    const lines = spectrum(Float32Array.from({ length: 64 }, (_, at) => Math.cos((2 * Math.PI * 5 * at) / 64)), 64, false);
    expect(lines[5]).toBeCloseTo(32, 6);
    for (const at of [0, 4, 6, 31]) expect(lines[at]).toBeCloseTo(0, 5);
  });
  test('peaks find two tones and their distance: a tenth of the amplitude is 20 dB', () => {
    const loud = sine(1000, 1);
    const both = sine(2500, 1).map((one, at) => one * 0.1 + loud[at]!);
    const [first, second, ...more] = peaks(both, RATE, 30);
    expect(first!.hz).toBeCloseTo(1000, -1);
    expect(second!.hz).toBeCloseTo(2500, -1);
    expect(second!.downDb).toBeCloseTo(20, 0);
    expect(more).toEqual([]);
  });
  test('modulation, onsets and likeness of what is known', () => {
    const beat = sine(800, 4).map((one, at) => one * (0.5 - 0.5 * Math.cos((2 * Math.PI * 3 * at) / RATE)));
    expect(modulationHz(beat, RATE)).toBeCloseTo(3, 1);
    expect(onsets(beat.slice(0, RATE), RATE)).toHaveLength(3);
    expect(likeness(sine(500, 0.5), sine(500, 0.5), RATE)).toBeCloseTo(1, 9);
    expect(likeness(sine(500, 0.5), sine(2000, 0.5), RATE)).toBeLessThan(0.001);
  });
});

describe('the gear horn', () => {
  const { horn } = PLANS;
  const strong = peaks(played(horn, 2), RATE, 20);
  test('its strongest line and its fundamentals lie from 500 to 3000 Hz', () => {
    expect(strong[0]!.hz).toBeGreaterThan(500);
    expect(strong[0]!.hz).toBeLessThan(3000);
    expect(horn.notes.map(({ hz }) => hz)).toEqual([560, 700]);
    expect(Math.min(...strong.map(({ hz }) => hz))).toBeCloseTo(560, -1);
  });
  test('each of its two tones brings four or more harmonics from 1000 to 4000 Hz', () => {
    for (const { hz, atS, lastsS } of horn.notes) {
      const note = played({ ...horn, notes: [{ hz, atS: 0, lastsS, level: 1 }] }, lastsS);
      const lines = peaks(note, RATE, 20).filter((line) => line.hz >= 1000 && line.hz <= 4000);
      expect(lines.length, `${hz} at ${atS}`).toBeGreaterThanOrEqual(4);
      for (const line of lines) expect(Math.abs(line.hz / hz - Math.round(line.hz / hz))).toBeLessThan(0.02);
    }
  });
  test('it changes twice a second, and lasts', () => {
    expect(modulationHz(played(horn, 4), RATE)).toBeCloseTo(2, 1);
    expect(horn.cycles).toBeNull();
  });
});

test('the autopilot-off sound: its own frequencies, 1.25 cycles a second, two of them', () => {
  const { autopilotOff } = PLANS;
  const strong = peaks(played(autopilotOff, 1.6), RATE, 20);
  expect(strong.length).toBeGreaterThanOrEqual(4);
  for (const { hz } of autopilotOff.notes) expect(hz).toBeGreaterThan(500);
  expect(modulationHz(played(autopilotOff, 4), RATE)).toBeCloseTo(1.25, 1);
  expect(autopilotOff.cycles).toBe(2);
});

test('the first half second of one is like that of no other: in its colour, in its rhythm and in its way', () => {
  const [horn, off] = [played(PLANS.horn, 0.5), played(PLANS.autopilotOff, 0.5)];
  expect(likeness(horn, off, RATE)).toBeLessThan(0.2);
  expect([onsets(horn, RATE).length, onsets(off, RATE).length]).toEqual([1, 4]);
  const way = ({ notes }: Plan): number => Math.sign(notes.at(-1)!.hz - notes[0]!.hz);
  expect([way(PLANS.horn), way(PLANS.autopilotOff)]).toEqual([1, -1]);
});

test.each(BY_URGENCY.map((name) => [name, PLANS[name]] as const))('%s: full, never too full, up within 50 ms and without a click, at every common rate', (_, plan) => {
  for (const rate of [44_100, 48_000, 96_000]) {
    const samples = played(plan, plan.cycleS * 2, rate);
    const most = samples.reduce((highest, one) => Math.max(highest, Math.abs(one)), 0);
    expect(most).toBeCloseTo(PEAK, 6);
    const loud = levels(samples, rate, 0.005);
    const full = Math.max(...loud);
    expect(loud[0]!).toBeLessThan(full * 0.5);
    expect(loud.findIndex((one) => one > full * 0.8) * 0.005).toBeLessThanOrEqual(0.05);
    // A cycle ends and begins in silence, so that it can follow itself.
    expect(samples[0]).toBe(0);
    expect(samples.slice(samples.length / 2 - 0.005 * rate, samples.length / 2).every((one) => one === 0)).toBe(true);
    expect(samples.length).toBe(Math.round(plan.cycleS * rate) * 2);
  }
});

test('a rate that cannot carry the upper harmonics leaves them out, and folds none back', () => {
  const low = peaks(played(PLANS.horn, 2, 5000), 5000, 20);
  for (const { hz } of low) expect(Math.min(Math.abs(hz % 560), 560 - (hz % 560), Math.abs(hz % 700), 700 - (hz % 700))).toBeLessThan(6);
});
