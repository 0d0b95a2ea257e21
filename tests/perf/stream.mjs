// The app's own stream (frames and acts in, sessions out; a picture is made where somebody draws it, and counts into a frame's script) against calling `advance` for the same ticks, and every input
// looked for in the tick that holds its stamp, however late it came.
import { median, spreadOf, turnAbout } from './timing.mjs';
import { model } from './model.mjs';

const START_MS = 1000;
const FRAMES = 6000;
const STRETCH = 1500;
const FRAME_MS = 1000 / 60;
const ROUNDS = 41;

const KEYS = { task: { settings: [16], limitS: 3600 }, faults: [{ name: 'a', kind: 'lag', side: 'left', ratio: 0.7, when: { atS: 14 } }] };
const device = { hand: 'key', kinds: ['key'] };

/** A drill with its frames fed by hand. */
function opened({ sim, airframe, own }) {
  // As the page's own frames come: straight to who listens.
  let feed;
  const frame$ = new sim.Observable((listener) => { feed = (stampMs) => { listener.next(stampMs); }; });
  const scenario = own(KEYS);
  const drill = sim.startDrill({ scenario, airframe, seed: 1, device, gauge: {}, app: 'bench' }, frame$);
  let session = null;
  drill.onSession((now) => { session = now; });
  return { feed: (stampMs) => feed(stampMs), drill, now: () => session, world: () => sim.expand(scenario, airframe, 1) };
}

/** One drill that runs and runs, as in a page: each round is the next stretch of it, and the same stretch by `advance`. */
export async function stream({ spoil }) {
  const on = await model();
  const { sim } = on;
  const { feed, drill, now, world: first } = opened(on);
  let world = first();
  let frames = 0;
  let at = 0;
  feed(START_MS);
  const acts = [{ do: 'openGuard' }, { do: 'arm' }, { do: 'holdDrive', way: 'extend' }];
  const log = acts.map((act, seq) => ({ ...act, tick: seq, rank: 2, seq }));
  acts.forEach((act, tick) => { drill.act(START_MS + 10 * tick + 1, act, 'key'); });
  const streamed = () => {
    for (let count = 0; count < STRETCH; count += 1) feed(START_MS + (frames += 1) * FRAME_MS);
  };
  const directly = () => {
    for (let count = 0; count < STRETCH; count += 1) {
      at += 1;
      world = sim.advance(world, log, Math.floor((START_MS + at * FRAME_MS - START_MS) / 10) - world.state.tick);
    }
  };
  const times = turnAbout({ directly, streamed }, ROUNDS, { warm: 12, spoil: spoil ? { streamed: 3 } : {} });
  const hashed = (state) => { const hash = sim.startHash(); hash.add(state); return hash.digits(); };
  if (hashed(now().world.state) !== hashed(world.state)) return [{ id: 'stream', value: NaN, notes: ['the stream and advance come to different states'] }];
  return [{
    id: 'stream', value: median(times.streamed) / median(times.directly),
    notes: [`medians; ${spreadOf(times.streamed, times.directly)}; us a frame: stream ${(median(times.streamed) / STRETCH).toFixed(2)}, advance ${(median(times.directly) / STRETCH).toFixed(2)}`],
  }];
}

/** Acts at stamps anywhere in a frame, each handed over up to 14 ms late, some behind the frame that stepped their tick. */
export async function ticks({ wrong }) {
  const on = await model();
  const { feed, drill, now } = opened(on);
  const acts = [];
  let dice = 20261125;
  const uniform = () => (dice = (dice * 48271) % 2147483647) / 2147483647;
  let acted = 0;
  feed(START_MS);
  drill.act(START_MS + 1, { do: 'openGuard' }, 'key');
  drill.act(START_MS + 2, { do: 'arm' }, 'key');
  for (let at = 1; at <= FRAMES && now().over === null; at += 1) {
    const stamp = START_MS + at * FRAME_MS;
    const pressed = stamp - FRAME_MS * uniform();
    const late = uniform() < 0.5;
    const hand = () => {
      if (at % 3 !== 0 || at < 3) return;
      const what = acted % 2 === 0 ? { do: 'holdDrive', way: 'extend' } : { do: 'releaseDrive' };
      acted += 1;
      acts.push({ stamp: pressed, ...what });
      drill.act(pressed + (wrong ? 10 : 0), what, 'key');
    };
    if (!late) hand();
    feed(stamp);
    if (late) hand();
  }
  const { log, marks } = now();
  const filed = log.filter((one) => one.do === 'holdDrive' || one.do === 'releaseDrive');
  const wrongly = acts.filter(({ stamp }, at) => filed[at]?.tick !== Math.floor((stamp - START_MS) / 10)).length + Math.abs(filed.length - acts.length);
  // What was stepped again must come to what a run of the same log comes to.
  const again = on.sim.advance(now().start, log, now().world.state.tick).state;
  const same = on.sim.STATE_KEYS.every((key) => Object.is(on.sim.numberOf(again, key) + 0, on.sim.numberOf(now().world.state, key) + 0));
  return [{ id: 'ticks', value: same ? wrongly : NaN, notes: [`${acts.length} acts at known stamps, about half handed over behind the frame that stepped their tick; ${marks.filter(({ what }) => what === 'late').length} marked late`] }];
}
