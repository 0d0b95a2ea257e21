/**
 * Sounds as plain data: notes in a cycle, each a harmonic tone. Nothing here plays.
 *
 * The figures of a good alert sound are those of MIL-STD-1472 and the FAA's human-factors course: fundamental 500 to 3000 Hz,
 * four or more prominent harmonic components from 1000 to 4000 Hz, changing one to three times a second, its first half
 * second like that of no other. `tests/sound` and the browser measure them on what is rendered.
 */
interface Note {
  /** From the start of the cycle, s. */
  readonly atS: number;
  /** Rise and fall are within it. */
  readonly lastsS: number;
  /** Fundamental, Hz. */
  readonly hz: number;
  /** Amplitude against the loudest note of the sound, 0 to 1. */
  readonly level: number;
}

export interface Plan {
  /** A cycle ends in silence, so that one follows another without a click. */
  readonly cycleS: number;
  /** How often it is played; null until its cause ends. */
  readonly cycles: number | null;
  readonly notes: readonly Note[];
  /** Amplitudes of the fundamental and its harmonics, in order. */
  readonly harmonics: readonly number[];
  /** Times from silence to full and back, s: short enough to be noticed, long enough not to startle or click. */
  readonly riseS: number;
  readonly fallS: number;
}

/** Most urgent first (AMC 25.1322: one at a time, by priority). Hands are needed at once when the autopilot lets go. */
export const BY_URGENCY = ['autopilotOff', 'horn'] as const;
export type SoundName = (typeof BY_URGENCY)[number];

export const PLANS: Readonly<Record<SoundName, Plan>> = {
  /** Bright and reedy, one step upward and a rest, twice a second, for as long as it is meant. */
  horn: {
    cycleS: 0.5, cycles: null, riseS: 0.02, fallS: 0.03, harmonics: [0.5, 1, 0.85, 0.75, 0.6, 0.35],
    notes: [{ atS: 0, lastsS: 0.27, hz: 560, level: 1 }, { atS: 0.24, lastsS: 0.16, hz: 700, level: 0.7 }],
  },
  /** Round and hollow, four quick steps downward, then a rest; said twice. */
  autopilotOff: {
    cycleS: 0.8, cycles: 2, riseS: 0.01, fallS: 0.03, harmonics: [1, 0.25, 0.1],
    notes: [980, 840, 720, 617].map((hz, index) => ({ atS: 0.12 * index, lastsS: 0.1, hz, level: 1 })),
  },
};

/** Peak of a rendered sound, of full scale. */
export const PEAK = 0.8;

/** How much of a note is heard, 0 to 1, so long after its start. */
function envelope(note: Note, { riseS, fallS }: Plan, sinceS: number): number {
  if (sinceS <= 0 || sinceS >= note.lastsS) return 0;
  const part = Math.min(1, sinceS / riseS, (note.lastsS - sinceS) / fallS);
  return note.level * 0.5 * (1 - Math.cos(Math.PI * part));
}

/** One cycle as samples. Harmonics that the rate cannot carry are left out. */
export function samplesOf(plan: Plan, rate: number): Float32Array<ArrayBuffer> {
  const samples = new Float32Array(Math.round(plan.cycleS * rate));
  for (const note of plan.notes) {
    const first = Math.ceil(note.atS * rate);
    const last = Math.min(samples.length, Math.floor((note.atS + note.lastsS) * rate));
    for (let at = first; at < last; at += 1) {
      const sinceS = at / rate - note.atS;
      samples[at] = (samples[at] as number) + envelope(note, plan, sinceS) * tone(note.hz, plan.harmonics, sinceS, rate);
    }
  }
  const most = samples.reduce((highest, one) => Math.max(highest, Math.abs(one)), 0);
  return samples.map((one) => (one * PEAK) / most);
}

function tone(hz: number, harmonics: readonly number[], sinceS: number, rate: number): number {
  return harmonics.reduce((sum, amplitude, index) => {
    const partHz = hz * (index + 1);
    return partHz < rate / 2 ? sum + amplitude * Math.sin(2 * Math.PI * partHz * sinceS) : sum;
  }, 0);
}
