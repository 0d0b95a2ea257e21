// Measures of a sound, made from its samples alone.

/** Magnitudes of the first half of the spectrum, one line every `rate / length` Hz; `length` is a power of two. Radix 2, in place. */
export function spectrum(samples: ArrayLike<number>, length: number, window = true): Float64Array {
  const re = new Float64Array(length);
  const im = new Float64Array(length);
  const used = Math.min(length, samples.length);
  // A Hann window over what there is; the rest is zeros.
  for (let at = 0; at < used; at += 1) re[at] = samples[at]! * (window ? 0.5 - 0.5 * Math.cos((2 * Math.PI * at) / used) : 1);
  for (let at = 1, back = 0; at < length; at += 1) {
    let bit = length >> 1;
    for (; back & bit; bit >>= 1) back ^= bit;
    back |= bit;
    if (at < back) [re[at], re[back], im[at], im[back]] = [re[back]!, re[at]!, im[back]!, im[at]!];
  }
  for (let size = 2; size <= length; size *= 2) {
    const angle = (-2 * Math.PI) / size;
    for (let start = 0; start < length; start += size) {
      for (let at = 0; at < size / 2; at += 1) {
        const [c, s] = [Math.cos(angle * at), Math.sin(angle * at)];
        const [low, high] = [start + at, start + at + size / 2];
        const [r, i] = [re[high]! * c - im[high]! * s, re[high]! * s + im[high]! * c];
        re[high] = re[low]! - r;
        im[high] = im[low]! - i;
        re[low] = re[low]! + r;
        im[low] = im[low]! + i;
      }
    }
  }
  return Float64Array.from({ length: length / 2 }, (_, at) => Math.hypot(re[at]!, im[at]!));
}

export interface Peak {
  hz: number;
  /** Below the strongest, dB. */
  downDb: number;
}

/** Lines that stand out: the highest within 60 Hz to either side, no more than `downDb` below the strongest; strongest first. */
export function peaks(samples: ArrayLike<number>, rate: number, downDb: number, length = 65_536): Peak[] {
  const lines = spectrum(samples, length);
  const reach = Math.round((60 * length) / rate);
  const strongest = Math.max(...lines);
  return [...lines]
    .map((size, at) => ({ hz: (at * rate) / length, downDb: 20 * Math.log10(strongest / size), at, size }))
    .filter(({ at, size, downDb: down }) => down <= downDb && size === Math.max(...lines.slice(Math.max(0, at - reach), at + reach + 1)))
    .sort((a, b) => b.size - a.size)
    .map(({ hz, downDb: down }) => ({ hz, downDb: down }));
}

/** Root mean square over steps of `stepS`. */
export function levels(samples: ArrayLike<number>, rate: number, stepS: number): number[] {
  const step = Math.round(stepS * rate);
  return Array.from({ length: Math.floor(samples.length / step) }, (_, part) => {
    let sum = 0;
    for (let at = part * step; at < (part + 1) * step; at += 1) sum += samples[at]! ** 2;
    return Math.sqrt(sum / step);
  });
}

/** How often a second the loudness changes most strongly, Hz. */
export function modulationHz(samples: ArrayLike<number>, rate: number): number {
  const stepS = 0.005;
  const loud = levels(samples, rate, stepS);
  const mean = loud.reduce((sum, one) => sum + one, 0) / loud.length;
  const length = 8192;
  const lines = spectrum(loud.map((one) => one - mean), length);
  return lines.indexOf(Math.max(...lines)) / (stepS * length);
}

/** Likeness of two spectra, 0 nothing in common to 1 the same: cosine of power in third octaves from 200 to 8000 Hz. */
export function likeness(one: ArrayLike<number>, other: ArrayLike<number>, rate: number): number {
  const bands = (samples: ArrayLike<number>): number[] => {
    const length = 32_768;
    const lines = spectrum(samples, length);
    return Array.from({ length: 16 }, (_, band) => {
      const [from, to] = [200 * 2 ** (band / 3), 200 * 2 ** ((band + 1) / 3)].map((hz) => Math.round((hz * length) / rate));
      return lines.slice(from, to).reduce((sum, line) => sum + line ** 2, 0);
    });
  };
  const [a, b] = [bands(one), bands(other)];
  const dot = (p: number[], q: number[]): number => p.reduce((sum, value, at) => sum + value * q[at]!, 0);
  return dot(a, b) / Math.sqrt(dot(a, a) * dot(b, b));
}

/** Times at which loudness rises out of less than a fifth of the greatest to more than half of it, s. */
export function onsets(samples: ArrayLike<number>, rate: number): number[] {
  const stepS = 0.005;
  const loud = levels(samples, rate, stepS);
  const most = Math.max(...loud);
  let quiet = true;
  return loud.flatMap((one, at) => {
    if (one < most / 5) quiet = true;
    if (!quiet || one < most / 2) return [];
    quiet = false;
    return [at * stepS];
  });
}
