// What must stay fast, as data: a ratio taken inside one run, the aim, and where it falls short of what may be shipped.
// `most`: smaller is better; `least`: larger is. `low`: below it a value is no better but suspect.
// `extra` stands on top of both limits and is said in `of`.

/** @type {readonly { id: string, what: string, way: 'most' | 'least', aim: number, fails: number, low?: number, unit?: string }[]} */
export const BUDGETS = [
  { id: 'step', what: 'advance, 2 ticks a call (a frame) / the same step in place', way: 'most', aim: 1.2, fails: 1.5 },
  { id: 'step100', what: 'advance, 100 ticks a call / the same step in place', way: 'most', aim: 1.2, fails: 1.5 },
  { id: 'twin', what: 'advance, 2 ticks a call / the whole tick in C++ -O2, hashes equal', way: 'most', aim: 1.5, fails: 2.5 },
  { id: 'stream', what: "the app's stream of sessions / calling advance directly", way: 'most', aim: 1.2, fails: 2 },
  { id: 'bytes', what: 'bytes made a tick, 2 ticks a call', way: 'most', aim: 240, fails: 600, unit: 'B' },
  { id: 'sweep', what: 'sweep on 2 workers / on 1, hashes equal, times faster', way: 'least', aim: 1.8, fails: 1.6 },
  { id: 'start', what: 'start of the built command line / node -e 0', way: 'most', aim: 1.8, fails: 2.2 },
  { id: 'engines', what: 'final hashes that differ between Node, node:vm and Chromium', way: 'most', aim: 0, fails: 0 },
  { id: 'bias', what: 'reaction time, first drawn frame to stamp / tick to frame poll: bias', way: 'most', aim: 0.19, fails: 0.3 },
  { id: 'spread', what: 'the same: standard deviation', way: 'most', aim: 0.28, fails: 0.45 },
  { id: 'ticks', what: 'inputs applied at the wrong tick', way: 'most', aim: 0, fails: 0 },
  { id: 'weight', what: "script of the drill page without the app's own / a plain pixi + rxjs + zod page, gzip", way: 'most', aim: 0.8, fails: 1 },
  { id: 'first', what: 'first frame at a quarter of the speed / the same picture by plain Canvas 2D', way: 'most', aim: 2.5, fails: 3 },
  { id: 'script', what: 'script time of a frame / 16.7 ms', way: 'most', aim: 0.03, fails: 0.06 },
  { id: 'logbook', what: 'first page of a logbook of 10,000 / a bare indexed read of 50', way: 'most', aim: 1.5, fails: 1.5 },
  { id: 'heap', what: 'heap after 300 s / after 60 s of running, collected', way: 'most', aim: 1, fails: 1.1, low: 0.8 },
];
